/**
 * The tree of a file as people type it: block style, one fact a line, plain or simply quoted texts. Many times
 * quicker than the YAML library, and never of another opinion: whatever is not surely plain is left to the library.
 */

import { largestBytes, mostLines } from './guard.ts';
import type { EmptyNode, ListNode, MapEntry, MapNode, TextNode, TextStyle, TreeNode } from './tree.ts';

const longestPlainLine = 2000;
const longestKey = 200;
const deepest = 12;

/** Characters that may be more than letters (controls, marks, open brackets), and runs of marks. */
const unusual =
  /(?:[-?:] +){4}|[^\n\u0020-\u005a\u005c-\u007a\u007c-\u007e\u00a1-\u061b\u061d-\u167f\u1681-\u1fff\u2010-\u2027\u2030-\u205e\u2070-\ud7ff]/u;

const space = 32;
const hash = 35;
const dash = 45;
const colon = 58;

/** The lines that say something, and the one that is read next. */
interface Reader {
  readonly text: string;
  /** Where each begins after its indentation, where it ends, and how far it is indented. */
  readonly heads: readonly number[];
  readonly ends: readonly number[];
  readonly indents: readonly number[];
  line: number;
}

/**
 * Reads a text of the plain kind.
 * Input     the text of a file
 * Output    its tree, letter for letter and stretch for stretch that of the library; undefined where the text is not
 *           surely plain: flow style, blocks, escapes, several lines to a text, tabs, comments inside, slips
 */
export function plainDocument(text: string): MapNode | undefined {
  if (text.length > largestBytes || unusual.test(text)) return undefined;
  const reader = linesOf(text);
  if (reader?.indents[0] !== 0 || isDashLine(reader, 0)) return undefined;
  const root = mapAt(reader, 0, 0);
  return root && reader.line === reader.heads.length ? root : undefined;
}

function linesOf(text: string): Reader | undefined {
  const heads: number[] = [];
  const ends: number[] = [];
  const indents: number[] = [];
  let lines = 0;
  for (let start = 0; start < text.length; ) {
    const newline = text.indexOf('\n', start);
    const end = newline === -1 ? text.length : newline;
    lines += 1;
    if (lines > mostLines || end - start > longestPlainLine) return undefined;
    let head = start;
    while (head < end && text.charCodeAt(head) === space) head += 1;
    if (head < end && text.charCodeAt(head) !== hash) {
      heads.push(head);
      ends.push(end);
      indents.push(head - start);
    }
    start = end + 1;
  }
  return heads.length === 0 ? undefined : { text, heads, ends, indents, line: 0 };
}

const isBlankOrEnd = (text: string, at: number, end: number): boolean =>
  at >= end || text.charCodeAt(at) === space;

function isDashLine({ text, heads, ends }: Reader, line: number): boolean {
  const head = heads[line] ?? 0;
  return text.charCodeAt(head) === dash && isBlankOrEnd(text, head + 1, ends[line] ?? 0);
}

const indentNow = (reader: Reader): number => reader.indents[reader.line] ?? -1;

/** A map whose keys stand in one column; the first key may stand behind a dash. */
function mapAt(reader: Reader, indent: number, depth: number, firstHead?: number): MapNode | undefined {
  if (depth > deepest) return undefined;
  const entries: MapEntry[] = [];
  const names = new Set<string>();
  let head = firstHead ?? reader.heads[reader.line] ?? 0;
  const start = head;
  do {
    const entry = entryAt(reader, head, indent, depth);
    if (!entry || isKnown(entries, names, entry.key.text)) return undefined;
    entries.push(entry);
    if (indentNow(reader) > indent) return undefined;
    head = reader.heads[reader.line] ?? 0;
  } while (indentNow(reader) === indent && !isDashLine(reader, reader.line));
  const last = entries.at(-1);
  const end = last ? Math.max(last.key.end, last.value.end) : start;
  return { kind: 'map', entries, flow: false, start, end };
}

/** Up to here comparing each with each is quicker than a set. */
const fewKeys = 12;

/** Whether a key stood there before; from a few keys on they are kept in a set, which is made then. */
function isKnown(entries: readonly MapEntry[], names: Set<string>, name: string): boolean {
  if (entries.length < fewKeys) return entries.some(({ key }) => key.text === name);
  if (names.size === 0) for (const { key } of entries) names.add(key.text);
  const size = names.size;
  return names.add(name).size === size;
}

