/**
 * The stages of a batch: every item with its mass, so that nothing of how it was typed is left to solve. Stages of
 * other trials that are used become stages of the batch, made before those that use them.
 */

import type { ItemInput, Mixture, ResolvedItem, ResolvedStage, StageInput } from '../mixture/picture.ts';
import { grams } from '../typed-quantity.ts';

/** What is known of an item beside its mass. */
export interface ItemNote {
  readonly makesUp: boolean;
  /** The amount as typed: `12 drops`. */
  readonly typed: string;
  readonly isDrops: boolean;
  readonly lot?: string | undefined;
  readonly note?: string | undefined;
}

export interface BatchItem extends ItemInput {
  readonly about: ItemNote;
}

export interface BatchStage extends StageInput {
  readonly items: readonly BatchItem[];
  /** The number of the trial that it is a stage of, where that is another one. */
  readonly ofTrial?: number | undefined;
  /** Its name there. */
  readonly stageThere?: string | undefined;
}

/** What the files of the ledger say beside the mixture. `trial` is absent for the design itself. */
export interface Designs {
  readonly noteOf: (stage: string, item: number, trial: number | undefined) => ItemNote;
  /** The trial in `emulsion of 13`. */
  readonly trialIn: (item: string) => number | undefined;
  readonly stageOf: (trial: number, stage: string) => ResolvedStage | undefined;
}

/**
 * A resolved mixture as stages of masses.
 *
 * Formula   every item keeps its mass; a stage of another trial becomes a stage of its own, above the one that uses it
 * Input     a mixture; what its files say beside it
 * Output    stages in the order in which they are made
 * Example   drink with "emulsion of 13" -> emulsion of 13, drink
 */
export function batchStages(mixture: Mixture, designs: Designs): readonly BatchStage[] {
  const stages: BatchStage[] = [];
  for (const stage of mixture.stages) put(stage, undefined, { stages, designs });
  return stages;
}

interface Putting {
  readonly stages: BatchStage[];
  readonly designs: Designs;
}

const nameHere = (stage: string, trial: number | undefined): string =>
  trial === undefined ? stage : `${stage} of ${trial}`;

function put(stage: ResolvedStage, trial: number | undefined, putting: Putting): void {
  const { stages, designs } = putting;
  const name = nameHere(stage.name, trial);
  if (stages.some((one) => one.name === name)) return;
  const items = stage.items.map((item, place) => {
    const used = usedStage(item, trial, designs);
    if (used) put(used.stage, used.trial, putting);
    const called = used ? nameHere(used.stage.name, used.trial) : item.name;
    const below = item.source.kind === 'stage' ? nameHere(item.source.stage, trial) : called;
    return batchItem(item, below, designs.noteOf(stage.name, place, trial));
  });
  stages.push({
    name,
    items,
    ...(stage.densityFrom.measured ? { densityGramsPerMillilitre: stage.densityGramsPerMillilitre } : {}),
    ...(trial === undefined ? {} : { ofTrial: trial, stageThere: stage.name }),
  });
}

/** A stage of another trial that an item is; those of the design itself are put anyway. */
function usedStage(
  { name, source }: ResolvedItem,
  trial: number | undefined,
  { trialIn, stageOf }: Designs,
): { readonly stage: ResolvedStage; readonly trial: number } | undefined {
  const other = source.kind === 'other trial' ? trialIn(name) : trial;
  if (source.kind === 'ingredient' || other === undefined) return undefined;
  const stage = source.kind === 'other trial' ? source.stage : stageOf(other, source.stage);
  return stage && { stage, trial: other };
}

function batchItem(item: ResolvedItem, name: string, about: ItemNote): BatchItem {
  const { source, massGrams } = item;
  const own = source.kind === 'ingredient' ? source.entry.record.role : 'other';
  return {
    name,
    source: source.kind === 'ingredient' ? source : { kind: 'stage', stage: name },
    amount: {
      quantity: grams(massGrams),
      makeUp: false,
      inDrink: false,
      written: about.typed,
    },
    about,
    ...(item.role === own ? {} : { role: item.role }),
  };
}

/** An item of a new mass. */
export const withMass = (item: BatchItem, massGrams: number): BatchItem => ({
  ...item,
  amount: { ...item.amount, quantity: grams(massGrams) },
});

export const massOf = (item: BatchItem): number => item.amount.quantity.inner;
