/** A photo taken into the ledger: byte for byte, through a temporary file, never over another. */

import { dirname, extname, join } from 'node:path';
import { type Disk, errorCode } from './disk.ts';
import { naming } from './disk-problem.ts';
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

/**
 * Writes the picture under the first free name.
 * Output    where it stands; it is not written where it stood already
 * Refuses   what the disk refuses, a `photos` folder that leads outside the ledger
 */
export async function copyPhoto(disk: Disk, wanted: PhotoWanted): Promise<PhotoPlace> {
  for (;;) {
    const place = await placeForPhoto(disk, wanted);
    if (place.isThere) return place;
    const target = await landingPlace(disk, { root: wanted.root, path: place.path });
    if (await naming(place.path, () => written(disk, target, wanted.bytes))) return place;
  }
}

/** False where another program took the name meanwhile: it is kept with an empty file, then filled in one step. */
async function written(disk: Disk, target: string, bytes: Uint8Array): Promise<boolean> {
  const folder = dirname(target);
  await disk.makeFolder(folder);
  const chance = Math.random().toString(36).slice(2);
  const temporary = join(folder, `.neckring-${process.pid}-${chance}.tmp`);
  let isKept = false;
  try {
    await disk.writeNew(temporary, bytes);
    await disk.writeNew(target, new Uint8Array());
    isKept = true;
    await disk.rename(temporary, target);
  } catch (thrown) {
    await disk.remove(temporary);
    if (isKept) await disk.remove(target);
    else if (errorCode(thrown) === 'EEXIST') return false;
    throw thrown;
  }
  await disk.flushFolder(folder).catch(() => undefined);
  return true;
}
