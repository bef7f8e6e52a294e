import { type Parsed, parsed, refused } from '../../problem.ts';
import { neutralSubstances } from '../../reference/solution/volumes.ts';
import { waterDensity } from '../density/water-density.ts';
import { apparentVolume, isSugar, sugarVolume } from './apparent-volume.ts';
import type { Component } from './prepare.ts';
import { acidSubstanceName, gramsPerMole, neutralName } from './substance.ts';

/** How much of a substance, in one of the ways a person says it. */
export type Concentration =
  | { readonly unit: 'mol/kg water'; readonly value: number }
  | { readonly unit: 'mol/L'; readonly value: number }
  | { readonly unit: 'g/L'; readonly value: number }
  /** Of the solution by mass, 0 to 1. */
  | { readonly unit: 'mass fraction'; readonly value: number };

export interface Portion {
  readonly substance: string;
  readonly amount: Concentration;
}

/** What a litre of the solution holds. */
export interface Litre {
  readonly waterKilograms: number;
  readonly densityGramsPerMillilitre: number;
  readonly grams: readonly { readonly substance: string; readonly grams: number }[];
  /** Acids, salts and bases, on the water that is really there. */
  readonly components: readonly Component[];
  readonly sugarGrams: number;
}

const STEPS = 100;
const CLOSE = 1e-13;

/**
 * A litre of water with everything in it: how much water is left, and each acid on that water.
 *
 * Formula   1000 mL = water/rho + sum of g v, v the apparent specific volume; that of all sugar together is that of
 *           sucrose in the same water
 * Input     portions (`water` among them is what is left anyway), temperatureKelvin 273.15 to 333.15 with sugar
 * Output    per litre: waterKilograms, density in g/mL, grams of each, components in mol/kg of water
 * Refuses   a name that is not known, a negative amount, more solids than the litre holds
 * Source    sucrose density polynomial (Bettin and others 1998); densities at 5 % (CRC Handbook) for the rest
 * Accuracy  0.0002 g/mL for sugar and up to 1 % of acids and salts; 0.1 mL/g of what is only estimated
 * Example   dissolve({ portions: [{ substance: 'sucrose', amount: { unit: 'g/L', value: 100 } }], temperatureKelvin: 293.15 }) -> { waterKilograms: 0.936655, densityGramsPerMillilitre: 1.036655, .. }
 */
export function dissolve(given: {
  readonly portions: readonly Portion[];
  readonly temperatureKelvin: number;
}): Parsed<Litre> {
  const water = waterDensity(given);
  if (!water.ok) return water;
  const wrong = given.portions.map(faultOf).find((fault) => fault !== undefined);
  if (wrong) return wrong;
  const portions = given.portions.filter(({ substance }) => neutralName(substance) !== 'water');
  let [kilograms, density] = [water.value, water.value];
  for (let step = 0; step < STEPS; step += 1) {
    const grams = portions.map((portion) => gramsPerLitre(portion, kilograms, density));
    const room = roomFor({ portions, grams, kilograms, temperatureKelvin: given.temperatureKelvin });
    if (!room.ok) return room;
    const next = (1 - room.value / 1000) * water.value;
    const total = next + grams.reduce((sum, each) => sum + each, 0) / 1000;
    if (!(next > 0)) return noWater(grams);
    const settled = Math.abs(next - kilograms) + Math.abs(total - density) < CLOSE;
    [kilograms, density] = [next, total];
    if (settled) return parsed(litreOf({ portions, grams, kilograms, density }));
  }
  return noWater([]);
}

function noWater(grams: readonly number[]): Parsed<never> {
  const total = grams.reduce((sum, each) => sum + each, 0);
  return refused(
    'no-water-left',
    `${Number(total.toPrecision(4))} g of solids leave no water in a litre`,
    'give less of them',
  );
}

function faultOf({ substance, amount }: Portion): Parsed<never> | undefined {
  if (gramsPerMole(substance) === undefined) {
    return refused(
      'no-acid-data',
      `there is no acid data for "${substance}", nor is it known to leave the pH alone`,
      'name an acid, a salt, a base or a sugar that is known, or leave it out',
    );
  }
  const most = amount.unit === 'mass fraction' ? 1 : Number.MAX_VALUE;
  if (amount.value >= 0 && amount.value <= most) return undefined;
  return refused(
    'not-an-amount',
    `${amount.value} ${amount.unit} of ${substance} is not an amount`,
    'give an amount from 0 upwards',
  );
}

function gramsPerLitre({ substance, amount }: Portion, kilograms: number, density: number): number {
  const molar = gramsPerMole(substance) ?? 0;
  switch (amount.unit) {
    case 'g/L':
      return amount.value;
    case 'mol/L':
      return amount.value * molar;
    case 'mol/kg water':
      return amount.value * molar * kilograms;
    case 'mass fraction':
      return amount.value * density * 1000;
  }
}

/** mL that everything but the water takes in the litre. */
function roomFor(given: {
  readonly portions: readonly Portion[];
  readonly grams: readonly number[];
  readonly kilograms: number;
  readonly temperatureKelvin: number;
}): Parsed<number> {
  let [sugar, rest] = [0, 0];
  given.portions.forEach(({ substance }, index) => {
    const grams = given.grams[index] ?? 0;
    if (isSugar(substance)) sugar += grams;
    else rest += grams * apparentVolume(substance);
  });
  if (sugar === 0) return parsed(rest);
  const volume = sugarVolume({
    massFraction: sugar / (sugar + given.kilograms * 1000),
    temperatureKelvin: given.temperatureKelvin,
  });
  return volume.ok ? parsed(rest + sugar * volume.value) : volume;
}

function litreOf(given: {
  readonly portions: readonly Portion[];
  readonly grams: readonly number[];
  readonly kilograms: number;
  readonly density: number;
}): Litre {
  const grams = given.portions.map(({ substance }, index) => ({
    substance,
    grams: given.grams[index] ?? 0,
  }));
  return {
    waterKilograms: given.kilograms,
    densityGramsPerMillilitre: given.density,
    grams,
    components: grams
      .filter(({ substance }) => acidSubstanceName(substance) !== undefined)
      .map(({ substance, grams: each }) => ({
        substance,
        molesPerKilogramWater: each / (gramsPerMole(substance) ?? 1) / given.kilograms,
      })),
    sugarGrams: grams
      .filter(({ substance }) => kindOf(substance) === 'sugar')
      .reduce((sum, { grams: each }) => sum + each, 0),
  };
}

function kindOf(substance: string): string | undefined {
  const name = neutralName(substance);
  return name === undefined ? undefined : neutralSubstances[name].kind;
}
