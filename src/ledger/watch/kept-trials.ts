/** The trials in lines, and those that are still looked at, mostly without reading them again. */

import type { BatchCard, BenchCard, TrialCard } from '../cards.ts';
import type { LedgerPlace } from '../folder.ts';
import { readBatchCard } from '../read-batch.ts';
import { readTrialCard } from '../read-trial.ts';
import type { KeepPort } from './keep-port.ts';
import { type FolderWanted, keepFolder, type Walked, walkFolder } from './kept-folder.ts';
import { cardInRow, doneFrom, headInRow, headOf, isDone, type TrialHead, trialRow } from './trial-row.ts';
import { type RulesText, type SeriesNames, seriesNames } from './watch-rules.ts';

/** Below this reading is quicker. */
const fewestKept = 100;

export interface KeptWanted {
  readonly place: LedgerPlace;
  /** Absent where nothing may be kept. */
  readonly keep: KeepPort | undefined;
  /** What the reading depends on besides the files: the program, the bench, the zones that the computer knows. */
  readonly of: string;
  /** Absent where it can't be read. */
  readonly bench: BenchCard | undefined;
}

/** By number, and how many errors stand in their files. */
export interface TrialLines {
  readonly trials: readonly TrialHead[];
  readonly errors: number;
}

const ifMany = ({ keep, place, of }: KeptWanted): Pick<KeptWanted, 'place' | 'keep' | 'of'> => ({
  place,
  of,
  keep: keep && keep.names('trials').length >= fewestKept ? keep : undefined,
});

const byNumber = <T extends { readonly number: number }>(trials: T[]): readonly T[] =>
  trials.sort((left, right) => left.number - right.number);

/** All trials, each in a line. */
export async function trialLines(from: KeptWanted): Promise<TrialLines> {
  const common = ifMany(from);
  const wanted = { ...common, folder: 'trials', read: readTrialCard };
  const walked = await walkFolder(wanted);
  if (walked.isStale) keepTrials(wanted, walked, from, await seriesNames(common));
  const trials: TrialHead[] = [];
  let errors = 0;
  for (const one of walked.files) {
    errors += one.errors;
    const head = one.card ? headOf(one.card) : one.row ? headInRow(one.file, one.row) : undefined;
    if (head) trials.push(head);
  }
  return { trials: byNumber(trials), errors };
}

export interface MadeToWatch {
  /** By number. Sound trials that have an open look, and perhaps others: with titles, times, samples and looks alone. */
  readonly trials: readonly TrialCard[];
  /** The same of batches, whole. */
  readonly batches: readonly BatchCard[];
  /** What a series says of looking, for `openRules`. */
  readonly rulesOf: (series: string) => RulesText;
  /** How many errors stand in the files of trials, series and batches. */
  readonly errors: number;
}

/** What is still looked at. What is not is told by what is kept, and not opened. */
export async function madeToWatch(from: KeptWanted): Promise<MadeToWatch> {
  const common = ifMany(from);
  const series = await seriesNames(common);
  const now = from.place.port.now();
  const isKnown = (row: string): boolean =>
    row === '' || !row.endsWith('\t') || isDone(row, series.rulesOf, now);
  const wanted = { ...common, folder: 'trials', read: readTrialCard, isEnough: isKnown };
  const walked = await walkFolder(wanted);
  if (walked.isStale) keepTrials(wanted, walked, from, series);
  const trials = walked.files.flatMap(({ file, row, card }) => card ?? ((row && cardInRow(file, row)) || []));
  const batches = await batchesToWatch(common, from.bench, now);
  const errors = walked.files.reduce((sum, one) => sum + one.errors, series.errors + batches.errors);
  return {
    trials: byNumber(trials.filter(({ isSound }) => isSound)),
    batches: batches.batches,
    rulesOf: series.rulesOf,
    errors,
  };
}

function keepTrials(
  wanted: FolderWanted<TrialCard>,
  walked: Walked<TrialCard>,
  { bench, place }: KeptWanted,
  { rulesOf }: SeriesNames,
): void {
  const now = place.port.now();
  keepFolder(wanted, walked, (card) =>
    trialRow(card, bench && { bench, now, rules: card.series ? rulesOf(card.series.text) : '' }),
  );
}

/** Of a batch only is kept from when on nobody looks at it. */
async function batchesToWatch(
  common: Pick<KeptWanted, 'place' | 'keep' | 'of'>,
  bench: BenchCard | undefined,
  now: number,
): Promise<Pick<MadeToWatch, 'batches' | 'errors'>> {
  const isEnough = (row: string): boolean => row !== '' && Number(row) <= now;
  const wanted = { ...common, folder: 'batches', read: readBatchCard, isEnough };
  const walked = await walkFolder(wanted);
  if (walked.isStale)
    keepFolder(wanted, walked, (card) => String((bench && doneFrom(card, { bench, now, rules: '' })) ?? ''));
  return {
    batches: walked.files.flatMap(({ card }) => (card?.isSound ? card : [])),
    errors: walked.files.reduce((sum, one) => sum + one.errors, 0),
  };
}
