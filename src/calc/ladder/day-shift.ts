/** Half-width of the bell that is summed over, in standard deviations. */
const REACH = 4;

/**
 * Weights of a bell on an even grid, from the middle outward.
 *
 * Formula   w_k proportional to exp(-(k step)^2 / (2 width^2)), w_0 + 2 sum w_k = 1
 * Input     width and step in the same unit
 * Output    w_0, w_1 ... up to four widths; w_0 = 1 alone for a width of 0
 */
export function bellWeights(width: number, step: number): Float64Array {
  const reach = width > 0 ? Math.ceil((REACH * width) / step) : 0;
  const raw = Float64Array.from({ length: reach + 1 }, (_, k) =>
    k === 0 ? 1 : Math.exp(-0.5 * ((k * step) / width) ** 2),
  );
  const sum = raw.reduce((total, weight, k) => total + (k === 0 ? weight : 2 * weight), 0);
  return raw.map((weight) => weight / sum);
}

/**
 * Average of values over a shift of their place: what a shift that nobody knows leaves of a likelihood.
 *
 * Formula   out(m) = sum_k w_k values(m + k); beyond the ends of the grid the end value stands
 * Input     values on an even grid; weights of `bellWeights`
 * Output    written into `into`
 */
export function averageOverShift(values: Float64Array, weights: Float64Array, into: Float64Array): void {
  const last = values.length - 1;
  const reach = weights.length - 1;
  const centre = weights[0] ?? 1;
  for (let at = 0; at <= last; at += 1) {
    let sum = centre * (values[at] ?? 0);
    const inside = at >= reach && at + reach <= last;
    for (let k = 1; k <= reach; k += 1) {
      const low = inside ? at - k : Math.max(0, at - k);
      const high = inside ? at + k : Math.min(last, at + k);
      sum += (weights[k] ?? 0) * ((values[low] ?? 0) + (values[high] ?? 0));
    }
    into[at] = sum;
  }
}
