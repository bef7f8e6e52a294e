/** A ratio of oil to emulsifier in words, both ways up, since the literature counts the other way. */

import { numberText, trimmedNumber } from './number-text.ts';

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

function parts(count: number): string {
  const text = trimmedNumber(count, 4);
  return text === '1' ? '1 part' : `${text} parts`;
}
