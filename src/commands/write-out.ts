/** Writing a text to a path that the person typed: a sheet, a table, a calendar. No part of the ledger. */

import { randomBytes } from 'node:crypto';
import { basename, dirname, extname, join, resolve } from 'node:path';
import type { Io } from '../io.ts';
import { type Disk, nodeDisk } from '../ledger/disk.ts';
import { naming } from '../ledger/disk-problem.ts';
import { putInPlace, type Staged, unstage } from '../ledger/landing.ts';
import { fail } from '../problem.ts';

export interface WriteOut {
  readonly io: Io;
  /** As typed, from the working folder. */
  readonly typed: string;
  readonly text: string;
  /** A file of ours is known by this in its first line, or its first `markLines` lines. */
  readonly mark?: string;
  readonly markLines?: number;
  /** Nothing that is there is written over without `replace`, ours neither. */
  readonly keepsOurs?: boolean;
  /** Replaces a file whoever wrote it. */
  readonly replace?: boolean;
  /** A recipe passed on, which may end in `.yaml` where no ledger would take it for a file of its own. */
  readonly isGift?: boolean;
  readonly disk?: Disk;
}

const defaultMark = 'neckring';

/**
 * Writes a text whole, or not at all.
 * Output    what was written, for a note on stderr
 * Refuses   a folder, a folder that is not there, a file of the ledger, a file of others without `replace`; exit 2
 */
export async function writeOut(given: WriteOut): Promise<string> {
  const [note = ''] = await writeAllOut([given]);
  return note;
}

/** Writes several texts, all of them or none: each is checked, then all are written beside, then put in place. */
export async function writeAllOut(given: readonly WriteOut[]): Promise<readonly string[]> {
  const disk = given[0]?.disk ?? nodeDisk;
  const staged: Staged[] = [];
  for (const one of given) staged.push(await naming(one.typed, () => staging(one, disk)));
  try {
    for (const one of staged) await one.write();
  } catch (thrown) {
    await unstage(disk, staged);
    throw thrown;
  }
  await putInPlace(disk, staged);
  return given.map(({ typed }) => `wrote ${typed}`);
}

async function staging(given: WriteOut, disk: Disk): Promise<Staged> {
  const path = resolve(given.io.workingFolder, given.typed);
  refuseEnding(path, given);
  const standing = await disk.standing(path);
  const target = standing ? await disk.realPath(path) : path;
  refuseEnding(target, given);
  await refuseOthers(path, given, disk);
  if (standing) await disk.checkWritable(target);
  const temporary = join(dirname(target), `.neckring-${randomBytes(6).toString('hex')}.tmp`);
  return {
    path: given.typed,
    target,
    temporary,
    isRemoval: false,
    old: standing && { bytes: await disk.read(target), standing },
    write: () =>
      naming(given.typed, () => disk.writeNew(temporary, new TextEncoder().encode(given.text), standing)),
  };
}

const ledgerFiles: ReadonlySet<string> = new Set(['bench.yaml', 'ingredients.yaml']);
const ledgerFolders: ReadonlySet<string> = new Set(['trials', 'series', 'formulas', 'batches']);

/** Whether a ledger would read it, wherever its root is. */
const isOfLedger = (path: string): boolean =>
  basename(path).startsWith('.') ||
  ledgerFiles.has(basename(path)) ||
  ledgerFolders.has(basename(dirname(path)));

/** What a browser opens as a page, and runs what it finds in it. */
const pageEnding = /^\.(?:x?html?|xht|svg)$/iu;

function refuseEnding(path: string, { typed, text, isGift = false }: WriteOut): void {
  if (isGift ? isOfLedger(path) : /^\.ya?ml$/iu.test(extname(path)) || basename(path).startsWith('.'))
    fail('not-a-sheet', `${typed} would be taken for a file of the ledger`, 'give the file another ending');
  if (pageEnding.test(extname(path)) && !text.startsWith('<!doctype html>'))
    fail(
      'not-a-page',
      `${typed} would be taken for a page, and this is none`,
      'give the file another ending',
    );
}

async function refuseOthers(path: string, given: WriteOut, disk: Disk): Promise<void> {
  const { typed, replace = false, mark = defaultMark, markLines = 1, keepsOurs = false } = given;
  const standing = await disk.standing(path);
  if (!standing) {
    if (await disk.isLink(path))
      fail('link-to-nothing', `${typed} is a link to a file that is not there`, 'mend or remove the link');
    const folder = await disk.standing(dirname(path));
    if (folder?.kind !== 'folder')
      fail('no-folder', `there is no folder for ${typed}`, 'make the folder first, or write elsewhere');
    return;
  }
  if (standing.kind !== 'file')
    fail('not-a-file', `${typed} is ${standing.kind === 'folder' ? 'a folder' : 'no file'}`, 'name a file');
  if (replace) return;
  if (keepsOurs) fail('in-the-way', `${typed} is there already`, 'choose another name, or add --replace');
  const head = new TextDecoder().decode((await disk.read(path)).slice(0, 400));
  if (head.split('\n', markLines).join('\n').includes(mark)) return;
  fail(
    'in-the-way',
    `${typed} is there already, and not one of ours`,
    'choose another name, or add --replace',
  );
}
