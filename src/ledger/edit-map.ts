/** Setting a fact under a key, and adding keys to maps. */

import { type Change, type Proposal, plainPage, type Refusal, refuse } from './edit.ts';
import { changedAt, type Path, type Plain, plainFact, withKey } from './edit-facts.ts';
import {
  afterBlock,
  beforeBlock,
  columnOf,
  contentEnd,
  hasBlankAbove,
  insertBelow,
  insertLines,
  newlineOf,
  type Splice,
} from './edit-lines.ts';
import { lastOfEntry, lastOffset, type Page } from './edit-page.ts';
import { type Fact, type FactValue, factLines, flowPair } from './fact-text.ts';
import {
  entryOf,
  type MapEntry,
  type MapNode,
  nodeAt,
  type Span,
  type TextNode,
  type TreeNode,
} from './tree.ts';
import { flowText, plainOrQuoted, quotedText } from './yaml-text.ts';

export interface NewKey {
  readonly key: string;
  /** Its lines, for the column in which the keys of the file begin. */
  readonly lines: (column: number) => readonly string[];
  readonly value: Plain;
  readonly before: readonly string[];
}

/** A top-level key that is not there yet, set off by a blank line where the others are. */
export function newKey(page: Page, { key, lines, value, before }: NewKey): Proposal {
  const { text, root } = page;
  const written = lines(columnOf(text, root.start));
  const found = root.entries.findIndex((pair) => before.includes(pair.key.text));
  const position = found === -1 ? root.entries.length : found;
  const expected = changedAt(plainPage(page), [], withKey(position, key, value));
  const next = root.entries[position];
  if (next) {
    const place = beforeBlock(text, next.key.start);
    const isSpaced = position > 0 && hasBlankAbove(text, place);
    return { ways: [insertLines(text, place, isSpaced ? [...written, ''] : written)], expected };
  }
  const last = root.entries.length > 1 ? root.entries.at(-1) : undefined;
  const isSpaced = last !== undefined && hasBlankAbove(text, beforeBlock(text, last.key.start));
  return { ways: insertBelow(text, [contentEnd(text), text.length], written, isSpaced), expected };
}

const isInFlow = (page: Page, path: Path): boolean =>
  path.some((_, length) => {
    const node = nodeAt(page.root, path.slice(0, length));
    return (node?.kind === 'map' || node?.kind === 'list') && node.flow;
  });

interface Over {
  readonly span: Span;
  readonly text: string;
  readonly isFlow: boolean;
  /** Of the lines of a literal block. */
  readonly indent: number;
}

/** The ways of writing a text over an old one: as it should be, else in double quotes. */
function over(page: Page, { span: { start, end }, text, isFlow, indent }: Over): readonly Splice[] {
  const gap = start === end && !/\s/.test(page.text.charAt(start - 1)) ? ' ' : '';
  const written = isFlow
    ? flowText(text)
    : plainOrQuoted(text, indent).replaceAll('\n', newlineOf(page.text));
  return [written, quotedText(text)].map((way) => ({ start, end, text: gap + way }));
}

/**
 * Replaces a text that stands in the file. What stands beside it on the line stays.
 * Refuses   a path at which no text stands
 */
export const setScalar =
  (path: Path, text: string): Change =>
  (page): Proposal | Refusal => {
    const node = nodeAt(page.root, path);
    if (node?.kind !== 'text' && node?.kind !== 'empty') {
      return refuse(
        'no-such-fact',
        `there is no text at ${path.join(', ')}`,
        'look at the file for what it holds',
      );
    }
    const parent = nodeAt(page.root, path.slice(0, -1));
    const key = parent?.kind === 'map' ? entryOf(parent, String(path.at(-1)))?.key : undefined;
    const indent = columnOf(page.text, key?.start ?? node.start) + 2;
    return {
      ways: over(page, {
        span: node.kind === 'empty' && key ? afterColon(page, key, node) : node,
        text,
        isFlow: isInFlow(page, path),
        indent,
      }),
      expected: changedAt(plainPage(page), path, () => text),
    };
  };

/** Where the value of a key with nothing after it goes: before a comment on its line. */
function afterColon(page: Page, key: TextNode, empty: Span): Span {
  const colon = page.text.indexOf(':', key.end) + 1;
  return colon === 0 ? empty : { start: colon, end: colon };
}

