/** The small readers that all kinds of file share: a node to a text, an amount, a number, a time. */

import { parseNumber } from '../calc/number.ts';
import { parseAmount } from '../calc/parse-amount.ts';
import { parseQuantity } from '../calc/parse-quantity.ts';
import type { Amount, Dimension, Quantity } from '../calc/quantity.ts';
import type { Fault, Parsed, Problem } from '../problem.ts';
import type { Moment, Named } from './cards.ts';
import { offer } from './nearest.ts';
import type { LedgerDocument } from './parse.ts';
import { type Finding, problemAt, type SourceText } from './places.ts';
import { readTime, type TimeZone } from './times.ts';
import { type Span, type TextNode, type TreeNode, valueUnder } from './tree.ts';

/** What a reader needs to know besides the file. */
export interface ReadSettings {
  /** Amounts that were read already: the same ones stand in file after file. */
  readonly amounts?: Map<string, Parsed<Amount>>;
  readonly quantities?: Map<string, Parsed<Quantity>>;
  /** The zone of the bench; without it a time needs its offset. */
  readonly zone?: TimeZone | undefined;
}

/** A file being read: what is found wrong is added to `problems`. */
export interface Reading {
  readonly source: SourceText;
  readonly zone: TimeZone | undefined;
  readonly problems: Problem[];
  readonly amounts: Map<string, Parsed<Amount>>;
  readonly quantities: Map<string, Parsed<Quantity>>;
}

/** What a reader gives back. The card is absent where the file can't be read at all. */
export interface Read<Card> {
  readonly card: Card | undefined;
  readonly problems: readonly Problem[];
}

export const startReading = (document: LedgerDocument, settings: ReadSettings): Reading => ({
  source: document.source,
  zone: settings.zone,
  problems: [],
  amounts: settings.amounts ?? new Map(),
  quantities: settings.quantities ?? new Map(),
});

export const find = (reading: Reading, finding: Finding, span: Span): void => {
  reading.problems.push(problemAt(reading.source, finding, span));
};

/** A fault in the text of a node, at its own place where the text stands in the file letter for letter. */
export function findFault(reading: Reading, fault: Fault, node: TextNode): void {
  const { text } = reading.source;
  const shift = node.style === 'plain' ? 0 : 1;
  const isLiteral = text.startsWith(node.text, node.start + shift) && !node.text.includes('\n');
  const hasSpan =
    isLiteral && fault.start !== undefined && fault.end !== undefined && fault.end > fault.start;
  const span = hasSpan
    ? { start: node.start + shift + (fault.start ?? 0), end: node.start + shift + (fault.end ?? 0) }
    : node;
  find(reading, { code: fault.code, message: fault.message, hint: fault.hint }, span);
}

export const textNodeUnder = (map: TreeNode | undefined, key: string): TextNode | undefined => {
  const node = valueUnder(map, key);
  return node?.kind === 'text' ? node : undefined;
};

export const textUnder = (map: TreeNode | undefined, key: string): string | undefined =>
  textNodeUnder(map, key)?.text;

export function namedUnder(map: TreeNode | undefined, key: string): Named | undefined {
  const node = textNodeUnder(map, key);
  return node && { text: node.text, start: node.start, end: node.end };
}

/** A text in plain words; warns where a `#` cuts it off. */
export function proseUnder(reading: Reading, map: TreeNode | undefined, key: string): string | undefined {
  const node = textNodeUnder(map, key);
  if (node) warnOfCutText(reading, node);
  return node?.text;
}

const cut = /^ #[^\r\n]*|^[ \t]+#[^\s#][^\r\n]*/u;

export function warnOfCutText(reading: Reading, node: TextNode): void {
  const { text } = reading.source;
  if (node.style !== 'plain' || text.charCodeAt(node.end) !== 32) return;
  const lost = cut.exec(text.slice(node.end, node.end + 400))?.[0].trim();
  if (lost === undefined) return;
  const at = text.indexOf('#', node.end);
  const finding = {
    code: 'cut-text',
    severity: 'warning',
    message: `"${lost}" is read as a comment, so the text ends before it`,
    hint: 'put quotes around the whole text; a comment is better off on its own line or after two spaces',
  } as const;
  find(reading, finding, { start: at, end: at + lost.length });
}

export function quantityOf(
  reading: Reading,
  node: TreeNode | undefined,
  kinds: readonly Dimension[],
): Quantity | undefined {
  if (node?.kind !== 'text') return undefined;
  const key = `${kinds.join()} ${node.text}`;
  const quantity = reading.quantities.get(key) ?? parseQuantity(node.text, kinds);
  if (isSettled(quantity)) reading.quantities.set(key, quantity);
  if (quantity.ok) return quantity.value;
  findFault(reading, quantity.fault, node);
  return undefined;
}

