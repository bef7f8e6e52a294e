/** Trials that use each other's stages in a circle. */

import type { StageCard, TrialCard } from './cards.ts';
import { otherStageOf } from './stage-name.ts';

interface Trials {
  readonly trialOf: (number: number) => TrialCard | undefined;
  /** Which trials a trial uses, as far as it was asked. */
  readonly uses: Map<number, readonly number[]>;
}

/** The numbers from one trial to another through what each uses, both included; undefined where there is no way. */
export function wayTo(from: number, to: number, trials: Trials): readonly number[] | undefined {
  const cameFrom = new Map<number, number | undefined>([[from, undefined]]);
  const waiting = [from];
  for (let at = waiting.pop(); at !== undefined; at = waiting.pop()) {
    if (at === to) return wayThrough(cameFrom, to);
    for (const next of usedBy(at, trials)) {
      if (cameFrom.has(next)) continue;
      cameFrom.set(next, at);
      waiting.push(next);
    }
  }
  return undefined;
}

function wayThrough(cameFrom: ReadonlyMap<number, number | undefined>, to: number): readonly number[] {
  const way: number[] = [];
  for (let at: number | undefined = to; at !== undefined; at = cameFrom.get(at)) way.unshift(at);
  return way;
}

function usedBy(number: number, { trialOf, uses }: Trials): readonly number[] {
  const known = uses.get(number) ?? trialsUsedIn(trialOf(number)?.stages ?? []);
  uses.set(number, known);
  return known;
}

/** The numbers of the trials whose stages stand among the items. */
export const trialsUsedIn = (stages: readonly StageCard[]): readonly number[] =>
  stages.flatMap(({ items }) => items.flatMap(({ name }) => otherStageOf(name)?.trial ?? []));
