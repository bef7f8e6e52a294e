import { type Parsed, parsed } from '../../problem.ts';
import { type Adjustment, type Dose, drinkWith, MOST_GRAMS_PER_LITRE, missed, searchDose } from './adjust.ts';
import type { DrinkAcidity, DrinkGiven } from './drink.ts';
import { findRoot } from './root.ts';

const PH_CLOSE = 1e-6;
const DOSE_CLOSE = 1e-11;

export interface PairGiven {
  /** The drink without the two. */
  readonly base: DrinkGiven;
  readonly acid: string;
  readonly salt: string;
}

/**
 * Acid and salt for a titratable acidity and a pH at once.
 *
 * Formula   for every amount of salt the acid that gives the acidity; the salt at which the pH is right, pH rising with it
 * Input     base drink, acid, salt, ph, titratable in g/L (as the base's acid, citric where it is left out)
 * Output    g/L of both with the drink they make (its sodium in mg/100 mL); or that no mixture does it, and the nearest
 * Refuses   what the equilibrium refuses for the drink with acid alone
 * Source    the equilibrium and the titration
 * Example   acidAndSalt({ base: { portions: [], temperatureKelvin: 298.15 }, acid: 'citric acid', salt: 'trisodium citrate dihydrate', ph: 3, titratable: 4.5 }) -> { possible: true, doses: [{ gramsPerLitre: 4.506521, .. }, { gramsPerLitre: 1.163507, .. }], .. }
 */
export function acidAndSalt(
  given: PairGiven & { readonly ph: number; readonly titratable: number },
): Parsed<Adjustment> {
  return pairFor(given, (drink) => drink.titratable - given.titratable, 'titratable acidity');
}

/**
 * Raises the pH with the least change of sourness: some of the acid gives way to its salt, and the molecules that
 * taste sour stay as many as they were.
 *
 * Formula   as `acidAndSalt`, with the sourness of the drink as it stands in place of the titratable acidity
 * Input     base drink without the acid, acid, its gramsPerLitre now, salt, ph to be reached
 * Output    as `acidAndSalt`
 * Refuses   as `acidAndSalt`
 * Source    Da Conceicao Neta and others 2007 (equal sourness)
 * Example   raisePh({ base: { portions: [], temperatureKelvin: 298.15 }, acid: 'citric acid', gramsPerLitre: 4.5, salt: 'trisodium citrate dihydrate', ph: 3 }) -> { possible: true, doses: [{ gramsPerLitre: 4.342176, .. }, { gramsPerLitre: 1.114632, .. }], .. }
 */
export function raisePh(
  given: PairGiven & { readonly gramsPerLitre: number; readonly ph: number },
): Parsed<Adjustment> {
  const { acid: substance, gramsPerLitre } = given;
  const before = drinkWith(given.base, [{ substance, gramsPerLitre }]);
  if (!before.ok) return before;
  return pairFor(given, (drink) => drink.sourness - before.value.sourness, 'sourness');
}

/** `over` is what is too much of the thing to be kept; it rises with the acid. */
function pairFor(
  given: PairGiven & { readonly ph: number },
  over: (drink: DrinkAcidity) => number,
  kept: string,
): Parsed<Adjustment> {
  const withSalt = (salt: number): readonly Dose[] | undefined => pairAt(given, over, salt);
  const none = withSalt(0);
  const start = drinkWith(given.base, none ?? []);
  if (!start.ok) return start;
  if (!none) return parsed(missed(`that ${kept} is out of reach of ${given.acid}`, [], start.value));
  if (over(start.value) > Math.abs(over(start.value)) * 1e-6 && none[0]?.gramsPerLitre === 0) {
    return parsed(missed(`the drink without ${given.acid} already has more ${kept}`, none, start.value));
  }
  if (start.value.ph > given.ph + PH_CLOSE) {
    const reason = `with that ${kept} the pH is ${start.value.ph.toFixed(2)} without any ${given.salt}; a stronger acid would be needed`;
    return parsed(missed(reason, none, start.value));
  }
  return searchDose({
    valueAt: (salt) => {
      const doses = withSalt(salt);
      const drink = doses && drinkWith(given.base, doses);
      return drink?.ok ? drink.value.ph - given.ph : undefined;
    },
    make: withSalt,
    base: given.base,
    reason: (drink) =>
      `with that ${kept} more ${given.salt} than can be reckoned with would be needed; pH ${drink.ph.toFixed(2)} is as far as it goes`,
  });
}

/** The acid that keeps what is to be kept beside so much salt: nothing where the salt alone is too much already. */
function pairAt(
  { base, acid, salt }: PairGiven,
  over: (drink: DrinkAcidity) => number,
  saltGrams: number,
): readonly Dose[] | undefined {
  const pair = (acidGrams: number): readonly Dose[] => [
    { substance: acid, gramsPerLitre: acidGrams },
    { substance: salt, gramsPerLitre: saltGrams },
  ];
  const valueAt = (acidGrams: number): number => {
    const drink = drinkWith(base, pair(acidGrams));
    return drink.ok ? over(drink.value) : Number.POSITIVE_INFINITY;
  };
  const alone = valueAt(0);
  if (alone >= 0) return saltGrams === 0 && Number.isFinite(alone) ? pair(0) : undefined;
  let high = 1;
  while (valueAt(high) < 0) {
    high *= 2;
    if (high > MOST_GRAMS_PER_LITRE) return undefined;
  }
  if (!Number.isFinite(valueAt(high))) return undefined;
  return pair(findRoot({ low: 0, high, valueAt, close: DOSE_CLOSE }));
}
