/** What a forced choice among two or three glasses tells: exact, by the binomial distribution. */

import { chanceOfAtLeast, hitInterval, hitsNeeded, type Span } from '../statistics/binomial.ts';

/** `guess`: the chance to be right without tasting anything, 1/3 for a triangle, 1/2 for a pair. */
export interface Choice {
  readonly guess: number;
  /** 2 where nobody knew beforehand which way it would go. */
  readonly sides: 1 | 2;
}

export interface Tasted extends Choice {
  readonly right: number;
  readonly tastings: number;
}

export interface Tasting extends Choice {
  readonly tastings: number;
  /** The accepted chance to say "different" of two that nobody can tell apart. */
  readonly risk: number;
}

/** Of a two-sided question: the side that more chose. */
export const rightSide = ({ right, tastings, sides }: Tasted): number =>
  sides === 2 ? Math.max(right, tastings - right) : right;

/**
 * Chance that guessing alone gives so many right, or more.
 *
 * Formula   P(X >= k | n, guess); two-sided: twice that of the larger side, 1 at most
 * Input     right k and tastings n, whole numbers; guess between 0 and 1; sides 1 or 2
 * Output    0 to 1
 * Source    ISO 4120 and ISO 5495: exact binomial
 * Example   choicePValue({ right: 2, tastings: 2, guess: 0.5, sides: 1 }) -> 0.25
 */
export function choicePValue(tasted: Tasted): number {
  const { tastings, guess, sides } = tasted;
  const tail = chanceOfAtLeast({ hits: rightSide(tasted), trials: tastings }, guess);
  return sides === 2 ? Math.min(1, 2 * tail) : tail;
}

const tailRisk = ({ sides, risk }: Pick<Tasting, 'sides' | 'risk'>): number => risk / sides;

/**
 * The least number of right answers that shows a difference.
 *
 * Formula   least k with P(X >= k | n, guess) <= risk / sides
 * Input     tastings n, a whole number; guess, risk between 0 and 1; sides 1 or 2
 * Output    k, or null where even n of n would not do
 * Source    ISO 4120 and ISO 5495: exact binomial
 * Example   rightNeeded({ tastings: 15, guess: 1 / 3, sides: 1, risk: 0.05 }) -> 9
 */
export const rightNeeded = (tasting: Tasting): number | null =>
  hitsNeeded({ trials: tasting.tastings, p: tasting.guess, alpha: tailRisk(tasting) });

export interface Distinguishers extends Span {
  readonly share: number;
}

/**
 * The share that can tell, the others guessing.
 *
 * Formula   share = (right / n - guess) / (1 - guess), 0 at least; its sides likewise from the exact interval on the
 *           chance to be right, each side wrong with a chance of risk / sides at most
 * Input     right and tastings, whole numbers, tastings above 0; guess, risk between 0 and 1; sides 1 or 2
 * Output    share, low, high, 0 to 1; low is above 0 exactly where the number needed is reached
 * Source    ISO 5495:2005/Amd 1:2016, B.5.2 (share); Clopper and Pearson 1934 (interval)
 * Example   distinguishers({ right: 21, tastings: 30, guess: 0.5, sides: 1, risk: 0.05 }).share -> 0.4
 */
export function distinguishers(asked: Tasted & Tasting): Distinguishers {
  const { tastings, guess } = asked;
  const right = rightSide(asked);
  const sure = hitInterval({ hits: right, trials: tastings }, 1 - 2 * tailRisk(asked));
  const told = (chance: number): number => Math.max(0, (chance - guess) / (1 - guess));
  return { share: told(right / tastings), low: told(sure.low), high: told(sure.high) };
}

/** The chance to be right where a share can tell and the others guess. */
const chanceRight = (guess: number, share: number): number => guess + share * (1 - guess);

/**
 * Chance that so many tastings find a difference that a share can tell.
 *
 * Formula   P(X >= k | n, guess + share (1 - guess)), k the number needed
 * Input     as `rightNeeded`, and the share that can tell, 0 to 1
 * Output    0 to 1
 * Source    ISO 4120 and ISO 5495, annexes on the number of assessors: exact binomial
 * Example   choicePower({ tastings: 15, guess: 1 / 3, sides: 1, risk: 0.05, share: 0.3 }) -> 0.4006
 */
export function choicePower(asked: Tasting & { readonly share: number }): number {
  const needed = rightNeeded(asked);
  if (needed === null) return 0;
  return chanceOfAtLeast({ hits: needed, trials: asked.tastings }, chanceRight(asked.guess, asked.share));
}

const mostTastings = 100_000;

/**
 * How many tastings it takes to find a difference that a share can tell.
 *
 * Formula   the least n whose power is as wanted; the number needed is whole, so a slightly larger n may do less
 * Input     guess, risk, share, power between 0 and 1; sides 1 or 2
 * Output    n, or null above 100 000
 * Source    ISO 4120 and ISO 5495, annexes on the number of assessors: exact binomial
 * Example   tastingsNeeded({ guess: 1 / 3, sides: 1, risk: 0.05, share: 0.3, power: 0.9 }) -> 53
 */
export function tastingsNeeded(
  asked: Choice & { readonly risk: number; readonly share: number; readonly power: number },
): number | null {
  const { guess, share, power } = asked;
  const alpha = tailRisk(asked);
  const chance = chanceRight(guess, share);
  let hits = 0;
  for (let trials = 1; trials <= mostTastings; trials += 1) {
    while (hits <= trials && chanceOfAtLeast({ hits, trials }, guess) > alpha) hits += 1;
    if (hits <= trials && chanceOfAtLeast({ hits, trials }, chance) >= power) return trials;
  }
  return null;
}
