/** How fast a substance is lost at a pH and a temperature. */

import { type Parsed, parsed, refused } from '../../problem.ts';
import {
  acidOnlyUpTo,
  type EsterConstants,
  esterActivation,
  keepingCelsius,
  phRange,
  polysorbateHydrolysis,
  sucroseInversion,
} from '../../reference/kinetics.ts';
import { gasConstant } from '../../reference/settling.ts';
import { sucroseDensity } from '../density/sucrose-density.ts';

const ICE_POINT_KELVIN = 273.15;
const referenceKelvin = 298.15;
/** The compilations of these constants count 10^-7 of OH- at pH 7 and 25 C; the ionic product is 13.995. */
const waterExponent = 14;
/** The rest of the rate may not be carried to other temperatures with the energy of the acid part. */
const LEAST_ACID_PART = 0.9;
/** What is less of the acid part than this is left out, as the published half-lives in acid do. */
const NOT_COUNTED = 0.005;

export interface Conditions {
  readonly ph: number;
  readonly temperatureKelvin: number;
  /** Sugar by mass, for its own inversion. */
  readonly sugarShare?: number | undefined;
}

export interface Rate {
  /** 1/s, first order. */
  readonly perSecond: number;
  /** The true one lies within this factor, either way. */
  readonly factor: number;
}

/**
 * Example   arrhenius({ activation: 66, fromKelvin: 298.15, toKelvin: 313.15 }) -> 3.58
 * Formula   exp[-(E/R)(1/T - 1/T0)], E in kJ/mol
 */
export const arrhenius = (of: {
  readonly activation: number;
  readonly fromKelvin: number;
  readonly toKelvin: number;
}): number => Math.exp(((-of.activation * 1000) / gasConstant) * (1 / of.toKelvin - 1 / of.fromKelvin));

/**
 * Hydrolysis of an ester that is dissolved in water.
 *
 * Formula   k = kA aH + kN + kB aOH at 25 C, aH = 10^-pH, aOH = 10^(pH - 14); times Arrhenius with 66 kJ/mol
 * Input     constants; pH 1 to 8 (to 4.5 where only the acid one is known); temperature 0 to 50 C
 * Output    1/s with its factor of uncertainty
 * Refuses   what lies outside; another temperature than 25 C where the acid makes less than nine tenths of it
 * Source    Mabey and Mill 1978, J. Phys. Chem. Ref. Data 7:383; Taft
 * Example   ethyl acetate, pH 3.0, 25 C -> half-life 72.9 d
 */
export function esterRate(
  constants: EsterConstants,
  conditions: Conditions,
  activation?: number,
): Parsed<Rate> {
  const { ph, temperatureKelvin } = conditions;
  const refusal = outside(conditions, phRange.high);
  if (refusal) return refusal;
  const acid = constants.acid * 10 ** -ph;
  const isOnlyAcid = constants.neutral === undefined && constants.base === undefined;
  if (isOnlyAcid && ph > acidOnlyUpTo)
    return refused(
      'outside-range',
      `at pH ${ph} more than acid counts, and only the acid constant of this ester is known`,
      `ask for a pH up to ${acidOnlyUpTo}`,
    );
  const beside = (constants.neutral ?? 0) + (constants.base ?? 0) * 10 ** (ph - waterExponent);
  const all = beside < NOT_COUNTED * acid ? acid : acid + beside;
  const isWarmed = Math.abs(temperatureKelvin - referenceKelvin) > 0.01;
  if (isWarmed && acid / all < LEAST_ACID_PART)
    return refused(
      'outside-range',
      `at pH ${ph} more than acid counts, and how that changes with temperature is not known`,
      'ask for 25 C, or for a lower pH',
    );
  const energy = activation ?? constants.activation ?? esterActivation.value;
  const warmth = arrhenius({ activation: energy, fromKelvin: referenceKelvin, toKelvin: temperatureKelvin });
  return parsed({ perSecond: all * warmth, factor: constants.factor });
}

/**
 * Inversion of sucrose by acid.
 *
 * Formula   log10 k (1/min) = 16.91 + log10(rho - c) - 5670/T - pH; rho - c is the water per litre in kg
 * Input     pH 1 to 5, temperature 0 to 50 C, sugar by mass (10 % where none is given)
 * Output    1/s; 1.5 times either way from 20 to 40 C and pH 2.5 to 4, two times outside
 * Refuses   what lies outside
 * Source    Vukov 1965, Int. Sugar J. 67:172 (from memory)
 * Example   pH 3.0, 25 C, hardly any sugar -> half-life 61.6 d
 */
export function inversionRate(conditions: Conditions): Parsed<Rate> {
  const { ph, temperatureKelvin, sugarShare = 0.1 } = conditions;
  const refusal = outside(conditions, sucroseInversion.highPh);
  if (refusal) return refusal;
  const water = waterPerLitre(sugarShare);
  if (!water.ok) return water;
  const { constant, perKelvin, sure, factor, widerFactor } = sucroseInversion;
  const perMinute = 10 ** (constant + Math.log10(water.value) - perKelvin / temperatureKelvin - ph);
  const celsius = temperatureKelvin - ICE_POINT_KELVIN;
  const isSure =
    celsius >= sure.lowCelsius - 1e-6 &&
    celsius <= sure.highCelsius + 1e-6 &&
    ph >= sure.lowPh &&
    ph <= sure.highPh;
  return parsed({ perSecond: perMinute / 60, factor: isSure ? factor : widerFactor });
}

/** kg of water in a litre; with no sugar the law counts one. */
function waterPerLitre(massFraction: number): Parsed<number> {
  if (massFraction === 0) return parsed(1);
  const density = sucroseDensity({ massFraction, temperatureKelvin: 293.15 });
  return density.ok ? parsed(density.value * (1 - massFraction)) : density;
}

/** The acid law of polysorbate, where it holds: below pH 3. */
export function polysorbateRate(conditions: Conditions): Parsed<Rate> {
  const refusal = outside(conditions, phRange.high);
  if (refusal) return refusal;
  const { acid, acidBelowPh, factor } = polysorbateHydrolysis;
  const warmth = arrhenius({
    activation: esterActivation.value,
    fromKelvin: referenceKelvin,
    toKelvin: conditions.temperatureKelvin,
  });
  return parsed({ perSecond: acid * 10 ** -Math.min(conditions.ph, acidBelowPh) * warmth, factor });
}

function outside({ ph, temperatureKelvin }: Conditions, highestPh: number): Parsed<never> | undefined {
  const celsius = Number((temperatureKelvin - ICE_POINT_KELVIN).toFixed(6));
  if (!(celsius >= keepingCelsius.low && celsius <= keepingCelsius.high))
    return refused(
      'outside-range',
      `rates are told from ${keepingCelsius.low} to ${keepingCelsius.high} C, not at ${celsius} C`,
      'give a temperature in that range',
    );
  if (ph >= phRange.low && ph <= highestPh) return undefined;
  return refused(
    'outside-range',
    `rates are told from pH ${phRange.low} to ${highestPh}, not at pH ${ph}`,
    ph > highestPh
      ? 'there the acid hardly counts: it keeps for years where nothing else takes it'
      : 'give a pH in that range',
  );
}

/** Example   halfLifeDays(8.02e-9) -> 1000 */
export const halfLifeDays = (perSecond: number): number => Math.LN2 / perSecond / 86_400;
