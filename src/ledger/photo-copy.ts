/** Where a photo that is taken into the ledger goes: never over another. It lands with what was seen. */

import { extname } from 'node:path';
import type { Disk } from './disk.ts';
import { landingPlace } from './landing-place.ts';

export interface PhotoWanted {
  readonly root: string;
  /** In the ledger, without its counter: `photos/0014-2026-03-03-beaker.jpg`. */
  readonly path: string;
  readonly bytes: Uint8Array;
}

export interface PhotoPlace {
  readonly path: string;
  /** The very same picture stands there already. */
  readonly isThere: boolean;
}

const mostOfAName = 999;

/** The first name that is free, or that holds this very picture. */
export async function placeForPhoto(disk: Disk, { root, path, bytes }: PhotoWanted): Promise<PhotoPlace> {
  for (let count = 1; count <= mostOfAName; count += 1) {
    const name = counted(path, count);
    const target = await landingPlace(disk, { root, path: name });
    const standing = await disk.standing(target);
    if (!standing) return { path: name, isThere: false };
    if (standing.kind === 'file' && isSame(await disk.read(target), bytes))
      return { path: name, isThere: true };
  }
  return { path: counted(path, mostOfAName + 1), isThere: false };
}

/** `photos/a.jpg`, `photos/a-2.jpg` … */
function counted(path: string, count: number): string {
  const ending = extname(path);
  return count === 1 ? path : `${path.slice(0, path.length - ending.length)}-${count}${ending}`;
}

const isSame = (one: Uint8Array, other: Uint8Array): boolean =>
  one.length === other.length && Buffer.compare(one, other) === 0;
