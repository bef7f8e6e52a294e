/** What is looked at of a batch: its tank, and the bottles that are kept back. */

import { type BatchSampleText, retainedLooks } from '../ledger/batch-text.ts';
import type { Fact } from '../ledger/fact-text.ts';
import { isSameName } from '../ledger/stage-name.ts';
import type { BatchPlanText } from './batch-plan-text.ts';

interface Sampling {
  readonly plan: BatchPlanText;
  readonly bottles: number | undefined;
  readonly retained: number | undefined;
  readonly bottle: string | undefined;
}

/** The tank, and the bottles that are kept back: of the drink where bottles were filled. */
export function samplesOf({ plan, bottles, retained, bottle }: Sampling): readonly BatchSampleText[] {
  const drink = plan.stages.find(({ name }) => isSameName(name, 'drink'))?.name;
  const of = (bottles === undefined ? undefined : drink) ?? plan.tank;
  return [
    { name: 'tank', facts: [['of', plan.tank]], looks: [] },
    ...(retained === undefined
      ? []
      : [
          {
            name: 'retained',
            facts: [
              ['of', of],
              ...(bottle === undefined ? [] : [['in', `${bottle} bottle`] as const]),
              ['count', String(retained)],
              ['watch', retainedLooks.at(-1) ?? ''],
            ] satisfies readonly Fact[],
            looks: retainedLooks,
          },
        ]),
  ];
}
