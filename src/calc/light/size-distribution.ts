/** Droplets of many sizes: a lognormal distribution as forty classes. */

export interface SizeClass {
  readonly diameterNanometres: number;
  /** Of the volume of all droplets; together 1. */
  readonly volumeShare: number;
}

const CLASSES = 40;
/** Standard deviations on each side, beyond what the light is drawn to the large ones. */
const REACH = 5;

/** How the classes of a spread lie in ln d, in nm. */
export interface ClassGrid {
  /** ln of the lowest class over ln of the z-average. */
  readonly offset: number;
  readonly step: number;
  readonly shares: readonly number[];
}

/**
 * Formula   sigma^2 = PDI; median by volume = z-average x exp(-2.5 sigma^2), since z = <d^6>/<d^5>;
 *           classes evenly spaced in ln d from 5 sigma below the median to 5 sigma above the size that scatters most
 *           of the light of small droplets (3 sigma^2 above the median)
 * Input     polydispersity index above 0; where the classes are to lie on a grid, its step in ln d: theirs is then the
 *           next whole part or multiple of it
 * Output    offset and step of the classes in ln d, and the share of the volume in each; together 1
 * Source    moments of the lognormal distribution
 */
export function classGrid(spread: number, gridStep?: number): ClassGrid {
  const sigma = Math.sqrt(spread);
  const highest = REACH + 3 * sigma;
  const wanted = ((REACH + highest) / (CLASSES - 1)) * sigma;
  const step = gridStep === undefined ? wanted : wholePart(wanted, gridStep);
  const lowest = -2.5 * spread - REACH * sigma;
  const offset = gridStep === undefined ? lowest : Math.round(lowest / step) * step;
  const weights = Array.from({ length: CLASSES }, (_, at) =>
    Math.exp(-(((offset + at * step + 2.5 * spread) / sigma) ** 2) / 2),
  );
  const all = weights.reduce((sum, weight) => sum + weight, 0);
  return { offset, step, shares: weights.map((weight) => weight / all) };
}

/** The multiple of a step, or the whole part of it, that is nearest to a wanted one and no smaller. */
const wholePart = (wanted: number, step: number): number =>
  wanted >= step ? Math.ceil(wanted / step) * step : step / Math.floor(step / wanted);

/**
 * Input     z-average diameter in nm; polydispersity index, 0 for one size
 * Output    forty classes by volume, or one
 * Source    as `classGrid`
 */
export function sizeClasses(droplets: {
  readonly diameterNanometres: number;
  readonly spread: number;
}): readonly SizeClass[] {
  const { diameterNanometres, spread } = droplets;
  if (spread <= 0) return [{ diameterNanometres, volumeShare: 1 }];
  const { offset, step, shares } = classGrid(spread);
  return shares.map((volumeShare, at) => ({
    diameterNanometres: diameterNanometres * Math.exp(offset + at * step),
    volumeShare,
  }));
}
