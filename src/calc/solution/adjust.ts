import { type Parsed, parsed, refused } from '../../problem.ts';
import type { Portion } from './dissolve.ts';
import { type DrinkAcidity, type DrinkGiven, drinkAcidity } from './drink.ts';
import { findRoot } from './root.ts';

/** No solver doses more of anything than this. */
export const MOST_GRAMS_PER_LITRE = 300;
const FIRST_STEP = 0.01;
const GROWTH = 1.6;
const MOST_STEPS = 80;
/** How near the edge of what can be reckoned with is sought. */
const EDGE_CLOSE = 1e-3;
const DOSE_CLOSE = 1e-10;
const PH_CLOSE = 1e-6;

/** An answer of a solver: the dose with the drink it makes, or the nearest there is and why. */
export type Adjustment =
  | { readonly possible: true; readonly doses: readonly Dose[]; readonly drink: DrinkAcidity }
  | {
      readonly possible: false;
      readonly reason: string;
      readonly nearest: { readonly doses: readonly Dose[]; readonly drink: DrinkAcidity };
    };

export interface Dose {
  readonly substance: string;
  readonly gramsPerLitre: number;
}

/** A drink with doses put on top of what is in it. */
export function drinkWith(base: DrinkGiven, doses: readonly Dose[]): Parsed<DrinkAcidity> {
  const added = doses.map(
    ({ substance, gramsPerLitre }): Portion => ({
      substance,
      amount: { unit: 'g/L', value: gramsPerLitre },
    }),
  );
  return drinkAcidity({ ...base, portions: [...base.portions, ...added] });
}

/**
 * How much of a substance brings a drink to a pH: an acid downwards, a salt or a base upwards.
 *
 * Formula   the dose at which the equilibrium has that pH, searched upwards from nothing
 * Input     base drink, substance, ph
 * Output    the dose in g/L with the drink it makes; or that no dose does it, and what comes nearest
 * Refuses   what the equilibrium refuses for the drink as it stands
 * Source    the equilibrium
 * Example   doseForPh({ base: { portions: [], temperatureKelvin: 298.15 }, substance: 'citric acid', ph: 2.5 }) -> { possible: true, doses: [{ gramsPerLitre: 3.171742, .. }], .. }
 */
export function doseForPh(given: {
  readonly base: DrinkGiven;
  readonly substance: string;
  readonly ph: number;
}): Parsed<Adjustment> {
  const { base, substance, ph } = given;
  const start = drinkWith(base, []);
  if (!start.ok) return start;
  const falls = fallsWith(base, substance);
  if (!falls.ok) return falls;
  const goal = falls.value ? ph - start.value.ph : start.value.ph - ph;
  if (goal > PH_CLOSE) {
    return parsed(
      missed(
        `the drink stands at pH ${start.value.ph.toFixed(2)} without it, and ${substance} moves it the other way`,
        [],
        start.value,
      ),
    );
  }
  return searchDose({
    valueAt: (grams) => {
      const drink = drinkWith(base, [{ substance, gramsPerLitre: grams }]);
      if (!drink.ok) return undefined;
      return falls.value ? ph - drink.value.ph : drink.value.ph - ph;
    },
    make: (grams) => [{ substance, gramsPerLitre: grams }],
    base,
    reason: (drink) =>
      `more ${substance} than can be reckoned with; pH ${drink.ph.toFixed(2)} is as far as it goes`,
  });
}

function fallsWith(base: DrinkGiven, substance: string): Parsed<boolean> {
  const before = drinkWith(base, []);
  if (!before.ok) return before;
  const after = drinkWith(base, [{ substance, gramsPerLitre: FIRST_STEP }]);
  return after.ok ? parsed(after.value.ph < before.value.ph) : after;
}

export function missed(reason: string, doses: readonly Dose[], drink: DrinkAcidity): Adjustment {
  return { possible: false, reason, nearest: { doses, drink } };
}

/**
 * Searches the dose at which a value that rises through zero is zero: outward from nothing by steps that grow,
 * then inside the step. Where the value can't be had (too concentrated), the edge of what can is the nearest.
 */
export function searchDose(search: {
  readonly valueAt: (grams: number) => number | undefined;
  readonly make: (grams: number) => readonly Dose[] | undefined;
  readonly base: DrinkGiven;
  readonly reason: (drink: DrinkAcidity) => string;
}): Parsed<Adjustment> {
  const bracket = bracketOf(search.valueAt);
  const root =
    bracket.high === undefined
      ? bracket.low
      : findRoot({
          low: bracket.low,
          high: bracket.high,
          close: DOSE_CLOSE,
          valueAt: (grams) => search.valueAt(grams) ?? Number.POSITIVE_INFINITY,
        });
  const doses = search.make(root);
  if (!doses) return refused('no-mixture', 'no mixture comes near it', 'ask for less acidity, or another pH');
  const drink = drinkWith(search.base, doses);
  if (!drink.ok) return drink;
  return parsed(
    bracket.high === undefined
      ? missed(search.reason(drink.value), doses, drink.value)
      : { possible: true, doses, drink: drink.value },
  );
}

function bracketOf(valueAt: (grams: number) => number | undefined): {
  readonly low: number;
  readonly high: number | undefined;
} {
  let low = 0;
  let high = FIRST_STEP;
  let edge = MOST_GRAMS_PER_LITRE;
  for (let step = 0; step < MOST_STEPS && edge - low > low * EDGE_CLOSE; step += 1) {
    const value = valueAt(high);
    if (value !== undefined && value >= 0) return { low, high };
    if (value === undefined) edge = high;
    else low = high;
    high = Math.min(high * GROWTH, edge);
    if (high === edge) high = (low + edge) / 2;
  }
  return { low, high: undefined };
}
