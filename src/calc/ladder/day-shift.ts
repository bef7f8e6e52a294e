/** Half-width of the bell that is summed over, in standard deviations. */
const REACH = 4;
/** Longest step of the sum, in standard deviations; sums of a smooth curve under a bell are then exact to 1e-10. */
const LONGEST_STEP = 0.8;

/** A bell on an even grid, from the middle outward: w_0, w_1 ... each `stride` grid steps further out. */
export interface Bell {
  readonly weights: Float64Array;
  readonly stride: number;
}

/**
 * Weights of a bell on an even grid.
 *
 * Formula   w_k proportional to exp(-(k stride step)^2 / (2 width^2)), w_0 + 2 sum w_k = 1
 * Input     width and step in the same unit
 * Output    w_0, w_1 ... up to four widths; w_0 = 1 alone for a width of 0
 */
export function bellOn(width: number, step: number): Bell {
  const stride = Math.max(1, Math.floor((LONGEST_STEP * width) / step));
  const reach = width > 0 ? Math.ceil((REACH * width) / (stride * step)) : 0;
  const raw = Float64Array.from({ length: reach + 1 }, (_, k) =>
    k === 0 ? 1 : Math.exp(-0.5 * ((k * stride * step) / width) ** 2),
  );
  const sum = raw.reduce((total, weight, k) => total + (k === 0 ? weight : 2 * weight), 0);
  return { weights: raw.map((weight) => weight / sum), stride };
}

/** The values with the end values repeated beyond both ends. */
function padded(values: Float64Array, by: number): Float64Array {
  const wide = new Float64Array(values.length + 2 * by);
  wide.fill(values[0] ?? 0, 0, by);
  wide.set(values, by);
  wide.fill(values[values.length - 1] ?? 0, by + values.length);
  return wide;
}

/**
 * Average of values over a shift of their place: what a shift that nobody knows leaves of a likelihood.
 *
 * Formula   out(m) = sum_k w_k values(m + k stride); beyond the ends of the grid the end value stands
 * Input     values on an even grid; a bell on the same grid
 * Output    the averages
 */
export function averageOverShift(values: Float64Array, { weights, stride }: Bell): Float64Array {
  const by = (weights.length - 1) * stride;
  const wide = padded(values, by);
  const out = new Float64Array(values.length);
  for (let at = 0; at < out.length; at += 1) {
    const middle = at + by;
    let sum = (weights[0] ?? 1) * (wide[middle] ?? 0);
    for (let k = 1; k < weights.length; k += 1) {
      sum += (weights[k] ?? 0) * ((wide[middle - k * stride] ?? 0) + (wide[middle + k * stride] ?? 0));
    }
    out[at] = sum;
  }
  return out;
}
