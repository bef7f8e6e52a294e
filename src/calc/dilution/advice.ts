/** What would make a dilution possible that the bench as it is can't make. */

import { partsWords } from '../parts-words.ts';
import type { Scale } from '../weighing/balance.ts';
import type { ChainVessel, ChainWanted } from './chain.ts';
import { bestRoute } from './search.ts';
import { leastMass } from './weighing.ts';

/** Balances and vessels that can be bought. Common practice, no source. */
const balances: readonly Scale[] = [
  { divisionGrams: 0.1, limitGrams: 2000 },
  { divisionGrams: 0.01, limitGrams: 500 },
  { divisionGrams: 0.001, limitGrams: 200 },
  { divisionGrams: 0.0001, limitGrams: 200 },
];
const vessels: readonly ChainVessel[] = [{ millilitres: 100 }, { millilitres: 500 }, { millilitres: 1000 }];

/** The coarsest balance, the smallest vessel and the strongest intermediate that would do. */
export function whatWouldDo(wanted: ChainWanted): string {
  const { bench } = wanted;
  const balance = balances.find((one) => can(wanted, { scales: [...bench.scales, one] }));
  const vessel = vessels.find((one) => can(wanted, { vessels: [...bench.vessels, one] }));
  const intermediate = intermediateFor(wanted);
  const ways = [
    balance && `a balance that shows ${balance.divisionGrams} g`,
    vessel && `a vessel of ${vessel.millilitres} mL`,
    intermediate && `starting from a stock of ${partsWords(intermediate)}, bought or made elsewhere`,
  ].filter((way): way is string => typeof way === 'string');
  return ways.length > 0
    ? `${ways.join(', or ')} would do`
    : 'make more at once, or a stronger drink to weaken later';
}

const can = (wanted: ChainWanted, more: Partial<ChainWanted['bench']>): boolean =>
  bestRoute({ ...wanted, bench: { ...wanted.bench, ...more } }) !== undefined;

/** The strongest round strength of which the least that a balance weighs is not too much. */
function intermediateFor({ bench, target, finalMassGrams }: ChainWanted): number | undefined {
  const least = Math.min(...bench.scales.map((scale) => leastMass(scale, bench.weighing)));
  const most = (target * finalMassGrams) / least;
  const decade = 10 ** Math.floor(Math.log10(most));
  const strength = [5, 2, 1]
    .map((digit) => Number((digit * decade).toPrecision(3)))
    .find((one) => one <= most);
  return strength !== undefined && strength > target && strength < 1 ? strength : undefined;
}
