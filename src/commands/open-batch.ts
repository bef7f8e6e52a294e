/** Opening a batch by the name inside its file, or by its file. */

import { isAbsolute, relative, resolve, sep } from 'node:path';
import type { Io } from '../io.ts';
import type { BatchCard } from '../ledger/cards.ts';
import { openFolder } from '../ledger/folder.ts';
import { type Opened, openFile } from '../ledger/open-file.ts';
import { readBatchCard } from '../ledger/read-batch.ts';
import { isSameName } from '../ledger/stage-name.ts';
import { writtenTime } from '../ledger/typed-time.ts';
import { fail, ProblemError } from '../problem.ts';
import { nearestNames } from '../reference/name.ts';
import { type Here, type OpenedTrial, openTrialNamed } from './open-ledger.ts';
import { thereWords } from './there-words.ts';

export interface OpenedBatch extends Opened<BatchCard> {
  readonly card: BatchCard;
}

export type OpenedMade = OpenedBatch | OpenedTrial;

export const isBatch = (made: OpenedMade): made is OpenedBatch => made.card.kind === 'batch';

/** Undefined where no batch is named so; refused with its problems where it can't be read. */
export async function findBatch(here: Here, io: Io, typed: string): Promise<OpenedBatch | undefined> {
  const file = batchFile(here, io, typed);
  if (file !== undefined) {
    const read = (document: Opened<BatchCard>['document']) => readBatchCard(document, here.settings);
    return sound(await openFile(here.port, { root: here.root, file, read }));
  }
  if (/^\d{1,9}$/.test(typed)) return undefined;
  const all = await openFolder(here, 'batches', readBatchCard);
  const named = all.filter((one) => one.card && isSameName(one.card.name, typed));
  const [first, second] = named;
  if (first && second)
    return fail(
      'same-name',
      `"${typed}" is the name of ${first.file} and of ${second.file}`,
      'name the file, or give one of them another name',
    );
  const unread = all.find(({ file: path, card }) => !card && path === `batches/${typed}.yaml`);
  return first ? sound(first) : unread && sound(unread);
}

/** A batch by its name, a trial by its number, either by its file. */
export async function openMade(here: Here, io: Io, typed: string): Promise<OpenedMade> {
  const batch = await findBatch(here, io, typed);
  if (batch) return batch;
  if (/^\d{1,9}$/.test(typed) || typed.endsWith('.yaml')) return openTrialNamed(here, io, typed);
  const all = await openFolder(here, 'batches', readBatchCard);
  const names = all.flatMap(({ card }) => card?.name ?? []);
  const unread = all.flatMap(({ card, file }) => (card ? [] : [file]));
  const near = nearestNames(typed, names, 3);
  const none = 'there are no batches yet: neckring batch record writes one';
  const there = thereWords({ kind: 'batches', names: names.slice(-8), unread, none });
  return fail(
    'no-batch',
    `there is no trial ${typed}, nor a batch of that name`,
    near.length > 0 ? `did you mean ${near.join(' or ')}?` : `${there}; a trial is named by its number`,
  );
}

function batchFile(here: Here, io: Io, typed: string): string | undefined {
  const path = resolve(io.workingFolder, typed);
  const file = relative(here.root, path).split(sep).join('/');
  const isThere = typed.endsWith('.yaml') && file.startsWith('batches/') && !isAbsolute(file);
  return isThere && here.port.sizeOf(path) !== undefined ? file : undefined;
}

function sound(opened: Opened<BatchCard>): OpenedBatch {
  const { card, problems } = opened;
  if (card?.isSound) return { ...opened, card };
  const errors = problems.filter(({ severity }) => severity === 'error');
  throw new ProblemError(errors.length > 0 ? errors : problems);
}

/** The day and a count: `2026-03-12-1`. */
export async function nextBatchName(here: Here, io: Io): Promise<string> {
  const day = writtenTime(io.now(), here.settings.zone).slice(0, 10);
  const names = (await openFolder(here, 'batches', readBatchCard)).flatMap(({ card, file }) => [
    file.replace(/^batches\/|\.yaml$/gu, ''),
    ...(card ? [card.name] : []),
  ]);
  for (let count = 1; ; count += 1) {
    const name = `${day}-${count}`;
    if (!names.some((one) => isSameName(one, name))) return name;
  }
}

/** `batch 2026-03-12-1`, `trial 17` */
export const madeWords = ({ card }: OpenedMade): string =>
  card.kind === 'trial' ? `trial ${card.number}` : `batch ${card.name}`;
