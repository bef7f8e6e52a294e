/** Facts by their keys, and entries by theirs. */

import type { ComparedEntry, ComparedFact, EntryChange, FactChange } from './document.ts';
import { pairUp } from './sequence.ts';

/** What is there no more, what is new, what says something else. */
export function factChanges(
  before: readonly ComparedFact[],
  after: readonly ComparedFact[],
): readonly FactChange[] {
  const pairs = pairUp(before, after, [
    (one, other) => one.key === other.key && one.same === other.same,
    (one, other) => one.key === other.key,
  ]);
  const isPaired = new Set(pairs.map((pair) => pair.before));
  const gone = before
    .filter((_, at) => !isPaired.has(at))
    .map(({ key, written }): FactChange => ({ key, before: written }));
  const now = after.flatMap((fact, at): readonly FactChange[] => {
    const was = before[pairs.find((pair) => pair.after === at)?.before ?? -1];
    if (!was) return [{ key: fact.key, after: fact.written }];
    return was.same === fact.same ? [] : [{ key: fact.key, before: was.written, after: fact.written }];
  });
  return [...gone, ...now];
}

/** Entries of two lists; those that are equal in all but their place are the same. */
export function entryChanges(
  before: readonly ComparedEntry[],
  after: readonly ComparedEntry[],
): readonly EntryChange[] {
  const isEqual = (one: ComparedEntry, other: ComparedEntry): boolean =>
    one.key === other.key && factChanges(one.facts, other.facts).length === 0;
  const equal = pairUp(before, after, [isEqual]);
  const leftBefore = before.filter((_, at) => !equal.some((pair) => pair.before === at));
  const leftAfter = after.filter((_, at) => !equal.some((pair) => pair.after === at));
  const pairs = pairUp(leftBefore, leftAfter, [(one, other) => one.key === other.key]);
  const gone = leftBefore
    .filter((_, at) => !pairs.some((pair) => pair.before === at))
    .map((entry): EntryChange => ({ ...whole(entry, 'before'), change: 'removed' }));
  const now = leftAfter.map((entry, at): EntryChange => {
    const was = leftBefore[pairs.find((pair) => pair.after === at)?.before ?? -1];
    return was
      ? { change: 'changed', heading: entry.heading, facts: factChanges(was.facts, entry.facts) }
      : { ...whole(entry, 'after'), change: 'added' };
  });
  return [...gone, ...now];
}

const whole = ({ heading, facts }: ComparedEntry, side: 'before' | 'after'): Omit<EntryChange, 'change'> => ({
  heading,
  facts: facts.map(({ key, written }) => ({ key, [side]: written })),
});
