/** One file from the disk to its card. */

import { join } from 'node:path';
import { loadArithmetic } from '../calc/arithmetic.ts';
import type { Problem } from '../problem.ts';
import type { AnyCard } from './cards.ts';
import { naming } from './disk-problem.ts';
import { decodeFile, largestBytes, tooLarge } from './guard.ts';
import { type LedgerDocument, parseDocument } from './parse.ts';
import { sourceText } from './places.ts';
import type { ReadPort } from './port.ts';
import type { Read } from './reading.ts';

export interface Opened<Card extends AnyCard> extends Read<Card> {
  /** From the root of the ledger, with `/`. */
  readonly file: string;
  readonly document: LedgerDocument;
}

export interface OpenFile<Card extends AnyCard> {
  readonly root: string;
  readonly file: string;
  readonly read: (document: LedgerDocument) => Read<Card>;
}

/** The card of a file that is known to be there. */
export async function openFile<Card extends AnyCard>(
  port: ReadPort,
  request: OpenFile<Card>,
): Promise<Opened<Card>> {
  const opened = await naming(request.file, async () => openNow(port, request));
  return needsArithmetic(opened) ? withArithmetic(opened, request) : opened;
}

/** The same without a wait, for many files in a row; look at `needsArithmetic` after it. */
export function openNow<Card extends AnyCard>(
  port: ReadPort,
  { root, file, read }: OpenFile<Card>,
  size = port.sizeOf(join(root, file)) ?? 0,
): Opened<Card> {
  const path = join(root, file);
  if (size > largestBytes) return unread(file, '', tooLarge(file, size));
  const decoded = decodeFile(file, port.read(path));
  if ('problem' in decoded) return unread(file, '', decoded.problem);
  return readText(file, decoded.text, read);
}

/** The card of a text that came from anywhere: the disk, git, an edit. */
export function readText<Card extends AnyCard>(
  file: string,
  text: string,
  read: (document: LedgerDocument) => Read<Card>,
): Opened<Card> {
  const document = parseDocument(file, text);
  return { file, document, ...read(document) };
}

function unread(file: string, text: string, problem: Problem): Opened<never> {
  const root = { kind: 'empty', start: 0, end: 0 } as const;
  const document = {
    source: sourceText(file, text),
    root,
    problems: [problem],
    isReadable: false,
    muted: new Set<number>(),
  };
  return { file, document, card: undefined, problems: [problem] };
}

/** Whether an amount in it is a sum or a product that could not be worked out yet. */
export const needsArithmetic = ({ problems }: { readonly problems: readonly Problem[] }): boolean =>
  problems.some(({ code }) => code === 'arithmetic-not-loaded');

export async function withArithmetic<Card extends AnyCard>(
  { file, document }: Opened<Card>,
  { read }: OpenFile<Card>,
): Promise<Opened<Card>> {
  await loadArithmetic();
  return { file, document, ...read(document) };
}
