import { gridPoint } from '../statistics/grid-distribution.ts';
import { type Beaker, type Bracket, type Counts, countOutcomes, plainBracket } from './beaker.ts';
import { type FailingSide, turnedBeakers, turnedPriors } from './direction.ts';
import { type HoldChance, holdChance, ratioHolding } from './hold-chance.ts';
import { spanOf } from './location-grid.ts';
import { type BreakPosterior, breakPosterior } from './posterior.ts';
import type { LadderPriors } from './priors.ts';

/** Which outcomes there are: a break lies between held and failed only where there are both. */
export type Side = 'both' | 'all held' | 'all failed' | 'none';

export interface Estimate {
  readonly middle: number;
  readonly low: number;
  readonly high: number;
}

export interface BreakPoint {
  /** Median of the posterior; null without beakers on both sides. */
  readonly breakPoint: number | null;
  /** The middle 90 % of the posterior; an open side is null. */
  readonly breakLow: number | null;
  readonly breakHigh: number | null;
  /** The ratio to work at: the one that holds with 95 % chance, or the break less the margin, what is safer. */
  readonly workingPoint: number | null;
  readonly holdsNinetyFive: number | null;
  /** Scatter of single beakers, on the natural logarithm (0.08 is 8 %); null without an outcome. */
  readonly scatter: Estimate | null;
  readonly bracket: Bracket;
  readonly side: Side;
  readonly counts: Counts;
  readonly failing: FailingSide;
  /** The chance that a new beaker at this value, made on a new day, holds. */
  readonly chanceToHold: (value: number) => number;
  /** What it all stands on; in 1/value where beakers fail below. */
  readonly posterior: BreakPosterior;
}

export interface BreakPointAsked {
  readonly beakers: readonly Beaker[];
  readonly priors: LadderPriors;
  /** How far to back off from the break, 0 to 1. */
  readonly marginFraction: number;
  /** Above the break unless told. */
  readonly failing?: FailingSide;
}

/** Half of what lies outside the interval. */
const TAIL = 0.05;
const SURE = 0.95;

export function sideOf({ held, failed }: Counts): Side {
  if (held > 0) return failed > 0 ? 'both' : 'all held';
  return failed > 0 ? 'all failed' : 'none';
}

function scatterEstimate(posterior: BreakPosterior): Estimate {
  const places = Float64Array.from(posterior.scatters, Math.log);
  const weights = Float64Array.from(posterior.rows, (row) => row.reduce((sum, weight) => sum + weight, 0));
  const at = (chance: number): number => Math.exp(gridPoint({ places, weights }, chance));
  return { middle: at(0.5), low: at(TAIL), high: at(1 - TAIL) };
}

const ratiosOf = (beakers: readonly Beaker[], outcome: Beaker['outcome']): readonly number[] =>
  beakers.filter((beaker) => beaker.outcome === outcome).map(({ ratio }) => ratio);

/** The ratio that surely holds. */
function surelyHolding(posterior: BreakPosterior, holds: HoldChance): number | null {
  const found = ratioHolding(SURE, holds, spanOf(posterior.priors));
  return found === null ? null : Math.exp(found);
}

interface Told {
  readonly posterior: BreakPosterior;
  readonly holds: HoldChance;
  readonly side: Side;
  readonly beakers: readonly Beaker[];
  readonly marginFraction: number;
}

type Points = Pick<BreakPoint, 'breakPoint' | 'breakLow' | 'breakHigh' | 'workingPoint' | 'holdsNinetyFive'>;

const nothing: Points = {
  breakPoint: null,
  breakLow: null,
  breakHigh: null,
  workingPoint: null,
  holdsNinetyFive: null,
};

/** Beakers on one side alone bound the break by what was made, never by what is believed beyond it. */
function pointsOf({ posterior, holds, side, beakers, marginFraction }: Told): Points {
  const at = (chance: number): number =>
    Math.exp(gridPoint({ places: posterior.locations, weights: posterior.marginal }, chance));
  if (side === 'none') return nothing;
  if (side === 'all failed') {
    return { ...nothing, breakHigh: Math.max(at(1 - TAIL), Math.min(...ratiosOf(beakers, 'failed'))) };
  }
  const sure = surelyHolding(posterior, holds);
  if (side === 'all held') {
    const highest = Math.max(...ratiosOf(beakers, 'held'));
    const working = sure === null ? null : Math.min(sure, highest);
    return {
      ...nothing,
      breakLow: Math.min(at(TAIL), highest),
      workingPoint: working,
      holdsNinetyFive: working,
    };
  }
  const middle = at(0.5);
  return {
    breakPoint: middle,
    breakLow: at(TAIL),
    breakHigh: at(1 - TAIL),
    workingPoint: sure === null ? null : Math.min(sure, middle * (1 - marginFraction)),
    holdsNinetyFive: sure,
  };
}

const over = (value: number | null): number | null => (value === null ? null : 1 / value);

const turnedPoints = (points: Points): Points => ({
  breakPoint: over(points.breakPoint),
  breakLow: over(points.breakHigh),
  breakHigh: over(points.breakLow),
  workingPoint: over(points.workingPoint),
  holdsNinetyFive: over(points.holdsNinetyFive),
});

const turnedBracket = ({ lastHeld, firstFailed, crossed }: Bracket): Bracket => ({
  lastHeld: over(lastHeld),
  firstFailed: over(firstFailed),
  crossed,
});

/**
 * Where the break of a ladder lies, how sure that is, and where to work.
 *
 * Formula   breakPosterior; median, 5 % and 95 % points; workingPoint = min(ratio that holds with 95 % chance,
 *           break (1 - margin)). Where beakers fail below the break, the same in 1/value.
 * Input     beakers (ratios above 0, in any one unit); priors in the same unit; marginFraction 0 to 1
 * Output    in the unit of the ratio; null where the beakers don't tell
 */
export function breakPoint(asked: BreakPointAsked): BreakPoint {
  const { failing = 'above', marginFraction } = asked;
  const beakers = turnedBeakers(asked.beakers, failing);
  const posterior = breakPosterior(beakers, turnedPriors(asked.priors, failing));
  const counts = countOutcomes(beakers);
  const side = sideOf(counts);
  const holds = holdChance(posterior);
  const points = pointsOf({ posterior, holds, side, beakers, marginFraction });
  const bracket = plainBracket(beakers);
  const turned = failing === 'below';
  return {
    ...(turned ? turnedPoints(points) : points),
    scatter: side === 'none' ? null : scatterEstimate(posterior),
    bracket: turned ? turnedBracket(bracket) : bracket,
    side,
    counts,
    failing,
    chanceToHold: (value) => holds(turned ? -Math.log(value) : Math.log(value)),
    posterior,
  };
}
