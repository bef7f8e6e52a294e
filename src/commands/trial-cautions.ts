/** Every caution about one trial, with what it was made from: for `reckon` and `show`. */

import type { Caution } from '../calc/answer.ts';
import type { Book } from '../calc/book.ts';
import { additiveCautions } from '../calc/drink/additive-cautions.ts';
import type { Mixture } from '../calc/mixture/picture.ts';
import { type CaffeineGate, caffeineGate } from '../calc/slip-guard/caffeine.ts';
import { handlingCautions } from '../calc/slip-guard/handling.ts';
import { adviceAt, adviceCaution } from '../ledger/advice.ts';
import type { TrialCard } from '../ledger/cards.ts';
import { keptAdvice } from '../ledger/check-kept.ts';
import { isWarmed, processAdvice } from '../ledger/check-process.ts';
import { slipAdvice } from '../ledger/check-slips.ts';
import { stageOutcome, type UsedStage, usedAdvice, usedStages } from '../ledger/check-used-stages.ts';
import { makeSources } from '../ledger/resolve.ts';
import { openTrial, openTrialsUsedBy } from '../ledger/single-trial.ts';
import { sources as bibliography } from '../reference/sources.ts';
import type { Here, OpenedTrial } from './open-ledger.ts';
import { staleResults } from './stale-results.ts';
import { openSeries } from './used-cautions.ts';
import { sourceWords } from './worded-sources.ts';

export interface TrialCautions {
  readonly cautions: readonly Caution[];
  /** Set where a serving of the drink holds so much caffeine that a yes is asked for. */
  readonly gate: CaffeineGate | undefined;
  /** The stages of other trials that it uses, with their age on the day of use. */
  readonly used: readonly UsedStage[];
}

export async function trialCautions(
  here: Here,
  { card }: OpenedTrial,
  { book, mixture }: { readonly book: Book; readonly mixture: Mixture | undefined },
): Promise<TrialCautions> {
  const trials = await trialsAround(here, card);
  const { bench } = here;
  const sources = makeSources({ book, bench, trialOf: (number) => trials.get(number) });
  const series = card.stages.length > 0 && trials.size > 1 ? await openSeries(here) : [];
  const usedContext = {
    sources,
    now: here.port.now(),
    outcomeOf: (trial: TrialCard, stage: TrialCard['stages'][number]) =>
      stageOutcome({ trial, stage, bench, series }),
    staleResults: (trial: TrialCard) => staleResults(trial, { sources, book }),
  };
  const advice = [
    ...processAdvice(card, sources),
    ...slipAdvice(card, sources),
    ...usedAdvice(card, usedContext),
    ...keptAdvice(card, sources),
    ...(mixture ? handlingCautions(mixture, (stage) => isWarmed(card, stage)) : []).map((one) =>
      adviceAt(card.stages, one),
    ),
  ];
  return {
    cautions: [...advice.map(adviceCaution), ...(mixture ? additiveCautions(mixture) : [])].map((one) => ({
      ...one,
      source: sourceWords(one.source, bibliography),
    })),
    gate: mixture && caffeineGate(mixture),
    used: usedStages(card, usedContext),
  };
}

/** The trial, the one it came from, and those whose stages either of them uses, by number. */
async function trialsAround(here: Here, card: TrialCard): Promise<ReadonlyMap<number, TrialCard>> {
  const trials = new Map<number, TrialCard>([[card.number, card]]);
  const from =
    card.from === undefined || card.from === card.number ? undefined : await openTrial(here, card.from);
  for (const one of [card, ...(from?.card ? [from.card] : [])]) {
    trials.set(one.number, one);
    for (const [number, opened] of await openTrialsUsedBy(here, one)) {
      if (opened.card && !trials.has(number)) trials.set(number, opened.card);
    }
  }
  return trials;
}
