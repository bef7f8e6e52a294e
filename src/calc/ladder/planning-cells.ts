import { gridPoint } from '../statistics/grid-distribution.ts';
import { failChances } from '../statistics/tolerance.ts';
import type { BreakPosterior } from './posterior.ts';

/** The posterior in a coarse form that is quick to plan with, for beakers that are made on one new day. */
export interface PlanningCells {
  /** The break's logarithm in each cell. */
  readonly locations: Float64Array;
  readonly weights: Float64Array;
  /** The logarithms of the ratios that may be made. */
  readonly candidates: Float64Array;
  /** For each candidate, the chance in each cell that its beaker fails. */
  readonly fails: readonly Float64Array[];
}

const BINS = 48;
const CANDIDATES = 41;
/** What lies outside these chances is left out of the plan. */
const TAIL = 0.002;

/** Gauss-Hermite points of five for a standard normal (exact to the ninth power). */
const ROOT_TEN = Math.sqrt(10);
const SHIFTS = [
  { at: -Math.sqrt(5 + ROOT_TEN), weight: (7 - 2 * ROOT_TEN) / 60 },
  { at: -Math.sqrt(5 - ROOT_TEN), weight: (7 + 2 * ROOT_TEN) / 60 },
  { at: 0, weight: 8 / 15 },
  { at: Math.sqrt(5 - ROOT_TEN), weight: (7 + 2 * ROOT_TEN) / 60 },
  { at: Math.sqrt(5 + ROOT_TEN), weight: (7 - 2 * ROOT_TEN) / 60 },
] as const;

interface Bin {
  readonly location: number;
  readonly scatter: number;
  readonly weight: number;
}

interface Window {
  readonly low: number;
  readonly high: number;
}

const windowOf = ({ locations, marginal }: BreakPosterior, tail: number): Window => ({
  low: gridPoint({ places: locations, weights: marginal }, tail),
  high: gridPoint({ places: locations, weights: marginal }, 1 - tail),
});

/** Rows of the posterior in pairs, so that half as many scatters are planned with. */
function pairedRows(posterior: BreakPosterior): readonly { scatter: number; row: Float64Array }[] {
  const pairs: { scatter: number; row: Float64Array }[] = [];
  for (let at = 0; at < posterior.rows.length; at += 2) {
    const first = posterior.rows[at] ?? new Float64Array();
    const second = posterior.rows[at + 1];
    const [a, b] = [posterior.scatters[at] ?? 1, posterior.scatters[at + 1] ?? posterior.scatters[at] ?? 1];
    const row = second ? first.map((weight, index) => weight + (second[index] ?? 0)) : first;
    pairs.push({ scatter: Math.sqrt(a * b), row });
  }
  return pairs;
}

function binned(posterior: BreakPosterior, window: Window): readonly Bin[] {
  const width = (window.high - window.low) / BINS;
  const bins: Bin[] = [];
  for (const { scatter, row } of pairedRows(posterior)) {
    const weights = new Float64Array(BINS);
    const moments = new Float64Array(BINS);
    for (let at = 0; at < row.length; at += 1) {
      const location = posterior.locations[at] ?? 0;
      const bin = Math.floor((location - window.low) / width);
      if (bin < 0 || bin >= BINS) continue;
      weights[bin] = (weights[bin] ?? 0) + (row[at] ?? 0);
      moments[bin] = (moments[bin] ?? 0) + (row[at] ?? 0) * location;
    }
    weights.forEach((weight, bin) => {
      if (weight > 1e-7) bins.push({ location: (moments[bin] ?? 0) / weight, scatter, weight });
    });
  }
  return bins;
}

export interface Reach {
  readonly lowRatio: number;
  readonly highRatio: number;
}

/** Even steps over what the plan looks at, as far as the bench can make them. */
function candidatesIn(window: Window, scatter: number, reach: Reach | undefined): Float64Array {
  const bound = (value: number): number =>
    reach ? Math.min(Math.log(reach.highRatio), Math.max(Math.log(reach.lowRatio), value)) : value;
  const low = bound(window.low - scatter);
  const high = bound(window.high + scatter);
  const count = high > low ? CANDIDATES : 1;
  return Float64Array.from({ length: count }, (_, k) => low + (k * (high - low)) / Math.max(1, count - 1));
}

export function planningCells(posterior: BreakPosterior, reach?: Reach): PlanningCells {
  const window = windowOf(posterior, TAIL);
  const bins = binned(posterior, window);
  const { curve, oddChance, dayShift, scatter } = posterior.priors;
  const cells = bins.flatMap((bin) => SHIFTS.map((shift) => ({ ...bin, shift })));
  const candidates = candidatesIn(window, scatter.middle, reach);
  const scatters = [...new Set(bins.map((bin) => bin.scatter))];
  const parts = scatters.map((value) => ({
    value,
    places: Float64Array.from(
      cells.filter((cell) => cell.scatter === value),
      ({ location, shift }) => location + shift.at * dayShift,
    ),
  }));
  const fails = Array.from(candidates, (logLevel) => {
    const all = new Float64Array(cells.length);
    let from = 0;
    for (const { value, places } of parts) {
      const into = all.subarray(from, from + places.length);
      failChances({ logLevel, scatter: value, curve, oddChance }, places, into);
      from += places.length;
    }
    return all;
  });
  return {
    locations: Float64Array.from(cells, ({ location }) => location),
    weights: Float64Array.from(cells, ({ weight, shift }) => weight * shift.weight),
    candidates,
    fails,
  };
}
