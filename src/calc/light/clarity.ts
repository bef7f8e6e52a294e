/** Whether an emulsion looks clear: its turbidity, what passes a glass, what a meter and an eye make of it. */

import { type Parsed, parsed } from '../../problem.ts';
import { crowded, hazeBands, meterPath, singleScattering, usualWavelength } from '../../reference/light.ts';
import type { Calibration } from './calibration.ts';
import { type ImpliedSize, impliedSizes, largestBelow, sizeCurve } from './droplet-of-haze.ts';
import { type Background, type LookWords, lookOf, seenFrom } from './look.ts';
import { type Dispersion, type Droplets, type Scattered, turbidity } from './turbidity.ts';

export interface Haze {
  readonly turbidity: number;
  /** Of the light, straight through the glass; undefined where it is scattered more than once. */
  readonly transmission: number | undefined;
  /** As the meter shows it; undefined where light is scattered more than once in it, or is no white light. */
  readonly ntu: { readonly value: number; readonly low: number; readonly high: number } | undefined;
  readonly look: LookWords;
  /** tau x width: light is scattered once up to about 0.3. */
  readonly opticalPath: number;
  readonly isCrowded: boolean;
}

export interface Glass {
  readonly widthMetres: number;
  readonly calibration: Calibration;
}

/**
 * Formula   T = exp(-tau L); NTU as `turbidity`, times the factor of the meter; look from NTU at 550 nm, or from the light
 *           that does not go straight through where that says more
 * Input     the dispersion and its droplets; width of the glass in m; the person's meter
 * Refuses   what `turbidity` refuses
 * Source    Bohren and Huffman 1983; bands as `hazeBands`
 */
export function hazeIn(
  of: Dispersion,
  droplets: Droplets,
  { widthMetres, calibration }: Glass,
): Parsed<Haze> {
  const asked = turbidity(of, droplets);
  if (!asked.ok) return asked;
  const green = turbidity({ ...of, wavelengthNanometres: usualWavelength.value }, droplets);
  if (!green.ok) return green;
  const isCrowded = of.volumeFraction > crowded.value;
  const opticalPath = asked.value.turbidity * widthMetres;
  const meterWidth = Math.min(widthMetres, meterPath.value);
  const isOnce = !isCrowded && opticalPath <= singleScattering.value;
  const isMetered =
    !isCrowded &&
    isWhite(of.wavelengthNanometres) &&
    asked.value.turbidity * meterWidth <= singleScattering.value;
  const shown = asked.value.ntu * calibration.factor;
  return parsed({
    turbidity: asked.value.turbidity,
    transmission: isOnce ? Math.exp(-opticalPath) : undefined,
    ntu: isMetered
      ? { value: shown, low: shown * calibration.low, high: shown * calibration.high }
      : undefined,
    look: lookThrough(green.value, widthMetres, calibration.factor),
    opticalPath,
    isCrowded,
  });
}

export const isWhite = (nanometres: number): boolean =>
  nanometres >= usualWavelength.meterLow && nanometres <= usualWavelength.meterHigh;

/** Light lost on the way is seen too where little of it goes to the side; common practice, no source. */
function lookThrough({ ntu, turbidity: tau }: Scattered, widthMetres: number, factor: number): LookWords {
  const lost = tau * widthMetres;
  const least = lost > 1 ? hazeBands.hazy : lost > singleScattering.value ? hazeBands.whiteClear : 0;
  return lookOf(Math.max(ntu * factor, least));
}

export interface Inverse {
  /** nm; undefined where no size of this dose is seen, 0 where every size is. */
  readonly largestClear: number | undefined;
  readonly implied: readonly (ImpliedSize & { readonly transmission: number })[];
  /** True where droplets above the largest that are looked for would read so too. */
  readonly isOpen: boolean;
}

/**
 * Back from a haze to droplets.
 *
 * Formula   the sizes at which the modelled NTU, times the factor of the meter, passes the reading or what is seen
 * Input     the dispersion; polydispersity index; background; a reading in NTU; the glass
 * Output    largest droplet that is not seen, nm; sizes that the reading could mean, with the light that goes straight
 *           through the glass at each, which tells the branches apart
 * Accuracy  20 % of the diameter, since haze goes with its cube
 */
export function dropletsFrom(
  of: Dispersion,
  asked: {
    readonly spread: number;
    readonly background: Background;
    readonly measuredNtu: number | undefined;
  },
  { widthMetres, calibration }: Glass,
): Inverse {
  const curve = sizeCurve({ ...of, wavelengthNanometres: usualWavelength.value }, asked.spread);
  const modelled = asked.measuredNtu === undefined ? undefined : asked.measuredNtu / calibration.factor;
  const band = { low: 1 / calibration.high, high: 1 / calibration.low };
  const implied = modelled === undefined ? [] : impliedSizes(curve, modelled, band);
  return {
    largestClear: largestBelow(curve, seenFrom(asked.background) / calibration.factor),
    implied: implied.map((one) => ({
      ...one,
      transmission: Math.exp(-curve.at(one.diameterNanometres).turbidity * widthMetres),
    })),
    isOpen: modelled !== undefined && (curve.points.at(-1)?.ntu ?? 0) > modelled,
  };
}
