import { type Parsed, parsed, refused } from '../../problem.ts';
import { gasConstant } from '../../reference/solution/activity-model.ts';
import {
  carbonationValid,
  carrollHenry,
  dissolvedVolume,
  generalVirial,
  secondVirial,
  solubilityMean,
  weissSolubility,
} from '../../reference/solution/carbon-dioxide.ts';
import { atomicWeights } from '../../reference/solution/ions.ts';

export const ATMOSPHERE_PASCAL = 101325;
const ICE_POINT_KELVIN = 273.15;
const MOLES_OF_WATER_PER_KILOGRAM = 1000 / (2 * (atomicWeights['H'] ?? 0) + (atomicWeights['O'] ?? 0));
const CUBIC_CENTIMETRES = 1e6;

export interface CarbonDioxideState {
  readonly temperatureKelvin: number;
  /** Pressure of the CO2 alone. */
  readonly partialPressurePascal: number;
  /** Of everything in the headspace; that of the CO2 where it is left out. */
  readonly totalPressurePascal?: number;
}

/**
 * CO2 dissolved in water under CO2.
 *
 * Formula   m = K0 p exp(B P/(R T)) exp((1 atm - P) v/(R T)); K0 a weighted geometric mean of two published equations
 * Input     temperatureKelvin 273.15 to 333.15, partialPressurePascal, totalPressurePascal to 3 MPa
 * Output    mol per kg of water
 * Refuses   a temperature or pressure outside
 * Source    Weiss 1974; Carroll, Slupsky and Mather 1991; both for water without sugar
 * Accuracy  1.5 % of the tables and measurements up to 1 atm, 4 % from 5 to 15 bar (20 C); one textbook row at
 *           60 C is 3 % off
 * Example   carbonDioxideMolality({ temperatureKelvin: 293.15, partialPressurePascal: 101325 }) -> 0.039278
 */
export function carbonDioxideMolality(state: CarbonDioxideState): Parsed<number> {
  const refusal = outside(state);
  return refusal ?? parsed(molality(state));
}

/** The same without the look at the range, for solvers that stay inside. */
export function molality(state: CarbonDioxideState): number {
  const { temperatureKelvin, partialPressurePascal } = state;
  const total = state.totalPressurePascal ?? partialPressurePascal;
  const thermal = gasConstant * temperatureKelvin * CUBIC_CENTIMETRES;
  const nonIdeal = secondVirialAt(temperatureKelvin) * total;
  const pressing = (ATMOSPHERE_PASCAL - total) * dissolvedVolume.value;
  return (
    solubility(temperatureKelvin) *
    (partialPressurePascal / ATMOSPHERE_PASCAL) *
    Math.exp((nonIdeal + pressing) / thermal)
  );
}

/** mol/(kg atm). */
function solubility(kelvin: number): number {
  const { wholeToCelsius, noneFromCelsius } = solubilityMean;
  const celsius = kelvin - ICE_POINT_KELVIN;
  const taken = Math.min(celsius, wholeToCelsius) + ICE_POINT_KELVIN;
  const half = (weiss(taken) / carroll(taken)) ** weissWeight(celsius);
  const left = (noneFromCelsius - celsius) / (noneFromCelsius - wholeToCelsius);
  return carroll(kelvin) * (1 + (half - 1) * Math.min(1, Math.max(0, left)));
}

function weissWeight(celsius: number): number {
  const { weissAtZero, weissFromHalf, halfFromCelsius } = solubilityMean;
  const way = Math.min(1, Math.max(0, celsius) / halfFromCelsius);
  return weissAtZero + (weissFromHalf - weissAtZero) * way;
}

function carroll(kelvin: number): number {
  const henry = Math.exp(carrollHenry.byInverseTemperature.reduceRight((value, c) => value / kelvin + c, 0));
  const fraction = ATMOSPHERE_PASCAL / 1e6 / henry;
  return (fraction / (1 - fraction)) * MOLES_OF_WATER_PER_KILOGRAM;
}

function weiss(kelvin: number): number {
  const [constant, inverse, log] = weissSolubility.coefficients;
  return Math.exp(constant + inverse * (100 / kelvin) + log * Math.log(kelvin / 100));
}

/** Second virial coefficient of CO2, cm3/mol. */
export function secondVirialAt(kelvin: number): number {
  if (kelvin <= secondVirial.valid.highKelvin) {
    return secondVirial.byPowerOfTemperature.reduceRight((value, c) => value * kelvin + c, 0);
  }
  const { criticalKelvin, criticalPascal, acentricFactor } = generalVirial;
  const reduced = kelvin / criticalKelvin;
  const simple = 0.083 - 0.422 / reduced ** 1.6;
  const shape = 0.139 - 0.172 / reduced ** 4.2;
  const scale = (gasConstant * criticalKelvin * CUBIC_CENTIMETRES) / criticalPascal;
  return scale * (simple + acentricFactor * shape);
}

function outside(state: CarbonDioxideState): Parsed<never> | undefined {
  const { lowCelsius, highCelsius, highAbsolutePascal } = carbonationValid;
  const celsius = Number((state.temperatureKelvin - ICE_POINT_KELVIN).toFixed(3));
  if (!(celsius >= lowCelsius && celsius <= highCelsius)) {
    return refused(
      'outside-range',
      `CO2 in water is reckoned from ${lowCelsius} to ${highCelsius} C, not at ${celsius} C`,
      'give a temperature in that range',
    );
  }
  const total = state.totalPressurePascal ?? state.partialPressurePascal;
  if (state.partialPressurePascal >= 0 && total >= 0 && total <= highAbsolutePascal) return undefined;
  return refused(
    'outside-range',
    `CO2 in water is reckoned from 0 to ${highAbsolutePascal / 1e5} bar absolute, not at ${Number((total / 1e5).toFixed(4))} bar`,
    'give a pressure in that range',
  );
}