/** False while arithmetic in it waits to be worked out. */
const isSettled = (read: Parsed<unknown>): boolean => read.ok || read.fault.code !== 'arithmetic-not-loaded';

export function amountOf(reading: Reading, node: TextNode): Amount | undefined {
  const amount = reading.amounts.get(node.text) ?? parseAmount(node.text);
  if (isSettled(amount)) reading.amounts.set(node.text, amount);
  if (amount.ok) return amount.value;
  findFault(reading, amount.fault, node);
  return undefined;
}

export const quantityUnder = (
  reading: Reading,
  map: TreeNode | undefined,
  key: string,
  kinds: readonly Dimension[],
): Quantity | undefined => quantityOf(reading, valueUnder(map, key), kinds);

export function numberUnder(reading: Reading, map: TreeNode | undefined, key: string): number | undefined {
  const node = textNodeUnder(map, key);
  if (!node) return undefined;
  const number = parseNumber(node.text);
  if (number.ok) return number.value;
  findFault(reading, number.fault, node);
  return undefined;
}

/** A whole number from 1 up, zeros in front apart. */
export function countUnder(reading: Reading, map: TreeNode | undefined, key: string): number | undefined {
  const node = textNodeUnder(map, key);
  if (!node) return undefined;
  if (/^\d{1,9}$/u.test(node.text) && Number(node.text) > 0) return Number(node.text);
  const message = `"${node.text}" is not a whole number from 1 up`;
  find(reading, { code: 'not-a-number', message, hint: `write "${key}: 14"` }, node);
  return undefined;
}

export function momentOf(
  reading: Reading,
  node: TreeNode | undefined,
  takes: 'time' | 'time or day',
): Moment | undefined {
  if (node?.kind !== 'text') return undefined;
  const { start, end, text } = node;
  const time = readTime(text, reading.zone);
  if (!time.ok) {
    findFault(reading, time.fault, node);
    return undefined;
  }
  if (time.value.isDay && takes === 'time') {
    const hint = `write ${text}T09:10${reading.zone ? '' : '+00:00'}`;
    find(reading, { code: 'bad-time', message: `"${text}" is a day without a time`, hint }, node);
    return undefined;
  }
  const { epochMilliseconds, isDay } = time.value;
  return { written: text, epochMilliseconds, isDay, start, end };
}

/** The texts of a list, or of one text alone. */
export function textNodesUnder(map: TreeNode | undefined, key: string): readonly TextNode[] {
  const node = valueUnder(map, key);
  if (node?.kind === 'text') return [node];
  if (node?.kind !== 'list') return [];
  return node.items.flatMap((item) => (item.kind === 'text' ? [item] : []));
}

export const textsUnder = (map: TreeNode | undefined, key: string): readonly string[] =>
  textNodesUnder(map, key).map(({ text }) => text);

export const quantitiesUnder = (
  reading: Reading,
  map: TreeNode | undefined,
  key: string,
  kinds: readonly Dimension[],
): readonly Quantity[] =>
  textNodesUnder(map, key).flatMap((node) => {
    const quantity = quantityOf(reading, node, kinds);
    return quantity ? [quantity] : [];
  });

/** One of a set of words; the shape of the file has said already where it is none of them. */
export function wordUnder<Word extends string>(
  map: TreeNode | undefined,
  key: string,
  words: readonly Word[],
): Word | undefined {
  const typed = textUnder(map, key);
  return words.find((word) => word === typed);
}

/** Words that stand in one text with commas, or in a list; each that is none of the set is a problem. */
export function wordsUnder<Word extends string>(
  reading: Reading,
  map: TreeNode | undefined,
  key: string,
  set: { readonly words: readonly Word[]; readonly code: string; readonly what: string },
): readonly Word[] {
  return textNodesUnder(map, key).flatMap((node) => {
    warnOfCutText(reading, node);
    return piecesOf(node).flatMap((piece) => {
      const word = set.words.find((known) => known === piece.text.toLowerCase());
      if (word !== undefined) return [word];
      const message = `"${piece.text}" is not ${set.what}`;
      find(reading, { code: set.code, message, hint: offer(piece.text, set.words) }, piece);
      return [];
    });
  });
}

/** The parts of a text between commas, each with its place. */
function piecesOf(node: TextNode): readonly Named[] {
  if (!node.text.includes(',')) return [{ text: node.text.trim(), start: node.start, end: node.end }];
  const shift = node.style === 'plain' ? 0 : 1;
  let at = 0;
  const parts = node.text.split(',').map((part) => {
    const start = node.start + shift + at + part.length - part.trimStart().length;
    at += part.length + 1;
    return { text: part.trim(), start, end: start + part.trim().length };
  });
  return parts.filter(({ text }) => text !== '');
}
