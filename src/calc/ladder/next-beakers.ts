import { gridChance, gridPoint } from '../statistics/grid-distribution.ts';
import { normalPoint } from '../statistics/normal.ts';
import { chooseBatch } from './batch-choice.ts';
import { type Beaker, countOutcomes } from './beaker.ts';
import { beakersLeft } from './beakers-left.ts';
import { sideOf } from './break-point.ts';
import { type FailingSide, turnedBeakers, turnedPriors } from './direction.ts';
import { planningCells, type Reach } from './planning-cells.ts';
import { type BreakPosterior, breakPosterior } from './posterior.ts';
import type { LadderPriors } from './priors.ts';

export interface NextBeakersAsked {
  readonly beakers: readonly Beaker[];
  readonly priors: LadderPriors;
  /** How many are made at once, on one day. */
  readonly count: number;
  /** The wanted precision: 0.1 is within 10 %. */
  readonly withinFraction: number;
  /** What the bench can make; without it anything. */
  readonly reach?: Reach;
  /** Above the break unless told. */
  readonly failing?: FailingSide;
}

export interface NextBeakers {
  /** The ratios to make next, going up. They are there even where enough is known. */
  readonly ratios: readonly number[];
  /** The break lies within `withinFraction` of the estimate with a chance of 90 %, from beakers on both sides. */
  readonly enough: boolean;
  /** Expected number of beakers still to be made until `enough`, not rounded; 0 when it is. */
  readonly expectedBeakersLeft: number;
  /** The fraction within which the break lies with a chance of 90 %: now, and expected after these beakers. */
  readonly precisionNow: number;
  readonly precisionAfter: number;
}

/** How sure the precision must be. */
const SURE = 0.9;
/** 90 % of a normal bell lie within this many standard deviations. */
const SURE_WIDTHS = normalPoint((1 + SURE) / 2);

/**
 * The fraction of the estimate within which the break lies with a chance of 90 %.
 *
 * Formula   least w with P(|ln break - median| <= w) >= 0.9; exp(w) - 1
 * Input     posterior
 * Output    a fraction; 0.1 is "within 10 %"
 */
export function precisionOf({ locations, marginal }: BreakPosterior): number {
  const distribution = { places: locations, weights: marginal };
  const median = gridPoint(distribution, 0.5);
  let [low, high] = [0, (locations[locations.length - 1] ?? 0) - (locations[0] ?? 0)];
  for (let round = 0; round < 24; round += 1) {
    const width = (low + high) / 2;
    if (gridChance(distribution, median - width, median + width) < SURE) low = width;
    else high = width;
  }
  return Math.expm1(high);
}

/**
 * The beakers to make next, all at once, and how far the answer still is.
 *
 * Formula   `chooseBatch` on the posterior: least expected variance of ln break; beakers still watched count
 *           with what they are going to tell
 * Input     beakers and priors in one unit; count of 1 or more; withinFraction above 0
 * Output    ratios in the same unit, going up; whether enough is known; expected beakers left; precision now
 *           and after, as fractions
 */
export function nextBeakers(asked: NextBeakersAsked): NextBeakers {
  const { priors, count, withinFraction, reach, failing = 'above' } = asked;
  const beakers = turnedBeakers(asked.beakers, failing);
  const posterior = breakPosterior(beakers, turnedPriors(priors, failing));
  const watched = beakers.filter(({ outcome }) => outcome === 'watching');
  const turnedReach =
    reach && failing === 'below' ? { lowRatio: 1 / reach.highRatio, highRatio: 1 / reach.lowRatio } : reach;
  const choice = chooseBatch(planningCells({ posterior, watched, reach: turnedReach }), count);
  const precisionNow = precisionOf(posterior);
  const enough = sideOf(countOutcomes(beakers)) === 'both' && precisionNow <= withinFraction;
  const ratios = choice.logRatios.map((log) => Math.exp(failing === 'above' ? log : -log));
  return {
    ratios: ratios.sort((a, b) => a - b),
    enough,
    expectedBeakersLeft: enough
      ? 0
      : Math.max(1, beakersLeft({ posterior, count, wanted: Math.log1p(withinFraction) / SURE_WIDTHS })),
    precisionNow,
    precisionAfter: Math.min(precisionNow, Math.expm1(SURE_WIDTHS * Math.sqrt(choice.varianceAfter))),
  };
}
