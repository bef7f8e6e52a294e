import { caffeineServing } from '../../reference/cautions.ts';
import type { Caution } from '../answer.ts';
import type { Mixture } from '../mixture/picture.ts';
import { trimmedNumber } from '../number-text.ts';
import { isLike } from './item-substances.ts';

export interface CaffeineGate {
  readonly caution: Caution;
  readonly milligrams: number;
  readonly servingMillilitres: number;
}

/**
 * Whether a serving of the drink holds so much caffeine that a yes is asked for.
 *
 * Formula   caffeine (g/L) x serving (mL) = mg; asked above 200 mg
 * Input     a resolved mixture; the serving in mL, 330 where none is aimed at
 * Output    the caution with its figures; undefined where it is not above, or there is no drink
 * Source    EFSA 2015, single doses of 200 mg
 * Example   1 g/L of caffeine, 330 mL -> 330 mg
 */
export function caffeineGate(
  mixture: Mixture,
  servingMillilitres: number = caffeineServing.servingMillilitres,
): CaffeineGate | undefined {
  const gramsPerLitre = (mixture.drink?.substances ?? [])
    .filter(({ entry }) => isLike(entry, 'caffeine'))
    .reduce((sum, one) => sum + one.gramsPerLitre, 0);
  const milligrams = gramsPerLitre * servingMillilitres;
  if (milligrams <= caffeineServing.milligrams) return undefined;
  const holds = `a serving of ${trimmedNumber(servingMillilitres, 4)} mL holds ${trimmedNumber(milligrams, 3)} mg of caffeine`;
  return {
    caution: {
      code: 'caffeine-serving',
      text: `${holds}, above the ${caffeineServing.milligrams} mg that EFSA gives for a single dose of an adult`,
      source: caffeineServing.source,
    },
    milligrams,
    servingMillilitres,
  };
}
