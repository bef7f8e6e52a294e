/** A batch as it is made: what is weighed of what, on which balance, in which vessel, in which order. */

import { type Parsed, parsed, refused } from '../../problem.ts';
import type { Mixture } from '../mixture/picture.ts';
import { type BatchStage, massOf } from './batch-stages.ts';
import { type DrinkDeviation, drinkDeviation } from './drink-deviation.ts';
import { type RatioError, ratioError } from './ratio-error.ts';
import { roundedStage, type WeighedStage } from './rounded-stage.ts';
import { type Scaled, type ScaledStage, scaleStages } from './scale-stages.ts';
import { type BatchStock, withStocks } from './small-items.ts';
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
  /** The same before anything is rounded or made a stock of. */
  readonly exact: readonly ScaledStage[];
  readonly target: ScaledStage;
  /** Absent where the design has no drink. */
  readonly deviation: DrinkDeviation | undefined;
  readonly ratio: RatioError | undefined;
  /** To be made first, for what no balance weighs well enough. */
  readonly stocks: readonly BatchStock[];
  /** Items that no balance weighs well enough, and nothing in their stage could carry. */
  readonly tooSmall: readonly { readonly stage: string; readonly item: string }[];
}

export interface BatchPlanInput {
  readonly stages: readonly BatchStage[];
  readonly mixture: Mixture;
  readonly target: BatchTarget;
  readonly loss: number;
  readonly bench: WeighingBench;
  /** 100 for at most 1:100 a step. */
  readonly largestDilution: number;
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
    leastOf: (stage) => leastEmulsion(stage, input.bench),
    ...(input.bottlesFilled === undefined ? {} : { lossless: 'drink' }),
  });
  if (!scaled.ok) return scaled;
  const made = plannedStages(scaled.value, input);
  if (!made.ok) return made;
  return parsed({
    ...made.value,
    exact: scaled.value.stages,
    target: scaled.value.target,
    deviation: drinkDeviation({ design: designOf(input, scaled.value), weighed: made.value.stages }),
    ratio: ratioError(made.value.stages),
  });
}

/** An emulsion is made so many times larger than its design at most, only to be weighed better. */
const mostTimesWritten = 20;

/** g of an emulsion of which every item can be weighed; no other stage is made larger than it is needed. */
export function leastEmulsion({ items }: BatchStage, { scales, weighing }: WeighingBench): number {
  const has = (role: string): boolean =>
    items.some(
      ({ source, role: own }) => source.kind === 'ingredient' && (own ?? source.entry.record.role) === role,
    );
  if (scales.length === 0 || !has('oil') || !has('emulsifier')) return 0;
  const least = Math.min(...scales.map(({ divisionGrams }) => divisionGrams / 2 / weighing));
  const whole = items.reduce((sum, item) => sum + massOf(item), 0);
  const wanted = Math.max(...items.map((item) => (massOf(item) > 0 ? (least * whole) / massOf(item) : 0)));
  return wanted > whole * mostTimesWritten ? 0 : wanted;
}

/** Stages that are not made in this batch stand with their own masses: only their ratios count. */
function designOf({ stages }: BatchPlanInput, scaled: Scaled) {
  return stages.map((stage) => {
    const made = scaled.stages.find((one) => one.stage === stage);
    const items = made?.items ?? stage.items.map((item) => ({ item, exactGrams: massOf(item) }));
    return { name: stage.name, items };
  });
}

type Made = Pick<BatchPlan, 'stages' | 'stocks' | 'tooSmall'>;

function plannedStages(scaled: Scaled, input: BatchPlanInput): Parsed<Made> {
  const stages: PlannedStage[] = [];
  const stocks: BatchStock[] = [];
  const tooSmall: { stage: string; item: string }[] = [];
  const available = new Map<string, number>();
  for (const stage of scaled.stages) {
    const { name } = stage.stage;
    const vessel = vesselOf(stage, input);
    if (!vessel.ok) return vessel;
    const { count } = vessel.value;
    if (count > mostParts) return refused('too-many', `${count} parts of ${name}`, 'make less at once');
    const stocked = withStocks({ ...input, scaled: stage, subBatches: count });
    if (!stocked.ok) return stocked;
    stocks.push(...stocked.value.stocks);
    tooSmall.push(...stocked.value.left.map((item) => ({ stage: name, item })));
    const weighed = roundedStage({
      scaled: stocked.value.scaled,
      subBatches: count,
      bench: input.bench,
      available,
    });
    stages.push({ ...weighed, vessel: vessel.value.vessel, isInBottle: isInBottle(stage, input) });
    available.set(name, weighed.totalGrams);
    for (const { source, weighGrams } of weighed.items)
      if (source.kind === 'stage')
        available.set(source.stage, (available.get(source.stage) ?? 0) - weighGrams);
  }
  return parsed({ stages, stocks, tooSmall });
}

const mostParts = 1e6;

const isInBottle = ({ stage }: ScaledStage, { bottlesFilled }: BatchPlanInput): boolean =>
  bottlesFilled !== undefined && stage.name === 'drink';

/** What is put together in the bottle is made as often as there are bottles. */
function vesselOf(scaled: ScaledStage, input: BatchPlanInput): Parsed<VesselChoice> {
  if (isInBottle(scaled, input)) return parsed({ vessel: undefined, count: input.bottlesFilled ?? 1 });
  const { stage, exactGrams, resolved, items } = scaled;
  const density = resolved.densityGramsPerMillilitre;
  const largest = items.toSorted((one, other) => other.exactGrams - one.exactGrams)[0];
  return vesselFor({
    stage: stage.name,
    millilitres: exactGrams / density,
    largestItem: { name: largest?.item.name ?? '', millilitres: (largest?.exactGrams ?? 0) / density },
    vessels: input.bench.vessels,
  });
}
