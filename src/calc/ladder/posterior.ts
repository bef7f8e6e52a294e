import { failChances } from '../statistics/tolerance.ts';
import { type Beaker, byDay } from './beaker.ts';
import { averageOverShift, type Bell, bellOn } from './day-shift.ts';
import {
  GRID_STEP,
  locationGrid,
  logPriorOfLocation,
  type ScatterPoint,
  scatterPoints,
  widened,
} from './location-grid.ts';
import type { LadderPriors } from './priors.ts';

/** What is known of the break: weights over its logarithm and over the scatter, on a grid. */
export interface BreakPosterior {
  /** Natural logarithms of the ratio, evenly spaced. */
  readonly locations: Float64Array;
  readonly scatters: Float64Array;
  /** One row of locations for each scatter; all rows together sum to 1. */
  readonly rows: readonly Float64Array[];
  /** The rows added up. */
  readonly marginal: Float64Array;
  /** The priors as used: the span is widened where the bench went beyond it. */
  readonly priors: LadderPriors;
}

interface Grid {
  readonly locations: Float64Array;
  readonly shift: Bell;
  readonly priors: LadderPriors;
}

interface Scaled {
  /** Divided by its greatest value. */
  readonly values: Float64Array;
  readonly logScale: number;
}

/** Chance to see what one day's beakers show, for each place of that day's break. */
function dayLikelihood(day: readonly Beaker[], scatter: number, grid: Grid): Float64Array {
  const { locations, priors } = grid;
  const product = new Float64Array(locations.length).fill(1);
  const fails = new Float64Array(locations.length);
  for (const { ratio, outcome, lasted = 0 } of day) {
    const setting = { logLevel: Math.log(ratio), scatter, curve: priors.curve, oddChance: priors.oddChance };
    failChances(setting, locations, fails);
    // Failures are taken as evenly spread over the watch: one that lasted half of it has shown half.
    const base = outcome === 'failed' ? 0 : 1;
    const slope = outcome === 'failed' ? 1 : outcome === 'held' ? -1 : -lasted;
    for (let at = 0; at < product.length; at += 1) {
      product[at] = (product[at] ?? 0) * (base + slope * (fails[at] ?? 0));
    }
  }
  return product;
}

/** Chance to see all days, for each break, at one scatter. Each day has its own shift. */
function likelihood(days: readonly (readonly Beaker[])[], scatter: number, grid: Grid): Scaled {
  const total = new Float64Array(grid.locations.length).fill(1);
  let logScale = 0;
  for (const day of days) {
    const averaged = averageOverShift(dayLikelihood(day, scatter, grid), grid.shift);
    let greatest = 0;
    for (let at = 0; at < total.length; at += 1) {
      const value = (total[at] ?? 0) * (averaged[at] ?? 0);
      total[at] = value;
      if (value > greatest) greatest = value;
    }
    if (greatest === 0) return { values: total, logScale: Number.NEGATIVE_INFINITY };
    for (let at = 0; at < total.length; at += 1) total[at] = (total[at] ?? 0) / greatest;
    logScale += Math.log(greatest);
  }
  return { values: total, logScale };
}

function gridFor(beakers: readonly Beaker[], priors: LadderPriors, finest: number): Grid {
  const wide = widened(beakers, priors);
  const locations = locationGrid(wide, finest);
  const step = (locations[1] ?? 0) - (locations[0] ?? 0);
  return { locations, shift: bellOn(wide.dayShift, step), priors: wide };
}

/** Likelihood times prior, one row for each scatter, up to a common factor. */
function weighedRows(beakers: readonly Beaker[], grid: Grid): readonly Float64Array[] {
  const days = byDay(beakers);
  const points = scatterPoints(grid.priors);
  const scaled = points.map(({ scatter }) => likelihood(days, scatter, grid));
  const logOf = ({ logPrior: prior }: ScatterPoint, index: number): number =>
    prior + (scaled[index]?.logScale ?? 0);
  const top = Math.max(...points.map(logOf));
  const prior = grid.locations.map((location) => Math.exp(logPriorOfLocation(location, grid.priors)));
  return points.map((point, index) => {
    const factor = Math.exp(logOf(point, index) - top);
    const values = scaled[index]?.values ?? new Float64Array(prior.length);
    return values.map((value, at) => value * factor * (prior[at] ?? 0));
  });
}

function addRows(rows: readonly Float64Array[], length: number): Float64Array {
  const sum = new Float64Array(length);
  for (const row of rows) {
    for (let at = 0; at < length; at += 1) sum[at] = (sum[at] ?? 0) + (row[at] ?? 0);
  }
  return sum;
}

/**
 * What the beakers and the priors say together of the break and the scatter.
 *
 * Formula   p(mu, s | beakers) ~ p(mu) p(s) prod over days of the average over the day's shift d of
 *           prod over its beakers of P(outcome | ln ratio, mu + d, s);
 *           P(failed) = odd + (1 - 2 odd) Phi((ln ratio - mu - d) / s); still watched: 1 - lasted P(failed)
 * Input     beakers; priors; step of the grid of ln ratio
 * Output    weights that sum to 1 on a grid of ln ratio and scatter; no random numbers
 */
export function breakPosterior(
  beakers: readonly Beaker[],
  priors: LadderPriors,
  gridStep = GRID_STEP,
): BreakPosterior {
  const grid = gridFor(beakers, priors, gridStep);
  const raw = weighedRows(beakers, grid);
  const sum = addRows(raw, grid.locations.length);
  const whole = sum.reduce((total, value) => total + value, 0);
  return {
    locations: grid.locations,
    scatters: Float64Array.from(scatterPoints(grid.priors), ({ scatter }) => scatter),
    rows: raw.map((row) => row.map((value) => value / whole)),
    marginal: sum.map((value) => value / whole),
    priors: grid.priors,
  };
}
