/** The process of a stage laid beside that of another. */

import type { ComparedStep, StepChange } from './document.ts';
import { factChanges } from './facts.ts';
import { movedPairs, pairUp } from './sequence.ts';

const isEqual = (one: ComparedStep, other: ComparedStep): boolean =>
  one.key === other.key && factChanges(one.facts, other.facts).length === 0;

/** Steps that are new, gone, done otherwise, or done at another point. */
export function stepChanges(
  before: readonly ComparedStep[],
  after: readonly ComparedStep[],
): readonly StepChange[] {
  const pairs = pairUp(before, after, [isEqual, (one, other) => one.key === other.key]);
  const moved = movedPairs(pairs);
  const gone = before.flatMap((step, at): readonly StepChange[] =>
    pairs.some((pair) => pair.before === at)
      ? []
      : [{ change: 'removed', written: step.written, facts: [], before: at }],
  );
  const now = after.flatMap((step, at): readonly StepChange[] => {
    const pair = pairs.find((one) => one.after === at);
    const was = pair && before[pair.before];
    if (!pair || !was) return [{ change: 'added', written: step.written, facts: [], after: at }];
    const facts = factChanges(was.facts, step.facts);
    if (facts.length === 0 && !moved.has(pair)) return [];
    return [
      {
        change: facts.length > 0 ? 'changed' : 'moved',
        written: step.written,
        was: was.written,
        facts,
        before: pair.before,
        after: at,
      },
    ];
  });
  return [...gone, ...now];
}
