/**
 * The one way in which the ledger's files are written: whole or not at all.
 *
 * Under the ledger's lock each file is compared with what the change was made from; then all new texts are
 * written and flushed beside the old ones; then each is renamed over its old one. A process killed in
 * between leaves whole files, a lock that the next one finds dead, and temporary files with that lock's token.
 */

import { join } from 'node:path';
import { fail } from '../problem.ts';
import type { Disk } from './disk.ts';
import { naming } from './disk-problem.ts';
import { putInPlace, type Staged, stage, unstage } from './landing.ts';
import { landingPlace } from './landing-place.ts';
import { type Held, type LockPort, takeLock } from './lock.ts';
import { sweep } from './sweep.ts';

export type LandPort = LockPort;

export interface FileChange {
  /** Relative to the root of the ledger, or absolute. */
  readonly path: string;
  /** The text that the change was made from; undefined: there must be no such file. */
  readonly before: string | undefined;
  readonly after: string;
}

/** A new file that is no text, such as a picture. */
export interface NewBytes {
  readonly path: string;
  readonly before: undefined;
  readonly after: Uint8Array;
}

/** Takes a file away; after everything else has been put in its place. */
export interface FileRemoval {
  readonly path: string;
  readonly before: string;
  readonly after: undefined;
}

/** Holds the landing to what a folder looked like, so that two new trials never get the same number. */
export interface FolderSeen {
  readonly folder: string;
  /** Its `.yaml` names, in any order. */
  readonly names: readonly string[];
}

export type Change = FileChange | NewBytes | FileRemoval | FolderSeen;

export type Landing =
  | { readonly state: 'landed'; readonly written: readonly string[] }
  /** These are no longer as they were when the changes were made: read again and make them anew. */
  | { readonly state: 'changed'; readonly paths: readonly string[] };

const isFileChange = (change: Change): change is Exclude<Change, FolderSeen> => 'path' in change;

/** The `.yaml` files of a folder, as `FolderSeen` wants them. */
export async function seeFolder(disk: Disk, root: string, folder: string): Promise<FolderSeen> {
  const names = await naming(folder, () => disk.list(join(root, folder)));
  return { folder, names: names.filter((name) => name.endsWith('.yaml') && !name.startsWith('.')) };
}

async function folderChanged(disk: Disk, root: string, seen: FolderSeen): Promise<boolean> {
  const now = new Set((await seeFolder(disk, root, seen.folder)).names);
  return now.size !== seen.names.length || seen.names.some((name) => !now.has(name));
}

/** `.neckring`, made with a `.gitignore` that hides it whole. */
function ownFolder(port: LandPort, root: string): Promise<string> {
  const { disk } = port;
  return naming('.neckring', async () => {
    const folder = await landingPlace(disk, { root, path: '.neckring' });
    const ignore = join(folder, '.gitignore');
    if ((await disk.standing(ignore)) === undefined) {
      await disk.makeFolder(folder);
      const temporary = join(folder, `.gitignore-${port.self.pid}-${Math.floor(port.chance() * 2 ** 40)}`);
      await disk.writeNew(temporary, new TextEncoder().encode('*\n'));
      await disk.rename(temporary, ignore);
    }
    return folder;
  });
}

async function withLock<T>(port: LandPort, root: string, action: (held: Held) => Promise<T>): Promise<T> {
  const folder = await ownFolder(port, root);
  const held = await naming('.neckring/lock', () => takeLock(port, folder));
  try {
    await sweep(port, { root, own: folder, dead: held.dead });
    return await action(held);
  } finally {
    await held.release();
  }
}

async function write(port: LandPort, held: Held, staged: readonly Staged[]): Promise<void> {
  try {
    for (const file of staged) await file.write();
    if (!(await held.isStillHeld())) {
      fail('lock-lost', 'the lock of the ledger was taken away while writing', 'type it again');
    }
  } catch (thrown) {
    await unstage(port.disk, staged);
    throw thrown;
  }
  await putInPlace(port.disk, staged);
}

async function landHeld(
  port: LandPort,
  root: string,
  held: Held,
  changes: readonly Change[],
): Promise<Landing> {
  const changed: string[] = [];
  const staged: Staged[] = [];
  for (const [number, change] of changes.entries()) {
    if (!isFileChange(change)) {
      if (await folderChanged(port.disk, root, change)) changed.push(change.folder);
      continue;
    }
    const file = await naming(change.path, () =>
      stage(port.disk, { root, change, token: held.token, number }),
    );
    if (file === 'changed') changed.push(change.path);
    else if (file !== 'same') staged.push(file);
  }
  if (changed.length > 0) return { state: 'changed', paths: changed };
  await write(port, held, staged);
  return { state: 'landed', written: staged.map((file) => file.path) };
}

/**
 * Writes the changes, all of them or none.
 * Output    `landed` with the files written, or `changed` with those that are no longer as they were
 * Refuses   what the disk refuses, links that lead outside, a lock that is not given back: exit code 2
 */
export function land(port: LandPort, root: string, changes: readonly Change[]): Promise<Landing> {
  return withLock(port, root, (held) => landHeld(port, root, held, changes));
}

const tries = 5;

/**
 * Makes the changes and lands them. When somebody else was quicker they are made anew, then under the lock,
 * so that no other command of ours can come in between.
 * Input     `make` reads the files afresh each time it is called, and lands nothing itself
 * Output    the files written
 */
export async function landWithRetry(
  port: LandPort,
  root: string,
  make: () => Promise<readonly Change[]>,
): Promise<readonly string[]> {
  const first = await make();
  if (!first.some(isFileChange)) return [];
  const landing = await land(port, root, first);
  if (landing.state === 'landed') return landing.written;
  return withLock(port, root, async (held) => {
    for (let attempt = 1; ; attempt += 1) {
      const again = await landHeld(port, root, held, await make());
      if (again.state === 'landed') return again.written;
      if (attempt === tries) {
        fail(
          'keeps-changing',
          `${again.paths.join(', ')} is being changed by another program`,
          'save it in the editor, then type this again',
        );
      }
    }
  });
}
