import { type Parsed, parsed, refused } from '../../problem.ts';
import { waterDensity as table } from '../../reference/water-density.ts';

const ICE_POINT_KELVIN = 273.15;

/**
 * Density of pure water.
 *
 * Formula   rho = (a0 + a1 t + a2 t^2 + a3 t^3 + a4 t^4 + a5 t^5) / (1 + b t), t in C
 * Input     temperatureKelvin, 273.15 to 373.15
 * Output    density, g/mL
 * Refuses   a temperature outside 0 to 100 C
 * Source    Kell 1975, ITS-90 form of Jones and Harris 1992
 * Example   waterDensity({ temperatureKelvin: 293.15 }) -> 0.998203
 */
export function waterDensity({ temperatureKelvin }: { readonly temperatureKelvin: number }): Parsed<number> {
  const celsius = temperatureKelvin - ICE_POINT_KELVIN;
  const { lowCelsius, highCelsius } = table.valid;
  if (!(celsius >= lowCelsius && celsius <= highCelsius)) {
    return refused(
      'outside-range',
      `the density of water is known from ${lowCelsius} to ${highCelsius} C, not at ${Number(celsius.toFixed(2))} C`,
      'give a temperature in that range',
    );
  }
  const over = table.over.reduceRight((value, coefficient) => value * celsius + coefficient, 0);
  return parsed(over / (1 + table.under * celsius) / 1000);
}
