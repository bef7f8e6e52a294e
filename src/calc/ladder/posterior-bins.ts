import { gridPoint } from '../statistics/grid-distribution.ts';
import type { Span } from './location-grid.ts';
import type { BreakPosterior } from './posterior.ts';

/** A piece of the posterior: the break's logarithm, the scatter there, and their weight. */
export interface Bin {
  readonly location: number;
  readonly scatter: number;
  readonly weight: number;
}

/** Weights below this are dropped. */
const NOTHING = 1e-7;

/** Where the break's logarithm lies but for a chance of `tail` on each side. */
export const windowOf = ({ locations, marginal }: BreakPosterior, tail: number): Span => ({
  low: gridPoint({ places: locations, weights: marginal }, tail),
  high: gridPoint({ places: locations, weights: marginal }, 1 - tail),
});

interface Row {
  readonly scatter: number;
  readonly row: Float64Array;
}

/** Rows of the posterior in pairs, so that half as many scatters are reckoned with. */
function pairedRows({ rows, scatters }: BreakPosterior): readonly Row[] {
  const pairs: Row[] = [];
  for (let at = 0; at < rows.length; at += 2) {
    const first = rows[at] ?? new Float64Array();
    const second = rows[at + 1];
    const [a, b] = [scatters[at] ?? 1, scatters[at + 1] ?? scatters[at] ?? 1];
    const row = second ? first.map((weight, index) => weight + (second[index] ?? 0)) : first;
    pairs.push({ scatter: Math.sqrt(a * b), row });
  }
  return pairs;
}

/** The posterior in coarse pieces; the mean of each stays. What lies outside the window is left out. */
export function posteriorBins(posterior: BreakPosterior, window: Span, count: number): readonly Bin[] {
  const width = (window.high - window.low) / count;
  const bins: Bin[] = [];
  for (const { scatter, row } of pairedRows(posterior)) {
    const weights = new Float64Array(count);
    const moments = new Float64Array(count);
    for (let at = 0; at < row.length; at += 1) {
      const location = posterior.locations[at] ?? 0;
      const bin = Math.floor((location - window.low) / width);
      if (bin < 0 || bin >= count) continue;
      weights[bin] = (weights[bin] ?? 0) + (row[at] ?? 0);
      moments[bin] = (moments[bin] ?? 0) + (row[at] ?? 0) * location;
    }
    weights.forEach((weight, bin) => {
      if (weight > NOTHING) bins.push({ location: (moments[bin] ?? 0) / weight, scatter, weight });
    });
  }
  return bins;
}
