import { type Parsed, parsed, refused } from '../../problem.ts';
import { norrishConstants, norrishValid } from '../../reference/solution/water-activity.ts';
import { molarMass } from './molar-mass.ts';
import { type Solute, solutesOf } from './solutes.ts';

export interface WaterActivityGiven {
  readonly waterGrams: number;
  /** Everything else by name and grams; hydrates count as weighed. */
  readonly substances: readonly { readonly substance: string; readonly grams: number }[];
  readonly temperatureKelvin?: number;
}

export interface WaterActivity {
  readonly waterActivity: number;
  /** The same by Ross's product of each solute alone in all the water: how far two published models agree. */
  readonly byRoss: number;
  /** Names counted by their molecules alone, no constant being known. */
  readonly ideal: readonly string[];
  readonly fromMemory: readonly string[];
}

/**
 * Water activity of a mixture.
 *
 * Formula   ln a = ln X + K (o/T) X_s^2 - sum of f n/n(water), X water among the molecules, K = sum of x K over the
 *           solutes (x their share of the solute), o = 298.15 K; n moles of a salt's ions, f their osmotic coefficient
 * Input     waterGrams, grams of everything else, temperatureKelvin 258.15 to 323.15 (25 C where it is left out)
 * Output    waterActivity, the same by Ross, what was counted without a constant
 * Refuses   no water, an unknown substance, a temperature outside, less than 0.49
 * Source    Norrish 1966 for one solute; Ferro Fontan, Chirife and Boquet 1981 for mixtures; Ross 1975
 * Accuracy  sucrose 0.001, glucose and fructose 0.002, glycerol and mixtures 0.01, against published tables. It says
 *           which microbes find water enough; not that a product keeps: pH, preservative, heat and hygiene decide too
 * Example   waterActivity({ waterGrams: 35, substances: [{ substance: 'sucrose', grams: 65 }] }) -> { waterActivity: 0.865414, .. }
 */
export function waterActivity(given: WaterActivityGiven): Parsed<WaterActivity> {
  const kelvin = given.temperatureKelvin ?? norrishValid.referenceKelvin;
  if (!(given.waterGrams > 0)) {
    return refused('no-water', 'without water there is no water activity', 'give the water of the mixture');
  }
  if (!(kelvin >= norrishValid.lowKelvin && kelvin <= norrishValid.highKelvin)) {
    return refused(
      'outside-range',
      `water activity is reckoned from -15 to 50 C, not at ${Number((kelvin - 273.15).toFixed(2))} C`,
      'give a temperature in that range',
    );
  }
  const water = given.waterGrams / molarMass('H2O');
  const solutes = solutesOf(given.substances, given.waterGrams);
  if (!solutes.ok) return solutes;
  const value = Math.exp(logActivity(water, solutes.value, kelvin));
  if (value < norrishValid.lowWaterActivity) {
    return refused(
      'outside-range',
      `a water activity of ${value.toFixed(2)} lies below the ${norrishValid.lowWaterActivity} to which the model was compared`,
      'give more water',
    );
  }
  let ross = 0;
  for (const solute of solutes.value) ross += logActivity(water, [solute], kelvin);
  const names = (test: (solute: Solute) => boolean): string[] =>
    solutes.value.filter(test).map(({ name }) => name);
  return parsed({
    waterActivity: value,
    byRoss: Math.exp(ross),
    ideal: names(({ constant, ions }) => constant === undefined && ions === 1),
    fromMemory: names(({ constant }) => norrishConstants[constant ?? '']?.fromMemory === true),
  });
}

function logActivity(waterMoles: number, solutes: readonly Solute[], kelvin: number): number {
  const particles = solutes.reduce((sum, { particles: each }) => sum + each, 0);
  const salts = solutes.reduce((sum, { osmotic }) => sum + osmotic, 0) / waterMoles;
  if (particles === 0) return -salts;
  const share = particles / (particles + waterMoles);
  let constant = 0;
  for (const solute of solutes) {
    const { k, term = 0 } = norrishConstants[solute.constant ?? ''] ?? { k: 0 };
    constant += (solute.particles / particles) * k * (1 + term * share);
  }
  return Math.log1p(-share) + constant * (norrishValid.referenceKelvin / kelvin) * share * share - salts;
}
