/** Whether a file has the shape of its kind: keys, texts, lists. Order and places come from the tree alone. */

import type { Problem } from '../problem.ts';
import { offer } from './nearest.ts';
import type { LedgerDocument } from './parse.ts';
import { type Finding, problemAt } from './places.ts';
import { type FileKind, fitsKind, keysAt } from './schema.ts';
import { type Misfit, misfitsOf, type Shape } from './schema-misfits.ts';
import { gluedColonIn } from './slips.ts';
import { entryOf, nodeAt, type Span, type Step, type TreeNode } from './tree.ts';

/** `__proto__` would mean something else to whoever looks at the plain values. */
const masked = '\0__proto__';

/** Texts, arrays and objects without a prototype; what is empty is left undefined; of equal keys the first. */
function plain(node: TreeNode): unknown {
  if (node.kind === 'text') return node.text;
  if (node.kind === 'list') return node.items.map(plain);
  if (node.kind === 'empty') return undefined;
  const record: Record<string, unknown> = Object.create(null);
  for (let index = node.entries.length - 1; index >= 0; index -= 1) {
    const entry = node.entries[index];
    if (entry) record[entry.key.text === '__proto__' ? masked : entry.key.text] = plain(entry.value);
  }
  return record;
}

const mostOffers = 50;

/** What does not fit, in the order of the file. */
export function shapeProblems(document: LedgerDocument, kind: FileKind): readonly Problem[] {
  const { source, root } = document;
  if (root.kind === 'empty')
    return [problemAt(source, { ...emptyFile, hint: `begin with ${exampleOf(firstKeys[kind])}` }, root)];
  if (fitsKind(kind, root)) return [];
  const found: Found[] = [];
  for (const misfit of misfitsOf(kind, plain(root)))
    found.push(...worded(document, kind, misfit, found.length));
  return found
    .sort((left, right) => left.span.start - right.span.start)
    .map(({ finding, span }) => problemAt(source, finding, span));
}

const emptyFile = { code: 'empty-file', message: 'there is nothing in this file' };

const firstKeys: Readonly<Record<FileKind, string>> = {
  bench: 'ledger',
  ingredients: 'ingredients',
  trial: 'trial',
  series: 'series',
  formula: 'formula',
  batch: 'batch',
};

interface Found {
  readonly finding: Finding;
  readonly span: Span;
}

function worded(
  { root, source }: LedgerDocument,
  kind: FileKind,
  { path: masks, misfit }: Misfit,
  already: number,
): readonly Found[] {
  const path = masks.map((step) => (typeof step === 'string' ? unmasked(step) : step));
  const node = nodeAt(root, path);
  if (misfit.kind === 'unknown keys') {
    const places = keyPlaces(node ?? root);
    return misfit.keys.map((key, index) =>
      unknownKey(
        places.get(unmasked(key)) ?? node ?? root,
        unmasked(key),
        already + index < mostOffers ? keysAt(kind, path) : [],
      ),
    );
  }
  if (misfit.kind === 'not one of' && node?.kind === 'text') {
    const message = `"${node.text}" is not a word for "${nameOf(path)}"`;
    return [{ finding: { code: 'unknown-word', message, hint: offer(node.text, misfit.words) }, span: node }];
  }
  if (!node || node.kind === 'empty') return [missing(root, path) ?? []].flat();
  const shapes = misfit.kind === 'wanted' ? misfit.shapes : (['text'] as const);
  return [wrongShape({ node, path, shapes, text: source.text })];
}

const unmasked = (key: string): string => (key === masked ? '__proto__' : key);

/** Where each key stands first; looked up once, since a file from a stranger may hold tens of thousands. */
const keyPlaces = (node: TreeNode): ReadonlyMap<string, Span> =>
  new Map(
    node.kind === 'map' ? node.entries.map(({ key }): [string, Span] => [key.text, key]).reverse() : [],
  );

function unknownKey(span: Span, key: string, known: readonly string[]): Found {
  const message = `"${key}" is not a word that can stand here`;
  return { finding: { code: 'unknown-key', message, hint: offer(key, known) }, span };
}

/** The last word of a path, for a message. */
const nameOf = (path: readonly Step[]): string =>
  String([...path].reverse().find((step) => typeof step === 'string') ?? 'the file');

