/** A text and its tree, as edits look at it. */

import type { Problem } from '../problem.ts';
import { isBlank, lineAt, lineEnd } from './edit-lines.ts';
import { type LedgerDocument, parseDocument } from './parse.ts';
import type { MapEntry, MapNode, TreeNode } from './tree.ts';

export interface Page {
  readonly file: string;
  readonly text: string;
  readonly root: MapNode;
  /** What the reader remarked on, errors apart. */
  readonly warnings: number;
}

export type PageRead =
  | { readonly ok: true; readonly page: Page }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** Reads a text whose root is a map. One in which the reader found an error is not understood, so not edited. */
export const readPage = (file: string, text: string): PageRead => pageOf(parseDocument(file, text));

/** The same of a document that has been read already. */
export function pageOf({ source, root, problems, isReadable }: LedgerDocument): PageRead {
  const { file, text } = source;
  if (!isReadable || problems.some((problem) => problem.severity === 'error')) return { ok: false, problems };
  if (root.kind === 'map') return { ok: true, page: { file, text, root, warnings: problems.length } };
  const message = `${file} has no lines of "word: value" to add to`;
  return {
    ok: false,
    problems: [{ code: 'not-a-map', severity: 'error', message, hint: 'begin it with "trial: 1"' }],
  };
}

/**
 * The offset of a node's last visible character, which says on which line it ends. `kept`: blank lines below
 * a literal or folded text count too, as they do with `|+`.
 */
export function lastOffset(page: Page, node: TreeNode, kept = false): number {
  if (node.kind === 'empty') return node.start;
  if (node.kind === 'text') {
    const isBlock = node.style === 'literal' || node.style === 'folded';
    return kept && isBlock ? lastBlank(page.text, node.end) : node.end - 1;
  }
  if (node.flow) return node.end - 1;
  const last = node.kind === 'list' ? node.items.at(-1) : lastOfEntry(node.entries.at(-1));
  return last ? Math.max(node.start, lastOffset(page, last, kept)) : node.end - 1;
}

function lastBlank(text: string, offset: number): number {
  let end = lineEnd(text, offset);
  while (end < text.length && isBlank(lineAt(text, end))) end = lineEnd(text, end);
  return end - 1;
}

/** A key with nothing after it ends where the key does. */
export const lastOfEntry = (entry: MapEntry | undefined): TreeNode | undefined =>
  entry && (entry.value.kind === 'empty' ? entry.key : entry.value);
