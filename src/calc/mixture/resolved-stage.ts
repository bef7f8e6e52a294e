/** A solved stage as the other calculators read it: items, pure substances, density. */

import type { Role } from '../../reference/ingredient.ts';
import type { BookEntry } from '../book.ts';
import { type DensityModel, estimateWords } from '../density/estimate.ts';
import { sum } from '../sum.ts';
import type { SolvedStage } from './equations.ts';
import type { ItemInput, ResolvedItem, ResolvedStage, ResolvedSubstance, StageInput } from './picture.ts';

export interface StageToShow {
  readonly stage: StageInput;
  readonly solved: SolvedStage;
  /** The same by the plan alone. */
  readonly planned: SolvedStage;
  /** Stages above it, by name. */
  readonly earlier: ReadonlyMap<string, ResolvedStage>;
  readonly model: DensityModel;
  /** g of it in the drink over g of it made. */
  readonly shareInDrink: number;
}

interface Heap {
  readonly entry: BookEntry;
  readonly role: Role;
  massGrams: number;
}

/** Masses in g, density in g/mL, volume in mL; the items add up to the stage, and so do the substances. */
export function resolvedStage(input: StageToShow): ResolvedStage {
  const { stage, solved, model } = input;
  const grams = stage.items.map((_, index) => Math.max(0, solved.grams[index] ?? 0));
  const massGrams = sum(grams);
  const heaps = substancesOf(stage.items, { grams, earlier: input.earlier });
  const measured = stage.densityGramsPerMillilitre;
  const density = measured ?? 1 / solved.specificVolume;
  return {
    name: stage.name,
    massGrams,
    densityGramsPerMillilitre: density,
    densityFrom: {
      measured: measured !== undefined,
      words:
        measured === undefined
          ? estimateWords({ blend: solved.blend, substances: heaps, model })
          : 'measured',
    },
    volumeMillilitres: massGrams / density,
    items: stage.items.map((item, index) =>
      resolvedItem(item, grams[index] ?? 0, input.planned.grams[index] ?? 0),
    ),
    substances: heaps.map((heap) => withShares(heap, { massGrams, density })),
    shareInDrink: input.shareInDrink,
  };
}

const resolvedItem = (item: ItemInput, massGrams: number, plannedGrams: number): ResolvedItem => ({
  name: item.name,
  role: item.role ?? (item.source.kind === 'ingredient' ? item.source.entry.record.role : 'other'),
  massGrams,
  plannedGrams: Math.max(0, plannedGrams),
  weighed: item.weighedGrams !== undefined,
  source: item.source,
});

function withShares(
  { entry, role, massGrams }: Heap,
  stage: { readonly massGrams: number; readonly density: number },
): ResolvedSubstance {
  const massFraction = massGrams / stage.massGrams;
  return {
    name: entry.name,
    role,
    entry,
    massGrams,
    massFraction,
    gramsPerLitre: massFraction * stage.density * 1000,
  };
}

/** Pure substances by name and role; an item's own role stands over the roles of all that comes with it. */
function substancesOf(
  items: readonly ItemInput[],
  context: { readonly grams: readonly number[]; readonly earlier: ReadonlyMap<string, ResolvedStage> },
): readonly Heap[] {
  const heaps = new Map<string, Heap>();
  const put = (entry: BookEntry, role: Role, massGrams: number): void => {
    const key = `${role} ${entry.name}`;
    const heap = heaps.get(key);
    if (heap) heap.massGrams += massGrams;
    else heaps.set(key, { entry, role, massGrams });
  };
  for (const [index, { source, role }] of items.entries()) {
    const grams = context.grams[index] ?? 0;
    if (source.kind === 'ingredient') {
      for (const { substance, massFraction } of source.entry.composition) {
        put(substance, role ?? substance.record.role, grams * massFraction);
      }
      continue;
    }
    const used = source.kind === 'other trial' ? source.stage : context.earlier.get(source.stage);
    for (const one of used?.substances ?? []) put(one.entry, role ?? one.role, grams * one.massFraction);
  }
  return [...heaps.values()];
}
