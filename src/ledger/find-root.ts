/** Where the ledger is: the nearest folder at or above this one that holds `bench.yaml`. Reads no file. */

import { stat } from 'node:fs/promises';
import { dirname, join, resolve } from 'node:path';

export const benchFile = 'bench.yaml';

export async function findRoot(from: string): Promise<string | undefined> {
  let folder = resolve(from);
  for (;;) {
    if (await isFile(join(folder, benchFile))) return folder;
    const parent = dirname(folder);
    if (parent === folder) return undefined;
    folder = parent;
  }
}

async function isFile(path: string): Promise<boolean> {
  try {
    return (await stat(path)).isFile();
  } catch {
    return false;
  }
}
