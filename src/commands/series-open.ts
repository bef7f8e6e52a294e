/** Opening a series with its rungs, and nothing of the ledger that it does not need. */

import { isAbsolute, relative, resolve, sep } from 'node:path';
import type { Book } from '../calc/book.ts';
import type { Io } from '../io.ts';
import type { SeriesCard, TrialCard } from '../ledger/cards.ts';
import { openFolder } from '../ledger/folder.ts';
import { type Opened, openFile } from '../ledger/open-file.ts';
import { readSeriesCard } from '../ledger/read-series.ts';
import { makeSources } from '../ledger/resolve.ts';
import { type SeriesRungs, seriesRungs } from '../ledger/rungs.ts';
import { type Member, membersAmong, openMembers } from '../ledger/series-members.ts';
import { openTrialsUsedBy } from '../ledger/single-trial.ts';
import { isSameName } from '../ledger/stage-name.ts';
import { fail, ProblemError } from '../problem.ts';
import { nearestNames, normaliseName } from '../reference/name.ts';
import { bookOf } from './ledger-book.ts';
import type { Here } from './open-ledger.ts';
import { listed } from './series-words.ts';
import { thereWords } from './there-words.ts';

export interface OpenedSeries extends Opened<SeriesCard> {
  readonly card: SeriesCard;
}

/** A series by the name inside its file or by its file; refused with its problems where it can't be read. */
export async function openSeriesNamed(here: Here, io: Io, typed: string): Promise<OpenedSeries> {
  const file = fileInLedger(here, io, typed);
  const opened = file === undefined ? await seriesByName(here, typed) : await openSeriesFile(here, file);
  const { card } = opened;
  if (card?.isSound) return { ...opened, card };
  const errors = opened.problems.filter(({ severity }) => severity === 'error');
  throw new ProblemError(errors.length > 0 ? errors : opened.problems);
}

const openSeriesFile = (here: Here, file: string): Promise<Opened<SeriesCard>> =>
  openFile(here.port, {
    root: here.root,
    file,
    read: (document) => readSeriesCard(document, here.settings),
  });

/** The path from the root where such a file is there. */
function fileInLedger(here: Here, io: Io, typed: string): string | undefined {
  const path = resolve(io.workingFolder, typed);
  if (!typed.endsWith('.yaml') || here.port.sizeOf(path) === undefined) return undefined;
  const file = relative(here.root, path).split(sep).join('/');
  if (!file.startsWith('..') && !isAbsolute(file)) return file;
  const hint = 'name a series of this ledger';
  return fail('outside', `${typed} is outside the ledger in ${here.root}`, hint);
}

async function seriesByName(here: Here, typed: string): Promise<Opened<SeriesCard>> {
  const all = await openFolder(here, 'series', readSeriesCard);
  const [first, second] = all.filter(({ card }) => card !== undefined && isSameName(card.name, typed));
  if (first && second) {
    const message = `"${typed}" is the name of ${first.file} and of ${second.file}`;
    return fail('same-name', message, 'name the file, or give one of them another name');
  }
  const unread = all.find(({ file, card }) => !card && file === `series/${typed}.yaml`);
  return first ?? unread ?? (await noSuchSeries(here, typed, all));
}

async function noSuchSeries(here: Here, typed: string, all: readonly Opened<SeriesCard>[]): Promise<never> {
  const names = all.flatMap(({ card }) => (card ? [card.name] : []));
  const near = nearestNames(normaliseName(typed), names, 3);
  const message = `there is no series "${typed}"`;
  if (near.length > 0)
    return fail('no-series', message, `did you mean ${near.map((name) => `"${name}"`).join(' or ')}?`);
  const trials = (await openMembers(here, typed, [])).flatMap(({ number }) => number ?? []);
  if (trials.length > 0)
    return fail(
      'no-series',
      `${message}, though ${trials.length === 1 ? 'trial' : 'trials'} ${listed(trials)} ${trials.length === 1 ? 'names' : 'name'} it`,
      `make series/NAME.yaml with "series: ${typed}" and "varies: oil per emulsifier", or name one that is there in the trials`,
    );
  const unread = all.flatMap(({ card, file }) => (card ? [] : [file]));
  const none = 'there are none yet: neckring ladder writes one';
  return fail('no-series', message, thereWords({ kind: 'series', names, unread, none }));
}

/** The rungs of a series. What is wrong in a trial's file is among the problems, not thrown. */
export async function openRungs(
  here: Here,
  series: SeriesCard,
  opened?: Book,
  counts: (trial: number) => boolean = () => true,
): Promise<SeriesRungs> {
  const all = await openMembers(here, series.name, besideIn(series));
  const members = all.filter(({ card }) => !card || counts(card.number));
  return rungsOf(here, series, members, opened ?? (await bookOf(here)));
}

/** The same where all trials are open already. */
export const rungsAmong = (
  here: Here,
  series: SeriesCard,
  trials: readonly Opened<TrialCard>[],
  book: Book,
): Promise<SeriesRungs> => rungsOf(here, series, membersAmong(trials, series.name, besideIn(series)), book);

const besideIn = ({ control, blank }: SeriesCard): readonly number[] =>
  [control, blank].filter((one) => one !== undefined);

async function rungsOf(
  here: Here,
  series: SeriesCard,
  members: readonly Member[],
  book: Book,
): Promise<SeriesRungs> {
  const trials = new Map<number, TrialCard>();
  for (const { card } of members) if (card) trials.set(card.number, card);
  for (const card of [...trials.values()]) {
    for (const [number, used] of await openTrialsUsedBy(here, card))
      if (used.card && !trials.has(number)) trials.set(number, used.card);
  }
  const sources = makeSources({ book, bench: here.bench, trialOf: (number) => trials.get(number) });
  return seriesRungs({ series, members, bench: here.bench, book, sources });
}
