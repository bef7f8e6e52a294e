import { type Parsed, parsed, refused } from '../../problem.ts';
import { fadesBySugar, waterViscosity } from '../../reference/settling.ts';
import { sucroseViscosityAt } from '../solution/sugar-limits.ts';

const ICE_POINT_KELVIN = 273.15;

/**
 * Viscosity of water.
 *
 * Formula   log10(eta/eta20) = (20 - t)/(t + 96) [1.2364 - 1.37e-3 (20 - t) + 5.7e-6 (20 - t)^2]
 * Input     temperatureKelvin 273.15 to 323.15
 * Output    mPa s
 * Refuses   a temperature outside
 * Source    Kestin, Sokolov and Wakeham 1978 (from memory), to 1.0016 at 20 C
 * Example   waterViscosityAt({ temperatureKelvin: 298.15 }) -> 0.8898
 */
export function waterViscosityAt({
  temperatureKelvin,
}: {
  readonly temperatureKelvin: number;
}): Parsed<number> {
  const celsius = Number((temperatureKelvin - ICE_POINT_KELVIN).toFixed(9));
  const { at20, shift, coefficients, valid } = waterViscosity;
  if (!(celsius >= valid.lowCelsius && celsius <= valid.highCelsius))
    return refused(
      'outside-range',
      `the viscosity of water is known here from ${valid.lowCelsius} to ${valid.highCelsius} C, not at ${celsius} C`,
      'give a temperature in that range',
    );
  const below = 20 - celsius;
  const bracket = coefficients.reduceRight((value, c) => value * below + c, 0);
  return parsed(at20 * 10 ** ((below / (celsius + shift)) * bracket));
}

/**
 * Viscosity of sugar in water, right for water too.
 *
 * Formula   that of sucrose at the same mass fraction; below 20 % times 1 + (water / the equation at no sugar - 1)(1 - w/0.2)
 * Input     massFraction 0 to 0.75, temperatureKelvin 273.15 to 323.15
 * Output    mPa s
 * Refuses   what lies outside
 * Source    as `waterViscosityAt` and `sucroseViscosityAt`
 * Accuracy  0.2 % for water, 4 % with sugar; other sugars about as sucrose
 * Example   sugarWaterViscosity({ massFraction: 0.1, temperatureKelvin: 293.15 }) -> 1.343
 */
export function sugarWaterViscosity(given: {
  readonly massFraction: number;
  readonly temperatureKelvin: number;
}): Parsed<number> {
  const { massFraction, temperatureKelvin } = given;
  const [sugar, none] = [
    sucroseViscosityAt(given),
    sucroseViscosityAt({ massFraction: 0, temperatureKelvin }),
  ];
  const water = waterViscosityAt({ temperatureKelvin });
  if (!water.ok) return water;
  if (!sugar.ok) return sugar;
  if (!none.ok) return none;
  const left = Math.max(0, 1 - massFraction / fadesBySugar);
  return parsed(sugar.value * (1 + (water.value / none.value - 1) * left));
}
