/** Where the ledger is: the nearest folder at or above this one that holds `bench.yaml`. Reads no file. */

import { statSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';

export const benchFile = 'bench.yaml';

export async function findRoot(from: string): Promise<string | undefined> {
  let folder = resolve(from);
  for (;;) {
    if (isFile(join(folder, benchFile))) return folder;
    const parent = dirname(folder);
    if (parent === folder) return undefined;
    folder = parent;
  }
}

function isFile(path: string): boolean {
  try {
    return statSync(path, { throwIfNoEntry: false })?.isFile() === true;
  } catch {
    return false;
  }
}
