/** The lines of a stage laid beside those of another. */

import type { ComparedFact, ComparedItem, FactChange, ItemChange, Renamed } from './document.ts';
import { factChanges } from './facts.ts';
import { movedPairs, pairUp } from './sequence.ts';

export interface ItemsDifference {
  readonly items: readonly ItemChange[];
  readonly renamed: readonly Renamed[];
}

/** Masses that differ by less than this are the same, typed in another unit. */
const sameWithin = 1e-9;

/**
 * What was added, taken out, changed or moved in the order of addition.
 *
 * Input     items before and after, in the order of addition
 * Output    a change for each line that is not what it was, in the order after, what is gone before it; other names of
 *           the same record apart, as they are no change
 */
export function itemChanges(
  before: readonly ComparedItem[],
  after: readonly ComparedItem[],
): ItemsDifference {
  const pairs = pairUp(before, after, [
    (one, other) => one.name === other.name && one.amount.same === other.amount.same,
    (one, other) => one.name === other.name,
    (one, other) => one.identity === other.identity,
    (one, other) => one.key === other.key,
  ]);
  const moved = movedPairs(pairs);
  const items: ItemChange[] = [];
  const renamed: Renamed[] = [];
  for (const [at, item] of before.entries())
    if (!pairs.some((pair) => pair.before === at)) items.push(wholeItem(item, 'removed', at));
  for (const [at, item] of after.entries()) {
    const pair = pairs.find((one) => one.after === at);
    const was = pair && before[pair.before];
    if (!pair || !was) {
      items.push(wholeItem(item, 'added', at));
      continue;
    }
    const isOther = was.identity !== item.identity;
    if (was.name !== item.name && !isOther)
      renamed.push({ name: item.name, was: was.name, before: pair.before, after: at });
    const facts = lineChanges(was, item);
    const isMoved = moved.has(pair);
    if (facts.length === 0 && !isOther && !isMoved) continue;
    items.push({
      change: facts.length > 0 || isOther ? 'changed' : 'moved',
      name: item.name,
      ...(was.name === item.name ? {} : { was: was.name }),
      facts,
      before: pair.before,
      after: at,
      isMoved,
    });
  }
  return { items, renamed };
}

/** Amount and facts of a line that stands in both. */
export function lineChanges(was: ComparedItem, item: ComparedItem): readonly FactChange[] {
  const amount: readonly FactChange[] = isSameAmount(was, item)
    ? []
    : [{ key: 'amount', before: was.amount.written, after: item.amount.written }];
  return [...amount, ...factChanges(was.facts, item.facts)];
}

/** The same number, or another way of typing what comes to the same weight. */
function isSameAmount(was: ComparedItem, item: ComparedItem): boolean {
  if (was.amount.same === item.amount.same) return true;
  const [one, other] = [was.plannedGrams, item.plannedGrams];
  if (was.amount.kind === item.amount.kind || one === undefined || other === undefined) return false;
  return Math.abs(one - other) <= sameWithin * Math.max(Math.abs(one), Math.abs(other));
}

function wholeItem(item: ComparedItem, change: 'added' | 'removed', at: number): ItemChange {
  const side = change === 'added' ? 'after' : 'before';
  const facts: readonly ComparedFact[] = [item.amount, ...item.facts];
  return {
    change,
    name: item.name,
    facts: facts.map(({ key, written }) => ({ key, [side]: written })),
    [side]: at,
    isMoved: false,
  };
}
