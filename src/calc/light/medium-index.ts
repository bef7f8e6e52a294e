/** Refractive index of a medium and of the oil in it. */

import { type Parsed, parsed, refused } from '../../problem.ts';
import { lookUp } from '../../reference/look-up.ts';
import {
  carrierIndex,
  emulsifierDensity,
  emulsifierIndex,
  indexIncrements,
  otherIncrement,
} from '../../reference/refraction.ts';
import { addedVolume } from '../density/blend.ts';
import { type Sugar, sugarDensity, sugarRefractiveIndex } from '../solution/sugar.ts';
import { solutionNameOf } from '../solution-portions.ts';
import type { MediumPart, StageMedium } from './stage-medium.ts';

const temperatureKelvin = 293.15;

interface Portion {
  readonly index: number;
  /** mL of it alone, per g of the whole. */
  readonly volume: number;
  /** mL that it takes in the mixture, where liquids shrink together. */
  readonly room?: number;
}

/**
 * Refractive index of what the droplets float in, 20 C, 589 nm.
 *
 * Formula   sugar and water by their table; with carriers and emulsifiers the refraction (n^2 - 1)/(n^2 + 2) x volume
 *           adds up, over the room that they take in solution; acids and
 *           salts add dn/dw x w
 * Input     a medium
 * Output    index against air
 * Refuses   sugar beyond its table
 * Source    ICUMSA 1974, CRC Handbook; Lorentz and Lorenz
 * Accuracy  0.0002 for sugar and water; 0.002 with up to 60 % of glycerol
 * Example   100 g/L sucrose in water -> 1.34736
 */
export function mediumIndex(medium: StageMedium): Parsed<number> {
  const sugarWater = sugarWaterPortion(medium);
  if (!sugarWater.ok) return sugarWater;
  const dissolved = medium.dissolved.filter(({ role }) => role !== 'sugar');
  const liquids = dissolved.filter(({ role }) => role === 'carrier' || role === 'emulsifier');
  const mixed = mixedIndex([sugarWater.value, ...liquids.map(liquidPortion)]);
  const all = 1 - medium.oils.reduce((sum, { massFraction }) => sum + massFraction, 0);
  const acids = dissolved.filter(({ role }) => role === 'acid' || role === 'salt' || role === 'preservative');
  return parsed(
    acids.reduce(
      (index, { name, massFraction }) =>
        index + ((lookUp(indexIncrements, name) ?? otherIncrement.value) * massFraction) / all,
      mixed,
    ),
  );
}

function sugarWaterPortion(medium: StageMedium): Parsed<Portion> {
  const sugars = medium.dissolved.filter(({ role, massFraction }) => role === 'sugar' && massFraction > 0);
  const sugarFraction = sugars.reduce((sum, { massFraction }) => sum + massFraction, 0);
  const kinds =
    sugars.length > 0
      ? sugars.map((one) => ({ sugar: kindOf(one), weight: one.massFraction / sugarFraction }))
      : [{ sugar: 'sucrose' as const, weight: 1 }];
  let [index, density] = [0, 0];
  for (const { sugar, weight } of kinds) {
    const state = { sugar, massFraction: medium.sugarShare, temperatureKelvin };
    const [one, heavy] = [sugarRefractiveIndex(state), sugarDensity(state)];
    if (!one.ok) return one;
    if (!heavy.ok) return heavy;
    index += one.value * weight;
    density += heavy.value * weight;
  }
  return parsed({ index, volume: (medium.waterFraction + sugarFraction) / density });
}

/** Sugars without a table of their own bend light as sucrose does, to a few units of the fourth decimal. */
function kindOf({ entry }: MediumPart): Sugar {
  const name = solutionNameOf(entry)?.replace(' monohydrate', '');
  return name === 'glucose' || name === 'fructose' || name === 'invert sugar' ? name : 'sucrose';
}

function liquidPortion({ entry, role, massFraction }: MediumPart): Portion {
  const isEmulsifier = role === 'emulsifier';
  const known = entry.record.figures['refractive index']?.value;
  const density = entry.record.figures.density?.value;
  const volume =
    density === undefined
      ? isEmulsifier
        ? 1 / emulsifierDensity.value
        : (addedVolume(entry) ?? 1)
      : 1 / density;
  return {
    index: known ?? (isEmulsifier ? emulsifierIndex.value : carrierIndex.value),
    volume: massFraction * volume,
    room: massFraction * (addedVolume(entry) ?? volume),
  };
}

/**
 * Formula   (n^2 - 1)/(n^2 + 2) = sum of v_i (n_i^2 - 1)/(n_i^2 + 2) / sum of the room that each takes
 * Input     indices with volumes alone and in the mixture
 * Source    Lorentz 1880, Lorenz 1880
 */
export function mixedIndex(portions: readonly Portion[]): number {
  const volume = portions.reduce((sum, one) => sum + (one.room ?? one.volume), 0);
  if (portions.length === 1) return portions[0]?.index ?? Number.NaN;
  const refraction =
    portions.reduce((sum, { index, volume: part }) => sum + (part * (index ** 2 - 1)) / (index ** 2 + 2), 0) /
    volume;
  return Math.sqrt((1 + 2 * refraction) / (1 - refraction));
}

/** The oil phase as one liquid. */
export interface OilPhase {
  readonly index: number;
  /** g/mL. */
  readonly density: number;
  /** Of the volume of the whole. */
  readonly volumeFraction: number;
  /** Of the mass of the whole. */
  readonly massFraction: number;
}

/**
 * Formula   index as `mixedIndex`; density = sum of m / sum of m/rho; volume share = density of the whole x sum of w/rho
 * Input     the medium; index and density to use for the oil instead of those of the records
 * Refuses   no oil; an oil without index or density, with the field to add
 */
export function oilPhase(
  medium: StageMedium,
  own: {
    readonly index?: number | undefined;
    readonly density?: number | undefined;
    readonly needsIndex: boolean;
  },
): Parsed<OilPhase> {
  const { oils } = medium;
  const massFraction = oils.reduce((sum, one) => sum + one.massFraction, 0);
  if (!(massFraction > 0))
    return refused(
      'no-oil',
      'there is no oil in it',
      'give the oil with its dose, such as "60 mg/L sweet orange oil"',
    );
  const portions: Portion[] = [];
  for (const { entry, name, massFraction: part } of oils) {
    const density = own.density ?? entry.record.figures.density?.value;
    const index = own.index ?? entry.record.figures['refractive index']?.value;
    if (density === undefined) return lacking(name, 'density', '0.85 g/mL');
    if (index === undefined && own.needsIndex) return lacking(name, 'refractive index', '1.473');
    portions.push({ index: index ?? 1.47, volume: part / density });
  }
  const volume = portions.reduce((sum, one) => sum + one.volume, 0);
  return parsed({
    index: mixedIndex(portions),
    density: massFraction / volume,
    volumeFraction: medium.density * volume,
    massFraction,
  });
}

const lacking = (name: string, figure: 'density' | 'refractive index', example: string): Parsed<never> =>
  refused(
    'no-figure',
    `no ${figure} is known of ${name}`,
    `add "${figure}: ${example}" under it in ingredients.yaml, or give --${figure === 'density' ? 'oil-density' : 'oil-index'}`,
  );
