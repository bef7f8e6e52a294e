/** From stages as typed to stages as equations, with every fault that can be seen before solving. */

import type { Fault } from '../../problem.ts';
import { type Blend, blendOf } from '../density/blend.ts';
import type { Dimension } from '../quantity.ts';
import { sum } from '../sum.ts';
import type { BlendSource, EquationItem, StageEquations, Total } from './equations.ts';
import { isFixed, isMakeUp } from './equations.ts';
import { drinkFault, sourceFault } from './graph.ts';
import type { ItemInput, ItemSource, MixtureFault, StageInput } from './picture.ts';
import { type Term, type TermContext, termOf } from './term.ts';

export interface PlannedStage {
  readonly equations: StageEquations;
  readonly faults: readonly MixtureFault[];
}

export interface PlanContext extends TermContext {
  readonly stages: readonly StageInput[];
}

const zero: Term = { kind: 'fixed', factor: 0, inDrink: false };

/** A stage as equations; a faulty item weighs nothing in them, and then the stage is not solved. */
export function planStage(stageAt: number, context: PlanContext): PlannedStage {
  const stage = context.stages[stageAt];
  if (!stage) return { equations: { items: [], measuredDensity: undefined, makes: undefined }, faults: [] };
  const faults: MixtureFault[] = [];
  const items = stage.items.map((item, itemAt): EquationItem => {
    const graphFault = sourceFault(item, stageAt, context) ?? drinkFault(item, stageAt, context);
    if (graphFault) faults.push(atItem(graphFault, stage.name, itemAt));
    const term = graphFault
      ? zero
      : plannedTerm(item, context, (fault) => faults.push(atItem(fault, stage.name, itemAt)));
    return { term, source: blendSource(item.source, context) };
  });
  const makes = totalOf(stage) ?? weighedTotal(stage);
  faults.push(...shapeFaults(stage, { items, makes }));
  const equations = {
    items: withPartsShared(items),
    measuredDensity: stage.densityGramsPerMillilitre,
    makes,
  };
  return { equations, faults };
}

export const atItem = (fault: Fault, stage: string, item?: number): MixtureFault => ({
  code: fault.code,
  severity: 'error',
  message: fault.message,
  hint: fault.hint,
  stage,
  ...(item === undefined ? {} : { item }),
});

/** Where the plan can't be turned into a mass but the item was weighed, the plan is what was weighed. */
function plannedTerm(item: ItemInput, context: TermContext, report: (fault: Fault) => void): Term {
  const term = termOf(item, context);
  if (term.ok) return term.value;
  if (item.weighedGrams === undefined) report(term.fault);
  return { ...zero, factor: item.weighedGrams ?? 0 };
}

function totalOf({ makes }: StageInput): Total | undefined {
  if (makes?.dimension === 'mass') return { kind: 'mass', amount: makes.inner };
  if (makes?.dimension === 'volume') return { kind: 'volume', amount: makes.inner };
  return undefined;
}

/** Shares or parts alone, every one of them weighed: what was weighed is what it makes. */
function weighedTotal({ items }: StageInput): Total | undefined {
  const isRelative = items.every(
    ({ amount }) => !amount.makeUp && !fixedKinds.has(amount.quantity.dimension),
  );
  const weighed = items.flatMap(({ weighedGrams }) => (weighedGrams === undefined ? [] : [weighedGrams]));
  if (!isRelative || weighed.length < items.length || items.length === 0) return undefined;
  return { kind: 'mass', amount: sum(weighed) };
}

const fixedKinds: ReadonlySet<Dimension> = new Set<Dimension>(['mass', 'volume', 'drops']);

/** Parts as shares of the stage. */
function withPartsShared(items: readonly EquationItem[]): readonly EquationItem[] {
  const all = items.reduce((total, { term }) => total + (term.kind === 'parts' ? term.factor : 0), 0);
  if (all === 0) return items;
  return items.map((item) =>
    item.term.kind === 'parts' ? { ...item, term: { ...item.term, factor: item.term.factor / all } } : item,
  );
}

