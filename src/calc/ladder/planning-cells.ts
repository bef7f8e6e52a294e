import { failChances } from '../statistics/tolerance.ts';
import type { Beaker } from './beaker.ts';
import type { Span } from './location-grid.ts';
import type { BreakPosterior } from './posterior.ts';
import { type Bin, posteriorBins, windowOf } from './posterior-bins.ts';
import type { LadderPriors } from './priors.ts';

/** The posterior in a coarse form that is quick to plan with, for beakers that are made on one new day. */
export interface PlanningCells {
  /** The break's logarithm in each cell. */
  readonly locations: Float64Array;
  readonly weights: Float64Array;
  /** The logarithms of the ratios that may be made. */
  readonly candidates: Float64Array;
  /** For each candidate, the chance in each cell that its beaker fails. */
  readonly fails: readonly Float64Array[];
  /** For each beaker still watched, the chance in each cell that it will have failed at the end. */
  readonly pending: readonly Float64Array[];
}

export interface Reach {
  readonly lowRatio: number;
  readonly highRatio: number;
}

const BINS = 40;
const CANDIDATES = 41;
/** What lies outside these chances is left out of the plan. */
const TAIL = 0.002;

/** Gauss-Hermite points of three for a standard normal (exact to the fifth power). */
const SHIFTS = [
  { at: -Math.sqrt(3), weight: 1 / 6 },
  { at: 0, weight: 2 / 3 },
  { at: Math.sqrt(3), weight: 1 / 6 },
] as const;

/** Even steps over what the plan looks at, as far as the bench can make them. */
function candidatesIn(window: Span, scatter: number, reach: Reach | undefined): Float64Array {
  const bound = (value: number): number =>
    reach ? Math.min(Math.log(reach.highRatio), Math.max(Math.log(reach.lowRatio), value)) : value;
  const low = bound(window.low - scatter);
  const high = bound(window.high + scatter);
  const count = high > low ? CANDIDATES : 1;
  return Float64Array.from({ length: count }, (_, k) => low + (k * (high - low)) / Math.max(1, count - 1));
}

/** Cells of one scatter lie together. */
interface Part {
  readonly scatter: number;
  readonly from: number;
  readonly to: number;
}

function partsOf(bins: readonly Bin[]): readonly Part[] {
  const scatters = [...new Set(bins.map(({ scatter }) => scatter))];
  const count = SHIFTS.length;
  return scatters.map((scatter) => ({
    scatter,
    from: count * bins.findIndex((bin) => bin.scatter === scatter),
    to: count * (1 + bins.findLastIndex((bin) => bin.scatter === scatter)),
  }));
}

/** Where the break lies on the day of a beaker, in each cell, and the scatter about it. */
interface Places {
  readonly parts: readonly Part[];
  readonly places: Float64Array;
  /** What the day adds to the scatter where its shift is not in the places. */
  readonly shift: number;
  readonly priors: LadderPriors;
}

function failsAt(logLevel: number, { parts, places, shift, priors }: Places): Float64Array {
  const { curve, oddChance } = priors;
  const fails = new Float64Array(places.length);
  for (const { scatter, from, to } of parts) {
    const setting = { logLevel, scatter: Math.hypot(scatter, shift), curve, oddChance };
    failChances(setting, places.subarray(from, to), fails.subarray(from, to));
  }
  return fails;
}

/** Given that it has not failed yet, the chance that it will: failures are taken as even over the watch. */
const willFail = (fails: number, lasted: number): number => (fails * (1 - lasted)) / (1 - fails * lasted);

export interface CellsAsked {
  readonly posterior: BreakPosterior;
  /** Beakers made and still watched. */
  readonly watched: readonly Beaker[];
  readonly reach?: Reach | undefined;
}

/** Cells of the posterior times the shift of a new day, with what each beaker would show in each. */
export function planningCells({ posterior, watched, reach }: CellsAsked): PlanningCells {
  const { priors } = posterior;
  const window = windowOf(posterior, TAIL);
  const bins = posteriorBins(posterior, window, BINS);
  const locations = Float64Array.from(bins.flatMap(({ location }) => SHIFTS.map(() => location)));
  const shifted = locations.map(
    (location, cell) => location + priors.dayShift * (SHIFTS[cell % SHIFTS.length]?.at ?? 0),
  );
  const parts = partsOf(bins);
  const onNewDay = { parts, places: shifted, shift: 0, priors };
  const onOtherDay = { parts, places: locations, shift: priors.dayShift, priors };
  const candidates = candidatesIn(window, priors.scatter.middle, reach);
  return {
    locations,
    weights: Float64Array.from(bins.flatMap((bin) => SHIFTS.map(({ weight }) => bin.weight * weight))),
    candidates,
    fails: Array.from(candidates, (logLevel) => failsAt(logLevel, onNewDay)),
    pending: watched.map(({ ratio, lasted = 0 }) =>
      failsAt(Math.log(ratio), onOtherDay).map((fails) => willFail(fails, lasted)),
    ),
  };
}
