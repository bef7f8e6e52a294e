/** Values of what a series varies, as text. */

import { numberText, trimmedNumber } from '../calc/number-text.ts';
import type { Scale } from '../ledger/rung-scale.ts';

const digits = 3;

/** `0.333`, `60.0 C` */
export const figureText = (scale: Scale | undefined, value: number): string =>
  `${numberText(value, digits)}${scale?.unit ? ` ${scale.unit}` : ''}`;

/**
 * A value in a sentence; a ratio of oil to emulsifier both ways up.
 *
 * Example   1 part oil to 3 of emulsifier, 0.333
 * Example   2 parts oil to 1 of emulsifier, 2.00
 */
export function valueWords(scale: Scale | undefined, value: number): string {
  if (!scale?.isOilRatio || !(value > 0)) return figureText(scale, value);
  const words =
    value <= 1
      ? `1 part oil to ${trimmedNumber(1 / value, digits)} of emulsifier`
      : `${trimmedNumber(value, digits)} parts oil to 1 of emulsifier`;
  return `${words}, ${numberText(value, digits)}`;
}

/** `1 : 3`, for a column. */
export const ratioCell = (value: number): string =>
  value <= 1 ? `1 : ${trimmedNumber(1 / value, digits)}` : `${trimmedNumber(value, digits)} : 1`;

/** A list of values as they would be made next. */
export const valuesList = (scale: Scale | undefined, values: readonly number[]): string =>
  values.map((value) => valueWords(scale, value)).join('; ');

/** `1 beaker`, `3 beakers` */
export const counted = (count: number, word: string): string => `${count} ${word}${count === 1 ? '' : 's'}`;

/** `11`, `11 and 12`, `11, 12 and 14` */
export function listed(words: readonly (string | number)[]): string {
  const [last, ...before] = [...words].reverse();
  return before.length === 0 ? String(last ?? '') : `${before.reverse().join(', ')} and ${last}`;
}
