/** Checks of how a stage is made: the order of its steps, and what it weighs in the end. */

import { lossCaution } from '../calc/process/loss.ts';
import { orderCautions } from '../calc/process/order-cautions.ts';
import { type ProcessItem, type ProcessStage, type ProcessStep, warmths } from '../calc/process/steps.ts';
import { sum } from '../calc/sum.ts';
import { normaliseName } from '../reference/name.ts';
import { type Advice, adviceAt, adviceProblem } from './advice.ts';
import { benchDefaults } from './bench-defaults.ts';
import type { ItemCard, StageCard, StepCard } from './cards.ts';
import type { Check } from './check.ts';
import { itemTraits } from './item-traits.ts';
import { resolveStages, type Sources, type StagesOf } from './resolve.ts';
import { otherStageOf } from './stage-name.ts';

export const checkProcess: Check = (context) => {
  const { trials, formulas, batches } = context.ledger;
  return [...trials, ...formulas, ...batches].flatMap((card) =>
    card.isSound
      ? processAdvice(card, context.sources).map((advice) => adviceProblem(context, card, advice))
      : [],
  );
};

/** What is worth a word in how the stages of a file are made. */
export function processAdvice(of: StagesOf, sources: Sources): readonly Advice[] {
  const coldKelvin = (sources.bench?.temperature ?? benchDefaults.temperature).inner;
  const order = of.stages.flatMap((stage, place) =>
    mayMatter(stage, place, sources)
      ? orderCautions(processStage({ of, stage: place, sources }), coldKelvin)
      : [],
  );
  const weighed = of.stages.some(({ weighs }) => weighs) ? losses(of, sources) : [];
  return [...order, ...weighed].map((caution) => adviceAt(of.stages, caution));
}

/** A glance at the items; without steps only their order can matter, and only for preservatives. */
function mayMatter({ process, items }: StageCard, place: number, { book }: Sources): boolean {
  return items.some(({ name, role, amount }) => {
    const entry = book.find(name);
    const roles = entry?.composition.map(({ substance }) => role ?? substance.record.role) ?? [];
    if (roles.includes('preservative')) return true;
    if (process.length === 0) return false;
    if (!entry || place > 0) return true;
    const isPotent = entry.composition.some(({ substance }) => substance.record.potent);
    const isVolume = amount.makeUp && amount.quantity.dimension === 'volume';
    return isPotent || isVolume || roles.includes('antifoam');
  });
}

function losses(of: StagesOf, sources: Sources) {
  const { mixture } = resolveStages(of, sources);
  return of.stages.flatMap(({ name, weighs }) => {
    const stage = mixture?.stages.find((one) => one.name === name);
    if (!weighs || !stage) return [];
    const sumGrams = sum(stage.items.map(({ massGrams }) => massGrams));
    return lossCaution({ name, sumGrams, weighsGrams: weighs.inner });
  });
}

interface At {
  readonly of: StagesOf;
  readonly stage: number;
  readonly sources: Sources;
}

/** A stage as the cautions read it. */
export function processStage(at: At): ProcessStage {
  const card = at.of.stages[at.stage];
  return {
    name: card?.name ?? '',
    items: (card?.items ?? []).map((item) => processItem(item, at)),
    steps: (card?.process ?? []).map(processStep),
  };
}

function processItem(item: ItemCard, at: At): ProcessItem {
  const { of, sources } = at;
  const { amount } = item;
  const isStage = of.stages.some(({ name }) => normaliseName(name) === normaliseName(item.name));
  const entry = isStage ? undefined : sources.book.find(item.name);
  const makesUp = amount.makeUp && amount.quantity.dimension === 'volume';
  return {
    name: item.name,
    alsoCalled: entry ? [entry.name, ...(entry.like ?? []), ...(entry.record.aliases ?? [])] : [],
    traits: itemTraits(item, at),
    isStage: isStage || (!entry && otherStageOf(item.name) !== undefined),
    ...(makesUp ? { makesUpTo: amount.written } : {}),
  };
}

function processStep(step: StepCard): ProcessStep {
  const { sentence, does, what, into, note } = step;
  const temperature = step.to ?? step.at;
  return {
    does,
    words: [sentence, what, step.with, into, note].filter((words) => words !== undefined).join('; '),
    ...(temperature ? { temperatureKelvin: temperature.inner } : {}),
  };
}

/** Whether the stage of this name is ever warm while it is made. */
export function isWarmed(of: StagesOf, stage: string): boolean {
  const card = of.stages.find(({ name }) => name === stage);
  return card !== undefined && warmths(card.process.map(processStep)).some(({ isWarm }) => isWarm);
}
