import { failChances } from '../statistics/tolerance.ts';
import type { Span } from './location-grid.ts';
import type { BreakPosterior } from './posterior.ts';
import { posteriorBins, windowOf } from './posterior-bins.ts';

const BINS = 60;
const TAIL = 1e-5;

/** The chance that a new beaker at the ratio with this logarithm holds. */
export type HoldChance = (logRatio: number) => number;

/**
 * The chance that a new beaker, made on a new day, holds.
 *
 * Formula   1 - sum over the posterior of its weight times P(fails | break, scatter); the day's shift and the
 *           scatter lie on top of each other as sqrt(scatter^2 + shift^2)
 * Input     posterior
 * Output    a function of ln ratio, falling, from 1 - oddChance to oddChance
 */
export function holdChance(posterior: BreakPosterior): HoldChance {
  const { curve, oddChance, dayShift } = posterior.priors;
  const bins = posteriorBins(posterior, windowOf(posterior, TAIL), BINS);
  const whole = bins.reduce((sum, { weight }) => sum + weight, 0);
  const parts = [...new Set(bins.map(({ scatter }) => scatter))].map((scatter) => {
    const own = bins.filter((bin) => bin.scatter === scatter);
    return {
      scatter: Math.hypot(scatter, dayShift),
      locations: Float64Array.from(own, ({ location }) => location),
      weights: own.map(({ weight }) => weight / whole),
      fails: new Float64Array(own.length),
    };
  });
  return (logLevel) => {
    let failing = 0;
    for (const { scatter, locations, weights, fails } of parts) {
      failChances({ logLevel, scatter, curve, oddChance }, locations, fails);
      for (let at = 0; at < fails.length; at += 1) failing += (weights[at] ?? 0) * (fails[at] ?? 0);
    }
    return 1 - failing;
  };
}

/** The logarithm of the ratio that holds with the given chance, or null where none between the two does. */
export function ratioHolding(chance: number, holds: HoldChance, between: Span): number | null {
  let { low, high } = between;
  if (holds(low) < chance || holds(high) > chance) return null;
  for (let round = 0; round < 30; round += 1) {
    const middle = (low + high) / 2;
    if (holds(middle) >= chance) low = middle;
    else high = middle;
  }
  return low;
}
