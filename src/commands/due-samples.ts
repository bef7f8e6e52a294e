/** Which samples are looked at, of trials and of batches, with the looks that are still to be made. */

import type { Io } from '../io.ts';
import type { BatchCard, SampleCard, SeriesCard, TrialCard } from '../ledger/cards.ts';
import { openFolder } from '../ledger/folder.ts';
import { readBatchCard } from '../ledger/read-batch.ts';
import { readSeriesCard } from '../ledger/read-series.ts';
import { looksOpen, nextOf, type OpenLook, type SampleLooks } from '../ledger/schedule.ts';
import { normaliseName } from '../reference/name.ts';
import type { Here } from './open-ledger.ts';
import { openLooks } from './open-looks.ts';

export interface Watched extends SampleLooks {
  readonly card: TrialCard | BatchCard;
  readonly sample: SampleCard;
}

/** One look of one sample. */
export interface PlannedLook extends OpenLook {
  readonly watched: Watched;
  readonly isDue: boolean;
  /** When the first look that was missed was planned. */
  readonly sinceEpoch: number;
}

export interface WatchedSamples {
  /** Those with looks to come. */
  readonly watched: readonly Watched[];
  /** How many errors stand in the files; what can't be read is left out. */
  readonly errors: number;
}

export async function watchedSamples(io: Io, here: Here): Promise<WatchedSamples> {
  const { trials, errors } = await openLooks(io);
  const series = await openFolder(here, 'series', readSeriesCard);
  const batches = await openFolder(here, 'batches', readBatchCard);
  const cards: readonly (TrialCard | BatchCard)[] = [
    ...trials.map(({ card }) => card),
    ...batches.flatMap(({ card }) => card ?? []),
  ].filter(({ isSound }) => isSound);
  const byName = new Map(
    series.flatMap((one) => (one.card ? [[normaliseName(one.card.name), one.card] as const] : [])).reverse(),
  );
  const named = (name: string): SeriesCard | undefined => byName.get(name) ?? byName.get(normaliseName(name));
  const now = io.now();
  const watched = cards.flatMap((card) => {
    const own = card.kind === 'trial' && card.series ? named(card.series.text) : undefined;
    return looksOpen({ card, bench: here.bench, series: own, now })
      .filter(({ open }) => open.length > 0)
      .map((looks) => ({ ...looks, card }));
  });
  const wrong = [...series, ...batches].flatMap(({ problems }) => problems);
  return { watched, errors: errors + wrong.filter(({ severity }) => severity === 'error').length };
}

/** What is due, the longest missed first. */
export const dueLooks = (watched: readonly Watched[], now: number): readonly PlannedLook[] =>
  watched
    .flatMap((one) => {
      const next = nextOf(one.open, now);
      return next?.isDue ? [{ ...next, opensEpoch: next.atEpoch, watched: one }] : [];
    })
    .sort((left, right) => left.sinceEpoch - right.sinceEpoch);

/** Every look that is not due yet, the next first. */
export const comingLooks = (watched: readonly Watched[], now: number): readonly PlannedLook[] =>
  watched
    .flatMap((one) =>
      one.open
        .filter(({ opensEpoch }) => opensEpoch > now)
        .map((look) => ({ ...look, isDue: false, sinceEpoch: look.atEpoch, watched: one })),
    )
    .sort((left, right) => left.atEpoch - right.atEpoch);
