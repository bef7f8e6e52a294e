/** How much active silicone an antifoam brings into a drink. */

import type { ResolvedStage } from '../mixture/picture.ts';
import { drinkFigures } from '../slip-guard/drink-figures.ts';
import { isLike } from '../slip-guard/item-substances.ts';

export interface ActiveAntifoam {
  readonly milligramsPerKilogram: number;
  readonly milligramsPerLitre: number;
  /** Nobody wrote what the emulsion contains: it is taken as one of 10 % active. */
  readonly isAssumed: boolean;
}

/**
 * Active antifoam of a drink.
 *
 * Formula   sum of the antifoam's active part / mass, / volume of the drink; an emulsion whose content is not written
 *           counts as 10 % active
 * Input     the stage that is drunk
 * Output    mg/kg and mg/L
 * Source    10 % active: common practice, no source
 */
export function activeAntifoam(drink: ResolvedStage): ActiveAntifoam {
  const figure = drinkFigures.find(({ name }) => name === 'antifoam');
  const grams = drink.substances.reduce(
    (total, { entry, role, massGrams }) => total + (figure?.gramsOf({ entry, role, massGrams }) ?? 0),
    0,
  );
  return {
    milligramsPerKilogram: (grams / drink.massGrams) * 1e6,
    milligramsPerLitre: (grams / drink.volumeMillilitres) * 1e6,
    isAssumed: drink.substances.some(
      ({ entry, role, massGrams }) =>
        role === 'antifoam' && massGrams > 0 && isLike(entry, 'antifoam emulsion'),
    ),
  };
}
