/** Rows held against the ledger before anything is written: what is here already, and what would not pass the checks. */

import type { Io } from '../io.ts';
import { checkLedger } from '../ledger/checks.ts';
import { type CsvTable, cellProblem } from '../ledger/csv/csv-read.ts';
import {
  type ImportedRow,
  type NumberedRow,
  numberedRow,
  type ReadRows,
  type RejectedRow,
} from '../ledger/csv/import-plan.ts';
import { plainOf } from '../ledger/edit-facts.ts';
import { readLedger } from '../ledger/folder.ts';
import { overlayPort } from '../ledger/give/overlay.ts';
import { newProblems } from '../ledger/give/take-plan.ts';
import type { Ledger } from '../ledger/ledger.ts';
import type { Problem } from '../problem.ts';
import { type Here, readPort } from './open-ledger.ts';

export interface ThereRow {
  readonly line: number;
  readonly number: number;
}

export interface CheckedRows {
  readonly written: readonly NumberedRow[];
  /** Trials that say the same already. */
  readonly there: readonly ThereRow[];
  readonly rejected: readonly RejectedRow[];
  /** What the checks remark on in the new files, errors apart. */
  readonly warnings: number;
}

export interface Checking {
  readonly rows: ReadRows;
  readonly table: CsvTable;
  readonly here: Here;
  readonly io: Io;
  readonly firstNumber: number;
}

export async function checkedRows({ rows, table, here, io, firstNumber }: Checking): Promise<CheckedRows> {
  const { ingredients } = await import('../reference/library.ts');
  const port = readPort(io);
  const ledger = await readLedger(here.root, port);
  const before = checkLedger(ledger, ingredients);
  const { fresh, there } = partedBy(rows.good, ledger);
  let good = fresh;
  let rejected = rows.rejected;
  for (;;) {
    const numbered = good.map((row, at) => numberedRow(row, firstNumber + at, ledger.hasFile));
    const changes = numbered.map(({ file, text }) => ({ path: file, before: undefined, after: text }));
    const after = await readLedger(here.root, overlayPort(port, here.root, changes));
    const found = newProblems(before, checkLedger(after, ingredients));
    const refused = rejectedBy(numbered, found, table);
    if (refused.length === 0)
      return {
        written: numbered,
        there,
        rejected: [...rejected].sort((one, other) => one.line - other.line),
        warnings: found.length,
      };
    // Without the rows that are refused the others get other numbers, so they are looked at again.
    const lines = new Set(refused.map(({ line }) => line));
    good = good.filter(({ line }) => !lines.has(line));
    rejected = [...rejected, ...refused];
  }
}

const told: ReadonlySet<string> = new Set(['title', 'made', 'stages']);

/** The same title, time and stages make the same trial. */
const sameness = (facts: ImportedRow['facts']): string =>
  JSON.stringify(facts.filter(([key]) => told.has(key)).sort(([one], [other]) => (one < other ? -1 : 1)));

function partedBy(
  rows: readonly ImportedRow[],
  ledger: Ledger,
): { readonly fresh: readonly ImportedRow[]; readonly there: readonly ThereRow[] } {
  const known = new Map(
    ledger.trials.map((card): [string, number] => [
      sameness(card.root.entries.map(({ key, value }) => [key.text, plainOf(value)] as const)),
      card.number,
    ]),
  );
  const there = rows.flatMap((row): readonly ThereRow[] => {
    const number = known.get(sameness(row.facts));
    return number === undefined ? [] : [{ line: row.line, number }];
  });
  const lines = new Set(there.map(({ line }) => line));
  return { fresh: rows.filter(({ line }) => !lines.has(line)), there };
}

/** What is wrong in a file that is not there yet, said of the row that it was made from. */
function rejectedBy(
  rows: readonly NumberedRow[],
  found: readonly Problem[],
  table: CsvTable,
): readonly RejectedRow[] {
  const errors = found.filter(({ severity }) => severity === 'error');
  return rows.flatMap((row): readonly RejectedRow[] => {
    const own = errors.filter(({ place }) => place?.file === row.file);
    const [first] = row.cells;
    if (own.length === 0 || !first) return [];
    const problems = own.map(({ code, message, hint }) =>
      cellProblem(table.source, first, [code, message, hint]),
    );
    return [{ line: row.line, problems }];
  });
}
