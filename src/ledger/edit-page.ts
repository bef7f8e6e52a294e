/** A text and its tree, as edits look at it. */

import { isMap, isScalar, isSeq, type ParsedNode, parseDocument } from 'yaml';
import type { Problem } from '../problem.ts';
import { lineAt, lineStart } from './edit-lines.ts';

export interface TextNode {
  readonly kind: 'text';
  readonly start: number;
  readonly end: number;
  readonly text: string;
}
export interface ListNode {
  readonly kind: 'list';
  readonly start: number;
  readonly end: number;
  readonly isFlow: boolean;
  readonly items: readonly PageNode[];
}
export interface Pair {
  readonly key: TextNode;
  readonly value: PageNode;
}
export interface MapNode {
  readonly kind: 'map';
  readonly start: number;
  readonly end: number;
  readonly isFlow: boolean;
  readonly pairs: readonly Pair[];
}
export type PageNode = TextNode | ListNode | MapNode;

export interface Page {
  readonly file: string;
  readonly text: string;
  readonly root: MapNode;
}

export type PageRead =
  | { readonly ok: true; readonly page: Page }
  | { readonly ok: false; readonly problems: readonly Problem[] };

function nodeOf(found: ParsedNode | null, at: number): PageNode {
  if (found === null) return { kind: 'text', start: at, end: at, text: '' };
  const [start, end] = found.range;
  if (isMap(found)) {
    const pairs = found.items.map(({ key, value }) => {
      const keyNode = nodeOf(key, start);
      if (keyNode.kind !== 'text') throw new Error('a key that is not text');
      return { key: keyNode, value: nodeOf(value, keyNode.end) };
    });
    return { kind: 'map', start, end, isFlow: found.flow === true, pairs };
  }
  if (isSeq(found)) {
    return {
      kind: 'list',
      start,
      end,
      isFlow: found.flow === true,
      items: found.items.map((item) => nodeOf(item, start)),
    };
  }
  return { kind: 'text', start, end, text: isScalar(found) ? String(found.value) : '' };
}

/** Reads a text whose root is a map. Its problems, where the reader found any, are the reader's own. */
export function readPage(file: string, text: string): PageRead {
  const read = parseDocument(text, {
    schema: 'failsafe',
    version: '1.2',
    logLevel: 'silent',
    prettyErrors: false,
  });
  const problems = read.errors.map(
    (error): Problem => ({
      code: 'yaml',
      severity: 'error',
      message: error.message,
      hint: '',
      place: { file, line: 1, column: 1, length: 1, lineText: lineAt(text, lineStart(text, error.pos[0])) },
    }),
  );
  if (problems.length > 0) return { ok: false, problems };
  const root = nodeOf(read.contents, 0);
  if (root.kind !== 'map') {
    return {
      ok: false,
      problems: [
        {
          code: 'not-a-map',
          severity: 'error',
          message: `${file} holds no facts`,
          hint: 'write `key: value` lines',
        },
      ],
    };
  }
  return { ok: true, page: { file, text, root } };
}

export type Path = readonly (string | number)[];

export const pairOf = (node: PageNode, key: string): Pair | undefined =>
  node.kind === 'map' ? node.pairs.find((pair) => pair.key.text === key) : undefined;

/** The node at a path of keys and positions. */
export function nodeAt(page: Page, path: Path): PageNode | undefined {
  let node: PageNode | undefined = page.root;
  for (const step of path) {
    if (!node) return undefined;
    if (typeof step === 'string') node = pairOf(node, step)?.value;
    else node = node.kind === 'list' ? node.items[step] : undefined;
  }
  return node;
}

export const isEmpty = (node: PageNode): boolean => node.kind === 'text' && node.start === node.end;

const isBlockText = (page: Page, node: TextNode): boolean => /[|>]/.test(page.text.charAt(node.start));

/**
 * The offset of a node's last visible character, which says on which line it ends. `kept`: blank lines below
 * a literal or folded text count too, as they do with `|+`.
 */
export function lastOffset(page: Page, node: PageNode, kept = false): number {
  if (node.kind === 'text') {
    if (isEmpty(node)) return node.start;
    if (kept || !isBlockText(page, node)) return node.end - 1;
    return node.start + page.text.slice(node.start, node.end).trimEnd().length - 1;
  }
  if (node.isFlow) return node.end - 1;
  const last = node.kind === 'list' ? node.items.at(-1) : lastOfPair(node.pairs.at(-1));
  return last ? Math.max(node.start, lastOffset(page, last, kept)) : node.end - 1;
}

/** A key with nothing after it ends where the key does. */
const lastOfPair = (pair: Pair | undefined): PageNode | undefined =>
  pair && (isEmpty(pair.value) ? pair.key : pair.value);
