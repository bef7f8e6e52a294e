/** A ratio of oil to emulsifier in words, both ways up, since the literature counts the other way. */

import { numberText, trimmedNumber } from './number-text.ts';
import type { Throw } from './ratio.ts';

export type { Ratio } from './ratio.ts';

/**
 * Input     masses of oil and emulsifier in g, both above 0
 * Example   ratioInWords(2, 6) -> 1 part oil to 3 parts emulsifier (oil per emulsifier 0.3333)
 */
export function ratioInWords(oilGrams: number, emulsifierGrams: number): string {
  const perEmulsifier = oilGrams / emulsifierGrams;
  const words =
    perEmulsifier <= 1
      ? `1 part oil to ${parts(1 / perEmulsifier)} emulsifier`
      : `${parts(perEmulsifier)} oil to 1 part emulsifier`;
  return `${words} (oil per emulsifier ${numberText(perEmulsifier, 4)})`;
}

/**
 * A throw in words, so that nobody takes 1+4 for one part in four.
 *
 * Example   throwInWords of 1+4 -> Throw 1+4: 1 part syrup, 4 parts water, 5 parts drink.
 */
export function throwInWords({ syrupParts, waterParts }: Throw): string {
  const sum = syrupParts + waterParts;
  return `Throw ${trimmedNumber(syrupParts)}+${trimmedNumber(waterParts)}: ${parts(syrupParts)} syrup, ${parts(waterParts)} water, ${parts(sum)} drink.`;
}

function parts(count: number): string {
  const text = trimmedNumber(count, 4);
  return text === '1' ? '1 part' : `${text} parts`;
}
