/** What the readers of all kinds begin and end with. */

import type { Problem } from '../problem.ts';
import type { FileCard } from './cards.ts';
import { type LedgerDocument, withoutTree } from './parse.ts';
import { type Read, type Reading, type ReadSettings, startReading } from './reading.ts';
import type { FileKind } from './schema.ts';
import { shapeProblems } from './shape.ts';
import type { MapNode } from './tree.ts';

interface Reader<Card extends FileCard> {
  readonly kind: FileKind;
  /** The card's own fields; undefined where what names it is missing. */
  readonly read: (reading: Reading, root: MapNode) => Omit<Card, keyof FileCard> | undefined;
}

/**
 * Reads a file of one kind: shape first, then what its texts say.
 * Output    the card where enough could be read to know what it is about, and every problem in the order of the file
 */
export function readFile<Card extends FileCard>(
  document: LedgerDocument,
  settings: ReadSettings,
  { kind, read }: Reader<Card>,
): Read<Omit<Card, keyof FileCard> & FileCard> {
  const { root } = document;
  if (!document.isReadable) return { card: undefined, problems: document.problems };
  const shape = shapeProblems(document, kind);
  if (root.kind !== 'map') return { card: undefined, problems: merged(document, shape) };
  const reading = startReading(document, settings);
  const fields = read(reading, root);
  const problems = merged(document, [...shape, ...reading.problems]);
  const isSound = problems.every(({ severity }) => severity !== 'error');
  return { card: fields && Object.assign(fileCard(document, isSound), fields), problems };
}

function fileCard(document: LedgerDocument, isSound: boolean): FileCard {
  const later = withoutTree(document);
  return {
    file: document.source.file,
    isSound,
    get root() {
      const { root } = later;
      if (root.kind !== 'map') throw new Error(`${this.file} is no longer a map`);
      return root;
    },
  };
}

/** In the order of the file, without what only follows from a syntax slip on the same line. */
function merged({ problems, muted }: LedgerDocument, found: readonly Problem[]): readonly Problem[] {
  if (problems.length === 0 && found.length === 0) return problems;
  const kept = muted.size === 0 ? found : found.filter(({ place }) => !place || !muted.has(place.line));
  return [...problems, ...kept].sort(byPlace);
}

export function byPlace(left: Problem, right: Problem): number {
  const line = (left.place?.line ?? 0) - (right.place?.line ?? 0);
  return line === 0 ? (left.place?.column ?? 0) - (right.place?.column ?? 0) : line;
}
