/** The stages of other trials that a trial uses, with how old they were on the day. */

import { ageText, type UsedStage } from '../ledger/check-used-stages.ts';
import type { Page } from '../output/view.ts';
import { visible } from '../output/visible.ts';

export function usedBlocks(used: readonly UsedStage[]): Page {
  const notes = used.flatMap(({ name, ageSeconds, usedAt }) =>
    ageSeconds === undefined
      ? []
      : [visible(`${name} was ${ageText(ageSeconds)} old ${usedAt ? 'on the day of use' : 'today'}`)],
  );
  return notes.length > 0 ? [{ kind: 'notes', mark: '-', notes }] : [];
}

export const usedJson = (used: readonly UsedStage[]): Readonly<Record<string, unknown>> => ({
  uses: used.map(({ name, trial, stage, ageSeconds }) => ({
    name,
    trial: trial.number,
    stage: stage.name,
    made: (stage.made ?? trial.made)?.written ?? '',
    age: { value: ageSeconds === undefined ? null : ageSeconds / 86_400, unit: 'd' },
  })),
});