/** The ways of putting facts at the end of a map, or after the pair at `position`. */
export function waysIntoMap(
  page: Page,
  map: MapNode,
  facts: readonly Fact[],
  position = map.entries.length,
): readonly Splice[] {
  const { text } = page;
  const above = map.entries[position - 1];
  if (map.flow) return [intoFlowMap(map, facts, above)];
  const column = columnOf(text, map.entries[0]?.key.start ?? map.start);
  const lines = factLines(facts, column);
  const node = lastOfEntry(above);
  const ends = node ? [lastOffset(page, node), lastOffset(page, node, true)] : [map.start];
  const isLast = position === map.entries.length;
  return ends.map((end) => {
    // In between, a comment below the fact above belongs to the fact that follows it.
    const place = isLast ? afterBlock(text, end, column) : afterBlock(text, end, Number.POSITIVE_INFINITY);
    return insertLines(text, place, lines);
  });
}

function intoFlowMap(map: MapNode, facts: readonly Fact[], above: MapEntry | undefined): Splice {
  const written = facts.map(flowPair).join(', ');
  if (above) {
    const end = Math.max(above.key.end, above.value.end);
    return { start: end, end, text: `, ${written}` };
  }
  return {
    start: map.start + 1,
    end: map.start + 1,
    text: map.entries.length > 0 ? ` ${written},` : ` ${written} `,
  };
}

/** Facts as the value of a key that has nothing after it. */
function under(page: Page, key: TextNode, facts: readonly Fact[]): readonly Splice[] {
  const column = columnOf(page.text, key.start);
  return [insertLines(page.text, afterBlock(page.text, key.end, column + 1), factLines(facts, column + 2))];
}

/**
 * Adds a key at the end of the map at `path`, with the maps on the way where they are missing; where the key is
 * there already with a text, the text is replaced.
 * Input     `before`: for a new top-level key, the keys that it goes before
 * Refuses   a path that leads through a text or a list, and a key that holds more than a text
 */
export const setKey =
  (path: readonly string[], key: string, value: FactValue, before: readonly string[] = []): Change =>
  (page): Proposal | Refusal => {
    let node: TreeNode = page.root;
    let depth = 0;
    for (const step of path) {
      const pair = entryOf(node, step);
      if (!pair || pair.value.kind === 'empty') break;
      node = pair.value;
      depth += 1;
    }
    return place(page, {
      at: path.slice(0, depth),
      node,
      fact: wrapped(path.slice(depth), [key, value]),
      before,
    });
  };

const wrapped = (path: readonly string[], fact: Fact): Fact =>
  path.reduceRight((inner: Fact, step): Fact => [step, [inner]], fact);

interface Placing {
  readonly at: readonly string[];
  readonly node: TreeNode;
  readonly fact: Fact;
  readonly before: readonly string[];
}

function place(page: Page, { at, node, fact, before }: Placing): Proposal | Refusal {
  const [key, value] = fact;
  if (node.kind !== 'map') {
    return refuse(
      'not-a-map',
      `\`${at.join(': ')}\` holds no facts`,
      'write them below it as `key: value` lines',
    );
  }
  const there = entryOf(node, key);
  if (there) return replace(page, at, there, fact);
  const plain = plainFact(value);
  if (at.length === 0 && !node.flow) {
    return newKey(page, { key, lines: (column) => factLines([fact], column), value: plain, before });
  }
  return {
    ways: waysIntoMap(page, node, [fact]),
    expected: changedAt(plainPage(page), at, withKey(node.entries.length, key, plain)),
  };
}

function replace(page: Page, at: readonly string[], pair: MapEntry, [key, value]: Fact): Proposal | Refusal {
  if (typeof value === 'string' && (pair.value.kind === 'text' || pair.value.kind === 'empty'))
    return setScalar([...at, key], value)(page);
  if (typeof value !== 'string' && pair.value.kind === 'empty') {
    return {
      ways: under(page, pair.key, value),
      expected: changedAt(plainPage(page), [...at, key], () => plainFact(value)),
    };
  }
  return refuse('key-exists', `\`${key}\` holds something already`, 'change it in the file by hand');
}
