import { type Parsed, parsed, refused } from '../../problem.ts';
import { gasMolarVolume, sugarOnCarbonDioxide } from '../../reference/solution/carbon-dioxide.ts';
import { waterDensity } from '../density/water-density.ts';
import { ATMOSPHERE_PASCAL, carbonDioxideMolality, molality } from './carbon-dioxide.ts';
import { molarMass } from './molar-mass.ts';
import { findRoot } from './root.ts';
import { waterVapourPascal } from './vapour-pressure.ts';

/** A volume of CO2 in a litre: this many grams. */
export const GRAMS_PER_LITRE_OF_A_VOLUME = molarMass('CO2') / gasMolarVolume.value;

export interface Carbonation {
  /** Litres of CO2 gas at 0 C and 1 atm per litre of liquid. */
  readonly volumes: number;
  readonly gramsPerLitre: number;
  readonly gaugePressurePascal: number;
  readonly partialPressurePascal: number;
}

/**
 * What water holds under a gauge pressure. The headspace is CO2 and water vapour, without air; the water carries no
 * sugar (a sugared drink holds up to 8 % less).
 *
 * Formula   p(CO2) = gauge + 1 atm - p(water); volumes = m rho 22.26 L/mol
 * Input     gaugePressurePascal, temperatureKelvin 273.15 to 333.15
 * Output    volumes, gramsPerLitre, gaugePressurePascal, partialPressurePascal
 * Refuses   a pressure below vacuum or that of the water vapour; what lies outside the equations
 * Source    Weiss 1974; Carroll and others 1991; water vapour Wagner and Pruss 1993
 * Example   carbonationAtGauge({ gaugePressurePascal: 200000, temperatureKelvin: 277.15 }) -> { volumes: 4.272911, gramsPerLitre: 8.447733, .. }
 */
export function carbonationAtGauge(given: {
  readonly gaugePressurePascal: number;
  readonly temperatureKelvin: number;
}): Parsed<Carbonation> {
  const total = given.gaugePressurePascal + ATMOSPHERE_PASCAL;
  if (!(total >= 0)) {
    return refused(
      'below-vacuum',
      `a gauge pressure of ${given.gaugePressurePascal / 1e5} bar is below vacuum (-1.013 bar)`,
      'give the pressure that the gauge shows, from 0 bar upwards',
    );
  }
  const partial = total - waterVapourPascal(given.temperatureKelvin);
  if (partial < 0) {
    return refused(
      'below-vapour',
      `at a gauge pressure of ${given.gaugePressurePascal / 1e5} bar the headspace is water vapour alone`,
      'give a higher pressure',
    );
  }
  return held({ ...given, partialPressurePascal: partial, totalPressurePascal: total });
}

/**
 * What water holds under a pressure of CO2 alone.
 *
 * Input     partialPressurePascal of CO2, temperatureKelvin
 * Output    as `carbonationAtGauge`; the gauge pressure has the water vapour in it
 * Example   carbonationAtPartial({ partialPressurePascal: 101325, temperatureKelvin: 293.15 }) -> { volumes: 0.872628, .. }
 */
export function carbonationAtPartial(given: {
  readonly partialPressurePascal: number;
  readonly temperatureKelvin: number;
}): Parsed<Carbonation> {
  const totalPressurePascal = given.partialPressurePascal + waterVapourPascal(given.temperatureKelvin);
  return held({ ...given, totalPressurePascal });
}

/**
 * The gauge pressure under which water holds so many volumes.
 *
 * Input     volumes from 0, temperatureKelvin 273.15 to 333.15
 * Output    as `carbonationAtGauge`
 * Refuses   more than 30 bar holds
 * Example   carbonationAtVolumes({ volumes: 3.5, temperatureKelvin: 277.15 }) -> { gaugePressurePascal: 144595, .. }
 */
export function carbonationAtVolumes(given: {
  readonly volumes: number;
  readonly temperatureKelvin: number;
}): Parsed<Carbonation> {
  const { volumes, temperatureKelvin } = given;
  const density = waterDensity({ temperatureKelvin });
  if (!density.ok) return density;
  const vapour = waterVapourPascal(temperatureKelvin);
  const highest = 3e6 - vapour;
  const excess = (partialPressurePascal: number): number =>
    molality({
      temperatureKelvin,
      partialPressurePascal,
      totalPressurePascal: partialPressurePascal + vapour,
    }) *
      density.value *
      gasMolarVolume.value -
    volumes;
  if (!(volumes >= 0) || excess(highest) < 0) {
    return refused(
      'outside-range',
      `${Number(volumes.toPrecision(4))} volumes of CO2 are not reached between 0 and 30 bar`,
      'give the volumes that the drink is to hold, such as 3.5',
    );
  }
  const partial = findRoot({ low: 0, high: highest, valueAt: excess });
  return carbonationAtPartial({ partialPressurePascal: partial, temperatureKelvin });
}

function held(state: {
  readonly temperatureKelvin: number;
  readonly partialPressurePascal: number;
  readonly totalPressurePascal: number;
}): Parsed<Carbonation> {
  const dissolved = carbonDioxideMolality(state);
  if (!dissolved.ok) return dissolved;
  const density = waterDensity(state);
  if (!density.ok) return density;
  const volumes = dissolved.value * density.value * gasMolarVolume.value;
  return parsed({
    volumes,
    gramsPerLitre: volumes * GRAMS_PER_LITRE_OF_A_VOLUME,
    gaugePressurePascal: state.totalPressurePascal - ATMOSPHERE_PASCAL,
    partialPressurePascal: state.partialPressurePascal,
  });
}

/**
 * How much of what water would hold a sugared drink holds, from figures given from memory (Findlay and others):
 * for the 8 % that is said beside an answer, not for a correction in silence.
 *
 * Formula   1 - 0.62 mL/g c
 * Input     sugarGramsPerMillilitre 0 to 0.13
 * Output    share of 1
 * Refuses   more sugar than was measured
 * Example   carbonationShareInSugar({ sugarGramsPerMillilitre: 0.1 }) -> 0.938
 */
export function carbonationShareInSugar(given: { readonly sugarGramsPerMillilitre: number }): Parsed<number> {
  const { value, highest } = sugarOnCarbonDioxide;
  if (given.sugarGramsPerMillilitre >= 0 && given.sugarGramsPerMillilitre <= highest) {
    return parsed(1 - value * given.sugarGramsPerMillilitre);
  }
  return refused(
    'outside-range',
    `CO2 in sugar was measured to 130 g/L of sucrose, not at ${given.sugarGramsPerMillilitre * 1000} g/L`,
    'leave the sugar out and allow 8 %',
  );
}

/**
 * The CO2 that the water must bring for a throw of one part of syrup and so many of water, the syrup still.
 *
 * Formula   v(water) = v(drink) (1 + n)/n, volumes taken as additive
 * Input     volumes in the drink, waterParts n per part of syrup
 * Output    volumes in the water
 * Refuses   no water
 * Source    arithmetic
 * Example   volumesForThrow({ volumes: 3.5, waterParts: 4 }) -> 4.375
 */
export function volumesForThrow(given: {
  readonly volumes: number;
  readonly waterParts: number;
}): Parsed<number> {
  if (given.waterParts > 0 && given.volumes >= 0) {
    return parsed((given.volumes * (1 + given.waterParts)) / given.waterParts);
  }
  return refused(
    'no-water',
    `a throw of 1+${given.waterParts} has no water to carry the CO2`,
    'give the parts of water, such as 4 for 1+4',
  );
}
