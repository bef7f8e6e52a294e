/** How much of each stage a batch takes: no more of an emulsion than goes into the drink. */

import type { Mixture, ResolvedStage } from '../calc/mixture/picture.ts';
import { parseQuantity } from '../calc/parse-quantity.ts';
import { isSameName, otherStageOf } from '../ledger/stage-name.ts';
import { fail } from '../problem.ts';
import type { Gathered } from './give-gather.ts';

export interface GivenStage {
  /** The trial that it goes along from. */
  readonly trial: number | undefined;
  readonly stage: ResolvedStage;
  /** By what the masses of the file are multiplied. */
  readonly factor: number;
}

/** Stages of other trials first, each before it is used. */
export function stagesFor(gathered: Gathered, typed: string | undefined): readonly GivenStage[] {
  const all = [
    ...gathered.along.flatMap(({ card, mixture }) => staged(mixture, card.number)),
    ...staged(gathered.mixture, undefined),
  ];
  const ordered = all.length > 1 ? inOrder(all) : all;
  if (typed === undefined) return ordered.map((one) => ({ ...one, factor: 1 }));
  const top = ordered.find(({ stage }) => stage === topOf(gathered.mixture));
  return top ? scaled(ordered, top, factorFor(top.stage, typed)) : [];
}

type Staged = Omit<GivenStage, 'factor'>;

const staged = ({ stages }: Mixture, trial: number | undefined): readonly Staged[] =>
  stages.map((stage) => ({ trial, stage }));

/** The drink, or else the last stage made. */
export const topOf = ({ drink, stages }: Mixture): ResolvedStage | undefined => drink ?? stages.at(-1);

function factorFor(stage: ResolvedStage, typed: string): number {
  const read = parseQuantity(typed, ['mass', 'volume']);
  if (!read.ok) return fail(read.fault.code, `--batch: ${read.fault.message}`, read.fault.hint);
  const { dimension, inner } = read.value;
  if (inner <= 0)
    return fail('not-positive', `--batch: "${typed}" is nothing`, 'give an amount such as 10 L');
  return inner / (dimension === 'mass' ? stage.massGrams : stage.volumeMillilitres);
}

/** Whether an item of one stage is the other stage. */
const isUse = (user: Staged, at: number, used: Staged): boolean => {
  const source = user.stage.items[at]?.source;
  if (source?.kind === 'stage') return user.trial === used.trial && isSameName(source.stage, used.stage.name);
  if (source?.kind !== 'other trial' || used.trial === undefined) return false;
  const other = otherStageOf(user.stage.items[at]?.name ?? '');
  return other?.trial === used.trial && isSameName(other.stage, used.stage.name);
};

function inOrder(all: readonly Staged[]): readonly Staged[] {
  const done: Staged[] = [];
  const visit = (one: Staged): void => {
    if (done.includes(one)) return;
    for (const used of all)
      if (used !== one && one.stage.items.some((_, at) => isUse(one, at, used))) visit(used);
    done.push(one);
  };
  for (const one of all) visit(one);
  return done;
}

/** From the last stage back: what the later ones take of it; a stage that nothing takes goes with the batch. */
function scaled(ordered: readonly Staged[], top: Staged, factor: number): readonly GivenStage[] {
  const factors = new Map<Staged, number>([[top, factor]]);
  for (const one of [...ordered].reverse()) {
    if (factors.has(one)) continue;
    let grams = 0;
    for (const user of ordered)
      for (const [at, item] of user.stage.items.entries())
        if (isUse(user, at, one)) grams += item.massGrams * (factors.get(user) ?? 0);
    factors.set(one, grams > 0 ? grams / one.stage.massGrams : factor);
  }
  return ordered.map((one) => ({ ...one, factor: factors.get(one) ?? factor }));
}
