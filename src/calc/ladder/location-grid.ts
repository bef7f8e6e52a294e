import type { Beaker } from './beaker.ts';
import type { LadderPriors } from './priors.ts';

/** Step of the grid: well under the day's shift and the narrowest posterior that some dozens of beakers give. */
export const GRID_STEP = 0.02;
const MOST_POINTS = 1200;
/** How far the grid goes beyond the ratios tried and the prior's span, in widths of the prior's edge. */
const EDGES = 3;

/** The prior's span, widened where the bench has gone beyond it. */
export function widened(beakers: readonly Beaker[], priors: LadderPriors): LadderPriors {
  const tried = beakers.map(({ ratio }) => ratio);
  return {
    ...priors,
    lowRatio: Math.min(priors.lowRatio, ...tried),
    highRatio: Math.max(priors.highRatio, ...tried),
  };
}

/** Logarithms of the ratio from low to high. */
export interface Span {
  readonly low: number;
  readonly high: number;
}

/** Everywhere that the break may be before the first beaker. */
export const spanOf = ({ lowRatio, highRatio, edge }: LadderPriors): Span => ({
  low: Math.log(lowRatio) - EDGES * edge,
  high: Math.log(highRatio) + EDGES * edge,
});

/** Evenly spaced logarithms of the ratio. */
export function locationGrid({ low, high }: Span, step: number): Float64Array {
  const steps = Math.min(MOST_POINTS, Math.ceil((high - low) / step));
  return Float64Array.from({ length: steps + 1 }, (_, index) => low + (index * (high - low)) / steps);
}

/** Logarithm of the prior of the break, up to a constant. */
export function logPriorOfLocation(location: number, priors: LadderPriors): number {
  const below = Math.log(priors.lowRatio) - location;
  const above = location - Math.log(priors.highRatio);
  const outside = Math.max(0, below, above);
  return outside === 0 ? 0 : -0.5 * (outside / priors.edge) ** 2;
}

export interface ScatterPoint {
  readonly scatter: number;
  readonly logPrior: number;
}

/** Middles of even steps of the logarithm of the scatter, with the logarithm of their prior. */
export function scatterPoints({ scatter }: LadderPriors): readonly ScatterPoint[] {
  const { middle, spread, lowest, highest, points } = scatter;
  return Array.from({ length: points }, (_, index) => {
    const value = lowest * (highest / lowest) ** ((index + 0.5) / points);
    return { scatter: value, logPrior: -0.5 * (Math.log(value / middle) / spread) ** 2 };
  });
}
