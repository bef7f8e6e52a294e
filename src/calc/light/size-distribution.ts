/** Droplets of many sizes: a lognormal distribution as forty classes. */

export interface SizeClass {
  readonly diameterNanometres: number;
  /** Of the volume of all droplets; together 1. */
  readonly volumeShare: number;
}

const CLASSES = 40;
/** Standard deviations on each side, beyond what the light is drawn to the large ones. */
const REACH = 5;

/**
 * Formula   sigma^2 = PDI; median by volume = z-average x exp(-2.5 sigma^2), since z = <d^6>/<d^5>;
 *           classes evenly spaced in ln d from 5 sigma below the median to 5 sigma above the size that scatters most
 *           of the light of small droplets (3 sigma^2 above the median)
 * Input     z-average diameter in nm; polydispersity index, 0 for one size
 * Output    classes by volume
 * Source    moments of the lognormal distribution
 */
export function sizeClasses(droplets: {
  readonly diameterNanometres: number;
  readonly spread: number;
}): readonly SizeClass[] {
  const { diameterNanometres, spread } = droplets;
  if (spread <= 0) return [{ diameterNanometres, volumeShare: 1 }];
  const variance = spread;
  const sigma = Math.sqrt(variance);
  const middle = Math.log(diameterNanometres) - 2.5 * variance;
  const highest = REACH + 3 * sigma;
  const step = (REACH + highest) / (CLASSES - 1);
  const weights = Array.from({ length: CLASSES }, (_, at) => Math.exp(-((-REACH + at * step) ** 2) / 2));
  const all = weights.reduce((sum, weight) => sum + weight, 0);
  return weights.map((weight, at) => ({
    diameterNanometres: Math.exp(middle + (-REACH + at * step) * sigma),
    volumeShare: weight / all,
  }));
}
