/** How far an answer lies from the printed figures of one table, as a line of the README's table. */
export interface Measured {
  readonly what: string;
  readonly beside: string;
  readonly rows: number;
  /** The worst row, in the words of the README. */
  readonly worst: string;
}

/** A value that came out, and the figure that is printed. */
export interface Pair {
  readonly value: number;
  readonly printed: number;
}

const largest = (pairs: readonly Pair[], off: (pair: Pair) => number): number =>
  Math.max(...pairs.map((pair) => Math.abs(off(pair))));

/** The worst row, as a difference in the unit of the table. */
export function worstOff(pairs: readonly Pair[], digits: number, unit = ''): string {
  const worst = largest(pairs, ({ value, printed }) => value - printed).toFixed(digits);
  return unit === '' ? worst : `${worst} ${unit}`;
}

/** The worst row, as a share of the printed figure. */
export const worstShare = (pairs: readonly Pair[], digits = 1): string =>
  `${(100 * largest(pairs, ({ value, printed }) => value / printed - 1)).toFixed(digits)} %`;

/** The worst row of a table that is met to the last double digits, as a power of ten above it. */
export const belowPowerOfTen = (pairs: readonly Pair[]): string =>
  `under 1e${Math.floor(Math.log10(largest(pairs, ({ value, printed }) => value / printed - 1)) + 1)}`;
