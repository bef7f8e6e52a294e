/** A ledger file as it was typed: texts, maps and lists, each with the stretch of the file that it takes up. */

/** Offsets into the whole text of a file, in UTF-16 units; `end` is the first one after it. */
export interface Span {
  readonly start: number;
  readonly end: number;
}

export type TextStyle = 'plain' | 'single' | 'double' | 'literal' | 'folded';

/** A scalar. Its span holds the quotes, or the `|` of a block and its lines without the last line end. */
export interface TextNode extends Span {
  readonly kind: 'text';
  /** What it says, quotes and folding undone; digits and zeros as typed. */
  readonly text: string;
  readonly style: TextStyle;
}

/** Where its line begins and how far it is indented: ask `lineStart` and `columnOf` with `key.start`. */
export interface MapEntry {
  readonly key: TextNode;
  readonly value: TreeNode;
}

/** Entries stand in the order of the file. The span begins at the first key, or at the `{`. */
export interface MapNode extends Span {
  readonly kind: 'map';
  readonly entries: readonly MapEntry[];
  readonly flow: boolean;
}

/** The span begins at the first dash, or at the `[`; all dashes of a block list stand in that column. */
export interface ListNode extends Span {
  readonly kind: 'list';
  readonly items: readonly TreeNode[];
  readonly flow: boolean;
}

/** A key or a dash with nothing after it; start and end are the same, right after the colon or dash. */
export interface EmptyNode extends Span {
  readonly kind: 'empty';
}

export type TreeNode = TextNode | MapNode | ListNode | EmptyNode;

/** A key of a map, or the place in a list. */
export type Step = string | number;

/** From here on a map is looked through once, and what stands where is kept. */
const manyEntries = 64;
const kept = new WeakMap<MapNode, ReadonlyMap<string, MapEntry>>();

function keptEntry(node: MapNode, key: string): MapEntry | undefined {
  const known = kept.get(node);
  if (known) return known.get(key);
  const made = new Map<string, MapEntry>();
  for (const entry of node.entries) if (!made.has(entry.key.text)) made.set(entry.key.text, entry);
  kept.set(node, made);
  return made.get(key);
}

/** The first entry under a key. */
export function entryOf(node: TreeNode | undefined, key: string): MapEntry | undefined {
  if (node?.kind !== 'map') return undefined;
  const { entries } = node;
  if (entries.length >= manyEntries) return keptEntry(node, key);
  for (let index = 0; index < entries.length; index += 1) {
    const entry = entries[index];
    if (entry?.key.text === key) return entry;
  }
  return undefined;
}

/** What stands under a key; undefined where the key is absent or has nothing after it. */
export function valueUnder(node: TreeNode | undefined, key: string): TreeNode | undefined {
  const value = entryOf(node, key)?.value;
  return value?.kind === 'empty' ? undefined : value;
}

/** The node at the end of a path; undefined where it leads nowhere. */
export function nodeAt(root: TreeNode | undefined, path: readonly Step[]): TreeNode | undefined {
  let node = root;
  for (const step of path) {
    if (typeof step === 'string') node = entryOf(node, step)?.value;
    else node = node?.kind === 'list' ? node.items[step] : undefined;
  }
  return node;
}

/** The offset of the dash before an item of a block list; undefined in a flow list. */
export function dashOf(text: string, list: ListNode, index: number): number | undefined {
  const item = list.items[index];
  if (list.flow || !item) return undefined;
  if (index === 0) return list.start;
  const column = list.start - lineStartOf(text, list.start);
  let line = lineStartOf(text, Math.max(0, item.start - 1));
  while (line >= list.start - column) {
    if (line + column < item.start + 1 && text[line + column] === '-' && isDash(text, line + column))
      return line + column;
    if (line === 0) return undefined;
    line = lineStartOf(text, line - 1);
  }
  return undefined;
}

const isDash = (text: string, offset: number): boolean => /[\s]|^$/.test(text.charAt(offset + 1));

const lineStartOf = (text: string, offset: number): number =>
  offset === 0 ? 0 : text.lastIndexOf('\n', offset - 1) + 1;
