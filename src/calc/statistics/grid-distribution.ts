/** Weights that sum to 1 on evenly spaced places; each weight is spread evenly over its own step. */
export interface GridDistribution {
  readonly places: Float64Array;
  readonly weights: Float64Array;
}

const stepOf = ({ places }: GridDistribution): number => (places[1] ?? 1) - (places[0] ?? 0);

/**
 * The place below which the given chance lies.
 *
 * Formula   running sum of the weights, straight within a step
 * Input     distribution; chance between 0 and 1
 * Output    a place, in the unit of the places
 */
export function gridPoint(distribution: GridDistribution, chance: number): number {
  const { places, weights } = distribution;
  const step = stepOf(distribution);
  let sum = 0;
  for (let at = 0; at < weights.length; at += 1) {
    const weight = weights[at] ?? 0;
    if (weight > 0 && sum + weight >= chance) {
      return (places[at] ?? 0) + step * ((chance - sum) / weight - 0.5);
    }
    sum += weight;
  }
  return places[places.length - 1] ?? 0;
}

/**
 * Chance to lie between two places.
 *
 * Formula   sum of the weights, with the share of the steps at the ends
 * Input     distribution; low and high in the unit of the places
 * Output    0 to 1
 */
export function gridChance(distribution: GridDistribution, low: number, high: number): number {
  const { places, weights } = distribution;
  const step = stepOf(distribution);
  let sum = 0;
  for (let at = 0; at < weights.length; at += 1) {
    const left = (places[at] ?? 0) - step / 2;
    const covered = Math.min(high, left + step) - Math.max(low, left);
    if (covered > 0) sum += (weights[at] ?? 0) * Math.min(1, covered / step);
  }
  return sum;
}

/** Mean and variance of the places. */
export function gridMoments({ places, weights }: GridDistribution): { mean: number; variance: number } {
  let [mean, square] = [0, 0];
  for (let at = 0; at < weights.length; at += 1) mean += (weights[at] ?? 0) * (places[at] ?? 0);
  for (let at = 0; at < weights.length; at += 1) {
    square += (weights[at] ?? 0) * ((places[at] ?? 0) - mean) ** 2;
  }
  return { mean, variance: square };
}
