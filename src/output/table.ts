/** Tables whose cells are wrapped to fit the width. Loaded only where one is shown. */

import Table from 'cli-table3';
import type { Paint } from './paint.ts';
import type { Column } from './view.ts';
import { cellWidth, padEnd, padStart, wrapped } from './wrap.ts';

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
  const measured = measuredColumns(grid);
  const widths = fittedWidths(grid, measured);
  if (!widths) return stackedRows(grid);
  return grid.rows.length > longestWrapped ? cutRows(grid, widths, measured) : wrappedRows(grid, widths);
}

/** How wide each cell is, column by column, the heads first: measured once, since there may be thousands. */
type Measured = readonly Uint32Array[];

const measuredColumns = ({ columns, rows }: GridInput): Measured =>
  columns.map(({ head }, at) => {
    const cells = new Uint32Array(rows.length + 1);
    cells[0] = cellWidth(head);
    for (const [row, texts] of rows.entries()) cells[row + 1] = cellWidth(texts[at] ?? '');
    return cells;
  });

/** A word that is longer is cut. */
const longestKept = 24;

/** Each column as wide as its longest cell; the widest give way, down to their longest word, until all fit. */
function fittedWidths(
  { columns, rows, width }: GridInput,
  measured: Measured,
): readonly number[] | undefined {
  const textsOf = (at: number): readonly string[] => {
    const texts = [columns[at]?.head ?? ''];
    for (const row of rows) texts.push(row[at] ?? '');
    return texts;
  };
  const most = (texts: readonly string[]): number =>
    texts.reduce((widest, one) => Math.max(widest, cellWidth(one)), 0);
  const widths = measured.map((cells) => cells.reduce((widest, one) => Math.max(widest, one), 0));
  const room = width - gap * (columns.length - 1);
  const excess = () => widths.reduce((sum, one) => sum + one, 0) - room;
  if (excess() <= 0) return widths;
  const least = columns.map(({ align }, at) => {
    const texts = textsOf(at);
    const words = Math.min(longestKept, longestWord(texts));
    // A number stays on a line with its unit.
    const numbers = align === 'point' ? most(texts.filter((text) => /^ *-?\d/u.test(text))) : 0;
    return Math.max(numbers, words);
  });
  while (excess() > 0) {
    const spare = widths.map((one, at) => (one > (least[at] ?? 0) ? one : 0));
    const widest = spare.indexOf(Math.max(...spare));
    if (!spare[widest]) return undefined;
    widths[widest] = (widths[widest] ?? 0) - 1;
  }
  return widths;
}

/** One cell a sign. */
const plain = /^[ -~]*$/;

/** In cells, as far as it counts. Only words that may be longer than those before are taken out of their texts. */
function longestWord(texts: readonly string[]): number {
  let most = 0;
  for (const text of texts) {
    const isAscii = plain.test(text);
    for (let from = 0; from < text.length && most < longestKept; ) {
      const space = text.indexOf(' ', from);
      const end = space === -1 ? text.length : space;
      // No sign takes more than two cells.
      if (isAscii) most = Math.max(most, end - from);
      else if (2 * (end - from) > most) most = Math.max(most, cellWidth(text.slice(from, end)));
      from = end + 1;
    }
  }
  return most;
}

/** Where the columns don't fit beside each other: each row by itself, its cells under the first. */
function stackedRows({ columns, rows, width, paint }: GridInput): readonly string[] {
  const [first] = columns;
  const named = columns.slice(1).map(({ head }) => head);
  const short = named.map(cellWidth).filter((cells) => cells <= width / 2);
  const label = Math.max(0, ...short);
  return rows.flatMap((row) => {
    const head = [first?.head ?? '', row[0]?.trim() ?? ''].filter((text) => text !== '').join(' ');
    const cells = named.flatMap((name, at): readonly string[] => {
      const cell = row[at + 1]?.trim() ?? '';
      if (cell === '') return [];
      const lines = wrapped(cell, Math.max(8, width - label - 4));
      const isLong = cellWidth(name) > label;
      const beside = lines.map(
        (line, index) => `  ${padEnd(index === 0 && !isLong ? name : '', label)}  ${line}`,
      );
      return isLong ? [...wrapped(`  ${name}`, width), ...beside] : beside;
    });
    return [...wrapped(head, width).map((line) => paint('strong', line)), ...cells];
  });
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
    colAligns: columns.map((column) => (column.align === 'right' ? 'right' : 'left')),
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

/** Written out plainly, without a small object for each cell: there may be thousands of rows. */
function cutRows(
  { columns, rows, paint }: GridInput,
  widths: readonly number[],
  measured: Measured,
): readonly string[] {
  const last = columns.length - 1;
  const spaces = Array.from({ length: Math.max(0, ...widths) + 1 }, (_, count) => ' '.repeat(count));
  const line = (texts: readonly string[], row: number): string => {
    let text = '';
    for (let at = 0; at <= last; at += 1) {
      const cell = texts[at] ?? '';
      const width = widths[at] ?? 0;
      const cells = measured[at]?.[row] ?? 0;
      const isRight = columns[at]?.align === 'right';
      if (at > 0) text += between;
      if (cells > width) text += cutCell(cell, width, isRight);
      else if (isRight) text += spaces[width - cells] + cell;
      else text += at === last ? cell : cell + spaces[width - cells];
    }
    return text.trimEnd();
  };
  const head = line(
    columns.map((column) => column.head),
    0,
  );
  return [paint('strong', head), ...rows.map((texts, row) => line(texts, row + 1))];
}

const between = ' '.repeat(gap);

function cutCell(cell: string, width: number, isRight: boolean): string {
  const kept = Math.max(1, width - 1);
  const cut = `${plain.test(cell) ? cell.slice(0, kept) : [...cell].slice(0, kept).join('')}…`;
  return isRight ? padStart(cut, width) : padEnd(cut, width);
}
