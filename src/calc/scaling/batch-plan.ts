/** A batch as it is made: what is weighed of what, on which balance, in which vessel, in which order. */

import { type Parsed, parsed, refused } from '../../problem.ts';
import type { Mixture } from '../mixture/picture.ts';
import { type BatchStage, massOf } from './batch-stages.ts';
import { type DrinkDeviation, drinkDeviation } from './drink-deviation.ts';
import { type RatioError, ratioError } from './ratio-error.ts';
import { roundedStage, type WeighedStage } from './rounded-stage.ts';
import { type Scaled, type ScaledStage, scaleStages } from './scale-stages.ts';
import { type BatchVessel, type VesselChoice, vesselFor } from './sub-batches.ts';
import type { BatchTarget } from './target.ts';
import type { WeighingBench } from './weighing-choice.ts';

export interface PlannedStage extends WeighedStage {
  readonly vessel: BatchVessel | undefined;
  /** True where it is put together in each bottle, and not in a vessel. */
  readonly isInBottle: boolean;
}

export interface BatchPlan {
  readonly stages: readonly PlannedStage[];
  readonly target: ScaledStage;
  /** Absent where the design has no drink. */
  readonly deviation: DrinkDeviation | undefined;
  readonly ratio: RatioError | undefined;
}

export interface BatchPlanInput {
  readonly stages: readonly BatchStage[];
  readonly mixture: Mixture;
  readonly target: BatchTarget;
  readonly loss: number;
  readonly bench: WeighingBench;
  /** The drink is put together in so many bottles. */
  readonly bottlesFilled?: number | undefined;
}

/**
 * The plan of a batch.
 *
 * Formula   as `scaleStages`, `vesselFor`, `weighingFor` and `roundedStage`
 * Input     stages with their mixture; target, loss; balances, vessels and the accepted error of the bench
 * Output    stages as weighed, what rounding does to the drink and to the ratio
 * Refuses   what those refuse
 */
export function batchPlan(input: BatchPlanInput): Parsed<BatchPlan> {
  const scaled = scaleStages({
    ...input,
    ...(input.bottlesFilled === undefined ? {} : { lossless: 'drink' }),
  });
  if (!scaled.ok) return scaled;
  const made = plannedStages(scaled.value, input);
  if (!made.ok) return made;
  return parsed({
    stages: made.value,
    target: scaled.value.target,
    deviation: drinkDeviation({ design: designOf(input, scaled.value), weighed: made.value }),
    ratio: ratioError(made.value),
  });
}

/** Stages that are not made in this batch stand with their own masses: only their ratios count. */
function designOf({ stages }: BatchPlanInput, scaled: Scaled) {
  return stages.map((stage) => {
    const made = scaled.stages.find((one) => one.stage === stage);
    const items = made?.items ?? stage.items.map((item) => ({ item, exactGrams: massOf(item) }));
    return { name: stage.name, items };
  });
}

function plannedStages(scaled: Scaled, input: BatchPlanInput): Parsed<readonly PlannedStage[]> {
  const planned: PlannedStage[] = [];
  const available = new Map<string, number>();
  for (const stage of scaled.stages) {
    const isInBottle = input.bottlesFilled !== undefined && stage.stage.name === 'drink';
    const vessel = isInBottle
      ? parsed<VesselChoice>({ vessel: undefined, count: input.bottlesFilled ?? 1 })
      : vesselOf(stage, input);
    if (!vessel.ok) return vessel;
    const { count } = vessel.value;
    if (count > 1e6) return refused('too-many', `${count} parts of ${stage.stage.name}`, 'make less at once');
    const weighed = roundedStage({ scaled: stage, subBatches: count, bench: input.bench, available });
    planned.push({ ...weighed, vessel: vessel.value.vessel, isInBottle });
    available.set(stage.stage.name, weighed.totalGrams);
    for (const { source, weighGrams } of weighed.items)
      if (source.kind === 'stage')
        available.set(source.stage, (available.get(source.stage) ?? 0) - weighGrams);
  }
  return parsed(planned);
}

function vesselOf({ stage, exactGrams, resolved, items }: ScaledStage, { bench }: BatchPlanInput) {
  const density = resolved.densityGramsPerMillilitre;
  const largest = items.toSorted((one, other) => other.exactGrams - one.exactGrams)[0];
  return vesselFor({
    stage: stage.name,
    millilitres: exactGrams / density,
    largestItem: { name: largest?.item.name ?? '', millilitres: (largest?.exactGrams ?? 0) / density },
    vessels: bench.vessels,
  });
}
