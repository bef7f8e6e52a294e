import { failChances } from '../statistics/tolerance.ts';
import type { Beaker } from './beaker.ts';
import type { BreakPosterior } from './posterior.ts';
import { type Bin, posteriorBins, type Window, windowOf } from './posterior-bins.ts';

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
function candidatesIn(window: Window, scatter: number, reach: Reach | undefined): Float64Array {
  const bound = (value: number): number =>
    reach ? Math.min(Math.log(reach.highRatio), Math.max(Math.log(reach.lowRatio), value)) : value;
  const low = bound(window.low - scatter);
  const high = bound(window.high + scatter);
  const count = high > low ? CANDIDATES : 1;
  return Float64Array.from({ length: count }, (_, k) => low + (k * (high - low)) / Math.max(1, count - 1));
}

interface Cell extends Bin {
  /** The break's logarithm with the new day's shift. */
  readonly shifted: number;
}

/** Chances to fail at one level, for cells that lie together by their scatter. */
function failsAt(
  logLevel: number,
  cells: readonly Cell[],
  { priors }: BreakPosterior,
  day: 'new' | 'other',
): Float64Array {
  const { curve, oddChance, dayShift } = priors;
  const places = Float64Array.from(cells, ({ shifted, location }) => (day === 'new' ? shifted : location));
  const all = new Float64Array(cells.length);
  let from = 0;
  while (from < cells.length) {
    const own = cells[from]?.scatter ?? 1;
    let to = from;
    while (to < cells.length && cells[to]?.scatter === own) to += 1;
    const scatter = day === 'new' ? own : Math.hypot(own, dayShift);
    failChances({ logLevel, scatter, curve, oddChance }, places.subarray(from, to), all.subarray(from, to));
    from = to;
  }
  return all;
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
  const { dayShift, scatter } = posterior.priors;
  const window = windowOf(posterior, TAIL);
  const bins = posteriorBins(posterior, window, BINS);
  const cells = bins.flatMap((bin) =>
    SHIFTS.map(({ at, weight }) => ({
      ...bin,
      shifted: bin.location + at * dayShift,
      weight: bin.weight * weight,
    })),
  );
  const candidates = candidatesIn(window, scatter.middle, reach);
  return {
    locations: Float64Array.from(cells, ({ location }) => location),
    weights: Float64Array.from(cells, ({ weight }) => weight),
    candidates,
    fails: Array.from(candidates, (logLevel) => failsAt(logLevel, cells, posterior, 'new')),
    pending: watched.map(({ ratio, lasted = 0 }) =>
      failsAt(Math.log(ratio), cells, posterior, 'other').map((fails) => willFail(fails, lasted)),
    ),
  };
}
