import { type Parsed, parsed, refused } from '../../problem.ts';
import { sucroseDensityTable as table } from '../../reference/sucrose-density.ts';
import { waterDensity } from './water-density.ts';

const ICE_POINT_KELVIN = 273.15;
/** 5 C typed as Kelvin must not fall outside by its last bit. */
const CELSIUS_ROUNDING = 1e-9;

export interface SucroseSolution {
  /** Sucrose in sucrose and water, 0 to 1. */
  readonly massFraction: number;
  readonly temperatureKelvin: number;
}

/**
 * Density of sucrose in water.
 *
 * Formula   rho = rho_w(t) + sum over n of tau^n (k_n1 w + k_n2 w^2 + ...), tau = (t - 20) / 100, t in C, w mass fraction
 * Input     massFraction of sucrose 0 to 0.85, temperatureKelvin 278.15 to 333.15
 * Output    density, g/mL
 * Refuses   what lies outside; the measurements end at 0.70 and at 10 C, the published tables go further
 * Source    Bettin, Emmerich, Spieweck and Toth 1998 (ICUMSA SPS-4), with the water of Kell 1975
 * Example   sucroseDensity({ massFraction: 0.65, temperatureKelvin: 293.15 }) -> 1.31656
 */
export function sucroseDensity({ massFraction, temperatureKelvin }: SucroseSolution): Parsed<number> {
  const celsius = temperatureKelvin - ICE_POINT_KELVIN;
  const refusal = outside({ massFraction, celsius });
  if (refusal) return refusal;
  const water = waterDensity({ temperatureKelvin });
  if (!water.ok) return water;
  const tau = (celsius - table.referenceCelsius) / 100;
  let excess = 0;
  for (let power = table.byPowerOfTemperature.length - 1; power >= 0; power -= 1) {
    excess = excess * tau + polynomial(table.byPowerOfTemperature[power] ?? [], massFraction);
  }
  return parsed(water.value + excess / 1000);
}

/** k_1 w + k_2 w^2 + ... */
function polynomial(coefficients: readonly number[], massFraction: number): number {
  let value = 0;
  for (let index = coefficients.length - 1; index >= 0; index -= 1) {
    value = (value + (coefficients[index] ?? 0)) * massFraction;
  }
  return value;
}

function outside(at: {
  readonly massFraction: number;
  readonly celsius: number;
}): Parsed<number> | undefined {
  const { lowCelsius, highCelsius, highMassFraction } = table.valid;
  if (!(at.massFraction >= 0 && at.massFraction <= highMassFraction)) {
    return refused(
      'outside-range',
      `the density of sugar in water is known up to ${highMassFraction * 100} % of sucrose, not at ${Number((at.massFraction * 100).toFixed(3))} %`,
      'measure the density',
    );
  }
  const celsius = Number(at.celsius.toFixed(2));
  if (at.celsius >= lowCelsius - CELSIUS_ROUNDING && at.celsius <= highCelsius + CELSIUS_ROUNDING)
    return undefined;
  return refused(
    'outside-range',
    `the density of sugar in water is known from ${lowCelsius} to ${highCelsius} C, not at ${celsius} C`,
    'measure the density, or give a temperature in that range',
  );
}
