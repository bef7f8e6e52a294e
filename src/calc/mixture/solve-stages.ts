/** All stages of a trial together: what is counted in the finished drink runs against the order of the stages. */

import { addedSpecificVolume, type DensityModel, specificVolume } from '../density/estimate.ts';
import type { SolvedStage, StageEquations } from './equations.ts';
import { solveStage } from './solve-stage.ts';

export interface StagesInput {
  readonly stages: readonly StageEquations[];
  /** Place of the stage named `drink`. */
  readonly drinkAt: number | undefined;
  readonly model: DensityModel;
}

export interface SolvedStages {
  readonly stages: readonly SolvedStage[];
  /** g of each stage in a g of the finished drink. */
  readonly carried: readonly number[];
  readonly converged: boolean;
}

/** What one pass hands to the next, for each stage. */
interface Memory {
  readonly correction: number;
  readonly carried: number;
  readonly specificVolume: number;
  readonly waterShare: number;
}

const MOST_PASSES = 400;
/** Relative change of a pass under which the passes end. */
const SETTLED = 1e-13;
/** What is still taken where rounding keeps the last digits moving. */
const SETTLED_ENOUGH = 1e-11;
/** From here on only half of each change is taken, in case the passes swing. */
const DAMPED_FROM = 30;

/**
 * The masses of every stage.
 *
 * Formula   each stage by `solveStage`; the excess of its volume over plain adding, and how much of it the drink holds,
 *           come from the pass before, until no pass changes them by more than 1e-13
 * Input     the stages as equations, in the order in which they are made
 * Output    solved stages, and g of each in a g of the finished drink
 */
export function solveStages(input: StagesInput): SolvedStages {
  let memory: readonly Memory[] = input.stages.map(() => unknown);
  let change = Number.POSITIVE_INFINITY;
  let stages: readonly SolvedStage[] = [];
  let carried: readonly number[] = [];
  for (let pass = 0; pass < MOST_PASSES && change > SETTLED; pass += 1) {
    stages = onePass(input, { memory, first: pass === 0 });
    carried = carriedInto(input, stages);
    const found = stages.map((stage, index) => memoryOf(stage, carried[index] ?? 0, input.model));
    change = changeBetween(memory, found);
    memory = pass < DAMPED_FROM ? found : found.map((one, index) => halfWay(memory[index] ?? one, one));
  }
  return { stages, carried, converged: change <= SETTLED_ENOUGH };
}

const unknown: Memory = { correction: 0, carried: 0, specificVolume: 1, waterShare: 0 };

function onePass(
  { stages, drinkAt, model }: StagesInput,
  { memory, first }: { readonly memory: readonly Memory[]; readonly first: boolean },
): readonly SolvedStage[] {
  const drink = first || drinkAt === undefined ? undefined : memory[drinkAt];
  const earlier: SolvedStage[] = [];
  for (const [index, stage] of stages.entries()) {
    const { correction, carried, specificVolume: lastVolume } = memory[index] ?? unknown;
    earlier.push(solveStage({ stage, earlier, model, lastVolume, correction, carried, drink }));
  }
  return earlier;
}

/** g of each stage in a g of the drink, through every stage that carries it there. */
function carriedInto({ stages, drinkAt }: StagesInput, solved: readonly SolvedStage[]): readonly number[] {
  const carried = stages.map(() => 0);
  if (drinkAt === undefined) return carried;
  carried[drinkAt] = 1;
  for (let user = drinkAt; user >= 0; user -= 1) {
    const mass = solved[user]?.massGrams ?? 0;
    const share = carried[user] ?? 0;
    if (share === 0 || mass === 0) continue;
    for (const [index, { source }] of (stages[user]?.items ?? []).entries()) {
      if (!('stage' in source)) continue;
      const used = ((solved[user]?.grams[index] ?? 0) / mass) * share;
      carried[source.stage] = (carried[source.stage] ?? 0) + used;
    }
  }
  return carried;
}

const memoryOf = (stage: SolvedStage, carried: number, model: DensityModel): Memory => ({
  correction: specificVolume(stage.blend, model) - addedSpecificVolume(stage.blend, model),
  carried,
  specificVolume: stage.specificVolume,
  waterShare: stage.blend.waterShare,
});

function changeBetween(before: readonly Memory[], after: readonly Memory[]): number {
  let most = 0;
  for (const [index, now] of after.entries()) {
    const then = before[index] ?? unknown;
    most = Math.max(
      most,
      relative(then.carried, now.carried),
      relative(then.specificVolume, now.specificVolume),
      Math.abs(then.waterShare - now.waterShare),
    );
  }
  return Number.isNaN(most) ? Number.POSITIVE_INFINITY : most;
}

const relative = (before: number, after: number): number =>
  before === after ? 0 : Math.abs(after - before) / Math.max(Math.abs(before), Math.abs(after));

function halfWay(before: Memory, after: Memory): Memory {
  const middle = (one: number, other: number): number => one + (other - one) / 2;
  return {
    correction: middle(before.correction, after.correction),
    carried: middle(before.carried, after.carried),
    specificVolume: middle(before.specificVolume, after.specificVolume),
    waterShare: middle(before.waterShare, after.waterShare),
  };
}
