import { type Parsed, parsed } from '../../problem.ts';
import { acidSubstanceByName } from '../../reference/solution/acid-systems.ts';
import { apparentVolumes, estimatedVolumes, neutralSubstances } from '../../reference/solution/volumes.ts';
import { sucroseDensity } from '../density/sucrose-density.ts';
import { waterDensity } from '../density/water-density.ts';
import { acidSubstanceName, neutralName } from './substance.ts';

/** The density of sucrose in water is tabulated from here on. */
const COLDEST_KELVIN = 278.15;

export function isSugar(substance: string): boolean {
  const name = neutralName(substance);
  return name !== undefined && neutralSubstances[name].kind === 'sugar';
}

/** mL of solution that a gram of a substance takes, sugars apart; a figure of the acid stands for its hydrates. */
export function apparentVolume(substance: string): number {
  const neutral = neutralName(substance);
  if (neutral !== undefined) return apparentVolumes[neutral] ?? estimatedVolumes.other;
  const name = acidSubstanceName(substance);
  const found = name === undefined ? undefined : acidSubstanceByName[name];
  if (!found || name === undefined) return estimatedVolumes.other;
  const own = apparentVolumes[name.replace(/ (mono|di)hydrate$/, '')];
  if (own !== undefined) return own;
  const [acid] = Object.keys(found.acids);
  const plain = Object.keys(found.ions).length === 0;
  const pure =
    plain && acid !== undefined ? (apparentVolumes[acid] ?? estimatedVolumes.acid) : estimatedVolumes.salt;
  const strength = found.strength ?? 1;
  return pure * strength + (1 - strength);
}

/**
 * mL of solution that a gram of sugar takes, from the density of sucrose in water.
 *
 * Formula   (1/rho(w) - (1 - w)/rho(0)) / w
 * Input     massFraction w of sugar in sugar and water, above 0 to 0.85; temperatureKelvin 273.15 to 333.15
 * Output    mL/g
 * Refuses   as the sucrose density does; from 0 to 5 C it answers as at 5 C, 0.0002 g/mL off at the most
 * Example   sugarVolume({ massFraction: 0.1, temperatureKelvin: 293.15 }) -> 0.616642
 */
export function sugarVolume(given: {
  readonly massFraction: number;
  readonly temperatureKelvin: number;
}): Parsed<number> {
  const warmed = { ...given, temperatureKelvin: Math.max(COLDEST_KELVIN, given.temperatureKelvin) };
  const solution = sucroseDensity(warmed);
  if (!solution.ok) return solution;
  const water = waterDensity(warmed);
  if (!water.ok) return water;
  const share = given.massFraction;
  return parsed((1 / solution.value - (1 - share) / water.value) / share);
}
