/** What a panel on a bottle asks for: energy, sugar, sodium. */

import { type EnergyKind, energyFactors, energyKinds, noEnergyFactor } from '../../reference/energy.ts';
import { atomicWeights } from '../../reference/solution/ions.ts';
import type { BookEntry } from '../book.ts';
import { isNamed } from '../density/blend.ts';
import type { ResolvedStage, ResolvedSubstance } from '../mixture/picture.ts';
import { molarMass } from '../solution/molar-mass.ts';
import type { BenchWaterFigures, StageSolution } from './stage-solution.ts';

export interface Nutrition {
  /** Per 100 mL. */
  readonly kilojoules: number;
  readonly kilocalories: number;
  /** g per 100 mL, mono- and disaccharides without their water of crystals. */
  readonly sugarGrams: number;
  /** mg per 100 mL, that of the bench's water included where it is known. */
  readonly sodiumMilligrams: number;
  /** Present, and without a factor. */
  readonly withoutFactor: readonly string[];
}

/**
 * Energy, sugar and sodium of a drink.
 *
 * Formula   sum of g x factor; sodium by the formulas of what is in it
 * Input     a resolved stage, its solution, the sodium of the bench's water
 * Output    per 100 mL: kJ, kcal, g of sugar, mg of sodium
 * Source    Regulation (EU) 1169/2011, Annex XIV
 * Accuracy  the factors are conventions; a flavour oil of some mg is not counted
 * Example   100 g/L of sucrose and 2 g/L of citric acid -> 172.6 kJ, 40.6 kcal
 */
export function nutritionOf(given: {
  readonly stage: ResolvedStage;
  readonly benchWaterLitres: StageSolution['benchWaterLitres'];
  readonly water: BenchWaterFigures;
}): Nutrition {
  const { stage, water } = given;
  let [kilojoules, kilocalories, sugarGrams, sodium] = [0, 0, 0, 0];
  for (const substance of stage.substances) {
    const { entry, massGrams } = substance;
    const factor = energyFactors[kindOf(substance)];
    const dry = massGrams * dryShare(entry);
    kilojoules += dry * factor.kilojoules;
    kilocalories += dry * factor.kilocalories;
    if (entry.record.role === 'sugar') sugarGrams += dry;
    sodium += massGrams * sodiumShare(entry) * 1000;
  }
  sodium += (water.sodiumMilligramsPerLitre ?? 0) * given.benchWaterLitres;
  const hundreds = stage.volumeMillilitres / 100;
  return {
    kilojoules: kilojoules / hundreds,
    kilocalories: kilocalories / hundreds,
    sugarGrams: sugarGrams / hundreds,
    sodiumMilligrams: sodium / hundreds,
    withoutFactor: stage.substances
      .filter(({ entry, massGrams }) => massGrams > 0 && noEnergyFactor.some((name) => isNamed(entry, name)))
      .map(({ name }) => name),
  };
}

function kindOf({ entry }: ResolvedSubstance): EnergyKind {
  const named = [entry.name, ...(entry.like ?? [])].find((name) => Object.hasOwn(energyKinds, name));
  if (named !== undefined) return energyKinds[named] ?? 'none';
  const { role } = entry.record;
  if (role === 'sugar') return 'carbohydrate';
  return role === 'acid' ? 'organic acid' : 'none';
}

/** g without the water of crystals, of a g. */
export function dryShare({ record }: BookEntry): number {
  const { formula } = record;
  if (!record.hydrateOf || formula === undefined) return 1;
  return 1 - (record.hydrateOf.waterPerMolecule * molarMass('H2O')) / molarMass(formula);
}

/** g of sodium in a g, by the formula. */
export function sodiumShare({ record }: BookEntry): number {
  const { formula } = record;
  if (formula === undefined || !formula.includes('Na')) return 0;
  let atoms = 0;
  for (const part of formula.split('.')) {
    const [, times = '', rest = ''] = /^(\d*)(.*)$/.exec(part) ?? [];
    for (const [, count] of rest.matchAll(/Na(?![a-z])(\d*)/g)) {
      atoms += Number(times || 1) * Number(count || 1);
    }
  }
  const whole = molarMass(formula);
  return Number.isFinite(whole)
    ? (atoms * (atomicWeights['Na'] ?? 0)) / whole
    : sodiumByRecord(record, atoms);
}

/** Formulas with atoms whose weight is not kept here go by the molar mass of the record. */
function sodiumByRecord({ figures }: BookEntry['record'], atoms: number): number {
  const molar = figures['molar mass']?.value;
  return molar === undefined ? 0 : (atoms * (atomicWeights['Na'] ?? 0)) / molar;
}
