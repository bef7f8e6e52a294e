/** The folder of a ledger: where it is, which files count, and all of them read. */

import { join } from 'node:path';
import type { Problem } from '../problem.ts';
import type { AnyCard, BenchCard } from './cards.ts';
import { naming } from './disk-problem.ts';
import { benchFile } from './find-root.ts';
import type { Ledger } from './ledger.ts';
import { needsArithmetic, type Opened, openFile, openNow, withArithmetic } from './open-file.ts';
import { type LedgerDocument, withoutTree } from './parse.ts';
import type { ReadPort } from './port.ts';
import { readBatchCard } from './read-batch.ts';
import { readBenchCard } from './read-bench.ts';
import { readFormulaCard } from './read-formula.ts';
import { readIngredientsCard } from './read-ingredients.ts';
import { readSeriesCard } from './read-series.ts';
import { readTrialCard } from './read-trial.ts';
import type { Read, ReadSettings } from './reading.ts';
import { openTimeZone } from './times.ts';

export const ingredientsFile = 'ingredients.yaml';

/** The files that count in a folder of the ledger, by path from its root, in the order of their names. */
export function filesIn(root: string, folder: string, port: ReadPort): readonly string[] {
  return port
    .list(join(root, folder))
    .filter((name) => name.endsWith('.yaml') && !name.startsWith('.'))
    .sort()
    .map((name) => `${folder}/${name}`);
}

/** The bench; its card is absent where it can't be read. */
export const openBench = (root: string, port: ReadPort): Promise<Opened<BenchCard>> =>
  openFile(port, { root, file: benchFile, read: readBenchCard });

/** A bench that can't be read may have a zone: then no time is refused for the lack of one. */
export function settingsOf(bench: BenchCard | undefined): ReadSettings {
  const zone = bench ? bench.timeZone : 'UTC';
  return {
    zone: zone === undefined ? undefined : openTimeZone(zone),
    amounts: new Map(),
    quantities: new Map(),
  };
}

/** The same for a zone that is there and is none. */
export const settingsOfRead = ({ card, problems }: Read<BenchCard>): ReadSettings =>
  settingsOf(problems.some(({ code }) => code === 'unknown-time-zone') ? undefined : card);

/** Everything in the folder. Nothing is thrown for what is wrong in a file. */
export async function readLedger(root: string, port: ReadPort): Promise<Ledger> {
  const bench = await openBench(root, port);
  const settings = settingsOfRead(bench);
  const hasBook = port.sizeOf(join(root, ingredientsFile)) !== undefined;
  const ingredients = hasBook
    ? await openFile(port, {
        root,
        file: ingredientsFile,
        read: (document) => readIngredientsCard(document, settings),
      })
    : undefined;
  const place = { root, port, settings };
  const trials = await openFolder(place, 'trials', readTrialCard);
  const series = await openFolder(place, 'series', readSeriesCard);
  const formulas = await openFolder(place, 'formulas', readFormulaCard);
  const batches = await openFolder(place, 'batches', readBatchCard);
  const opened = [
    bench,
    ...(ingredients ? [ingredients] : []),
    ...trials,
    ...series,
    ...formulas,
    ...batches,
  ];
  return {
    root,
    now: port.now(),
    bench: bench.card,
    ingredients: ingredients?.card,
    trials: cardsOf(trials).sort((left, right) => left.number - right.number),
    series: cardsOf(series),
    formulas: cardsOf(formulas),
    batches: cardsOf(batches),
    documents: new Map(opened.map(({ file, document }): [string, LedgerDocument] => [file, document])),
    unread: opened.flatMap(({ file, card }) => (card ? [] : [file])),
    problems: opened.flatMap(({ problems }): readonly Problem[] => problems),
    hasFile: (path) => port.sizeOf(join(root, path)) !== undefined,
  };
}

export interface LedgerPlace {
  readonly root: string;
  readonly port: ReadPort;
  readonly settings: ReadSettings;
}

/** All files of one kind. */
export async function openFolder<Card extends AnyCard>(
  place: LedgerPlace,
  folder: string,
  read: (document: LedgerDocument, settings: ReadSettings) => Read<Card>,
): Promise<readonly Opened<Card>[]> {
  const all: Opened<Card>[] = [];
  for (const file of filesIn(place.root, folder, place.port)) {
    const opened = await openOne(place, file, read);
    if (opened) all.push({ ...opened, document: withoutTree(opened.document) });
  }
  return all;
}

/** One file of a kind; undefined where it has gone. */
export async function openOne<Card extends AnyCard>(
  { root, port, settings }: LedgerPlace,
  file: string,
  read: (document: LedgerDocument, settings: ReadSettings) => Read<Card>,
): Promise<Opened<Card> | undefined> {
  const size = port.sizeOf(join(root, file));
  if (size === undefined) return undefined;
  const request = { root, file, read: (document: LedgerDocument) => read(document, settings) };
  const now = await naming(file, async () => openNow(port, request, size));
  return needsArithmetic(now) ? withArithmetic(now, request) : now;
}

const cardsOf = <Card extends AnyCard>(opened: readonly Opened<Card>[]): Card[] =>
  opened.flatMap(({ card }) => (card ? [card] : []));
