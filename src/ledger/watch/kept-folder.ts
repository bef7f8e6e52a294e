/**
 * The files of a folder, without reading again what did not change.
 *
 * What the reading of each came to is kept with its size, its times of change and its number on the disk, as they were
 * before it was read. A file counts as unchanged only where all of them are the same and its last change lay well
 * before that reading, by the disk's own clock; so a second edit in the same tick of the clock, a clock set back, a
 * checkout or a copy is never taken for what was there before.
 */

import type { AnyCard } from '../cards.ts';
import { filesIn, type LedgerPlace, openOne } from '../folder.ts';
import type { LedgerDocument } from '../parse.ts';
import type { Read, ReadSettings } from '../reading.ts';
import type { FileState, KeepPort } from './keep-port.ts';
import { type KeptFile, keptBytes, openKept } from './kept-text.ts';

/** So many may have changed, if they are not the half of all, before the kept ones are written anew. */
const mostChanged = 16;

export interface FolderWanted<Card extends AnyCard> {
  readonly place: LedgerPlace;
  /** Absent where nothing is kept. */
  readonly keep: KeepPort | undefined;
  /** What the reading depends on besides the files: the program, the bench, the zones that the computer knows. */
  readonly of: string;
  readonly folder: string;
  readonly read: (document: LedgerDocument, settings: ReadSettings) => Read<Card>;
  /** Whether a row tells what is asked; where it does not, its file is read anew. */
  readonly isEnough?: (row: string) => boolean;
}

/** A file that is there: with the row that was kept of it, or as it was read now. */
export interface WalkedFile<Card extends AnyCard> {
  /** From the root of the ledger, with `/`. */
  readonly file: string;
  readonly errors: number;
  readonly row: string | undefined;
  readonly card: Card | undefined;
  /** What the disk said of it before it was read; absent where that may not be kept. */
  readonly mark: string | undefined;
}

export interface Walked<Card extends AnyCard> {
  /** In the order of their names. */
  readonly files: readonly WalkedFile<Card>[];
  /** Whether so many were read that it is worth writing what they came to. */
  readonly isStale: boolean;
  /** What was kept before. */
  readonly bytes: Uint8Array | undefined;
}

/** All files of a folder. */
export async function walkFolder<Card extends AnyCard>(wanted: FolderWanted<Card>): Promise<Walked<Card>> {
  const { place, keep, of, folder, isEnough } = wanted;
  const bytes = keep?.load(folder);
  const keptOf = bytes && openKept(bytes, of);
  const files: WalkedFile<Card>[] = [];
  let [changed, tick]: [number, number | undefined] = [0, undefined];
  for (const file of namesOf(place, folder, keep)) {
    const before = keep?.stateOf(file);
    const kept = before && keptOf?.(file, before.mark);
    if (kept && (isEnough?.(kept.row) ?? true)) {
      files.push({ file, errors: kept.errors, row: kept.row, card: undefined, mark: kept.mark });
      continue;
    }
    changed += 1;
    tick ??= keep?.tick();
    // The clock was read first: what changes from here on can't count as old.
    const state = keep?.stateOf(file);
    const read = await readAnew(wanted, file);
    if (read) files.push({ file, ...read, row: undefined, mark: oldMark(state, tick) });
  }
  const isMuch = changed > mostChanged || 2 * changed > files.length;
  return { files, isStale: keep !== undefined && isMuch, bytes };
}

/** A file that changed a moment ago may change again within the same tick: it is read again the next time. */
const oldMark = (state: FileState | undefined, tick: number | undefined): string | undefined =>
  state && tick !== undefined && state.changedAt < tick ? state.mark : undefined;

/** As `filesIn`; where each is looked at anyway, what is no file is found out then. */
const namesOf = (place: LedgerPlace, folder: string, keep: KeepPort | undefined): readonly string[] =>
  keep === undefined
    ? filesIn(place.root, folder, place.port)
    : keep
        .names(folder)
        .filter((name) => name.endsWith('.yaml') && !name.startsWith('.'))
        .sort()
        .map((name) => `${folder}/${name}`);

async function readAnew<Card extends AnyCard>(
  { place, read }: FolderWanted<Card>,
  file: string,
): Promise<{ readonly errors: number; readonly card: Card | undefined } | undefined> {
  const opened = await openOne(place, file, read);
  if (!opened) return undefined;
  const errors = opened.problems.filter(({ severity }) => severity === 'error').length;
  return { errors, card: opened.card };
}

/** Writes what the files came to; `rowOf` makes the row of a card that was read. */
export function keepFolder<Card extends AnyCard>(
  { keep, of, folder }: FolderWanted<Card>,
  { files, bytes }: Walked<Card>,
  rowOf: (card: Card) => string,
): void {
  const kept = new Map<string, KeptFile>();
  for (const { file, errors, row, card, mark } of files)
    if (mark !== undefined) kept.set(file, { mark, errors, row: row ?? (card ? rowOf(card) : '') });
  const next = keptBytes(of, kept);
  if (!bytes || Buffer.compare(bytes, next) !== 0) keep?.save(folder, next);
}
