/** Tables whose cells are wrapped to fit the width. Loaded only where one is shown. */

import Table from 'cli-table3';
import type { Paint } from './paint.ts';
import type { Column } from './view.ts';
import { cellWidth, padEnd, padStart } from './wrap.ts';

const gap = 2;
/** The table library takes seconds for thousands of rows; longer tables are laid out by our own few lines. */
const longestWrapped = 200;

export interface GridInput {
  readonly columns: readonly Column[];
  readonly rows: readonly (readonly string[])[];
  readonly width: number;
  readonly paint: Paint;
}

export function layOutGrid(grid: GridInput): readonly string[] {
  const widths = fittedWidths(grid);
  return grid.rows.length > longestWrapped ? cutRows(grid, widths) : wrappedRows(grid, widths);
}

/** Each column as wide as its longest cell; the widest columns give way until all fit. */
function fittedWidths({ columns, rows, width }: GridInput): readonly number[] {
  const widths = columns.map((column, at) =>
    rows.reduce((most, row) => Math.max(most, cellWidth(row[at] ?? '')), cellWidth(column.head)),
  );
  const room = width - gap * (columns.length - 1);
  while (widths.reduce((sum, one) => sum + one, 0) > room) {
    const widest = widths.indexOf(Math.max(...widths));
    const now = widths[widest] ?? 0;
    if (now <= 8) break;
    widths[widest] = now - 1;
  }
  return widths;
}

function wrappedRows({ columns, rows, paint }: GridInput, widths: readonly number[]): readonly string[] {
  const none = [
    'top',
    'top-mid',
    'top-left',
    'top-right',
    'bottom',
    'bottom-mid',
    'bottom-left',
    'bottom-right',
  ];
  const more = ['left', 'left-mid', 'mid', 'mid-mid', 'right', 'right-mid'];
  const table = new Table({
    chars: { ...Object.fromEntries([...none, ...more].map((name) => [name, ''])), middle: ' '.repeat(gap) },
    style: { head: [], border: [], 'padding-left': 0, 'padding-right': 0 },
    colWidths: [...widths],
    colAligns: columns.map((column) => (column.align === 'left' ? 'left' : 'right')),
    wordWrap: true,
  });
  table.push(
    columns.map((column) => column.head),
    ...rows.map((row) => [...row]),
  );
  const [head = '', ...body] = table
    .toString()
    .split('\n')
    .map((line) => line.trimEnd());
  return [paint('strong', head), ...body];
}

function cutRows({ columns, rows, paint }: GridInput, widths: readonly number[]): readonly string[] {
  const line = (cells: readonly string[]): string =>
    cells
      .map((cell, at) => fitted(cell, widths[at] ?? 0, columns[at]?.align !== 'left'))
      .join(' '.repeat(gap))
      .trimEnd();
  return [paint('strong', line(columns.map((column) => column.head))), ...rows.map(line)];
}

function fitted(cell: string, width: number, right: boolean): string {
  const cut = cellWidth(cell) <= width ? cell : `${[...cell].slice(0, Math.max(1, width - 1)).join('')}…`;
  return right ? padStart(cut, width) : padEnd(cut, width);
}
