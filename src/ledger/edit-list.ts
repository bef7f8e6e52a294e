/** Adding an entry to a list under a top-level key, wherever and however that list is typed. */

import { type Change, type Proposal, plainPage, refuse } from './edit.ts';
import { changedAt, plainFact, withItem } from './edit-facts.ts';
import {
  afterBlock,
  beforeBlock,
  columnOf,
  hasBlankAbove,
  insertBelow,
  insertLines,
  lineEnd,
  lineStart,
  newlineOf,
  type Splice,
} from './edit-lines.ts';
import { newKey } from './edit-map.ts';
import { lastOffset, type Page } from './edit-page.ts';
import { entryLines, type Fact, flowValue } from './fact-text.ts';
import { entryOf, type ListNode, type MapEntry } from './tree.ts';

export interface ListEntry {
  /** The top-level key that holds the list. */
  readonly key: string;
  readonly facts: readonly Fact[];
  /** Where among the entries, from 0; left out: at the end. */
  readonly position?: number;
  /** Where the key is missing: the keys that it goes before; else it goes to the end of the file. */
  readonly before?: readonly string[];
}

/** How far this file sets the dashes of a list in from its key. */
function dashStep(page: Page): number {
  const steps = page.root.entries.flatMap(({ key, value }) => {
    const inner =
      value.kind === 'map' ? value.entries.find((entry) => entry.value.kind === 'list') : undefined;
    const list = value.kind === 'list' ? { key, value } : inner;
    if (list?.value.kind !== 'list' || list.value.flow) return [];
    return [columnOf(page.text, list.value.start) - columnOf(page.text, list.key.start)];
  });
  return steps.find((step) => step >= 0 && step <= 8) ?? 2;
}

/** Where the dash of an entry stands. */
function dashOf(page: Page, list: ListNode, position: number): number {
  const item = list.items[position];
  const column = columnOf(page.text, list.start);
  let dash = item && position > 0 ? page.text.lastIndexOf('-', item.start - 1) : list.start;
  while (dash > list.start && columnOf(page.text, dash) !== column)
    dash = page.text.lastIndexOf('-', dash - 1);
  return dash;
}

/** How far the facts of an entry stand in from its dash. */
function insetOf(page: Page, list: ListNode): number {
  const insets = list.items.flatMap((item, index) => {
    const inset = item.start - dashOf(page, list, index);
    return item.kind === 'map' && !item.flow && lineStart(page.text, item.start) <= item.start - inset
      ? [inset]
      : [];
  });
  const last = insets.at(-1) ?? 2;
  return last >= 2 && last <= 8 ? last : 2;
}

function intoBlock(page: Page, list: ListNode, facts: readonly Fact[], position: number): readonly Splice[] {
  const column = columnOf(page.text, list.start);
  const lines = entryLines(facts, column, insetOf(page, list));
  const last = list.items.length - 1;
  const isSpaced = last > 0 && hasBlankAbove(page.text, beforeBlock(page.text, dashOf(page, list, last)));
  if (position <= last) {
    const dash = dashOf(page, list, position);
    const place = position === 0 ? lineStart(page.text, dash) : beforeBlock(page.text, dash);
    return [insertLines(page.text, place, isSpaced ? [...lines, ''] : lines)];
  }
  const places = [lastOffset(page, list), lastOffset(page, list, true)].map((end) =>
    afterBlock(page.text, end, column),
  );
  return insertBelow(page.text, places, lines, isSpaced);
}

/** An entry into a list in brackets, on a line of its own where the others have one. */
function intoFlow(page: Page, list: ListNode, facts: readonly Fact[], position: number): Splice {
  const entry = flowValue(facts);
  const next = list.items[position];
  if (next) return { start: next.start, end: next.start, text: `${entry}, ` };
  const last = list.items.at(-1);
  if (!last) return { start: list.start + 1, end: list.start + 1, text: entry };
  const tail = page.text.slice(last.end, list.end - 1);
  if (!tail.includes('\n')) return { start: last.end, end: last.end, text: `, ${entry}` };
  const end = lineEnd(page.text, last.end);
  const hasComma = /^\s*,/.test(tail);
  const indent = ' '.repeat(columnOf(page.text, last.start));
  const line = `${indent}${entry}${hasComma ? ',' : ''}${newlineOf(page.text)}`;
  return { start: last.end, end, text: `${hasComma ? '' : ','}${page.text.slice(last.end, end)}${line}` };
}

/** A list in brackets on the line of its key becomes one in lines; every entry keeps its own text. */
function flowToBlock(
  page: Page,
  pair: MapEntry,
  list: ListNode,
  lines: readonly string[],
  position: number,
): Splice[] {
  const { text } = page;
  const colon = text.indexOf(':', pair.key.end) + 1;
  if (colon === 0 || text.slice(colon, list.end).includes('\n')) return [];
  const column = columnOf(text, pair.key.start);
  const dash = `${' '.repeat(column + dashStep(page))}- `;
  const old = list.items.map((item) => `${dash}${text.slice(item.start, item.end)}`);
  const place = afterBlock(text, list.end - 1, column + 1);
  const rest = text.slice(list.end, place);
  const added = insertLines(text, place, old.toSpliced(position, 0, ...lines));
  return [{ start: colon, end: place, text: rest + added.text }];
}

function waysInto(
  page: Page,
  pair: MapEntry,
  entry: ListEntry,
  position: number,
): readonly Splice[] | undefined {
  const { value } = pair;
  const column = columnOf(page.text, pair.key.start);
  const lines = entryLines(entry.facts, column + dashStep(page));
  if (value.kind === 'empty')
    return [insertLines(page.text, afterBlock(page.text, pair.key.end, column + 1), lines)];
  if (value.kind !== 'list') return undefined;
  if (!value.flow) return intoBlock(page, value, entry.facts, position);
  return [...flowToBlock(page, pair, value, lines, position), intoFlow(page, value, entry.facts, position)];
}

/**
 * Adds an entry to the list under a top-level key, one fact a line.
 * Refuses   a key that holds something else than a list
 */
export const addListEntry =
  (entry: ListEntry): Change =>
  (page): Proposal | ReturnType<typeof refuse> => {
    const pair = entryOf(page.root, entry.key);
    const added = plainFact(entry.facts);
    if (!pair) {
      const step = dashStep(page);
      return newKey(page, {
        key: entry.key,
        lines: (column) => [`${' '.repeat(column)}${entry.key}:`, ...entryLines(entry.facts, column + step)],
        value: { list: [added] },
        before: entry.before ?? [],
      });
    }
    const length = pair.value.kind === 'list' ? pair.value.items.length : 0;
    const position = Math.min(entry.position ?? length, length);
    const ways = waysInto(page, pair, entry, position);
    if (!ways)
      return refuse('not-a-list', `\`${entry.key}\` holds no list`, 'write it as lines that begin with `- `');
    return { ways, expected: changedAt(plainPage(page), [entry.key], withItem(position, added)) };
  };
