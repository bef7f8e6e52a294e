import { gridPoint } from '../statistics/grid-distribution.ts';
import { type Beaker, type Bracket, type Counts, countOutcomes, plainBracket } from './beaker.ts';
import { type FailingSide, turnedBeakers, turnedPriors } from './direction.ts';
import { holdChance, ratioHolding } from './hold-chance.ts';
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

/** The ratio that surely holds; never above the highest that did hold where nothing failed yet. */
function surelyHolding(posterior: BreakPosterior, side: Side, beakers: readonly Beaker[]): number | null {
  if (side === 'none' || side === 'all failed') return null;
  const { locations } = posterior;
  const between = { low: locations[0] ?? 0, high: locations[locations.length - 1] ?? 0 };
  const found = ratioHolding(SURE, holdChance(posterior), between);
  if (found === null || side === 'both') return found === null ? null : Math.exp(found);
  const held = beakers.filter(({ outcome }) => outcome === 'held').map(({ ratio }) => ratio);
  return Math.min(Math.exp(found), Math.max(...held));
}

type Points = Pick<BreakPoint, 'breakPoint' | 'breakLow' | 'breakHigh' | 'workingPoint' | 'holdsNinetyFive'>;

function pointsOf(
  posterior: BreakPosterior,
  side: Side,
  { beakers, marginFraction }: Pick<BreakPointAsked, 'beakers' | 'marginFraction'>,
): Points {
  const at = (chance: number): number =>
    Math.exp(gridPoint({ places: posterior.locations, weights: posterior.marginal }, chance));
  const breakPoint = side === 'both' ? at(0.5) : null;
  const holdsNinetyFive = surelyHolding(posterior, side, beakers);
  const lessMargin = breakPoint === null ? Number.POSITIVE_INFINITY : breakPoint * (1 - marginFraction);
  return {
    breakPoint,
    breakLow: side === 'both' || side === 'all held' ? at(TAIL) : null,
    breakHigh: side === 'both' || side === 'all failed' ? at(1 - TAIL) : null,
    workingPoint: holdsNinetyFive === null ? null : Math.min(holdsNinetyFive, lessMargin),
    holdsNinetyFive,
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
  const points = pointsOf(posterior, side, { beakers, marginFraction });
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
