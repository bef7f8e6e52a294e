/**
 * The disk as the ledger uses it, behind a small port, so that tests can make it full, forbidden or slow.
 * Every error keeps the `code` of the operating system (`ENOSPC`, `EACCES` …).
 */

import { constants } from 'node:fs';
import * as files from 'node:fs/promises';

/** What stands at a path, links followed. */
export interface Standing {
  readonly kind: 'file' | 'folder' | 'other';
  readonly permissions: number;
  readonly owner: number;
  readonly group: number;
  readonly modifiedMilliseconds: number;
}

export interface Disk {
  read(path: string): Promise<Uint8Array>;
  /** Nothing there, or nothing reachable through a link: undefined. */
  standing(path: string): Promise<Standing | undefined>;
  isLink(path: string): Promise<boolean>;
  /** The path with every link followed. */
  realPath(path: string): Promise<string>;
  /** The names in a folder; none where there is no folder. */
  list(path: string): Promise<readonly string[]>;
  /** With its parents; one that is there already will do. */
  makeFolder(path: string): Promise<void>;
  /** Writes a file that must not exist yet, with the permissions of `like`, and waits until it is on the disk. */
  writeNew(path: string, bytes: Uint8Array, like?: Standing): Promise<void>;
  checkWritable(path: string): Promise<void>;
  rename(from: string, to: string): Promise<void>;
  /** A file; one that is gone already will do. */
  remove(path: string): Promise<void>;
  /** An empty folder; one that is gone, or isn't empty, is left alone. */
  removeEmptyFolder(path: string): Promise<void>;
  /** Waits until the names in a folder are on the disk, where the system can do that. */
  flushFolder(path: string): Promise<void>;
}

/** The operating system's code of an error, such as `ENOENT`. */
export function errorCode(thrown: unknown): string | undefined {
  if (typeof thrown !== 'object' || thrown === null || !('code' in thrown)) return undefined;
  return typeof thrown.code === 'string' ? thrown.code : undefined;
}

/** Does it, and takes the named errors as done. */
export async function unless<T>(codes: readonly string[], action: () => Promise<T>): Promise<T | undefined> {
  try {
    return await action();
  } catch (thrown) {
    if (codes.includes(errorCode(thrown) ?? '')) return undefined;
    throw thrown;
  }
}

async function writeNew(path: string, bytes: Uint8Array, like?: Standing): Promise<void> {
  const handle = await files.open(path, 'wx', like?.permissions ?? 0o666);
  try {
    await handle.writeFile(bytes);
    if (like) {
      const made = await handle.stat();
      if (made.uid !== like.owner || made.gid !== like.group) {
        await unless(['EPERM', 'EACCES', 'EINVAL', 'ENOSYS'], () => handle.chown(like.owner, like.group));
      }
      await unless(['EPERM', 'ENOSYS', 'ENOTSUP'], () => handle.chmod(like.permissions));
    }
    await handle.sync();
  } finally {
    await handle.close();
  }
}

async function makeFolder(path: string): Promise<void> {
  try {
    await files.mkdir(path, { recursive: true });
  } catch (thrown) {
    // With parents Node says ENOENT of a disk that can only be read; one folder alone tells the true cause.
    if (errorCode(thrown) !== 'ENOENT') throw thrown;
    await files.mkdir(path);
  }
}

async function flushFolder(path: string): Promise<void> {
  // Not every system opens folders or flushes them; then there is nothing more that we can do.
  await unless(['EISDIR', 'EPERM', 'EACCES', 'EINVAL', 'ENOTSUP', 'EBADF'], async () => {
    const handle = await files.open(path, 'r');
    try {
      await handle.sync();
    } finally {
      await handle.close();
    }
  });
}

async function standing(path: string): Promise<Standing | undefined> {
  const found = await unless(['ENOENT', 'ENOTDIR'], () => files.stat(path));
  if (!found) return undefined;
  return {
    kind: found.isFile() ? 'file' : found.isDirectory() ? 'folder' : 'other',
    permissions: found.mode & 0o7777,
    owner: found.uid,
    group: found.gid,
    modifiedMilliseconds: found.mtimeMs,
  };
}

/** The disk of this machine. */
export const nodeDisk: Disk = {
  read: (path) => files.readFile(path),
  standing,
  isLink: async (path) =>
    (await unless(['ENOENT', 'ENOTDIR'], () => files.lstat(path)))?.isSymbolicLink() === true,
  realPath: (path) => files.realpath(path),
  list: async (path) => (await unless(['ENOENT'], () => files.readdir(path))) ?? [],
  makeFolder,
  writeNew,
  checkWritable: (path) => files.access(path, constants.W_OK),
  rename: (from, to) => files.rename(from, to),
  remove: async (path) => {
    await unless(['ENOENT', 'ENOTDIR'], () => files.unlink(path));
  },
  removeEmptyFolder: async (path) => {
    await unless(['ENOENT', 'ENOTDIR', 'ENOTEMPTY', 'EEXIST', 'EPERM', 'EBUSY'], () => files.rmdir(path));
  },
  flushFolder,
};
