/** The mapping file: a line for each column, and what is the same in every row. */

import { type Problem, ProblemError } from '../../problem.ts';
import { nearestNames } from '../../reference/name.ts';
import { parseDocument } from '../parse.ts';
import { problemAt, type SourceText } from '../places.ts';
import { isSameName } from '../stage-name.ts';
import type { MapEntry, TextNode, TreeNode } from '../tree.ts';
import type { CsvCell, CsvTable } from './csv-read.ts';
import { type ColumnPath, parsePath, pathHint } from './map-path.ts';

/** Where a column goes, or what stands in every row. */
export interface Mapped {
  readonly path: ColumnPath;
  /** The place of the column in a row; undefined for what is always the same. */
  readonly column: number | undefined;
  /** What is always the same. */
  readonly always: string | undefined;
  /** Where the path stands in the mapping file. */
  readonly node: TextNode;
}

export interface ColumnMap {
  readonly source: SourceText;
  /** In the order of the mapping file. */
  readonly mapped: readonly Mapped[];
  /** Columns of which it says nothing. */
  readonly unmapped: readonly string[];
}

/** The key under which stands what is the same in every row. */
const alwaysKey = 'always';

/** Refuses paths that are none, columns that are not there or stand twice, and the same path twice. */
export function readColumnMap(file: string, text: string, table: CsvTable): ColumnMap {
  const document = parseDocument(file, text);
  const { root, source } = document;
  const problems: Problem[] = [...document.problems];
  if (document.isReadable && root.kind !== 'map') {
    const finding = {
      code: 'wrong-shape',
      message: 'there are no "column: path" lines here',
      hint: pathHint,
    };
    problems.push(problemAt(source, finding, { start: root.start, end: root.start + 1 }));
  }
  const entries = document.isReadable && root.kind === 'map' ? root.entries : [];
  const mapped = entries.flatMap((entry) => mappedBy(entry, { source, table, problems }));
  problems.push(...samePaths(source, mapped));
  const errors = problems.filter(({ severity }) => severity === 'error');
  if (errors.length > 0) throw new ProblemError(errors);
  const used = new Set(mapped.map(({ column }) => column));
  const unmapped = table.head
    .map(({ text: head }) => head.trim())
    .filter((head, at) => head !== '' && !used.has(at));
  return { source, mapped, unmapped };
}

interface Reading {
  readonly source: SourceText;
  readonly table: CsvTable;
  readonly problems: Problem[];
}

function mappedBy({ key, value }: MapEntry, reading: Reading): readonly Mapped[] {
  if (key.text === alwaysKey && value.kind === 'map')
    return value.entries.flatMap((entry) => {
      const path = pathOf(entry.key, reading);
      const text = textOf(entry.value, entry.key, reading);
      return path && text ? [{ path, column: undefined, always: text.text, node: entry.key }] : [];
    });
  const node = textOf(value, key, reading);
  const column = columnNamed(key, reading);
  const path = node && pathOf(node, reading);
  return node && path && column !== undefined ? [{ path, column, always: undefined, node }] : [];
}

function textOf(value: TreeNode, key: TextNode, { source, problems }: Reading): TextNode | undefined {
  if (value.kind === 'text') return value;
  const message = `"${key.text}" leads nowhere`;
  problems.push(problemAt(source, { code: 'bad-path', message, hint: pathHint }, key));
  return undefined;
}

function pathOf(node: TextNode, { source, problems }: Reading): ColumnPath | undefined {
  const path = parsePath(node.text);
  if (path.ok) return path.value;
  problems.push(problemAt(source, { ...path.fault }, node));
  return undefined;
}

function columnNamed(key: TextNode, { source, table, problems }: Reading): number | undefined {
  const { head } = table;
  const places = placesOf(head, key.text);
  const [first] = places;
  if (first !== undefined && places.length === 1) return first;
  const names = head.map(({ text }) => text.trim()).filter((name) => name !== '');
  const near = nearestNames(key.text, names, 3);
  const there = `the columns are ${names.slice(0, 12).join(', ')}`;
  const finding =
    first === undefined
      ? {
          code: 'no-column',
          message: `there is no column "${key.text}"`,
          hint: near.length > 0 ? `did you mean ${near.map((name) => `"${name}"`).join(' or ')}?` : there,
        }
      : { code: 'column-twice', message: `two columns are called "${key.text}"`, hint: 'rename one of them' };
  problems.push(problemAt(source, finding, key));
  return undefined;
}

const placesOf = (head: readonly CsvCell[], name: string): readonly number[] =>
  head.flatMap(({ text }, at) => (isSameName(text, name) ? [at] : []));

function samePaths(source: SourceText, mapped: readonly Mapped[]): readonly Problem[] {
  const seen = new Set<string>();
  return mapped.flatMap(({ path, node }) => {
    if (path.kind === 'left out' || path.kind === 'step') return [];
    const { unit: _, ...place } = { unit: undefined, ...path };
    const key = JSON.stringify(place).toLowerCase();
    if (!seen.has(key)) {
      seen.add(key);
      return [];
    }
    return [
      problemAt(
        source,
        { code: 'path-twice', message: `two columns lead to "${node.text}"`, hint: 'keep one' },
        node,
      ),
    ];
  });
}
