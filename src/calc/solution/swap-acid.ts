import type { Parsed } from '../../problem.ts';
import { type Adjustment, drinkWith, searchDose } from './adjust.ts';
import type { DrinkGiven } from './drink.ts';

/**
 * How much of another acid tastes as sour.
 *
 * Formula   the dose at which acid molecules with a proton to give and H+ are together as many per litre
 * Input     base drink without the acid; `from` with its gramsPerLitre; the name of the acid to take instead
 * Output    the dose in g/L with the drink it makes
 * Refuses   what the equilibrium refuses for the drink as it stands
 * Source    Da Conceicao Neta and others 2007
 * Accuracy  a relation for organic acids; phosphoric acid and a tasting panel may differ: taste it against the control
 * Example   swapAcid({ base: { portions: [], temperatureKelvin: 298.15 }, from: { substance: 'citric acid', gramsPerLitre: 1.36 }, to: 'fumaric acid' }) -> { possible: true, doses: [{ gramsPerLitre: 0.808569, .. }], .. }
 */
export function swapAcid(given: {
  readonly base: DrinkGiven;
  readonly from: { readonly substance: string; readonly gramsPerLitre: number };
  readonly to: string;
}): Parsed<Adjustment> {
  const { base, from, to } = given;
  const before = drinkWith(base, [from]);
  if (!before.ok) return before;
  return searchDose({
    valueAt: (grams) => {
      const drink = drinkWith(base, [{ substance: to, gramsPerLitre: grams }]);
      return drink.ok ? drink.value.sourness - before.value.sourness : undefined;
    },
    make: (grams) => [{ substance: to, gramsPerLitre: grams }],
    base,
    reason: () => `no amount of ${to} that can be reckoned with is as sour`,
  });
}
