import { betaBelow, betaPoint } from './beta.ts';

/** `hits` out of `trials`. */
export interface Tally {
  readonly hits: number;
  readonly trials: number;
}

export interface Span {
  readonly low: number;
  readonly high: number;
}

/**
 * Chance of at least that many hits when each trial hits with chance `p`.
 *
 * Formula   P(X >= k) = I_p(k, n - k + 1)
 * Input     hits k and trials n, whole numbers; p from 0 to 1
 * Output    0 to 1
 * Source    Abramowitz and Stegun 1964, equation 26.5.24
 * Example   chanceOfAtLeast({ hits: 2, trials: 2 }, 0.5) -> 0.25
 */
export function chanceOfAtLeast({ hits, trials }: Tally, p: number): number {
  if (hits <= 0) return 1;
  if (hits > trials) return 0;
  return betaBelow(p, { a: hits, b: trials - hits + 1 });
}

/**
 * Exact two-sided interval on the chance of a hit.
 *
 * Formula   low: beta point of (1 - confidence)/2 at (k, n - k + 1); high: of (1 + confidence)/2 at (k + 1, n - k)
 * Input     hits k and trials n, whole numbers, n above 0; confidence between 0 and 1
 * Output    low and high, 0 to 1; they hold the truth with at least the stated confidence
 * Source    Clopper and Pearson 1934, Biometrika 26:404
 * Example   hitInterval({ hits: 0, trials: 10 }, 0.9).high -> 0.258866
 */
export function hitInterval({ hits, trials }: Tally, confidence: number): Span {
  const tail = (1 - confidence) / 2;
  return {
    low: hits === 0 ? 0 : betaPoint(tail, { a: hits, b: trials - hits + 1 }),
    high: hits === trials ? 1 : betaPoint(1 - tail, { a: hits + 1, b: trials - hits }),
  };
}

/**
 * The least number of hits that guessing reaches with a chance of `alpha` or less.
 *
 * Formula   least k with P(X >= k | n, p) <= alpha
 * Input     trials n, a whole number; p, the chance to hit by guessing; alpha between 0 and 1
 * Output    k, or null where even n of n would not do
 * Example   hitsNeeded({ trials: 15, p: 1 / 3, alpha: 0.05 }) -> 9
 */
export function hitsNeeded(asked: {
  readonly trials: number;
  readonly p: number;
  readonly alpha: number;
}): number | null {
  const { trials, p, alpha } = asked;
  for (let hits = Math.floor(trials * p); hits <= trials; hits += 1) {
    if (chanceOfAtLeast({ hits, trials }, p) <= alpha) return hits;
  }
  return null;
}
