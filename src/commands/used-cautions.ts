/** How the stages of other trials came out there, for what is made of them: `drink`, `scale` and batches. */

import type { Caution } from '../calc/answer.ts';
import { plainCaution } from '../calc/slip-guard/placed-caution.ts';
import type { SeriesCard, StageCard, TrialCard } from '../ledger/cards.ts';
import { outcomeCautions, stageOutcome, type UsedStage, usedStages } from '../ledger/check-used-stages.ts';
import { openFolder } from '../ledger/folder.ts';
import { readSeriesCard } from '../ledger/read-series.ts';
import type { Sources, StagesOf } from '../ledger/resolve.ts';
import { isSameName, otherStageOf } from '../ledger/stage-name.ts';
import type { Here } from './open-ledger.ts';

/** Each once, those used through a third trial too. */
export async function usedCautions(
  here: Here,
  of: StagesOf,
  sources: Sources,
): Promise<readonly { readonly used: UsedStage; readonly caution: Caution }[]> {
  const all = usedBelow(asUsed(of), { sources, now: here.port.now() }, new Set());
  if (all.length === 0) return [];
  const series = await openSeries(here);
  const outcomeOf = (trial: TrialCard, stage: StageCard) =>
    stageOutcome({ trial, stage, bench: here.bench, series });
  return all.flatMap((used) =>
    outcomeCautions(used, { outcomeOf }).map((one) => ({ used, caution: plainCaution(one) })),
  );
}

export async function openSeries(here: Here): Promise<readonly SeriesCard[]> {
  const opened = await openFolder(here, 'series', readSeriesCard);
  return opened.flatMap(({ card }) => (card ? [card] : []));
}

/** A batch, which has no number, makes the stages of other trials itself: they are used all the same. */
const asUsed = (of: StagesOf): StagesOf => ({
  ...of,
  stages: of.stages.filter(({ name }) => of.number !== undefined || otherStageOf(name) === undefined),
});

type Using = Parameters<typeof usedStages>[1];

function usedBelow(of: StagesOf, using: Using, seen: Set<string>): readonly UsedStage[] {
  return usedStages(of, using).flatMap((used) => {
    const key = `${used.stage.name} of ${used.trial.number}`;
    if (seen.has(key)) return [];
    seen.add(key);
    const { number, made } = used.trial;
    return [used, ...usedBelow({ stages: withThose(used.trial, used.stage), made, number }, using, seen)];
  });
}

/** A stage and those of its own trial that go into it. */
function withThose({ stages }: TrialCard, stage: StageCard): readonly StageCard[] {
  const found = [stage];
  for (const one of found)
    found.push(
      ...stages.filter(
        (other) => !found.includes(other) && one.items.some(({ name }) => isSameName(name, other.name)),
      ),
    );
  return found;
}
