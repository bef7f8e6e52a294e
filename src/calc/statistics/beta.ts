import { logGamma } from './log-gamma.ts';

interface Shape {
  readonly a: number;
  readonly b: number;
}

const TINY = 1e-300;
const CLOSE = 1e-15;
const MOST_TERMS = 1000;

/** The continued fraction of the incomplete beta function, by the modified Lentz method. */
function continuedFraction(x: number, { a, b }: Shape): number {
  const away = (value: number): number => (Math.abs(value) < TINY ? TINY : value);
  let under = 1 / away(1 - ((a + b) * x) / (a + 1));
  let over = 1;
  let fraction = under;
  for (let m = 1; m <= MOST_TERMS; m += 1) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    under = 1 / away(1 + even * under);
    over = away(1 + even / over);
    fraction *= under * over;
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    under = 1 / away(1 + odd * under);
    over = away(1 + odd / over);
    fraction *= under * over;
    if (Math.abs(under * over - 1) < CLOSE) break;
  }
  return fraction;
}

/**
 * Regularised incomplete beta function: the chance that a beta variate lies below `x`.
 *
 * Formula   I_x(a, b) = x^a (1 - x)^b / (a B(a, b)) * continued fraction; I_x(a, b) = 1 - I_(1-x)(b, a)
 * Input     x from 0 to 1; shapes a and b above 0
 * Output    0 to 1
 * Source    Abramowitz and Stegun 1964, equations 26.5.2 and 26.5.8
 * Example   betaBelow(0.5, { a: 2, b: 3 }) -> 0.6875
 */
export function betaBelow(x: number, { a, b }: Shape): number {
  if (x <= 0) return 0;
  if (x >= 1) return 1;
  const front = Math.exp(logGamma(a + b) - logGamma(a) - logGamma(b) + a * Math.log(x) + b * Math.log1p(-x));
  if (x < (a + 1) / (a + b + 2)) return (front * continuedFraction(x, { a, b })) / a;
  return 1 - (front * continuedFraction(1 - x, { a: b, b: a })) / b;
}

/**
 * The point below which a beta variate lies with the given chance.
 *
 * Formula   the x at which I_x(a, b) = chance, by halving
 * Input     chance from 0 to 1; shapes a and b above 0
 * Output    x, 0 to 1
 * Example   betaPoint(0.5, { a: 2, b: 2 }) -> 0.5
 */
export function betaPoint(chance: number, shape: Shape): number {
  let low = 0;
  let high = 1;
  for (let step = 0; step < 60; step += 1) {
    const middle = (low + high) / 2;
    if (betaBelow(middle, shape) < chance) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
