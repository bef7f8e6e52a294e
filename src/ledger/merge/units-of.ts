/** From a text and its tree to units. A text that can't be taken apart without a rest is left whole. */

import { columnOf, lineEnd, lineStart } from '../edit-lines.ts';
import { lastOfEntry, lastOffset, type Page } from '../edit-page.ts';
import { dashOf, type ListNode, type MapNode, type TextNode, type TreeNode } from '../tree.ts';
import { isGap, partedGap, tailLength } from './gaps.ts';
import { type Body, madeUnit, type Unit, unitText } from './unit.ts';

/** Thrown inside, when the layout is one that nobody types. */
class Odd extends Error {}

/**
 * Takes a page apart.
 * Output    its units, whose texts one after the other are the text; undefined where that can't be done
 */
export function unitsOf(page: Page): readonly Unit[] | undefined {
  if (page.root.flow) return undefined;
  try {
    const units = unitsIn(page, page.root, { start: 0, end: page.text.length, isInline: false });
    return units.map((unit) => unitText(unit)).join('') === page.text ? units : undefined;
  } catch (thrown) {
    if (thrown instanceof Odd) return undefined;
    throw thrown;
  }
}

type Block = MapNode | ListNode;

interface Region {
  readonly start: number;
  readonly end: number;
  /** The first entry stands right at the start, behind a dash. */
  readonly isInline: boolean;
}

interface Child {
  readonly start: number;
  readonly key: TextNode | undefined;
  readonly value: TreeNode;
}

const childrenOf = (page: Page, block: Block): readonly Child[] =>
  block.kind === 'map'
    ? block.entries.map(({ key, value }) => ({ start: key.start, key, value }))
    : block.items.map((value, index) => ({ start: dash(page, block, index), key: undefined, value }));

function dash(page: Page, list: ListNode, index: number): number {
  const start = dashOf(page.text, list, index);
  if (start === undefined) throw new Odd();
  return start;
}

function unitsIn(page: Page, block: Block, region: Region): readonly Unit[] {
  const { text } = page;
  const children = childrenOf(page, block);
  const [first] = children;
  if (!first) throw new Odd();
  const column = columnOf(text, first.start);
  const units: Unit[] = [];
  let offset = region.start;
  for (const [index, child] of children.entries()) {
    const isInline = region.isInline && index === 0;
    const line = isInline ? child.start : lineStart(text, child.start);
    if (line < offset || columnOf(text, child.start) !== column) throw new Odd();
    if (!isInline && text.slice(line, child.start).trim() !== '') throw new Odd();
    const { comments, space, lead } = gapOf(text.slice(offset, line), column, true);
    const next = children[index + 1];
    const end = endOf(page, child, next ? lineStart(text, next.start) : region.end, column);
    units.push(...comments, entryUnit(page, child, { column, space, lead, end }));
    offset = end;
  }
  return [...units, ...gapOf(text.slice(offset, region.end), column, false).comments];
}

function gapOf(gap: string, column: number, hasNext: boolean): ReturnType<typeof partedGap> {
  if (!isGap(gap)) throw new Odd();
  return partedGap(gap, column, hasNext);
}

/** Where a child ends, with the comments below it that are indented as what is in it. */
function endOf(page: Page, { key, value, start }: Child, limit: number, column: number): number {
  const last = key ? (lastOfEntry({ key, value }) ?? key) : value;
  const offset = Math.max(start, lastOffset(page, last, keepsBlanks(page.text, last)));
  const end = lineEnd(page.text, offset);
  const inner = isBlock(value) ? columnOf(page.text, value.start) : 0;
  if (end > limit) throw new Odd();
  return inner > column ? end + tailLength(page.text.slice(end, limit), inner) : end;
}

const isBlock = (node: TreeNode): node is Block =>
  (node.kind === 'map' || node.kind === 'list') && !node.flow;

/** Whether a text at the very end is a `|+`, to which the blank lines below it belong. */
function keepsBlanks(text: string, node: TreeNode): boolean {
  if (node.kind === 'text')
    return (
      (node.style === 'literal' || node.style === 'folded') &&
      /^[|>]\d?\+/u.test(text.slice(node.start, node.start + 3))
    );
  const last =
    node.kind === 'list' ? node.items.at(-1) : node.kind === 'map' ? node.entries.at(-1)?.value : undefined;
  return last !== undefined && isBlockOrText(last) && keepsBlanks(text, last);
}

const isBlockOrText = (node: TreeNode): boolean => node.kind === 'text' || isBlock(node);

interface Around {
  readonly column: number;
  readonly space: string;
  readonly lead: string;
  readonly end: number;
}

function entryUnit(page: Page, child: Child, { column, space, lead, end }: Around): Unit {
  const { key, value } = child;
  const firstKey = value.kind === 'map' ? value.entries[0]?.key.text : undefined;
  return madeUnit({
    kind: 'entry',
    key: key?.text ?? firstKey ?? '',
    column,
    space,
    lead,
    body: bodyOf(page, child, end),
    node: value,
  });
}

function bodyOf(page: Page, { start, key, value }: Child, end: number): Body {
  const { text } = page;
  const whole: Body = { form: 'block', text: text.slice(start, end) };
  const firstEnd = lineEnd(text, start);
  if (isBlock(value)) {
    const isInline = value.start < firstEnd;
    const between = text.slice(start + 1, value.start);
    if (isInline && (key || value.kind === 'list' || between.trim() !== '')) return whole;
    const from = isInline ? value.start : firstEnd;
    if (!key && !isInline) return whole;
    if (key?.style !== undefined && text.slice(key.end, firstEnd).replace(/#.*/u, '').trim() !== ':')
      return whole;
    const units = unitsIn(page, value, { start: from, end, isInline });
    return { form: value.kind, head: text.slice(start, from), units };
  }
  if (firstEnd < end) return whole;
  const span = value.kind === 'empty' ? { start: value.start, end: value.start } : value;
  if (span.start < start || span.end > end) return whole;
  return {
    form: 'line',
    head: text.slice(start, span.start),
    value: text.slice(span.start, span.end),
    tail: text.slice(span.end, end),
  };
}
