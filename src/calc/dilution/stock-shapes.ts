/** Every stock that a bench can make: handy masses, handy dilutions, its vessels and balances. */

import type { ChainBench, ChainVessel } from './chain.ts';
import { stepVariance } from './uncertainty.ts';
import { isFineEnough, isWholeDivisions, leastMass, type OneWeighing, weighingOf } from './weighing.ts';

/** Where the bench lists none. Common practice, no source. */
export const usualVessel: ChainVessel = { millilitres: 100 };

const digits = [1, 2, 5] as const;

/** What a stock can be, whatever it is made from. */
export interface StockShape {
  readonly dilution: number;
  readonly take: OneWeighing;
  readonly solvent: OneWeighing;
  readonly totalGrams: number;
  readonly vessel: ChainVessel | undefined;
  readonly variance: number;
}

/** The dilutions that people make, and the largest that the bench allows. */
export function handyDilutions(largest: number): readonly number[] {
  const round = [2, 5, 10, 20, 50, 100, 200, 500, 1000].filter((one) => one <= largest * (1 + 1e-9));
  return round.includes(largest) || largest <= 1 || largest > 1000 ? round : [...round, largest];
}

/** No bench weighs less or more, whatever its file says: 1 ng and 1000 t. */
const leastGrams = 1e-9;
const mostGrams = 1e9;

/** 1, 2 or 5 times a power of ten, from the least mass that any balance weighs up to the most that a vessel holds. */
function handyMasses(least: number, most: number): readonly number[] {
  const masses: number[] = [];
  const first = Math.floor(Math.log10(Math.max(least, leastGrams)));
  for (let power = first; 10 ** power <= Math.min(most, mostGrams); power++)
    for (const digit of digits) masses.push(Number(`${digit}e${power}`));
  return masses.filter((mass) => mass >= least * (1 - 1e-9) && mass <= most);
}

/** Every stock that the bench can make. */
export function stockShapes(bench: ChainBench, solventDensity = 1): readonly StockShape[] {
  const vessels = bench.vessels.length > 0 ? bench.vessels : [usualVessel];
  const least = Math.min(...bench.scales.map((scale) => leastMass(scale, bench.weighing)));
  const most = Math.max(...vessels.map(({ millilitres }) => millilitres * solventDensity));
  return handyMasses(least, most).flatMap((takeGrams) =>
    handyDilutions(bench.largestDilution).flatMap((dilution) => {
      const totalGrams = Number((takeGrams * dilution).toPrecision(12));
      const fitting = vessels.filter((one) => one.millilitres * solventDensity >= totalGrams * (1 - 1e-9));
      const made = fitting.flatMap(
        (vessel) => shapeIn({ bench, vessel, takeGrams, dilution, totalGrams }) ?? [],
      );
      return made
        .sort((one, other) => one.variance - other.variance || roomOf(one) - roomOf(other))
        .slice(0, 1);
    }),
  );
}

const roomOf = ({ vessel }: StockShape): number => vessel?.millilitres ?? 0;

interface Making {
  readonly bench: ChainBench;
  readonly vessel: ChainVessel;
  readonly takeGrams: number;
  readonly dilution: number;
  readonly totalGrams: number;
}

function shapeIn({ bench, vessel, takeGrams, dilution, totalGrams }: Making): StockShape | undefined {
  const { scales, weighing } = bench;
  const tare = vessel.massGrams ?? 0;
  const solventGrams = Number((totalGrams - takeGrams).toPrecision(12));
  const take = weighingOf(scales, { massGrams: takeGrams, besideGrams: tare });
  const solvent = weighingOf(scales, { massGrams: solventGrams, besideGrams: tare + takeGrams });
  if (!take || !solvent || take.portions > 1 || solvent.portions > 1) return undefined;
  if (!isFineEnough(take, weighing) || !isFineEnough(solvent, weighing)) return undefined;
  if (!isWholeDivisions(takeGrams, take.divisionGrams)) return undefined;
  if (!isWholeDivisions(solventGrams, solvent.divisionGrams)) return undefined;
  const isUsual = vessel === usualVessel;
  const variance = varianceOf(take, solvent);
  return { dilution, take, solvent, totalGrams, vessel: isUsual ? undefined : vessel, variance };
}

export const varianceOf = (take: OneWeighing, solvent: OneWeighing): number =>
  stepVariance({
    takeGrams: take.massGrams,
    takeUncertaintyGrams: take.standardUncertaintyGrams,
    solventGrams: solvent.massGrams,
    solventUncertaintyGrams: solvent.standardUncertaintyGrams,
  });
