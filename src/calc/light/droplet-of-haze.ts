/** Back from haze to droplets: which sizes a reading could mean, and the largest that stays unseen. */

import { sizesLookedFor } from '../../reference/light.ts';
import { findRoot } from '../solution/root.ts';
import { classGrid, sizeClasses } from './size-distribution.ts';
import { type Dispersion, type Scattered, scattered } from './turbidity.ts';

const STEPS = 200;

/** What the same oil scatters as droplets of other sizes. */
export interface SizeCurve {
  readonly points: readonly { readonly diameterNanometres: number; readonly ntu: number }[];
  readonly at: (diameterNanometres: number) => Scattered;
}

/**
 * NTU against size, 2 nm to 5 um in 200 even steps of ln d.
 *
 * Input     the dispersion; the spread of the sizes (polydispersity index)
 * Source    as `turbidity`
 */
export function sizeCurve(of: Dispersion, spread: number): SizeCurve {
  const at = (diameterNanometres: number): Scattered =>
    scattered(of, sizeClasses({ diameterNanometres, spread }));
  const { low, high } = sizesLookedFor;
  const step = Math.log(high / low) / (STEPS - 1);
  const ntuAt = spread > 0 ? onGrid(of, { spread, low, step }) : undefined;
  const points = Array.from({ length: STEPS }, (_, index) => {
    const diameterNanometres = low * Math.exp(index * step);
    return { diameterNanometres, ntu: ntuAt ? ntuAt(index) : at(diameterNanometres).ntu };
  });
  return { points, at };
}

/** NTU at each point, the classes of all points on one grid, so that each size is worked out once. */
function onGrid(
  of: Dispersion,
  { spread, low, step }: { readonly spread: number; readonly low: number; readonly step: number },
): (index: number) => number {
  const classes = classGrid(spread, step);
  // The step of the classes is a multiple of the curve's, or a whole part of it.
  const grid = Math.min(step, classes.step);
  const [perPoint, perClass] = [Math.round(step / grid), Math.round(classes.step / grid)];
  const first = Math.round(classes.offset / grid);
  const known = new Map<number, number>();
  const single = (place: number): number => {
    const found = known.get(place);
    if (found !== undefined) return found;
    const diameterNanometres = low * Math.exp(place * grid);
    const { ntu } = scattered(of, [{ diameterNanometres, volumeShare: 1 }]);
    known.set(place, ntu);
    return ntu;
  };
  return (index) =>
    classes.shares.reduce(
      (sum, share, at) => sum + share * single(index * perPoint + first + at * perClass),
      0,
    );
}

export interface Crossing {
  readonly diameterNanometres: number;
  /** True where larger droplets read more. */
  readonly isRising: boolean;
}

/**
 * Every size at which the curve passes a reading: one, none, or the two branches on either side of the peak.
 *
 * Formula   ln d by root search between the two points of the curve on either side
 * Input     the curve; a reading in NTU above 0
 * Output    diameters in nm going up
 */
export function sizesOf(curve: SizeCurve, ntu: number): readonly Crossing[] {
  const { points, at } = curve;
  return points.flatMap((point, index): readonly Crossing[] => {
    const next = points[index + 1];
    if (!next || point.ntu < ntu === next.ntu < ntu) return [];
    const [low, high] = [Math.log(point.diameterNanometres), Math.log(next.diameterNanometres)];
    const valueAt = (logarithm: number): number => Math.log(at(Math.exp(logarithm)).ntu / ntu);
    const found = Math.exp(findRoot({ low, high, valueAt, close: 1e-6 }));
    return [{ diameterNanometres: found, isRising: next.ntu > point.ntu }];
  });
}

/** A size that a reading could mean, with the ends that the band of the reading leaves. */
export interface ImpliedSize {
  readonly branch: 'small' | 'large';
  readonly diameterNanometres: number;
  readonly lowNanometres: number;
  readonly highNanometres: number;
}

/**
 * Formula   small: where the curve first rises through the reading; large: where it falls below it for good, from the
 *           first such place where ripples leave several. The ends are those of the same branch at both ends of the
 *           band; where that goes over the peak, the peak
 * Input     the curve; NTU as the model prints it; the ends of its band as factors
 * Output    none, one or both branches
 */
export function impliedSizes(
  curve: SizeCurve,
  ntu: number,
  band: { readonly low: number; readonly high: number },
): readonly ImpliedSize[] {
  const [here, less, more] = [ntu, ntu * band.low, ntu * band.high].map((one) => branchesOf(curve, one));
  if (!here || !less || !more) return [];
  const [peak, { low, high }] = [peakOf(curve), sizesLookedFor];
  const found: ImpliedSize[] = [];
  if (here.small !== undefined)
    found.push({
      branch: 'small',
      diameterNanometres: here.small,
      lowNanometres: less.small ?? low,
      highNanometres: more.small ?? peak,
    });
  if (here.large)
    found.push({
      branch: 'large',
      diameterNanometres: Math.sqrt(here.large.first * here.large.last),
      lowNanometres: more.large?.first ?? peak,
      highNanometres: less.large?.last ?? high,
    });
  return found;
}

function branchesOf(curve: SizeCurve, ntu: number) {
  const crossings = sizesOf(curve, ntu);
  const [first, last] = [crossings.find(({ isRising }) => !isRising), crossings.at(-1)];
  return {
    small: crossings.find(({ isRising }) => isRising)?.diameterNanometres,
    large:
      first && last && !last.isRising
        ? { first: first.diameterNanometres, last: last.diameterNanometres }
        : undefined,
  };
}

/** nm, the size that looks haziest at 90 degrees. */
export function peakOf({ points }: SizeCurve): number {
  const [first, ...others] = points;
  const best = others.reduce((most, point) => (most && most.ntu >= point.ntu ? most : point), first);
  return best?.diameterNanometres ?? sizesLookedFor.low;
}

/** nm; undefined where every size of the curve stays below, 0 where none does. */
export function largestBelow(curve: SizeCurve, ntu: number): number | undefined {
  const [first] = curve.points;
  if (first && first.ntu >= ntu) return 0;
  return sizesOf(curve, ntu).find(({ isRising }) => isRising)?.diameterNanometres;
}
