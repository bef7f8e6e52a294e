import { type Parsed, parsed, refused } from '../../problem.ts';
import { sucroseSolubility, sucroseViscosity } from '../../reference/solution/sugars.ts';

const ICE_POINT_KELVIN = 273.15;

/**
 * Viscosity of sucrose in water.
 *
 * Formula   log10 eta = 22.46 N - 0.114 + f (1.1 + 43.1 N^1.25), N = x/(1900 - 18 x), f = (30 - t)/(91 + t); below 30 C
 *           divided by 1 + 2.8e-6 x (30 - t)^2
 * Input     massFraction 0 to 0.75, temperatureKelvin 273.15 to 323.15
 * Output    mPa s
 * Refuses   what lies outside
 * Source    Genotelle 1978; the divisor fitted here to the NBS and CRC viscosities
 * Accuracy  4 % of the tables from 0 to 50 C, 3.6 % low in water itself
 * Example   sucroseViscosityAt({ massFraction: 0.4, temperatureKelvin: 298.15 }) -> 5.255052
 */
export function sucroseViscosityAt(given: {
  readonly massFraction: number;
  readonly temperatureKelvin: number;
}): Parsed<number> {
  const celsius = Number((given.temperatureKelvin - ICE_POINT_KELVIN).toFixed(9));
  const { lowCelsius, highCelsius, highMassFraction } = sucroseViscosity.valid;
  const inside =
    celsius >= lowCelsius &&
    celsius <= highCelsius &&
    given.massFraction >= 0 &&
    given.massFraction <= highMassFraction;
  if (!inside) {
    return refused(
      'outside-range',
      `the viscosity of sugar in water is known to ${highMassFraction * 100} % and from ${lowCelsius} to ${highCelsius} C, not for ${Number((given.massFraction * 100).toFixed(3))} % at ${celsius} C`,
      'give a syrup and a temperature in that range',
    );
  }
  const { slope, constant, thermal, power, correction, correctedBelowCelsius } = sucroseViscosity;
  const percent = given.massFraction * 100;
  const molar = percent / (1900 - 18 * percent);
  const warmth = (30 - celsius) / (91 + celsius);
  const plain = 10 ** (slope * molar + constant + warmth * (thermal[0] + thermal[1] * molar ** power));
  const cold = Math.max(0, correctedBelowCelsius - celsius);
  return parsed(plain / (1 + correction * percent * cold ** 2));
}

/**
 * Sucrose in water that can hold no more.
 *
 * Formula   64.18 + 0.1348 t + 0.000531 t^2, t in C
 * Input     temperatureKelvin 273.15 to 373.15
 * Output    mass fraction
 * Refuses   a temperature outside
 * Source    CRC Handbook, older editions
 * Accuracy  0.005 % of every row; the row printed 68.80 at 30 C is taken for 68.70
 * Example   sucroseSolubilityAt({ temperatureKelvin: 293.15 }) -> 0.67088
 */
export function sucroseSolubilityAt(given: { readonly temperatureKelvin: number }): Parsed<number> {
  const celsius = Number((given.temperatureKelvin - ICE_POINT_KELVIN).toFixed(9));
  const { lowCelsius, highCelsius } = sucroseSolubility.valid;
  if (!(celsius >= lowCelsius && celsius <= highCelsius)) {
    return refused(
      'outside-range',
      `the solubility of sugar is known from ${lowCelsius} to ${highCelsius} C, not at ${celsius} C`,
      'give a temperature in that range',
    );
  }
  return parsed(sucroseSolubility.byPowerOfCelsius.reduceRight((value, c) => value * celsius + c, 0) / 100);
}
