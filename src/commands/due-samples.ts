/** Which samples are looked at, of trials and of batches, with the looks that are still to be made. */

import type { Io } from '../io.ts';
import type { BatchCard, SampleCard, TrialCard } from '../ledger/cards.ts';
import { looksOpen, nextOf, type OpenLook, type SampleLooks } from '../ledger/schedule.ts';
import { openRules } from '../ledger/watch/watch-rules.ts';
import type { Here } from './open-ledger.ts';
import { openWatched } from './open-looks.ts';

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

export async function watchedSamples(io: Io, { bench }: Here): Promise<WatchedSamples> {
  const { trials, batches, rulesOf, errors } = await openWatched(io);
  const now = io.now();
  const watched = [...trials, ...batches].flatMap((card) => {
    const own = card.kind === 'trial' && card.series ? rulesOf(card.series.text) : '';
    return looksOpen({ card, bench, series: openRules(own), now })
      .filter(({ open }) => open.length > 0)
      .map((looks) => ({ ...looks, card }));
  });
  return { watched, errors };
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
