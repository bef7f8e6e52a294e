/** Lays a page of blocks out as text. */

import type { Paint } from './paint.ts';
import { problemsText } from './problem-page.ts';
import type { Align, Block, Page } from './view.ts';
import { tameText, visible } from './visible.ts';
import { cellWidth, padEnd, padStart, wrapped } from './wrap.ts';

export interface Sheet {
  readonly width: number;
  readonly paint: Paint;
  /** Where problems are broken; left out, each stands on one line, as other programs read it. */
  readonly problemWidth?: number | undefined;
}

export async function layOut(page: Page, sheet: Sheet): Promise<string> {
  let text = '';
  let isUnderHeading = true;
  for (const raw of page) {
    const block = tame(raw);
    const isGrid = block.kind === 'grid' || (block.kind === 'table' && isTooWide(block, sheet.width));
    const lines = isGrid ? await layOutWrapped(block, sheet) : layOutBlock(block, sheet);
    if (lines.length === 0) continue;
    text += `${isUnderHeading ? '' : '\n'}${lines.join('\n')}\n`;
    isUnderHeading = block.kind === 'heading';
  }
  return text;
}

/** The block with everything that could drive a terminal made visible, wherever its texts come from. */
function tame(block: Block): Block {
  switch (block.kind) {
    case 'heading':
    case 'text':
      return { ...block, text: tameText(block.text) };
    case 'lines':
      return { ...block, lines: block.lines.map(visible) };
    case 'notes':
      return { ...block, notes: block.notes.map(tameText) };
    case 'pairs':
      return { ...block, pairs: block.pairs.map(([label, value]) => [visible(label), tameText(value)]) };
    case 'table':
    case 'grid':
      return {
        ...block,
        columns: block.columns.map((column) => ({ ...column, head: visible(column.head) })),
        rows: block.rows.map((row) => row.map(visible)),
      };
    case 'problems':
      return block;
  }
}

type Grid = Extract<Block, { readonly kind: 'grid' }>;
type Table = Extract<Block, { readonly kind: 'table' }>;

async function layOutWrapped(block: Grid | Table, sheet: Sheet): Promise<readonly string[]> {
  const { layOutGrid } = await import('./table.ts');
  return layOutGrid({ ...block, rows: alignedRows(block), ...sheet });
}

/** The rows with the numbers of a column under each other. */
function alignedRows({ columns, rows }: Grid | Table): readonly (readonly string[])[] {
  if (
    columns.every(({ align }) => align !== 'point') &&
    rows.every(({ length }) => length === columns.length)
  )
    return rows;
  const cells = columns.map((column, at) => {
    const texts = rows.map((row) => row[at] ?? '');
    return column.align === 'point' ? alignedOnPoint(texts) : texts;
  });
  return rows.map((_, index) => cells.map((column) => column[index] ?? ''));
}

const gap = 2;

function isTooWide(table: Table, width: number): boolean {
  const widths = widthsOf(table, alignedRows(table));
  return widths.reduce((sum, one) => sum + one, 0) + gap * (widths.length - 1) > width;
}

const widthsOf = ({ columns }: Table, rows: readonly (readonly string[])[]): readonly number[] =>
  columns.map((column, at) =>
    rows.reduce((most, row) => Math.max(most, cellWidth(row[at] ?? '')), cellWidth(column.head)),
  );

function layOutBlock(block: Exclude<Block, Grid>, sheet: Sheet): readonly string[] {
  const { width, paint } = sheet;
  switch (block.kind) {
    case 'heading':
      return wrapped(block.text, width).map((line) => paint('strong', line));
    case 'text':
      return wrapped(block.text, width).map((line) => paint(block.tone ?? 'plain', line));
    case 'problems':
      return [problemsText(block.problems, paint, sheet.problemWidth).trimEnd()];
    case 'lines':
      return block.lines.map((line) => paint(block.tone ?? 'plain', line));
    case 'pairs':
      return layOutPairs(block, width);
    case 'table':
      return layOutTable(block, sheet);
    case 'notes':
      return block.notes.flatMap((note) =>
        layOutNote(block.mark, note, width).map((line) => paint(block.tone ?? 'plain', line)),
      );
  }
}

function layOutNote(mark: string, note: string, width: number): readonly string[] {
  const indent = cellWidth(mark) + 1;
  return wrapped(note, Math.max(20, width - indent)).map(
    (line, index) => `${index === 0 ? `${mark} ` : ' '.repeat(indent)}${line}`,
  );
}

/** Labels longer than this stand on a line of their own; on a narrow terminal those of half a line do. */
const longestLabel = 34;

type Pairs = Extract<Block, { readonly kind: 'pairs' }>;

function layOutPairs({ pairs, areSentences }: Pairs, width: number): readonly string[] {
  const widestLabel = Math.min(longestLabel, Math.floor(width / 2));
  const labelWidths = pairs.map(([label]) => cellWidth(label)).filter((cells) => cells <= widestLabel);
  const labelWidth = Math.max(0, ...labelWidths);
  const texts = pairs.map(([, value]) => value);
  const values = areSentences ? texts : alignedOnPoint(texts);
  return pairs.flatMap(([label], index) => {
    const value = values[index] ?? '';
    const lines =
      cellWidth(value) > width - labelWidth - 2 ? wrapped(value, width - labelWidth - 2) : [value];
    const isLong = cellWidth(label) > labelWidth;
    const beside = lines.map((line, at) =>
      `${padEnd(at === 0 && !isLong ? label : '', labelWidth)}  ${line}`.trimEnd(),
    );
    return isLong ? [...wrapped(label, width), ...beside] : beside;
  });
}

function layOutTable(table: Table, sheet: Sheet): readonly string[] {
  const { columns } = table;
  const rows = alignedRows(table);
  const widths = widthsOf(table, rows);
  const line = (texts: readonly string[]): string =>
    texts
      .map((text, at) => pad(text, widths[at] ?? 0, columns[at]?.align ?? 'left'))
      .join(' '.repeat(gap))
      .trimEnd();
  const head = columns.some((column) => column.head !== '')
    ? [sheet.paint('strong', line(columns.map((column) => column.head)))]
    : [];
  return [...head, ...rows.map(line)];
}

function pad(text: string, width: number, align: Align): string {
  return align === 'right' ? padStart(text, width) : padEnd(text, width);
}

/** A number alone or with its unit; a date or a range is none. */
const numberFirst = /^(-?\d+)((?:\.\d+)?(?:e[+-]\d+)?)((?: .*)?)$/s;

/** Texts that begin with a number padded so that the decimal points stand under each other. */
export function alignedOnPoint(texts: readonly string[]): readonly string[] {
  const parts = texts.map((text) => numberFirst.exec(text));
  const whole = Math.max(0, ...parts.map((part) => part?.[1]?.length ?? 0));
  const decimals = Math.max(0, ...parts.map((part) => part?.[2]?.length ?? 0));
  return texts.map((text, index) => {
    const part = parts[index];
    if (!part) return text;
    return `${padStart(part[1] ?? '', whole)}${padEnd(part[2] ?? '', decimals)}${part[3] ?? ''}`;
  });
}