function blendSource(source: ItemSource, { placeOfStage }: PlanContext): BlendSource {
  if (source.kind === 'ingredient') return { blend: blendOf(source.entry.composition) };
  if (source.kind === 'other trial') return { blend: blendOfStage(source.stage.substances) };
  return { stage: placeOfStage(source.stage) ?? -1 };
}

type WithSubstances = Extract<ItemSource, { kind: 'other trial' }>['stage']['substances'];

const blendOfStage = (substances: WithSubstances): Blend =>
  blendOf(substances.map(({ entry, massFraction }) => ({ substance: entry, massFraction })));

/** Faults of the stage as a whole: what kinds of amounts stand side by side. */
function shapeFaults(
  stage: StageInput,
  { items, makes }: { readonly items: readonly EquationItem[]; readonly makes: Total | undefined },
): readonly MixtureFault[] {
  if (stage.items.length === 0) {
    const message = `nothing goes into ${stage.name}`;
    return [atItem({ code: 'no-items', message, hint: 'add an item, such as water: 100 g' }, stage.name)];
  }
  const terms = items.map(({ term }) => term);
  const hasTotal = makes !== undefined;
  const faults = [
    ...makeUpFaults(stage, terms),
    ...partsFaults(stage, { terms, hasTotal }),
    ...makesFaults(stage),
  ];
  return faults.length > 0 ? faults : totalFaults(stage, { terms, hasTotal });
}

function makeUpFaults(stage: StageInput, terms: readonly Term[]): readonly MixtureFault[] {
  const places = terms.flatMap((term, index) => (isMakeUp(term) ? [index] : []));
  const written = (place: number | undefined): string => {
    const item = place === undefined ? undefined : stage.items[place];
    return item ? `${item.name}: ${item.amount.written}` : '';
  };
  return places.slice(1).map((place) =>
    atItem(
      {
        code: 'two-make-ups',
        message: `"${written(place)}" is the second line that makes ${stage.name} up, after "${written(places[0])}"`,
        hint: 'make up once, and give the other as an amount of its own',
      },
      stage.name,
      place,
    ),
  );
}

interface Shape {
  readonly terms: readonly Term[];
  readonly hasTotal: boolean;
}

function partsFaults(stage: StageInput, { terms, hasTotal }: Shape): readonly MixtureFault[] {
  const firstParts = terms.findIndex((term) => term.kind === 'parts');
  if (firstParts < 0) return [];
  const other = terms.findIndex((term) => term.kind !== 'parts');
  if (other >= 0) {
    const item = stage.items[other];
    const message = `"${item?.name}: ${item?.amount.written}" stands beside parts`;
    const hint = 'give every item of the stage in parts, or none';
    return [atItem({ code: 'parts-mixed', message, hint }, stage.name, other)];
  }
  if (hasTotal) return [];
  const message = `the parts of ${stage.name} do not say how much it makes`;
  return [atItem({ code: 'parts-without-makes', message, hint: 'add makes: 50 g' }, stage.name, firstParts)];
}

function makesFaults({ name, makes }: StageInput): readonly MixtureFault[] {
  if (!makes || makes.dimension === 'mass' || makes.dimension === 'volume') return [];
  const message = `"${makes.written}" is not what ${name} can make`;
  return [
    atItem({ code: 'wrong-kind', message, hint: 'give a mass or a volume, such as makes: 50 g' }, name),
  ];
}

function totalFaults(stage: StageInput, { terms, hasTotal }: Shape): readonly MixtureFault[] {
  if (hasTotal || terms.some((term) => isFixed(term) || isMakeUp(term))) return [];
  const message = `the items of ${stage.name} are all shares or concentrations, and nothing says how much it makes`;
  return [atItem({ code: 'no-total', message, hint: 'add makes: 50 g' }, stage.name)];
}
