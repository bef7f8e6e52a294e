/** Rows as new trials with their numbers and files, in the order of the table. */

import type { Book } from '../../calc/book.ts';
import { type Problem, ProblemError } from '../../problem.ts';
import { normaliseName } from '../../reference/name.ts';
import { type PlainFacts, plainText, textUnderKey } from '../give/plain-lines.ts';
import { unknownIngredient } from '../ingredient-finding.ts';
import { trialFileName } from '../new-files.ts';
import { problemAt } from '../places.ts';
import { type HasFile, withSchemaLine } from '../schema-files.ts';
import { otherStageOf } from '../stage-name.ts';
import type { TimeZone } from '../times.ts';
import type { CsvCell, CsvTable } from './csv-read.ts';
import type { ColumnMap } from './read-map.ts';
import { rowTrial } from './row-trial.ts';

export interface ImportedRow {
  /** In the table, from 1. */
  readonly line: number;
  readonly cells: readonly CsvCell[];
  readonly facts: PlainFacts;
}

export interface RejectedRow {
  readonly line: number;
  readonly problems: readonly Problem[];
}

export interface ReadRows {
  readonly good: readonly ImportedRow[];
  readonly rejected: readonly RejectedRow[];
}

export const lineOf = (table: CsvTable, cells: readonly CsvCell[]): number =>
  table.source.placeAt(cells[0] ?? { start: 0, end: 0 }).line;

export function readRows(table: CsvTable, { mapped }: ColumnMap, zone: TimeZone | undefined): ReadRows {
  const good: ImportedRow[] = [];
  const rejected: RejectedRow[] = [];
  for (const cells of table.rows) {
    const line = lineOf(table, cells);
    const row = rowTrial({ source: table.source, cells, width: table.head.length, mapped, zone });
    if (row.ok) good.push({ line, cells, facts: row.facts });
    else rejected.push({ line, problems: row.problems });
  }
  return { good, rejected };
}

/** Items that the book does not know, at their lines in the mapping file. */
export function refuseUnknownItems({ source, mapped }: ColumnMap, book: Book): void {
  const stages = mapped.flatMap(({ path }) =>
    path.kind === 'item' || path.kind === 'step' ? [path.stage] : [],
  );
  const known = new Set(stages.map(normaliseName));
  const problems = mapped.flatMap(({ path, node }) => {
    if (path.kind !== 'item' || known.has(normaliseName(path.item)) || otherStageOf(path.item)) return [];
    return book.find(path.item)
      ? []
      : [problemAt(source, unknownIngredient(path.item, book, [...new Set(stages)]), node)];
  });
  if (problems.length > 0) throw new ProblemError(problems);
}

export interface NumberedRow extends ImportedRow {
  readonly number: number;
  readonly file: string;
  readonly text: string;
}

export const numberedRow = (row: ImportedRow, number: number, hasFile: HasFile): NumberedRow => ({
  ...row,
  number,
  file: `trials/${trialFileName(number, textUnderKey(row.facts, 'title'))}`,
  text: withSchemaLine(hasFile, 'trial', plainText([['trial', String(number)], ...row.facts])),
});
