/** The density of a mixture that nobody measured. */

import type { BookEntry } from '../book.ts';
import { trimmedNumber } from '../number-text.ts';
import { addedVolume, type Blend, isNamed, isWater } from './blend.ts';
import { sucroseDensity } from './sucrose-density.ts';
import { waterDensity } from './water-density.ts';

/** One temperature of the bench, with the density of water there; undefined outside its range. */
export interface DensityModel {
  readonly temperatureKelvin: number;
  readonly waterDensity: number | undefined;
}

export function densityModel(temperatureKelvin: number): DensityModel {
  const water = waterDensity({ temperatureKelvin });
  return { temperatureKelvin, waterDensity: water.ok ? water.value : undefined };
}

/**
 * Volume by adding what every substance brings, as if nothing shrank.
 *
 * Formula   v = w_water / rho_water + sum of w_i / rho_i
 * Input     a blend
 * Output    mL/g
 */
export const addedSpecificVolume = (blend: Blend, model: DensityModel): number =>
  blend.waterShare / (model.waterDensity ?? 1) + blend.sucroseVolume + blend.otherVolume;

/**
 * Volume per gram of a mixture.
 *
 * Formula   v = (w_water + w_sucrose) / rho_sugar-water + sum of w_i / rho_i over the rest
 * Input     a blend; the temperature of the bench
 * Output    mL/g; by added volumes alone where the sugar-water polynomial does not reach
 * Source    Bettin, Emmerich, Spieweck and Toth 1998 (ICUMSA SPS-4) for sugar and water
 * Example   specificVolume(blend of 65 % sucrose in water, densityModel(293.15)) -> 0.75956
 */
export function specificVolume(blend: Blend, model: DensityModel): number {
  if (blend.sucroseShare === 0) return addedSpecificVolume(blend, model);
  const sugarWater = blend.waterShare + blend.sucroseShare;
  const density = sucroseDensity({
    massFraction: blend.sucroseShare / sugarWater,
    temperatureKelvin: model.temperatureKelvin,
  });
  return density.ok ? sugarWater / density.value + blend.otherVolume : addedSpecificVolume(blend, model);
}

export interface EstimatedMixture {
  readonly blend: Blend;
  readonly substances: readonly { readonly entry: BookEntry; readonly massGrams: number }[];
  readonly model: DensityModel;
}

/** The words that say what an estimate rests on. */
export function estimateWords({ blend, substances, model }: EstimatedMixture): string {
  const present = substances.filter((one) => one.massGrams > 0);
  const unknown = present.filter(({ entry }) =>
    isWater(entry) ? model.waterDensity === undefined : addedVolume(entry) === undefined,
  );
  const names = [...new Set(unknown.map(({ entry }) => entry.name))];
  return [
    methodWords({ blend, model, onlySugarWater: present.every(({ entry }) => isSugarWater(entry)) }),
    ...(names.length > 0 ? [`no density known for ${names.join(', ')}, taken as 1 g/mL`] : []),
    ...(present.some(({ entry }) => isNamed(entry, 'ethanol'))
      ? ['that ethanol and water shrink together is not counted']
      : []),
  ].join('; ');
}

const isSugarWater = (entry: BookEntry): boolean => isWater(entry) || isNamed(entry, 'sucrose');

function methodWords(input: {
  readonly blend: Blend;
  readonly model: DensityModel;
  readonly onlySugarWater: boolean;
}): string {
  const { sucroseShare, waterShare } = input.blend;
  const { temperatureKelvin } = input.model;
  if (sucroseShare === 0) {
    return input.onlySugarWater
      ? 'estimate: water at the temperature of the bench'
      : 'estimate: added volumes';
  }
  const massFraction = sucroseShare / (sucroseShare + waterShare);
  const density = sucroseDensity({ massFraction, temperatureKelvin });
  if (!density.ok) {
    const percent = trimmedNumber(massFraction * 100, 3);
    const celsius = trimmedNumber(temperatureKelvin - 273.15, 4);
    return `estimate: added volumes, since the sugar-water polynomial of ICUMSA does not reach ${percent} % of sucrose at ${celsius} C`;
  }
  return `estimate: sugar-water by ICUMSA${input.onlySugarWater ? '' : ', rest by added volumes'}`;
}
