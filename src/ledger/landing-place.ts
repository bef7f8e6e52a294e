/** Where a change of the ledger really goes: links followed, and never out of the ledger. */

import { basename, dirname, join, relative, resolve, sep } from 'node:path';
import { fail } from '../problem.ts';
import { type Disk, unless } from './disk.ts';

/** The root of a ledger and a path in it, both as the person knows them. */
export interface Wanted {
  readonly root: string;
  /** Relative to the root, or absolute. */
  readonly path: string;
}

const isInside = (folder: string, path: string): boolean => {
  const way = relative(folder, path);
  return way !== '..' && !way.startsWith(`..${sep}`) && resolve(folder, way) === path;
};

/** The real path of the nearest folder that exists, with the names below it that do not exist yet. */
async function nearest(disk: Disk, path: string): Promise<string> {
  const real = await unless(['ENOENT'], () => disk.realPath(path));
  if (real !== undefined) return real;
  const parent = dirname(path);
  return parent === path ? path : join(await nearest(disk, parent), basename(path));
}

/**
 * Output    the absolute path to write to, every link followed
 * Refuses   a path outside the ledger, a link that leads outside it, a link to nothing
 */
export async function landingPlace(disk: Disk, { root, path }: Wanted): Promise<string> {
  const typed = resolve(root, path);
  if (!isInside(resolve(root), typed)) {
    fail('outside-ledger', `${path} lies outside the ledger`, `name a file below ${root}`);
  }
  const realRoot = await disk.realPath(root);
  if ((await disk.isLink(typed)) && (await unless(['ENOENT'], () => disk.realPath(typed))) === undefined) {
    fail('link-to-nothing', `${path} is a link to a file that is not there`, 'mend or remove the link');
  }
  const real = await nearest(disk, typed);
  if (!isInside(realRoot, real)) {
    fail(
      'link-outside',
      `${path} is a link that leads outside the ledger, to ${real}`,
      'put the file itself into the ledger; files outside it are never written',
    );
  }
  return real;
}
