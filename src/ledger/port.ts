/** The disk as readers of the ledger see it. Tests give one that lives in memory. */

import { readdirSync, readFileSync, type Stats, statSync } from 'node:fs';
import { join } from 'node:path';
import { errorCode } from './disk.ts';

export interface ReadPort {
  /** Size in bytes of a file; undefined where there is no file. */
  readonly sizeOf: (path: string) => number | undefined;
  /** Whether a folder is there. */
  readonly isFolder: (path: string) => boolean;
  readonly read: (path: string) => Uint8Array;
  /** The names of the files in a folder, in no order; none where there is no folder. */
  readonly list: (path: string) => readonly string[];
  /** Milliseconds since 1970. */
  readonly now: () => number;
}

/** No file can have a NUL in its name or a name too long, so there is none where a path has one. */
const gone: ReadonlySet<string | undefined> = new Set([
  'ENOENT',
  'ENOTDIR',
  'ENAMETOOLONG',
  'ERR_INVALID_ARG_VALUE',
]);

function unlessGone<T>(action: () => T, otherwise: T): T {
  try {
    return action();
  } catch (thrown) {
    if (gone.has(errorCode(thrown))) return otherwise;
    throw thrown;
  }
}

/** What is no folder; only a link is looked at twice, since a look at every file costs as much as reading it. */
const filesOf = (path: string): readonly string[] =>
  readdirSync(path, { withFileTypes: true })
    .filter(
      (entry) => !entry.isDirectory() && !(entry.isSymbolicLink() && isFolderAt(join(path, entry.name))),
    )
    .map((entry) => entry.name);

const standingAt = (path: string): Stats | undefined =>
  unlessGone(() => statSync(path, { throwIfNoEntry: false }), undefined);

const isFolderAt = (path: string): boolean => standingAt(path)?.isDirectory() === true;

/** The disk and the clock of this machine. */
export const diskReadPort: ReadPort = {
  sizeOf: (path) => {
    const standing = standingAt(path);
    return standing?.isFile() === true ? standing.size : undefined;
  },
  isFolder: isFolderAt,
  read: (path) => readFileSync(path),
  list: (path) => unlessGone(() => filesOf(path), []),
  now: Date.now,
};

/** A disk in memory: texts or bytes by path, with `/`. */
export function memoryReadPort(
  files: Readonly<Record<string, string | Uint8Array>>,
  now: () => number = () => 0,
): ReadPort {
  const paths = Object.keys(files);
  const bytesOf = (path: string): Uint8Array | undefined => {
    const content = Object.hasOwn(files, path) ? files[path] : undefined;
    return typeof content === 'string' ? new TextEncoder().encode(content) : content;
  };
  const isAbove = (folder: string): boolean => paths.some((path) => path.startsWith(join(folder, '/')));
  const below = (folder: string): readonly string[] => {
    const head = join(folder, '/');
    const names = paths.filter((path) => path.startsWith(head)).map((path) => path.slice(head.length));
    return names.filter((name) => !name.includes('/'));
  };
  return {
    sizeOf: (path) => bytesOf(path)?.length,
    isFolder: isAbove,
    read: (path) => bytesOf(path) ?? new Uint8Array(),
    list: below,
    now,
  };
}
