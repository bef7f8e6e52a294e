const STEPS = 200;
const CLOSE = 1e-13;

export interface RootSearch {
  readonly low: number;
  readonly high: number;
  /** Changes sign once between low and high. */
  readonly valueAt: (at: number) => number;
}

/**
 * Where a function that changes sign once between two ends is zero.
 *
 * Formula   false position with the Illinois step, a bisection whenever it has not halved the bracket in three steps
 * Input     low, high, valueAt; the signs at the ends differ (the end nearer to zero is returned otherwise)
 * Output    the root, to 13 digits of the bracket
 * Source    Dowell and Jarratt 1971, BIT 11:168 (Illinois)
 * Example   findRoot({ low: 0, high: 2, valueAt: (x) => x * x - 2 }) -> 1.414214
 */
export function findRoot({ low, high, valueAt }: RootSearch): number {
  let [a, b] = [low, high];
  let [fa, fb] = [valueAt(a), valueAt(b)];
  if (fa === 0) return a;
  if (fb === 0) return b;
  if (fa > 0 === fb > 0) return Math.abs(fa) < Math.abs(fb) ? a : b;
  const width = Math.abs(high - low);
  let before = width;
  for (let step = 1; step <= STEPS && Math.abs(b - a) > CLOSE * width; step += 1) {
    let at = b - (fb * (b - a)) / (fb - fa);
    if (step % 3 === 0) {
      if (Math.abs(b - a) > before / 2) at = (a + b) / 2;
      before = Math.abs(b - a);
    }
    const value = valueAt(at);
    if (value === 0) return at;
    if (value > 0 === fb > 0) fa /= 2;
    else [a, fa] = [b, fb];
    [b, fb] = [at, value];
    if (Math.abs(value) < CLOSE * CLOSE) return at;
  }
  return b;
}
