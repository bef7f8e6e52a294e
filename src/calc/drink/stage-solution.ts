/** A stage as a solution: its water, and each acid, salt and base on the water that is really there. */

import { type Parsed, parsed, refused } from '../../problem.ts';
import { acidSubstanceByName } from '../../reference/solution/acid-systems.ts';
import type { BookEntry } from '../book.ts';
import { isNamed } from '../density/blend.ts';
import { waterDensity } from '../density/water-density.ts';
import type { ResolvedStage } from '../mixture/picture.ts';
import { molarMass } from '../solution/molar-mass.ts';
import type { Component } from '../solution/prepare.ts';
import { acidSubstanceName, gramsPerMole } from '../solution/substance.ts';
import { solutionNameOf } from '../solution-portions.ts';

/** Of the bench's own water, per litre of it. */
export interface BenchWaterFigures {
  /** As CaCO3. */
  readonly alkalinityMilligramsPerLitre?: number | undefined;
  /** As CaCO3. */
  readonly hardnessMilligramsPerLitre?: number | undefined;
  readonly sodiumMilligramsPerLitre?: number | undefined;
}

export interface StageSolution {
  readonly litres: number;
  readonly waterGrams: number;
  /** Litres of the bench's own water in all of it. */
  readonly benchWaterLitres: number;
  /** mol of calcium bicarbonate that it brings. */
  readonly alkalineMoles: number;
  /** mol per kg of water; the alkalinity of the bench's water is among them. */
  readonly components: readonly Component[];
  readonly acidsAndSalts: readonly string[];
  /** Acids, salts and preservatives of which no acid data is known. */
  readonly unknown: readonly string[];
}

/**
 * The solution in a stage.
 *
 * Formula   mol/kg = g / M / kg of water; alkalinity as calcium bicarbonate in the share that is the bench's water
 * Input     a resolved stage; the bench's water; temperatureKelvin, at which the water was measured out
 * Output    litres, g of water, components
 * Refuses   a stage without water; what is a standard for pH meters
 * Source    conservation of mass
 */
export function stageSolution(given: {
  readonly stage: ResolvedStage;
  readonly water: BenchWaterFigures;
  readonly temperatureKelvin: number;
}): Parsed<StageSolution> {
  const { stage, water } = given;
  const density = waterDensity(given);
  if (!density.ok) return density;
  const gramsOf = (is: (entry: BookEntry) => boolean): number =>
    stage.substances.filter(({ entry }) => is(entry)).reduce((sum, { massGrams }) => sum + massGrams, 0);
  const waterGrams = gramsOf(({ record }) => record.role === 'water');
  if (!(waterGrams > 0)) {
    return refused(
      'no-water',
      `there is no water in the stage "${stage.name}"`,
      'give it water, or ask for the stage that has some',
    );
  }
  const benchWaterLitres = gramsOf(isBenchWater) / density.value / 1000;
  const components: Component[] = [];
  const unknown: string[] = [];
  for (const { entry, role, massGrams } of stage.substances) {
    if (massGrams <= 0 || role === 'water') continue;
    const name = solutionNameOf(entry) ?? '';
    const acid = acidSubstanceName(name);
    if (acid !== undefined && acidSubstanceByName[acid]?.standardOnly) return standardRefused(entry.name);
    if (acid === undefined) {
      if (countsForAcidity(entry) && name === '') unknown.push(entry.name);
      continue;
    }
    components.push(onWater(name, massGrams / (gramsPerMole(name) ?? 1), waterGrams));
  }
  const acidsAndSalts = components.map(({ substance }) => substance);
  const alkalineMoles =
    ((water.alkalinityMilligramsPerLitre ?? 0) / 1000 / molarMass('CaCO3')) * benchWaterLitres;
  if (alkalineMoles > 0) components.push(onWater('calcium bicarbonate', alkalineMoles, waterGrams));
  return parsed({
    litres: stage.volumeMillilitres / 1000,
    waterGrams,
    benchWaterLitres,
    alkalineMoles,
    components,
    acidsAndSalts,
    unknown,
  });
}

/** Water as it comes from the bench's tap; deionised water is another ingredient. */
export const isBenchWater = (entry: BookEntry): boolean => isNamed(entry, 'water');

const countsForAcidity = ({ record }: BookEntry): boolean =>
  record.role === 'acid' || record.role === 'salt' || record.role === 'preservative';

const onWater = (substance: string, moles: number, waterGrams: number): Component => ({
  substance,
  molesPerKilogramWater: (moles * 1000) / waterGrams,
});

const standardRefused = (name: string): Parsed<never> =>
  refused(
    'meter-standard',
    `${name} is a standard for pH meters and nothing to drink`,
    'take it out of the stage; a buffer salt for drinks is trisodium citrate dihydrate',
  );
