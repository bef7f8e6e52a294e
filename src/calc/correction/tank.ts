/** A tank as what was put into it: masses of its items, and what the meter and the titration show of it. */

import type { Role } from '../../reference/ingredient.ts';
import { stageAcidity } from '../drink/stage-acidity.ts';
import { type DrinkConditions, stageFigures } from '../drink/stage-figures.ts';
import type { ItemInput, ItemSource, Mixture, ResolvedItem, ResolvedStage } from '../mixture/picture.ts';
import { resolveMixture } from '../mixture/resolve-mixture.ts';
import { acidCorrectedBrix } from '../solution/refractometer.ts';
import { grams } from '../typed-quantity.ts';

/** What can be added to a tank: an ingredient, or an emulsion that was made before. */
export interface TankItem {
  readonly name: string;
  readonly role: Role;
  readonly source: ItemSource;
  readonly massGrams: number;
}

/** An emulsion is added whole; a syrup is taken apart into what it was made of. */
function isKeptWhole(stage: ResolvedStage): boolean {
  return stage.items.some(
    ({ role, source }) => source.kind === 'ingredient' && (role === 'oil' || role === 'emulsifier'),
  );
}

/**
 * The items of a stage, those of earlier stages in it taken apart, emulsions left whole; the same item once.
 *
 * Formula   mass = mass of the stage used x share of the item in that stage
 * Output    items in the order in which they go in, g
 */
export function tankItems(stage: ResolvedStage, mixture: Mixture): readonly TankItem[] {
  const items = new Map<string, TankItem>();
  for (const item of stage.items.flatMap((one) => takenApart(one, 1, mixture))) {
    const there = items.get(item.name);
    items.set(item.name, there ? { ...there, massGrams: there.massGrams + item.massGrams } : item);
  }
  return [...items.values()].filter(({ massGrams }) => massGrams > 0);
}

function takenApart(item: ResolvedItem, share: number, mixture: Mixture): readonly TankItem[] {
  const { name, role, source } = item;
  const massGrams = item.massGrams * share;
  if (source.kind === 'ingredient') return [{ name, role, source, massGrams }];
  const stage =
    source.kind === 'other trial' ? source.stage : mixture.stages.find((one) => one.name === source.stage);
  if (!stage) return [];
  if (isKeptWhole(stage) || source.kind === 'other trial')
    return [{ name, role, source: { kind: 'other trial', stage }, massGrams }];
  return stage.items.flatMap((one) => takenApart(one, massGrams / stage.massGrams, mixture));
}

/** The stage that such items make together. */
export function tankStage(
  name: string,
  items: readonly TankItem[],
  temperatureKelvin: number,
): ResolvedStage {
  const inputs = items
    .filter(({ massGrams }) => massGrams > 0)
    .map(
      (item): ItemInput => ({
        name: item.name,
        source: item.source,
        amount: { quantity: grams(item.massGrams), makeUp: false, inDrink: false, written: '' },
        ...(item.source.kind === 'ingredient' ? { role: item.role } : {}),
      }),
    );
  const { mixture, faults } = resolveMixture({ stages: [{ name, items: inputs }], temperatureKelvin });
  const [stage] = mixture?.stages ?? [];
  if (!stage) throw new Error(`items of masses did not resolve: ${faults[0]?.message}`);
  return stage;
}

export interface TankReadings {
  /** As a refractometer shows it, acid included. */
  readonly brix: number;
  /** Titratable, g/L as citric acid; 0 where nothing in it is acid. */
  readonly acid: number;
  readonly ph: number | undefined;
  readonly densityGramsPerMillilitre: number;
}

/**
 * What a tank shows.
 *
 * Formula   Brix = sugar and what a refractometer takes of the acid for sugar; titratable acidity to pH 8.2
 * Input     a stage; temperature and water of the bench
 * Output    Brix, acid in g/L as citric, pH, density in g/mL; undefined where no source covers it
 * Source    as named with each figure
 */
export function tankReadings(stage: ResolvedStage, conditions: DrinkConditions): TankReadings | undefined {
  const figures = stageFigures(stage, { ...conditions, carbonDioxideVolumes: undefined });
  const density = stage.densityGramsPerMillilitre;
  if (!figures.solution.ok) return undefined;
  const acidity = figures.hasAcids
    ? stageAcidity({ solution: figures.solution.value, temperatureKelvin: conditions.temperatureKelvin })
    : undefined;
  if (acidity && !acidity.ok) return undefined;
  const acid = Math.max(0, acidity?.value.titratableAsCitric ?? 0);
  const percent = acid / density / 10;
  const corrected = acidCorrectedBrix({ brix: 0, citricPercent: percent });
  return {
    brix: figures.brix + (corrected.ok ? percent - corrected.value : 0),
    acid,
    ph: acidity?.value.ph,
    densityGramsPerMillilitre: density,
  };
}
