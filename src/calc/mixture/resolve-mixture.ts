/** From the stages of a trial to the mass of every pure substance in every stage. */

import { type DensityModel, densityModel } from '../density/estimate.ts';
import { isMakeUp, type SolvedStage, type StageEquations } from './equations.ts';
import { DRINK, type StageOrder, stageOrder } from './graph.ts';
import { judgeStage } from './judge.ts';
import { overuseWarnings } from './overuse.ts';
import type { Mixture, MixtureFault, ResolvedStage, StageInput } from './picture.ts';
import { atItem, planStage } from './plan.ts';
import { resolvedStage } from './resolved-stage.ts';
import { type SolvedStages, solveStages } from './solve-stages.ts';

export interface MixtureInput {
  /** In the order in which they are made. */
  readonly stages: readonly StageInput[];
  /** g, the bench's own drop. */
  readonly dropGrams?: number;
  /** Of the bench; density estimates are made for it. */
  readonly temperatureKelvin: number;
}

export interface ResolvedMixture {
  /** Undefined where a fault is an error. */
  readonly mixture: Mixture | undefined;
  readonly faults: readonly MixtureFault[];
}

/**
 * The mixture.
 *
 * Formula   every stage: mass = sum of its items; shares, concentrations and make-up lines solved together, over all
 *           stages where amounts are counted in the drink; substances = sum of item mass x mass fraction
 * Input     stages with their items, in g, mL and the other inner units; the temperature of the bench in K
 * Output    for each stage mass g, density g/mL, volume mL, every item in g (as weighed where weighed; other shares and
 *           concentrations as planned; make-up lines adapt) and every pure substance in g, g/g and g/L
 * Refuses   what can't be solved: faults that name the stage and the item. A stage used beyond what was made is a warning
 * Source    conservation of mass
 * Example   resolveMixture({ stages: [oil 2 g, water to 50 g], temperatureKelvin: 293.15 }) -> water 48 g
 */
export function resolveMixture({ stages, dropGrams, temperatureKelvin }: MixtureInput): ResolvedMixture {
  const model = densityModel(temperatureKelvin);
  const order = stageOrder(stages);
  const context = { ...order, model, dropGrams };
  const plans = stages.map((_, index) => planStage(index, context));
  const planFaults = plans.flatMap(({ faults }) => faults);
  if (planFaults.length > 0) return { mixture: undefined, faults: planFaults };
  const drinkAt = order.placeOfStage(DRINK);
  const equations = plans.map((plan) => plan.equations);
  const planned = solveStages({ stages: equations, drinkAt, model });
  const faults = judged({ stages, equations, solved: planned, isWeighed: false });
  if (faults.length > 0) return { mixture: undefined, faults };
  const hasWeighed = stages.some(({ items }) => items.some((item) => item.weighedGrams !== undefined));
  if (!hasWeighed) return finished({ stages, order, model, planned, solved: planned });
  const weighed = equations.map((one, index) => asWeighed(one, stages[index], planned.stages[index]));
  const solved = solveStages({ stages: weighed, drinkAt, model });
  const weighedFaults = judged({ stages, equations: weighed, solved, isWeighed: true });
  if (weighedFaults.length > 0) return { mixture: undefined, faults: weighedFaults };
  return finished({ stages, order, model, planned, solved });
}

/** Weighed masses, and for what was not weighed the planned ones; volumes, drops and make-up lines stay as they are. */
function asWeighed(
  equations: StageEquations,
  stage: StageInput | undefined,
  planned: SolvedStage | undefined,
): StageEquations {
  const items = equations.items.map((item, index) => {
    const weighed = stage?.items[index]?.weighedGrams;
    if (weighed === undefined && (item.term.kind === 'fixed' || isMakeUp(item.term))) return item;
    const factor = weighed ?? planned?.grams[index] ?? 0;
    return { ...item, term: { kind: 'fixed' as const, factor, inDrink: false } };
  });
  return { ...equations, items, makes: undefined };
}

/** Faults of the solved stages; a stage made from a faulty one is not judged, since it can't be right. */
function judged(input: {
  readonly stages: readonly StageInput[];
  readonly equations: readonly StageEquations[];
  readonly solved: SolvedStages;
  readonly isWeighed: boolean;
}): readonly MixtureFault[] {
  const { stages, solved, isWeighed } = input;
  const faults: MixtureFault[] = [];
  const faulty = new Set<number>();
  for (const [index, equations] of input.equations.entries()) {
    const stage = stages[index];
    const one = solved.stages[index];
    if (!stage || !one) continue;
    const usesFaulty = equations.items.some(({ source }) => 'stage' in source && faulty.has(source.stage));
    const carried = solved.carried[index] ?? 0;
    const fault = usesFaulty ? undefined : judgeStage({ stage, equations, solved: one, carried, isWeighed });
    if (fault) faults.push(fault);
    if (fault || usesFaulty) faulty.add(index);
  }
  if (faults.length > 0 || solved.converged) return faults;
  const message = 'the amounts depend on each other, and no figures fit them all';
  const hint = 'give one of the amounts that count in the drink, or a volume, as a mass';
  return [atItem({ code: 'not-converged', message, hint }, stages.at(-1)?.name ?? '')];
}

function finished(input: {
  readonly stages: readonly StageInput[];
  readonly order: StageOrder;
  readonly model: DensityModel;
  readonly planned: SolvedStages;
  readonly solved: SolvedStages;
}): ResolvedMixture {
  const { stages, order, model, planned, solved } = input;
  const drinkAt = order.placeOfStage(DRINK);
  const drinkGrams = drinkAt === undefined ? 0 : (solved.stages[drinkAt]?.massGrams ?? 0);
  const earlier = new Map<string, ResolvedStage>();
  const resolved: ResolvedStage[] = [];
  for (const [index, stage] of stages.entries()) {
    const one = solved.stages[index];
    const plan = planned.stages[index];
    if (!one || !plan) continue;
    const shareInDrink = ((solved.carried[index] ?? 0) * drinkGrams) / one.massGrams;
    const shown = resolvedStage({ stage, solved: one, planned: plan, earlier, model, shareInDrink });
    if (!earlier.has(stage.name)) earlier.set(stage.name, shown);
    resolved.push(shown);
  }
  const drink = earlier.get(DRINK);
  return { mixture: { stages: resolved, drink }, faults: overuseWarnings(resolved) };
}
