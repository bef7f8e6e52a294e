/** How droplets of one size or of many dim a beam, and what a meter at 90 degrees sees of it. */

import { type Parsed, parsed, refused } from '../../problem.ts';
import { dropletLimit, nephelometer, usualWavelength } from '../../reference/light.ts';
import { scatteringAt90 } from './mie.ts';
import { type SizeClass, sizeClasses } from './size-distribution.ts';

/** Oil in its medium. */
export interface Dispersion {
  /** Volume share of oil. */
  readonly volumeFraction: number;
  readonly oilIndex: number;
  readonly mediumIndex: number;
  /** nm, in vacuum. */
  readonly wavelengthNanometres: number;
}

export interface Droplets {
  /** nm; as a sizer prints it (z-average) where they have a spread. */
  readonly diameterNanometres: number;
  /** Polydispersity index, 0 for one size. */
  readonly spread: number;
}

export interface Scattered {
  /** Per metre. */
  readonly turbidity: number;
  /** Per metre and steradian, to 90 degrees. */
  readonly toTheSide: number;
  /** White-light estimate, good to a factor of two. */
  readonly ntu: number;
}

/**
 * Turbidity of an emulsion that scatters light once.
 *
 * Formula   tau = sum over sizes of (3/2) phi_i Q_ext,i / d_i, Mie; NTU = sum of tau_i p_i(90) / 0.011
 * Input     droplets; volume share and index of the oil, index of the medium, wavelength in nm
 * Output    turbidity 1/m; light to 90 degrees 1/(m sr); NTU of a white-light meter
 * Refuses   a size of nothing or above a millimetre; a wavelength that is no light
 * Source    Bohren and Huffman 1983; McClements 2002, Adv. Colloid Interface Sci. 97:63; NTU as in `nephelometer`
 * Accuracy  turbidity a few per cent where the size is truly known, x3 with a guessed size; NTU x2
 * Example   turbidity(limonene, 1.4727 in 1.3330, 550 nm, share 1e-4; 30 nm) -> 0.1677, 0.91 NTU
 */
export function turbidity(of: Dispersion, droplets: Droplets): Parsed<Scattered> {
  const refusal = dropletFault(droplets.diameterNanometres) ?? wavelengthFault(of.wavelengthNanometres);
  return refusal ?? parsed(scattered(of, sizeClasses(droplets)));
}

export function scattered(of: Dispersion, sizes: readonly SizeClass[]): Scattered {
  let [all, side] = [0, 0];
  const index = { n: of.oilIndex / of.mediumIndex, k: 0 };
  for (const { diameterNanometres, volumeShare } of sizes) {
    const sizeParameter = (Math.PI * diameterNanometres * of.mediumIndex) / of.wavelengthNanometres;
    const { qExt, perSteradian } = scatteringAt90(sizeParameter, index);
    const one = (1.5 * of.volumeFraction * volumeShare * qExt) / (diameterNanometres * 1e-9);
    all += one;
    side += one * perSteradian;
  }
  return { turbidity: all, toTheSide: side, ntu: side / nephelometer.value };
}

/** The fault of a droplet size, in nm. */
export function dropletFault(nanometres: number): Parsed<never> | undefined {
  if (!(nanometres > 0))
    return refused('not-positive', 'a droplet has a size', 'give its diameter above zero, such as 40 nm');
  if (nanometres > dropletLimit.highNanometres)
    return refused(
      'outside-range',
      `droplets of ${Number((nanometres / 1e6).toPrecision(4))} mm are no emulsion`,
      'give a diameter of at most 1 mm, such as 40 nm or 2 um',
    );
  return undefined;
}

function wavelengthFault(nanometres: number): Parsed<never> | undefined {
  const { lowest, highest } = usualWavelength;
  if (nanometres >= lowest && nanometres <= highest) return undefined;
  return refused(
    'outside-range',
    `the refractive indices hold for visible light, not for ${Number(nanometres.toPrecision(4))} nm`,
    `give a wavelength from ${lowest} to ${highest} nm; 550 nm is taken where none is given`,
  );
}
