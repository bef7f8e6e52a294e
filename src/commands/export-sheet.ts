/** A table that leaves the ledger: columns with their units, rows of texts and numbers. */

import type { CsvSheet, CsvValue } from '../output/csv.ts';

export interface ExportColumn {
  /** In JSON. */
  readonly key: string;
  readonly head: string;
  /** Of a number; an empty text for a number without a unit. Left out for texts. */
  readonly unit?: string;
  /** Left out where no row has it. */
  readonly isRare?: boolean;
}

export interface ExportSheet {
  readonly columns: readonly ExportColumn[];
  readonly rows: readonly ExportRow[];
}

export type ExportRow = Readonly<Record<string, CsvValue>>;

const headOf = ({ head, unit }: ExportColumn): string => (unit ? `${head} (${unit})` : head);

/** Without the columns that are rare and that no row fills. */
export const filledSheet = ({ columns, rows }: ExportSheet): ExportSheet => ({
  columns: columns.filter(({ key, isRare }) => !isRare || rows.some((row) => row[key] !== undefined)),
  rows,
});

export const csvSheet = ({ columns, rows }: ExportSheet): CsvSheet => ({
  head: columns.map(headOf),
  rows: rows.map((row) => columns.map(({ key }) => row[key])),
});

/** Rows as objects: numbers as leaves, what is not there left out. */
export const sheetJson = ({ columns, rows }: ExportSheet): readonly object[] =>
  rows.map((row) =>
    Object.fromEntries(
      columns.flatMap(({ key, unit }) => {
        const value = row[key];
        if (value === undefined) return [];
        return [[key, typeof value === 'number' && unit !== undefined ? { value, unit } : value]];
      }),
    ),
  );
