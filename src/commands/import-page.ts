/** What became of each row, as a page and as JSON. */

import type { CsvTable } from '../ledger/csv/csv-read.ts';
import type { NumberedRow } from '../ledger/csv/import-plan.ts';
import type { ColumnMap } from '../ledger/csv/read-map.ts';
import { textUnderKey } from '../ledger/give/plain-lines.ts';
import { envelope } from '../output/answer-json.ts';
import type { Page } from '../output/view.ts';
import type { Problem } from '../problem.ts';
import type { Call, Outcome } from './command.ts';
import type { CheckedRows } from './import-check.ts';

interface Imported {
  readonly checked: CheckedRows;
  readonly map: ColumnMap;
  readonly table: CsvTable;
}

export function importOutcome(call: Call, { checked, map, table }: Imported): Outcome {
  const isDry = call.flags.has('dry-run');
  const { written, there, rejected, warnings } = checked;
  const problems = [...unmappedWarning(map), ...rejected.flatMap((row): readonly Problem[] => row.problems)];
  const [file = ''] = call.words;
  return {
    exitCode: rejected.length > 0 ? 1 : 0,
    page: pageOf(checked, isDry),
    json: envelope({
      schema: 'import@1',
      given: { file },
      found: {
        rows: { value: table.rows.length, unit: '' },
        trials: written.map(({ line, number, file: path }) => ({ line, trial: number, file: path })),
        here: there.map(({ line, number }) => ({ line, trial: number })),
        rejected: rejected.map((row) => ({
          line: row.line,
          reasons: row.problems.map(({ message, hint }) => ({ message, hint })),
        })),
        isWritten: !isDry && written.length > 0,
      },
      problems,
    }),
    problems,
    notes: [
      ...written.map(({ file: path }) => `${isDry ? 'would write' : 'wrote'} ${path}`),
      `${written.length} of ${table.rows.length} rows ${isDry ? 'would be' : 'are'} new trials${there.length > 0 ? `, ${there.length} here already` : ''}${rejected.length > 0 ? `, ${rejected.length} left out` : ''}`,
      ...(warnings > 0 && !isDry ? ['neckring check has remarks on them'] : []),
    ],
  };
}

function unmappedWarning({ unmapped, source }: ColumnMap): readonly Problem[] {
  if (unmapped.length === 0) return [];
  const names = unmapped.slice(0, 8).map((name) => `"${name}"`);
  const more = unmapped.length > names.length ? `, and ${unmapped.length - names.length} more` : '';
  return [
    {
      code: 'unmapped',
      severity: 'warning',
      message: `${source.file} says nothing of the ${unmapped.length === 1 ? 'column' : 'columns'} ${names.join(', ')}${more}`,
      hint: 'write in the map where it goes, or "leave out" after its name',
    },
  ];
}

/** A table of the rows; a dry run shows the first trial as it would be written too. */
function pageOf({ written, there }: CheckedRows, isDry: boolean): Page {
  const rows = [
    ...written.map((row) => ({ line: row.line, cells: [String(row.number), titleOf(row), 'new'] })),
    ...there.map(({ line, number }) => ({ line, cells: [String(number), '', 'here already'] })),
  ].sort((one, other) => one.line - other.line);
  const [first] = written;
  return [
    ...(rows.length > 0
      ? [
          {
            kind: 'table',
            columns: [
              { head: 'line', align: 'right' },
              { head: 'trial', align: 'right' },
              { head: 'title', align: 'left' },
              { head: '', align: 'left' },
            ],
            rows: rows.map(({ line, cells }) => [String(line), ...cells]),
          } as const,
        ]
      : []),
    ...(isDry && first
      ? ([
          { kind: 'heading', text: first.file },
          { kind: 'lines', lines: first.text.trimEnd().split('\n') },
        ] as const)
      : []),
  ];
}

const titleOf = ({ facts }: NumberedRow): string =>
  (textUnderKey(facts, 'title') ?? '').replace(/\s+/gu, ' ');
