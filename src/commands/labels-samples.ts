/** Which beakers a sheet is for. */

import type { Io } from '../io.ts';
import type { SampleCard, SeriesCard, TrialCard } from '../ledger/cards.ts';
import { openFolder } from '../ledger/folder.ts';
import { readSeriesCard } from '../ledger/read-series.ts';
import { readTrialCard } from '../ledger/read-trial.ts';
import { looksOpen, type OpenLook } from '../ledger/schedule.ts';
import { isSameName } from '../ledger/stage-name.ts';
import { fail, ProblemError } from '../problem.ts';
import { readTrialWords } from './look-line.ts';
import { type Here, openTrialNamed } from './open-ledger.ts';
import { openSeriesNamed } from './series-open.ts';

export interface ShelfSample {
  readonly card: TrialCard;
  readonly sample: SampleCard;
  readonly open: readonly OpenLook[];
}

export interface Shelf {
  /** `orange ladder`, `trials 11, 12`, `what is looked at` */
  readonly name: string;
  readonly samples: readonly ShelfSample[];
}

export async function shelfOf(here: Here, io: Io, words: readonly string[]): Promise<Shelf> {
  const series = (await openFolder(here, 'series', readSeriesCard)).flatMap(({ card }) => card ?? []);
  if (words.length === 0) {
    const all = await trialsOf(here);
    const samples = samplesOf(all, series, here).filter(({ open }) => open.length > 0);
    return samples.length > 0
      ? { name: 'what is looked at', samples }
      : fail('nothing-open', 'nothing is looked at now', 'name the trials or a series');
  }
  if (words.every((word) => /^\d/u.test(word) || /trials\/[^/]+\.yaml$/u.test(word))) {
    const cards = await trialsNamed(here, io, words);
    return {
      name: `trial${cards.length === 1 ? '' : 's'} ${words.join(' ')}`,
      samples: samplesOf(cards, series, here),
    };
  }
  const { card } = await openSeriesNamed(here, io, words.join(' '));
  const members = (await trialsOf(here)).filter(
    (one) =>
      one.number === card.control ||
      one.number === card.blank ||
      (one.series !== undefined && isSameName(one.series.text, card.name)),
  );
  const samples = samplesOf(members, series, here);
  return samples.length > 0
    ? { name: card.name, samples }
    : fail(
        'no-rungs',
        `no trial says "series: ${card.name}"`,
        `neckring ladder --series "${card.name}" plans them`,
      );
}

const trialsOf = async (here: Here): Promise<readonly TrialCard[]> =>
  (await openFolder(here, 'trials', readTrialCard))
    .flatMap(({ card }) => (card?.isSound ? [card] : []))
    .sort((one, other) => one.number - other.number);

async function trialsNamed(here: Here, io: Io, words: readonly string[]): Promise<readonly TrialCard[]> {
  const { numbers, faults } = readTrialWords(words);
  if (faults.length > 0) throw new ProblemError(faults.map((fault) => ({ ...fault, severity: 'error' })));
  const cards: TrialCard[] = [];
  for (const number of numbers) cards.push((await openTrialNamed(here, io, number)).card);
  return cards;
}

const samplesOf = (
  cards: readonly TrialCard[],
  series: readonly SeriesCard[],
  here: Here,
): readonly ShelfSample[] =>
  cards.flatMap((card) => {
    const own = series.find(({ name }) => card.series && isSameName(card.series.text, name));
    const looks = looksOpen({ card, bench: here.bench, series: own, now: here.port.now() });
    return card.samples.map((sample) => ({
      card,
      sample,
      open: looks.find((one) => one.sample === sample)?.open ?? [],
    }));
  });
