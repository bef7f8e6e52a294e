/** What became of the samples of one trial, by the rules of its series where it has one. */

import type { SampleCard, SeriesCard, TrialCard } from '../ledger/cards.ts';
import { openFolder } from '../ledger/folder.ts';
import { outcomeOf, watchRules } from '../ledger/outcome.ts';
import { readSeriesCard } from '../ledger/read-series.ts';
import { observationsOf } from '../ledger/sample-record.ts';
import { isSameName } from '../ledger/stage-name.ts';
import type { Here } from './open-ledger.ts';
import { type OutcomeOf, outcomeWords } from './outcome-words.ts';

export type TrialOutcomes = ReadonlyMap<SampleCard, OutcomeOf>;

/** Of the samples that were looked at. */
export async function trialOutcomes(here: Here, card: TrialCard): Promise<TrialOutcomes> {
  const looked = card.samples.filter((sample) =>
    observationsOf(card, sample).some(({ looks }) => looks.length > 0),
  );
  const series = looked.length > 0 ? await seriesOf(here, card) : undefined;
  return new Map(
    looked.map((sample): [SampleCard, OutcomeOf] => {
      const rules = watchRules({ sample, bench: here.bench, series });
      return [sample, { card, sample, outcome: outcomeOf({ card, sample, rules }) }];
    }),
  );
}

async function seriesOf(here: Here, { series }: TrialCard): Promise<SeriesCard | undefined> {
  if (!series) return undefined;
  const all = await openFolder(here, 'series', readSeriesCard);
  return all.map(({ card }) => card).find((card) => card !== undefined && isSameName(card.name, series.text));
}

/** In words, where there is something to say. */
export function outcomeText(outcomes: TrialOutcomes, sample: SampleCard): string {
  const of = outcomes.get(sample);
  return of ? outcomeWords(of) : '';
}
