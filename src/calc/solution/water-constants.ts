import { type Parsed, parsed, refused } from '../../problem.ts';
import { acidConstantsValid } from '../../reference/solution/acid-constants.ts';
import { debyeHueckel, waterIonProduct, waterPermittivity } from '../../reference/solution/activity-model.ts';
import { waterDensity } from '../density/water-density.ts';

const ICE_POINT_KELVIN = 273.15;

export interface WaterConstants {
  /** Debye and Hueckel's A, log10 basis, (kg/mol)^(1/2). */
  readonly debyeHueckelA: number;
  /** -log10 of the ionic product, molal. */
  readonly pkw: number;
  /** g/mL. */
  readonly density: number;
}

/**
 * What the equilibria need of water at a temperature.
 *
 * Formula   A = 1.8248e6 sqrt(rho) (epsilon T)^(-3/2); epsilon a cubic in t; log10 Kw = c0 + c1/T + c2/T^2 + c3/T^3
 *           + (d0 + d1/T + d2/T^2) log10 rho
 * Input     temperatureKelvin 273.15 to 350
 * Output    debyeHueckelA in (kg/mol)^(1/2), pkw (molal), density in g/mL
 * Refuses   a temperature for which the constants of the acids are not given
 * Source    Malmberg and Maryott 1956 (permittivity); Marshall and Franck 1981 (ionic product); Kell 1975 (density)
 * Example   waterConstants({ temperatureKelvin: 298.15 }) -> { debyeHueckelA: 0.5108, pkw: 13.9949, density: 0.997043 }
 */
export function waterConstants({
  temperatureKelvin,
}: {
  readonly temperatureKelvin: number;
}): Parsed<WaterConstants> {
  const { lowKelvin, highKelvin } = acidConstantsValid;
  const celsius = temperatureKelvin - ICE_POINT_KELVIN;
  if (!(temperatureKelvin >= lowKelvin && temperatureKelvin <= highKelvin)) {
    return refused(
      'outside-range',
      `the constants of the acids are given from 0 to 76 C, not for ${Number(celsius.toFixed(2))} C`,
      'give a temperature in that range',
    );
  }
  const density = waterDensity({ temperatureKelvin });
  if (!density.ok) return density;
  const permittivity = waterPermittivity.byPowerOfCelsius.reduceRight(
    (value, coefficient) => value * celsius + coefficient,
    0,
  );
  const debyeHueckelA =
    debyeHueckel.factor * Math.sqrt(density.value) * (permittivity * temperatureKelvin) ** -1.5;
  return parsed({
    debyeHueckelA,
    pkw: ionProduct(temperatureKelvin, density.value),
    density: density.value,
  });
}

function ionProduct(kelvin: number, density: number): number {
  const inverse = (coefficients: readonly number[]): number =>
    coefficients.reduceRight((value, coefficient) => value / kelvin + coefficient, 0);
  const { byInverseTemperature, timesLogDensity } = waterIonProduct;
  return -(inverse(byInverseTemperature) + inverse(timesLogDensity) * Math.log10(density));
}
