/** Which stages of other trials a design needs: what it uses, what that uses, and the stages before them. */

import { normaliseName } from '../../reference/name.ts';
import type { StageCard, TrialCard } from '../cards.ts';
import { isSameName, otherStageOf } from '../stage-name.ts';

/** By the number of the trial, the names of its stages as they stand there. */
export type NeededStages = ReadonlyMap<number, ReadonlySet<string>>;

export function neededStages(
  stages: readonly StageCard[],
  trialOf: (number: number) => Pick<TrialCard, 'stages'> | undefined,
): NeededStages {
  const needed = new Map<number, Set<string>>();
  const waiting = stages.flatMap((stage) => usesOf(stage, stages, undefined));
  for (let use = waiting.pop(); use !== undefined; use = waiting.pop()) {
    const trial = trialOf(use.trial);
    const stage = trial?.stages.find(({ name }) => isSameName(name, use?.stage ?? ''));
    if (!trial || !stage) continue;
    const names = needed.get(use.trial) ?? new Set<string>();
    needed.set(use.trial, names);
    if (names.has(stage.name)) continue;
    names.add(stage.name);
    waiting.push(...usesOf(stage, trial.stages, use.trial));
  }
  return needed;
}

interface Use {
  readonly trial: number;
  readonly stage: string;
}

/** Stages of other trials among the items, and of the trial itself where it is one that goes along. */
function usesOf(stage: StageCard, own: readonly StageCard[], trial: number | undefined): readonly Use[] {
  const names = new Set(own.map(({ name }) => normaliseName(name)));
  return stage.items.flatMap(({ name }): readonly Use[] => {
    if (names.has(normaliseName(name))) return trial === undefined ? [] : [{ trial, stage: name }];
    const other = otherStageOf(name);
    return other ? [other] : [];
  });
}
