/** Where a value lies on a drawing, and the round values that are written beside an axis. */

export interface Place {
  /** The values at both ends. */
  readonly low: number;
  readonly high: number;
  /** Where they lie, in units of the drawing. */
  readonly from: number;
  readonly to: number;
}

export type Scale = (value: number) => number;

/**
 * Formula   from + (value - low) / (high - low) (to - from); the middle where both ends are one value
 * Example   linearScale({ low: 0, high: 10, from: 100, to: 200 })(2.5) -> 125
 */
export const linearScale =
  ({ low, high, from, to }: Place): Scale =>
  (value) =>
    high === low ? (from + to) / 2 : from + ((value - low) / (high - low)) * (to - from);

/**
 * The same on the logarithm; values and ends above 0.
 *
 * Example   logScale({ low: 1, high: 100, from: 0, to: 50 })(10) -> 25
 */
export const logScale = ({ low, high, from, to }: Place): Scale => {
  const scale = linearScale({ low: Math.log(low), high: Math.log(high), from, to });
  return (value) => scale(Math.log(value));
};

/** The least step of 1, 2 or 5 times a power of ten that gives no more than so many. */
function stepFor(span: number, most: number): number {
  const rough = span / most;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = [1, 2, 5, 10].find((one) => one * power >= rough * (1 - 1e-9)) ?? 10;
  return step * power;
}

/**
 * Round values between two, both ends counted.
 *
 * Example   linearTicks(0, 23) -> 0, 5, 10, 15, 20
 */
export function linearTicks(low: number, high: number, most = 6): readonly number[] {
  if (!(high > low)) return [low];
  const step = stepFor(high - low, most);
  const first = Math.ceil(low / step - 1e-9);
  const last = Math.floor(high / step + 1e-9);
  const digits = Math.max(0, -Math.floor(Math.log10(step)));
  return Array.from({ length: last - first + 1 }, (_, at) => Number(((first + at) * step).toFixed(digits)));
}

/**
 * Whole powers of ten from the one below to the one above.
 *
 * Example   decades(0.02, 30) -> 0.01, 0.1, 1, 10, 100
 */
export function decades(low: number, high: number): readonly number[] {
  const first = Math.floor(Math.log10(low) + 1e-9);
  const last = Math.max(first + 1, Math.ceil(Math.log10(high) - 1e-9));
  return Array.from({ length: last - first + 1 }, (_, at) => Number(`1e${first + at}`));
}
