/** `--photo FILE`: a picture of the ledger is referred to, any other is copied into it. */

import { extname, isAbsolute, relative, resolve, sep } from 'node:path';
import type { Io } from '../io.ts';
import { nodeDisk } from '../ledger/disk.ts';
import { naming } from '../ledger/disk-problem.ts';
import type { NewBytes } from '../ledger/land.ts';
import { nameWords } from '../ledger/new-files.ts';
import { type PhotoWanted, placeForPhoto } from '../ledger/photo-copy.ts';
import { type Fault, fail } from '../problem.ts';
import type { Here } from './open-ledger.ts';

/** Larger pictures are refused: a ledger is kept in git. Common practice, no source. */
const largestBytes = 50_000_000;

export interface Photo {
  /** Its path in the ledger, as the observation refers to it. */
  readonly path: string;
  readonly sizeBytes: number;
  /** Absent where it is in the ledger already. */
  readonly copied?: PhotoWanted & { readonly from: string };
}

export interface PhotoFor {
  readonly typed: string;
  readonly here: Here;
  readonly io: Io;
  readonly trial: number;
  readonly sample: string;
  /** As the observation writes it; its day goes into the name. */
  readonly at: string;
}

/** Finds the picture and its place in the ledger; nothing is written yet. */
export async function findPhoto({ typed, here, io, trial, sample, at }: PhotoFor): Promise<Photo> {
  const { path, sizeBytes } = pictureFile(typed, here, io);
  const own = await pathInLedger(path, here.root);
  if (own !== undefined) return { path: own, sizeBytes };
  if (sizeBytes > largestBytes) {
    const hint = `pictures up to ${sizeText(largestBytes)} are copied into the ledger; make it smaller first`;
    return refusePhoto({ code: 'photo-large', message: `${typed} is ${sizeText(sizeBytes)}`, hint });
  }
  const number = String(trial).padStart(4, '0');
  const name = [number, at.slice(0, 10), nameWords(sample)].filter((part) => part !== '').join('-');
  const bytes = await naming(typed, () => nodeDisk.read(path));
  const wanted = { root: here.root, path: `photos/${name}${extname(path).toLowerCase()}`, bytes };
  const place = await placeForPhoto(nodeDisk, wanted);
  return { path: place.path, sizeBytes, ...(place.isThere ? {} : { copied: { ...wanted, from: typed } }) };
}

/** The copy as a change, under the name that is free now; none where it stands there. */
export async function photoChange(
  photo: Photo,
): Promise<{ readonly photo: Photo; readonly changes: readonly NewBytes[] }> {
  if (!photo.copied) return { photo, changes: [] };
  const { path, isThere } = await placeForPhoto(nodeDisk, photo.copied);
  const changes = isThere ? [] : [{ path, before: undefined, after: photo.copied.bytes }];
  return { photo: { ...photo, path }, changes };
}

export function photoNote({ path, sizeBytes, copied }: Photo, isDry: boolean): string {
  if (!copied) return `${path} (${sizeText(sizeBytes)}) is in the ledger`;
  return `${isDry ? 'would copy' : 'copied'} ${copied.from} (${sizeText(sizeBytes)}) to ${path}`;
}

/** A file by its path from the working folder, or as the ledger writes it, from its root. */
function pictureFile(
  typed: string,
  here: Here,
  io: Io,
): { readonly path: string; readonly sizeBytes: number } {
  const paths = [resolve(io.workingFolder, typed), resolve(here.root, typed)];
  for (const path of paths) {
    const sizeBytes = here.port.sizeOf(path);
    if (sizeBytes !== undefined) return { path, sizeBytes };
  }
  if (paths.some((path) => here.port.isFolder(path))) {
    return refusePhoto({
      code: 'photo-folder',
      message: `${typed} is a folder`,
      hint: 'name the picture in it',
    });
  }
  const hint = 'give its path from this folder, or from the root of the ledger';
  return refusePhoto({ code: 'photo-missing', message: `there is no file ${typed}`, hint });
}

/** Its path from the root, with `/`; undefined outside, and in the folder that may be deleted whole. */
async function pathInLedger(path: string, root: string): Promise<string | undefined> {
  const ways = [
    relative(root, path),
    relative(await nodeDisk.realPath(root), await naming(path, () => nodeDisk.realPath(path))),
  ];
  const inside = ways.find((way) => !isAbsolute(way) && way !== '..' && !way.startsWith(`..${sep}`));
  const own = inside?.split(sep).join('/');
  return own?.startsWith('.neckring/') ? undefined : own;
}

const refusePhoto = ({ code, message, hint }: Fault): never => fail(code, `--photo: ${message}`, hint);

/** `840 kB`, `3.2 MB`: by thousands. */
export function sizeText(bytes: number): string {
  if (bytes < 1000) return `${bytes} bytes`;
  if (bytes < 999_500) return `${Math.round(bytes / 1000)} kB`;
  const megabytes = bytes / 1e6;
  return `${megabytes < 9.95 ? megabytes.toFixed(1) : Math.round(megabytes)} MB`;
}
