/** Photos of observations: small, inside the file, and only what lies inside the ledger. */

import { join, resolve, sep } from 'node:path';
import type { MadeCard } from '../ledger/cards.ts';
import { nodeDisk } from '../ledger/disk.ts';
import { dayOf } from '../ledger/look-strip.ts';
import { observationsOf } from '../ledger/sample-record.ts';
import type { Part, Photo } from '../output/report/model.ts';
import type { Here } from './open-ledger.ts';
import { sizeText } from './photo.ts';

/** Common practice, no source: a file that can still be sent by mail. */
const largestBytes = 1_500_000;
const mostBytes = 12_000_000;

interface Wanted {
  readonly path: string;
  readonly caption: string;
}

export async function photoParts(here: Here, cards: readonly MadeCard[]): Promise<readonly Part[]> {
  const wanted = cards.flatMap(photosOf);
  const photos: Photo[] = [];
  const leftOut: string[] = [];
  let bytes = 0;
  for (const one of wanted) {
    const found = await readPhoto(here, one, mostBytes - bytes);
    if ('why' in found) leftOut.push(`${one.caption}: ${one.path} ${found.why}`);
    else {
      bytes += found.bytes;
      photos.push({ caption: one.caption, data: found.data });
    }
  }
  return [
    ...(photos.length > 0 ? [{ kind: 'photos', photos } as const] : []),
    ...(leftOut.length > 0 ? [{ kind: 'notes', mark: '-', notes: leftOut } as const] : []),
  ];
}

function photosOf(card: MadeCard): readonly Wanted[] {
  const name = card.file.startsWith('trials/') && 'number' in card ? `trial ${card.number}` : card.file;
  return card.samples.flatMap((sample) =>
    observationsOf(card, sample).flatMap(({ photo, at, looks }) => {
      if (!photo) return [];
      const day = dayOf(card, sample, at.epochMilliseconds);
      const when = day === undefined ? at.written.slice(0, 10) : `day ${day}`;
      const parts = [name, ...(card.samples.length > 1 ? [sample.name] : []), when, ...looks];
      return [{ path: photo.text, caption: parts.join(', ') }];
    }),
  );
}

type Read = { readonly data: string; readonly bytes: number } | { readonly why: string };

async function readPhoto({ root, port }: Here, { path }: Wanted, room: number): Promise<Read> {
  const full = resolve(root, path);
  const size = port.sizeOf(full);
  if (size === undefined) return { why: 'is not there' };
  const [realRoot, real] = [await nodeDisk.realPath(root), await nodeDisk.realPath(full)];
  if (!real.startsWith(join(realRoot, sep))) return { why: 'lies outside the ledger, and is left out' };
  if (size > largestBytes)
    return { why: `is ${sizeText(size)}; up to ${sizeText(largestBytes)} are shown, make a smaller copy` };
  if (size > room) return { why: `is left out: all photos together would be over ${sizeText(mostBytes)}` };
  const bytes = port.read(real);
  const kind = kindOf(bytes);
  if (!kind) return { why: 'is no JPEG, PNG, GIF or WebP' };
  return { data: `data:image/${kind};base64,${Buffer.from(bytes).toString('base64')}`, bytes: size };
}

/** By its first bytes, never by its name. */
export function kindOf(bytes: Uint8Array): 'jpeg' | 'png' | 'gif' | 'webp' | undefined {
  const head = Buffer.from(bytes.subarray(0, 12)).toString('latin1');
  if (head.startsWith('\u00ff\u00d8\u00ff')) return 'jpeg';
  if (head.startsWith('\u0089PNG\r\n\u001a\n')) return 'png';
  if (/^GIF8[79]a/u.test(head)) return 'gif';
  return head.startsWith('RIFF') && head.slice(8) === 'WEBP' ? 'webp' : undefined;
}
