import { gridMoments } from '../statistics/grid-distribution.ts';
import type { BreakPosterior } from './posterior.ts';

/** After so many days of beakers the reckoning stops. */
const MOST_DAYS = 200;

export interface LeftAsked {
  readonly posterior: BreakPosterior;
  /** Beakers a day. */
  readonly count: number;
  /** The standard deviation of ln break that would be enough. */
  readonly wanted: number;
}

/** Days of `count` beakers until the variance is down, for one scatter. */
function daysLeft(
  variance: number,
  wantedVariance: number,
  day: { scatter: number; shift: number; count: number },
): number {
  let now = variance;
  for (let days = 0; days < MOST_DAYS; days += 1) {
    if (now <= wantedVariance) return days;
    const told = ((Math.PI / 2) * (day.scatter ** 2 + now)) / day.count + day.shift ** 2;
    const after = 1 / (1 / now + 1 / told);
    if (after <= wantedVariance) {
      return days + (1 / wantedVariance - 1 / now) * told;
    }
    now = after;
  }
  return MOST_DAYS;
}

/**
 * The expected number of beakers until the break is known well enough.
 *
 * Formula   for each scatter of the posterior, day by day: 1/v' = 1/v + 1/(pi/2 (scatter^2 + v)/count + shift^2),
 *           the best that beakers near the break can tell; the mean over the scatter's weights
 * Input     posterior; beakers a day; the standard deviation of ln break that is wanted
 * Output    a number of beakers, not rounded
 * Source    information of a probit at its middle, 2/(pi scatter^2) a beaker
 */
export function beakersLeft({ posterior, count, wanted }: LeftAsked): number {
  const { variance } = gridMoments({ places: posterior.locations, weights: posterior.marginal });
  const { dayShift: shift } = posterior.priors;
  return posterior.rows.reduce((sum, row, index) => {
    const weight = row.reduce((total, value) => total + value, 0);
    const day = { scatter: posterior.scatters[index] ?? 1, shift, count };
    return sum + weight * count * daysLeft(variance, wanted ** 2, day);
  }, 0);
}
