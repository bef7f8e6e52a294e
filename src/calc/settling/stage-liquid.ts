/** The medium of a stage as a liquid at a temperature: density and viscosity, and how the oil stands to it. */

import { type Parsed, parsed } from '../../problem.ts';
import { oilExpansion } from '../../reference/settling.ts';
import { sucroseDensity } from '../density/sucrose-density.ts';
import { waterDensity } from '../density/water-density.ts';
import type { StageMedium } from '../light/stage-medium.ts';
import { sugarWaterViscosity } from './viscosity.ts';

const tableKelvin = 293.15;
const ICE_POINT_KELVIN = 273.15;
/** What a sugar and water polynomial is good for; beside it the change of water alone is taken. */
const NO_SUGAR = 1e-9;

/** g/mL of everything but the oil. */
export function mediumDensity(medium: StageMedium, temperatureKelvin: number): Parsed<number> {
  const oilMass = medium.oils.reduce((sum, { massFraction }) => sum + massFraction, 0);
  const oilVolume = medium.oils.reduce(
    (sum, { entry, massFraction }) => sum + massFraction / (entry.record.figures.density?.value ?? 0.85),
    0,
  );
  const at20 = (1 - oilMass) / (1 / medium.density - oilVolume);
  const change = densityChange(medium.sugarShare, temperatureKelvin);
  return change.ok ? parsed(at20 * change.value) : change;
}

function densityChange(massFraction: number, temperatureKelvin: number): Parsed<number> {
  const at = (kelvin: number): Parsed<number> =>
    massFraction < NO_SUGAR
      ? waterDensity({ temperatureKelvin: kelvin })
      : sucroseDensity({ massFraction, temperatureKelvin: kelvin });
  const [here, there] = [at(temperatureKelvin), at(tableKelvin)];
  // Just above freezing the sugar polynomial ends: the change of water is taken, right to 0.001 g/mL.
  if (!here.ok && massFraction >= NO_SUGAR) return densityChange(0, temperatureKelvin);
  if (!here.ok) return here;
  return there.ok ? parsed(here.value / there.value) : there;
}

/** mPa s of sugar and water, which is what a drink's viscosity comes from. */
export const mediumViscosity = (medium: StageMedium, temperatureKelvin: number): Parsed<number> =>
  sugarWaterViscosity({ massFraction: medium.sugarShare, temperatureKelvin });

/** g/mL of the oil phase at a temperature, from its records at theirs. */
export function oilDensityAt(medium: StageMedium, temperatureKelvin: number): number {
  let [mass, volume] = [0, 0];
  for (const { entry, massFraction } of medium.oils) {
    const figure = entry.record.figures.density;
    const warmer = temperatureKelvin - ICE_POINT_KELVIN - (figure?.temperatureCelsius ?? 20);
    mass += massFraction;
    volume += massFraction / ((figure?.value ?? Number.NaN) - oilExpansion.value * warmer);
  }
  return mass / volume;
}
