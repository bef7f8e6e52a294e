import type { Beaker } from './beaker.ts';
import { weighedRows } from './likelihood.ts';
import { GRID_STEP, locationGrid, scatterPoints, spanOf, widened } from './location-grid.ts';
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

function addRows(rows: readonly Float64Array[], length: number): Float64Array {
  const sum = new Float64Array(length);
  for (const row of rows) {
    for (let at = 0; at < length; at += 1) sum[at] = (sum[at] ?? 0) + (row[at] ?? 0);
  }
  return sum;
}

/** A first look on a coarse grid finds where the break can be at all; the fine grid is laid only there. */
const coarse = { step: 0.1, scatters: 3, fewest: 8, nothing: 1e-7, around: 0.25 } as const;

function placesWorthALook(beakers: readonly Beaker[], priors: LadderPriors, gridStep: number): Float64Array {
  const span = spanOf(priors);
  const all = locationGrid(span, gridStep);
  if (beakers.length < coarse.fewest) return all;
  const locations = locationGrid(span, coarse.step);
  const rough = { ...priors, scatter: { ...priors.scatter, points: coarse.scatters } };
  const sum = addRows(weighedRows(beakers, { locations, priors: rough }), locations.length);
  const least = coarse.nothing * Math.max(...sum);
  const low = (locations[sum.findIndex((weight) => weight > least)] ?? span.low) - coarse.around;
  const high = (locations[sum.findLastIndex((weight) => weight > least)] ?? span.high) + coarse.around;
  return all.filter((location) => location >= low && location <= high);
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
  const wide = widened(beakers, priors);
  const locations = placesWorthALook(beakers, wide, gridStep);
  const raw = weighedRows(beakers, { locations, priors: wide });
  const sum = addRows(raw, locations.length);
  const whole = sum.reduce((total, value) => total + value, 0);
  return {
    locations,
    scatters: Float64Array.from(scatterPoints(wide), ({ scatter }) => scatter),
    rows: raw.map((row) => row.map((value) => value / whole)),
    marginal: sum.map((value) => value / whole),
    priors: wide,
  };
}
