/** Where the rungs of a ladder go. */

export interface Span {
  readonly low: number;
  readonly high: number;
  /** How many rungs; 2 or more. */
  readonly count: number;
}

/**
 * Rungs in equal steps of the logarithm, both ends among them.
 *
 * Formula   low (high / low)^(i / (n - 1)), i = 0 … n - 1
 * Input     low and high above 0 in any one unit, the count
 * Output    values in that unit, going up
 * Example   equalFactors({ low: 0.25, high: 1, count: 3 }) -> 0.25, 0.5, 1
 */
export const equalFactors = ({ low, high, count }: Span): readonly number[] =>
  Array.from({ length: count }, (_, at) => low * (high / low) ** (at / (count - 1)));

/**
 * Rungs in equal steps, both ends among them.
 *
 * Formula   low + (high - low) i / (n - 1), i = 0 … n - 1
 * Example   equalSteps({ low: 2, high: 10, count: 5 }) -> 2, 4, 6, 8, 10
 */
export const equalSteps = ({ low, high, count }: Span): readonly number[] =>
  Array.from({ length: count }, (_, at) => low + ((high - low) * at) / (count - 1));

/**
 * The first rungs where nothing is known but two ends between which the break lies: each of the gaps between
 * them and beyond them is as likely to hold it, when it is as likely anywhere on the logarithm.
 *
 * Formula   low (high / low)^(i / (n + 1)), i = 1 … n
 * Input     the ends, above 0 in any one unit, the count
 * Output    values in that unit, going up
 * Example   firstRungs({ low: 0.125, high: 2, count: 3 }) -> 0.25, 0.5, 1
 */
export const firstRungs = ({ low, high, count }: Span): readonly number[] =>
  Array.from({ length: count }, (_, at) => low * (high / low) ** ((at + 1) / (count + 1)));
