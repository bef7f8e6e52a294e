/** The design of a batch: its stages as masses, with those of other trials, at the strength that is asked for. */

import { answered } from '../calc/answered.ts';
import type { Book } from '../calc/book.ts';
import type { DrinkConditions } from '../calc/drink/stage-figures.ts';
import type { Mixture } from '../calc/mixture/picture.ts';
import { type BatchStage, batchStages, type ItemNote } from '../calc/scaling/batch-stages.ts';
import { type FinishedSyrup, finishedSyrup } from '../calc/scaling/finished-syrup.ts';
import { mixtureOfStages } from '../calc/scaling/re-resolve.ts';
import { type Stronger, strongerSyrup } from '../calc/scaling/stronger.ts';
import type { StageCard } from '../ledger/cards.ts';
import { drinkConditions } from '../ledger/drink-conditions.ts';
import type { Sources } from '../ledger/resolve.ts';
import { isSameName, otherStageOf } from '../ledger/stage-name.ts';
import { fail, type Problem } from '../problem.ts';
import { type OpenedDesign, resolveDesign } from './open-formula.ts';
import type { Here } from './open-ledger.ts';
import type { ScaleRequest } from './scale-request.ts';

export interface BatchDesign {
  readonly design: OpenedDesign;
  readonly sources: Sources;
  readonly warnings: readonly Problem[];
  /** As the file has it. */
  readonly asWritten: Mixture;
  /** What the batch is made by. */
  readonly stages: readonly BatchStage[];
  readonly mixture: Mixture;
  readonly stronger: Stronger | undefined;
  readonly finished: FinishedSyrup | undefined;
  readonly conditions: DrinkConditions;
  readonly cardOf: (stage: BatchStage) => StageCard | undefined;
}

export async function batchDesign(
  here: Here,
  design: OpenedDesign,
  { book, request }: { readonly book: Book; readonly request: ScaleRequest },
): Promise<BatchDesign> {
  const { mixture: asWritten, sources, warnings } = await resolveDesign(here, design, book);
  const temperatureKelvin = here.bench.temperature.inner;
  const cardThere = (stage: string, trial: number | undefined): StageCard | undefined => {
    const card = trial === undefined || isThis(design, trial) ? design.card : sources.trialOf(trial);
    return card?.stages.find(({ name }) => isSameName(name, stage));
  };
  const written = batchStages(asWritten, {
    noteOf: (stage, item, trial) => noteOf(cardThere(stage, trial), item),
    trialIn: (name) => otherStageOf(name)?.trial,
    stageOf: (trial, stage) =>
      sources.resolved.get(trial)?.mixture?.stages.find(({ name }) => name === stage),
  });
  const { strength } = request;
  const stronger =
    strength === undefined
      ? undefined
      : answered(strongerSyrup({ stages: written, strength, temperatureKelvin }));
  const strong = stronger?.stages ?? written;
  const finished = request.isFilled ? (finishedSyrup(strong) ?? noFilling()) : undefined;
  const stages = finished && isDrinkAsked(request) ? finished.stages : strong;
  const conditions = drinkConditions({ bench: here.bench, card: design.card });
  return {
    design,
    sources,
    warnings,
    asWritten,
    stages,
    mixture: mixtureOfStages(stages, temperatureKelvin),
    stronger,
    finished,
    conditions: {
      ...conditions,
      carbonDioxideVolumes: request.carbonDioxideVolumes ?? conditions.carbonDioxideVolumes,
      isCarbonationMeasured: request.carbonDioxideVolumes === undefined && conditions.isCarbonationMeasured,
    },
    cardOf: ({ name, ofTrial, stageThere }) => cardThere(stageThere ?? name, ofTrial),
  };
}

const isThis = ({ card }: OpenedDesign, trial: number): boolean =>
  card.kind === 'trial' && card.number === trial;

/** The target is the drink, so that it is put together in the bottles. */
export const isDrinkAsked = ({ target }: ScaleRequest): boolean =>
  target?.stage === undefined || isSameName(target.stage, 'drink');

const noFilling = (): never =>
  fail(
    'no-filling',
    'there is no drink here with water of its own and something else',
    'add a stage named drink, made of a syrup and water',
  );

function noteOf(card: StageCard | undefined, at: number): ItemNote {
  const item = card?.items[at];
  return {
    makesUp: item?.amount.makeUp ?? false,
    typed: item?.amount.written ?? '',
    isDrops: item?.amount.quantity.dimension === 'drops',
    lot: item?.lot,
    note: item?.note,
  };
}
