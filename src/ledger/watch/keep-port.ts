/** Where what was read of the trials is kept between commands. Nothing that fails here stops a command. */

import { lstatSync, mkdirSync, readFileSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

export interface FileState {
  /** Size, times of change and of its record, number on the disk. */
  readonly mark: string;
  /** When its record last changed, in milliseconds by the disk's clock. */
  readonly changedAt: number;
}

export interface KeepPort {
  readonly load: () => string | undefined;
  /** Writes whole, by another name first. */
  readonly save: (text: string) => void;
  /** The disk's clock now, less the longest tick that a file system has; undefined where nothing can be kept. */
  readonly tick: () => number | undefined;
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
  const folder = join(root, '.neckring');
  const path = join(folder, 'trials.json');
  const beside = join(folder, `trials-${self}.json`);
  return {
    load: () => quietly(() => readFileSync(path, 'utf8')),
    save: (text) => {
      quietly(() => {
        writeFileSync(beside, text);
        renameSync(beside, path);
      });
      quietly(() => rmSync(beside, { force: true }));
    },
    tick: () =>
      quietly(() => {
        hiddenFolder(folder);
        writeFileSync(beside, '');
        const { ctimeMs } = statSync(beside);
        rmSync(beside);
        return ctimeMs - longestTickMilliseconds;
      }),
    stateOf: (file) =>
      quietly(() => {
        // To a quarter of a microsecond; whole nanoseconds would take three times as long to ask for.
        const { size, mtimeMs, ctimeMs, ino } = statSync(`${root}/${file}`);
        return { mark: `${size} ${mtimeMs} ${ctimeMs} ${ino}`, changedAt: ctimeMs };
      }),
  };
}

function hiddenFolder(folder: string): void {
  if (mkdirSync(folder, { recursive: true }) !== undefined) writeFileSync(join(folder, '.gitignore'), '*\n');
  if (!lstatSync(folder).isDirectory()) throw new Error(`${folder} is a link`);
}
