import { betaPoint } from './beta.ts';

/**
 * Student's t: the point that a t variate stays within, on both sides, with the given chance.
 *
 * Formula   t = sqrt(v (1 - x)/x), x the point at which I_x(v/2, 1/2) = 1 - chance
 * Input     chance from 0 to 1; degrees of freedom v, at least 1
 * Output    t
 * Source    Abramowitz and Stegun 1964, equation 26.7.1
 * Example   studentWithin(0.95, 4) -> 2.776
 */
export function studentWithin(chance: number, freedom: number): number {
  const x = betaPoint(1 - chance, { a: freedom / 2, b: 0.5 });
  return Math.sqrt((freedom * (1 - x)) / x);
}
