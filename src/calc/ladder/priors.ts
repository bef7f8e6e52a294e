import type { ToleranceCurve } from '../statistics/tolerance.ts';

/** What is believed before the first beaker. All on the natural logarithm of the ratio. */
export interface LadderPriors {
  /** The break is taken as equally likely anywhere between these two, on the logarithm ... */
  readonly lowRatio: number;
  readonly highRatio: number;
  /** ... and less and less so outside, as a bell of this width. */
  readonly edge: number;
  /** Scatter between beakers of one day: a bell on its logarithm. */
  readonly scatter: {
    readonly middle: number;
    /** Standard deviation of the logarithm of the scatter. */
    readonly spread: number;
    readonly lowest: number;
    readonly highest: number;
    /** Even steps of the logarithm from lowest to highest. */
    readonly points: number;
  };
  /** Standard deviation of the shift that beakers made on one day share. */
  readonly dayShift: number;
  /** Chance that a beaker shows the opposite of what its ratio would give. */
  readonly oddChance: number;
  readonly curve: ToleranceCurve;
}

export type Making = 'stirred' | 'homogenised';

/** Where the first rungs go, by how the emulsion is made. */
export const makingSpans: Readonly<
  Record<Making, { readonly lowRatio: number; readonly highRatio: number; readonly why: string }>
> = {
  stirred: {
    lowRatio: 1 / 8,
    highRatio: 2,
    why: 'stirred and heated emulsions break somewhere between 1 part of oil to 8 of emulsifier and about 2 to 1',
  },
  homogenised: {
    lowRatio: 1 / 3,
    highRatio: 5,
    why: 'homogenised emulsions break somewhere between 1 part of oil to 3 of emulsifier and 5 to 1',
  },
};

/**
 * Common practice, no source: single beakers of a careful bench scatter by 9 %, two in three benches by 5 to 16 %;
 * days differ by 5 %; one beaker in fifty is odd. Tried on simulated benches in tests/bench/ladder.mjs.
 */
export const benchPriors = {
  edge: 0.35,
  scatter: { middle: 0.09, spread: 0.6, lowest: 0.02, highest: 0.4, points: 10 },
  dayShift: 0.05,
  oddChance: 0.02,
  curve: 'normal',
} as const;

export const priorsFor = (making: Making): LadderPriors => {
  const { lowRatio, highRatio } = makingSpans[making];
  return { ...benchPriors, lowRatio, highRatio };
};

/** A break in any other amount may be anywhere, and less sharp than in a ratio. */
const wide = {
  edge: 0.7,
  scatter: { middle: 0.1, spread: 0.8, lowest: 0.02, highest: 0.8, points: 12 },
} as const;
/** How far beyond the amounts tried the break is looked for. */
const BEYOND = 2;

/**
 * Priors for a varied amount that is no ratio of oil to emulsifier: wide around what was tried.
 *
 * Formula   equally likely, on the logarithm, from low / 2 to high * 2, and less and less so outside
 * Input     the lowest and highest amount tried or asked for, above 0, in any one unit
 * Output    priors in that unit
 */
export const priorsAround = (tried: { readonly low: number; readonly high: number }): LadderPriors => ({
  ...benchPriors,
  ...wide,
  lowRatio: tried.low / BEYOND,
  highRatio: tried.high * BEYOND,
});
