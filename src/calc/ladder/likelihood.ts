import { failChances } from '../statistics/tolerance.ts';
import { type Beaker, byDay } from './beaker.ts';
import { averageOverShift, bellOn } from './day-shift.ts';
import { logPriorOfLocation, type ScatterPoint, scatterPoints } from './location-grid.ts';
import type { LadderPriors } from './priors.ts';

/** Places of the break that are reckoned with. */
export interface Grid {
  /** Natural logarithms of the ratio, evenly spaced. */
  readonly locations: Float64Array;
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
  const step = (grid.locations[1] ?? 0) - (grid.locations[0] ?? 0);
  const bell = bellOn(grid.priors.dayShift, step);
  const total = new Float64Array(grid.locations.length).fill(1);
  let logScale = 0;
  for (const day of days) {
    const averaged = averageOverShift(dayLikelihood(day, scatter, grid), bell);
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

/** Likelihood times prior, one row for each scatter, up to a common factor. */
export function weighedRows(beakers: readonly Beaker[], grid: Grid): readonly Float64Array[] {
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