const examples: Readonly<Record<string, string>> = {
  ledger: '"ledger: 1"',
  trial: '"trial: 14"',
  series: '"series: orange ladder"',
  formula: '"formula: orange cassis"',
  batch: '"batch: 3"',
  stages: '"stages:" with at least one stage under it',
  ingredients: '"ingredients:"',
  at: '"at: 2026-03-03T09:10+00:00"',
  calculator: '"calculator: hlb"',
  division: '"division: 0.01 g"',
  drop: '"drop: 0.03 g"',
};

const exampleOf = (key: string): string => examples[key] ?? `"${key}: …"`;

/** What is left out; of items and stages their reader says it better. */
function missing(root: TreeNode, path: readonly Step[]): Found | undefined {
  const key = path.at(-1) ?? '';
  const parentPath = path.slice(0, -1);
  const parent = nodeAt(root, parentPath) ?? root;
  if (typeof key === 'number') {
    const span = parent.kind === 'list' ? (parent.items[key] ?? parent) : parent;
    const finding = {
      code: 'missing-value',
      message: 'nothing follows this dash',
      hint: 'write something, or delete it',
    };
    return { finding, span: { start: Math.max(0, span.start - 1), end: span.start } };
  }
  const entry = entryOf(parent, key);
  if (entry && (isItem(parentPath) || isStage(path))) return undefined;
  if (entry) {
    const message = `"${key}" has nothing after it`;
    return { finding: { code: 'missing-value', message, hint: `write ${exampleOf(key)}` }, span: entry.key };
  }
  const finding = { code: 'missing-key', message: `"${key}" is missing`, hint: `add ${exampleOf(key)}` };
  const name = parentPath.at(-1);
  const holder = typeof name === 'string' ? entryOf(nodeAt(root, parentPath.slice(0, -1)), name) : undefined;
  return { finding, span: holder?.key ?? { start: parent.start, end: parent.start + 1 } };
}

const shapeWords: Readonly<Record<Shape, readonly [name: string, how: string]>> = {
  text: ['text', 'write it on one line after the colon'],
  list: ['a list', 'write one "- " a line below it'],
  map: ['lines of "word: value"', 'write them below it, indented'],
};

interface Wrong {
  readonly node: TreeNode;
  readonly path: readonly Step[];
  readonly shapes: readonly Shape[];
  readonly text: string;
}

function wrongShape({ node, path, shapes, text }: Wrong): Found {
  if (node.kind === 'text' && shapes.includes('map')) {
    const glued = gluedColonIn(node.text);
    if (glued) {
      const at = text.slice(node.start, node.end) === node.text ? node.start + glued.at : node.start;
      return { finding: glued.finding, span: { start: at, end: at + 1 } };
    }
    if (isItem(path)) return { finding: itemFinding(node.text), span: node };
  }
  const names = shapes.map((shape) => shapeWords[shape][0]).join(' or ');
  const how = shapeWords[shapes[0] ?? 'text'][1];
  const subject =
    path.length === 0 ? 'the file' : typeof path.at(-1) === 'number' ? 'an entry here' : `"${nameOf(path)}"`;
  const finding = { code: 'wrong-type', message: `${subject} must be ${names}`, hint: how };
  return { finding, span: { start: node.start, end: node.kind === 'text' ? node.end : node.start + 1 } };
}

const isStage = (path: readonly Step[]): boolean => path[0] === 'stages' && path.length === 2;

const isItem = (path: readonly Step[]): boolean =>
  path[0] === 'stages' && typeof path.at(-1) === 'number' && (path.length === 3 || path.at(-2) === 'items');

/** A bullet that is a sentence, or an item without its colon. */
function itemFinding(typed: string): Finding {
  const message = `"${typed}" is no item: an item is a name, a colon and an amount`;
  const [, amount = '', unit = '', name = ''] = /^([\d.]+) ?(\S+) (.+)$/u.exec(typed) ?? [];
  const [, before = '', after = ''] = /^(.*?\D) ([\d.]+ ?\S+)$/u.exec(typed) ?? [];
  if (name !== '') return { code: 'not-an-item', message, hint: `write "${name}: ${amount} ${unit}"` };
  if (before !== '') return { code: 'not-an-item', message, hint: `write "${before}: ${after}"` };
  const hint = 'write "water: 20 g"; what was done goes under "process"';
  return { code: 'not-an-item', message, hint };
}
