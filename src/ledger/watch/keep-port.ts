/** Where what was read of the ledger is kept between commands. Nothing that fails here stops a command. */

import {
  lstatSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';

export interface FileState {
  /** Size, times of change and of its record, number on the disk. */
  readonly mark: string;
  /** When its record last changed, in milliseconds by the disk's clock. */
  readonly changedAt: number;
}

/** Of one ledger; `folder` is `trials`, `series` or `batches`. */
export interface KeepPort {
  readonly load: (folder: string) => Uint8Array | undefined;
  /** Writes whole, by another name first. */
  readonly save: (folder: string, bytes: Uint8Array) => void;
  /** The disk's clock now, less the longest tick that a file system has; undefined where nothing can be kept. */
  readonly tick: () => number | undefined;
  /** Names in a folder, files or not: which they are, `stateOf` tells. Listed once. */
  readonly names: (folder: string) => readonly string[];
  /** Undefined where there is no such file. */
  readonly stateOf: (file: string) => FileState | undefined;
}

/** The coarsest clock of a file system still in use (FAT) ticks every two seconds. */
const longestTickMilliseconds = 2_500;

const quietly = <T>(action: () => T): T | undefined => {
  try {
    return action();
  } catch {
    return undefined;
  }
};

/** In `.neckring` of a ledger, which hides itself from git; `self` tells processes apart. */
export function diskKeepPort(root: string, self: string): KeepPort {
  const own = join(root, '.neckring');
  const path = (folder: string): string => join(own, `${folder}.kept`);
  const listed = new Map<string, readonly string[]>();
  const beside = (folder: string): string => join(own, `${folder}-${self}.kept`);
  return {
    load: (folder) => quietly(() => readFileSync(path(folder))),
    save: (folder, bytes) => {
      quietly(() => {
        writeFileSync(beside(folder), bytes);
        renameSync(beside(folder), path(folder));
      });
      quietly(() => rmSync(beside(folder), { force: true }));
    },
    tick: () =>
      quietly(() => {
        hiddenFolder(own);
        writeFileSync(beside('tick'), '');
        const { ctimeMs } = statSync(beside('tick'));
        rmSync(beside('tick'));
        return ctimeMs - longestTickMilliseconds;
      }),
    names: (folder) => {
      const names = listed.get(folder) ?? quietly(() => readdirSync(join(root, folder))) ?? [];
      listed.set(folder, names);
      return names;
    },
    stateOf: (file) => quietly(() => stateAt(`${root}/${file}`)),
  };
}

function stateAt(path: string): FileState | undefined {
  // To a quarter of a microsecond; whole nanoseconds would take twice as long to ask for.
  const found = statSync(path, { throwIfNoEntry: false });
  if (!found?.isFile()) return undefined;
  const { size, mtimeMs, ctimeMs, ino } = found;
  return { mark: `${size} ${mtimeMs} ${ctimeMs} ${ino}`, changedAt: ctimeMs };
}

function hiddenFolder(folder: string): void {
  if (mkdirSync(folder, { recursive: true }) !== undefined) writeFileSync(join(folder, '.gitignore'), '*\n');
  if (!lstatSync(folder).isDirectory()) throw new Error(`${folder} is a link`);
}
