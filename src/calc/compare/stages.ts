/** Stages laid beside each other, a stage under another name found by what is in it. */

import { normaliseName } from '../../reference/name.ts';
import type { ComparedItem, ComparedStage, ItemChange, StageChange } from './document.ts';
import { factChanges } from './facts.ts';
import { itemChanges, lineChanges } from './items.ts';
import { type Pair, pairUp } from './sequence.ts';
import { stepChanges } from './steps.ts';

const isSameName = (one: ComparedStage, other: ComparedStage): boolean =>
  normaliseName(one.name) === normaliseName(other.name);

/** Half of its lines or more, and more than one. */
function isAlike({ items: before }: ComparedStage, { items: after }: ComparedStage): boolean {
  const shared = pairUp(before, after, [(one, other) => one.key === other.key]).length;
  return shared > 1 && shared * 2 >= Math.max(before.length, after.length);
}

export function stageChanges(
  before: readonly ComparedStage[],
  after: readonly ComparedStage[],
): readonly StageChange[] {
  const pairs = pairUp(before, after, [isSameName, isAlike]);
  const called = namesBefore(before, after, pairs);
  const gone = before
    .filter((_, at) => !pairs.some((pair) => pair.before === at))
    .map(
      (stage): StageChange => ({ ...changed(stage, emptied(stage)), change: 'removed', name: stage.name }),
    );
  const now = after.map((stage, at): StageChange => {
    const was = before[pairs.find((pair) => pair.after === at)?.before ?? -1];
    if (!was) return { ...changed(emptied(stage), stage), change: 'added' };
    return changed(was, { ...stage, items: stage.items.map((item) => underOldName(item, called)) }, stage);
  });
  return acrossStages([...gone, ...now], before, after);
}

const emptied = (stage: ComparedStage): ComparedStage => ({ ...stage, facts: [], items: [], steps: [] });

/** What the stages are called now, and were called. */
function namesBefore(
  before: readonly ComparedStage[],
  after: readonly ComparedStage[],
  pairs: readonly Pair[],
): ReadonlyMap<string, string> {
  return new Map(
    pairs.flatMap((pair): readonly [string, string][] => {
      const [was, now] = [before[pair.before], after[pair.after]];
      return was && now && !isSameName(was, now) ? [[normaliseName(now.name), normaliseName(was.name)]] : [];
    }),
  );
}

/** A line that names a stage under its new name is the line that named it under the old one. */
function underOldName(item: ComparedItem, called: ReadonlyMap<string, string>): ComparedItem {
  const was = called.get(normaliseName(item.name));
  return was === undefined ? item : { ...item, key: was, identity: `stage ${was}` };
}

function changed(was: ComparedStage, now: ComparedStage, typed = now): StageChange {
  const { items, renamed } = itemChanges(was.items, now.items);
  const facts = factChanges(was.facts, now.facts);
  const steps = stepChanges(was.steps, now.steps);
  const isRenamed = !isSameName(was, typed);
  const isSame = items.length + facts.length + steps.length === 0 && !isRenamed;
  const factor = factorOf(was, now, items);
  return {
    change: isSame ? 'same' : 'changed',
    name: typed.name,
    ...(isRenamed ? { was: was.name } : {}),
    facts,
    items,
    steps,
    renamed,
    ...(factor === undefined ? {} : { factor }),
  };
}

const wholeKinds = /^(?:to )?(?:mass|volume|drops|parts)$/u;
const factorWithin = 1e-6;

/** A stage of which every weight and volume grew alike is another size of the same. */
function factorOf(was: ComparedStage, now: ComparedStage, items: readonly ItemChange[]): number | undefined {
  if (items.length < 2) return undefined;
  const ratios: number[] = [];
  for (const item of items) {
    const [one, other] = [was.items[item.before ?? -1], now.items[item.after ?? -1]];
    const isAmountAlone = item.facts.length === 1 && item.facts[0]?.key === 'amount' && !item.isMoved;
    if (!one || !other || !isAmountAlone || one.amount.kind !== other.amount.kind) return undefined;
    if (!wholeKinds.test(one.amount.kind)) return undefined;
    ratios.push(innerOf(other) / innerOf(one));
  }
  const whole = was.items.filter(({ amount }) => wholeKinds.test(amount.kind)).length;
  const [first = 1] = ratios;
  const isAlike = ratios.every((ratio) => Math.abs(ratio / first - 1) <= factorWithin);
  return isAlike && whole === items.length && Number.isFinite(first) ? first : undefined;
}

const innerOf = ({ amount }: ComparedItem): number => Number(amount.same.slice(amount.kind.length));

/** What a stage is made up with is its own, and so are the lines of a stage that is gone and of one that is new. */
const isOtherMake = (from: StageChange, to: StageChange, { amount }: ComparedItem): boolean =>
  amount.kind.startsWith('to ') || (from.change === 'removed' && to.change === 'added');

/** A line that left one stage and came into another is moved. */
function acrossStages(
  stages: readonly StageChange[],
  before: readonly ComparedStage[],
  after: readonly ComparedStage[],
): readonly StageChange[] {
  const taken = new Set<ItemChange>();
  const itemIn = (all: readonly ComparedStage[], stage: StageChange, at: number | undefined) =>
    all.find(({ name }) => name === (all === before ? (stage.was ?? stage.name) : stage.name))?.items[
      at ?? -1
    ];
  const removed = stages.flatMap((stage) =>
    stage.items
      .filter(({ change }) => change === 'removed')
      .map((change) => ({ stage, change, item: itemIn(before, stage, change.before) })),
  );
  const withMoved = stages.map((stage): StageChange => {
    const items = stage.items.map((change): ItemChange => {
      if (change.change !== 'added') return change;
      const now = itemIn(after, stage, change.after);
      const from = removed.find(
        ({ item, change: gone }) => item && now && item.identity === now.identity && !taken.has(gone),
      );
      if (!from?.item || !now || from.stage === stage || isOtherMake(from.stage, stage, now)) return change;
      taken.add(from.change);
      return {
        ...change,
        change: 'moved',
        ...(from.item.name === now.name ? {} : { was: from.item.name }),
        facts: lineChanges(from.item, now),
        ...(from.change.before === undefined ? {} : { before: from.change.before }),
        fromStage: from.stage.was ?? from.stage.name,
        isMoved: true,
      };
    });
    return { ...stage, items };
  });
  return withMoved.map((stage) => ({ ...stage, items: stage.items.filter((item) => !taken.has(item)) }));
}
