const STEPS = 200;
const FINEST = 4e-16;

export interface RootSearch {
  readonly low: number;
  readonly high: number;
  /** Changes sign once between low and high. */
  readonly valueAt: (at: number) => number;
  /** How near in the unknown, as a share of the bracket; 1e-13 where it is left out. */
  readonly close?: number;
}

interface Point {
  readonly at: number;
  readonly value: number;
}

/**
 * Where a function that changes sign once between two ends is zero.
 *
 * Formula   Brent's: the inverse parabola or the secant where it is trusted, half of the bracket where it is not
 * Input     low, high, valueAt; where the signs at the ends agree, the end nearer to zero is returned
 * Output    the root
 * Source    Brent 1973, Algorithms for Minimization without Derivatives, chapter 4
 * Example   findRoot({ low: 0, high: 2, valueAt: (x) => x * x - 2 }) -> 1.414214
 */
export function findRoot({ low, high, valueAt, close = 1e-13 }: RootSearch): number {
  let across: Point = { at: low, value: valueAt(low) };
  let best: Point = { at: high, value: valueAt(high) };
  if (sameSign(across, best)) return Math.abs(across.value) < Math.abs(best.value) ? low : high;
  let before = across;
  let step = best.at - across.at;
  let stepBefore = step;
  for (let count = 0; count < STEPS; count += 1) {
    if (sameSign(across, best)) {
      across = before;
      step = best.at - before.at;
      stepBefore = step;
    }
    if (Math.abs(across.value) < Math.abs(best.value)) {
      before = best;
      best = across;
      across = before;
    }
    const tolerance = FINEST * Math.abs(best.at) + (close * Math.abs(high - low)) / 2;
    const half = (across.at - best.at) / 2;
    if (Math.abs(half) <= tolerance || best.value === 0) return best.at;
    const guess = guessed({ before, best, across, half });
    const trusted =
      Math.abs(stepBefore) >= tolerance &&
      Math.abs(before.value) > Math.abs(best.value) &&
      guess / half > 0 &&
      Math.abs(guess) < Math.min(1.5 * Math.abs(half), Math.abs(stepBefore) / 2);
    stepBefore = trusted ? step : half;
    step = trusted ? guess : half;
    before = best;
    const at = best.at + (Math.abs(step) > tolerance ? step : Math.sign(half) * tolerance);
    best = { at, value: valueAt(at) };
  }
  return best.at;
}

/** True where both lie on one side of zero; a point on zero lies on neither. */
function sameSign(one: Point, other: Point): boolean {
  return (one.value > 0 && other.value > 0) || (one.value < 0 && other.value < 0);
}

/** The step from the best point that the secant, or the parabola through three points laid on its side, proposes. */
function guessed(points: {
  readonly before: Point;
  readonly best: Point;
  readonly across: Point;
  readonly half: number;
}): number {
  const { before, best, across, half } = points;
  const ratio = best.value / before.value;
  if (before.at === across.at) return (-2 * half * ratio) / (1 - ratio);
  const toAcross = before.value / across.value;
  const bestToAcross = best.value / across.value;
  const over =
    ratio * (2 * half * toAcross * (toAcross - bestToAcross) - (best.at - before.at) * (bestToAcross - 1));
  const under = (toAcross - 1) * (bestToAcross - 1) * (ratio - 1);
  return -over / under;
}