/** One `key: value`, with what is indented below it. */
function entryAt(reader: Reader, head: number, indent: number, depth: number): MapEntry | undefined {
  const { text } = reader;
  const end = reader.ends[reader.line] ?? 0;
  const at = keyEnd(text, head, end);
  if (at === undefined) return undefined;
  const key: TextNode = { kind: 'text', text: text.slice(head, at), start: head, end: at, style: 'plain' };
  const valueAt = afterSpaces(text, at + 1, end);
  reader.line += 1;
  if (valueAt < end && text.charCodeAt(valueAt) !== hash) {
    const value = scalarAt(text, valueAt, end);
    return value && indentNow(reader) <= indent ? { key, value } : undefined;
  }
  const below = indentNow(reader);
  const isList = below >= indent && isDashLine(reader, reader.line);
  // Blanks or a comment after the colon of an empty value: where it stands is the library's to say.
  if (below <= indent && !isList) return at + 1 === end ? { key, value: emptyAt(end) } : undefined;
  const value = isList ? listAt(reader, below, depth + 1) : mapAt(reader, below, depth + 1);
  return value && { key, value };
}

/** Items behind dashes in one column. */
function listAt(reader: Reader, indent: number, depth: number): ListNode | undefined {
  if (depth > deepest) return undefined;
  const items: TreeNode[] = [];
  const start = reader.heads[reader.line] ?? 0;
  while (indentNow(reader) === indent && isDashLine(reader, reader.line)) {
    const item = itemAt(reader, indent, depth);
    if (!item || indentNow(reader) > indent) return undefined;
    items.push(item);
  }
  return { kind: 'list', items, flow: false, start, end: items.at(-1)?.end ?? start };
}

function itemAt(reader: Reader, indent: number, depth: number): TreeNode | undefined {
  const { text } = reader;
  const head = reader.heads[reader.line] ?? 0;
  const end = reader.ends[reader.line] ?? 0;
  const at = afterSpaces(text, head + 1, end);
  if (at === end) return undefined;
  if (keyEnd(text, at, end) !== undefined) return mapAt(reader, indent + (at - head), depth + 1, at);
  reader.line += 1;
  return scalarAt(text, at, end);
}

function afterSpaces(text: string, from: number, end: number): number {
  let at = from;
  while (at < end && text.charCodeAt(at) === space) at += 1;
  return at;
}

const emptyAt = (at: number): EmptyNode => ({ kind: 'empty', start: at, end: at });

/** Letters, digits, `_`, `(` and whatever is not ASCII. */
const startsWord = (code: number): boolean =>
  (code >= 97 && code <= 122) ||
  (code >= 65 && code <= 90) ||
  (code >= 48 && code <= 57) ||
  code === 95 ||
  code === 40 ||
  code > 126;

/** The colon after a plain key; undefined where there is none, or not surely. */
function keyEnd(text: string, head: number, end: number): number | undefined {
  if (!startsWord(text.charCodeAt(head))) return undefined;
  const last = Math.min(end, head + longestKey);
  for (let at = head + 1; at < last; at += 1) {
    const code = text.charCodeAt(at);
    if (code === colon && isBlankOrEnd(text, at + 1, end))
      return text.charCodeAt(at - 1) === space ? undefined : at;
    if (code === hash && text.charCodeAt(at - 1) === space) return undefined;
  }
  return undefined;
}

const quotes: Readonly<Record<string, TextStyle>> = { '"': 'double', "'": 'single' };

/** A text on one line, and nothing but a comment after it. */
function scalarAt(text: string, start: number, end: number): TextNode | undefined {
  const quote = text.charAt(start);
  const style = quotes[quote];
  if (style) return quotedAt({ text, start, end, quote, style });
  const first = text.charCodeAt(start);
  const isNegative = first === dash && /[\d.]/.test(text.charAt(start + 1));
  if (!isNegative && !startsWord(first) && !/[+/<=~$^.;)]/.test(quote)) return undefined;
  let last = end;
  for (let at = start + 1; at < end; at += 1) {
    const code = text.charCodeAt(at);
    if (code === hash && text.charCodeAt(at - 1) === space) {
      last = at;
      break;
    }
    if (code === colon && isBlankOrEnd(text, at + 1, end)) return undefined;
  }
  while (last > start && text.charCodeAt(last - 1) === space) last -= 1;
  return { kind: 'text', text: text.slice(start, last), start, end: last, style: 'plain' };
}

interface Quoted {
  readonly text: string;
  readonly start: number;
  readonly end: number;
  readonly quote: string;
  readonly style: TextStyle;
}

function quotedAt({ text, start, end, quote, style }: Quoted): TextNode | undefined {
  const close = text.indexOf(quote, start + 1);
  if (close === -1 || close >= end) return undefined;
  const inside = text.slice(start + 1, close);
  if (inside.includes('\\')) return undefined;
  const after = afterSpaces(text, close + 1, end);
  const isAlone = after === end || (text.charCodeAt(after) === hash && after > close + 1);
  return isAlone ? { kind: 'text', text: inside, start, end: close + 1, style } : undefined;
}
