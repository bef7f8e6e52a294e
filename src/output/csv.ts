/** A table as comma-separated values (RFC 4180): CRLF at line ends, quotes where they are needed. */

import { visible } from './visible.ts';

export type CsvValue = string | number | undefined;

export interface CsvSheet {
  readonly head: readonly string[];
  readonly rows: readonly (readonly CsvValue[])[];
}

export interface CsvManner {
  readonly separator?: string;
  /** A byte order mark at the beginning, by which some spreadsheets know UTF-8. */
  readonly mark?: boolean;
}

/** Signs at which a spreadsheet takes a text for a formula. */
const formulaSign = /^[=+\-@\t\r\n]/u;

/**
 * Writes a sheet.
 *
 * Output    the text; a text that a spreadsheet would take for a formula gets an apostrophe before it, a number never
 *           does; control characters are made visible, line ends inside a cell stay
 * Source    RFC 4180, section 2; signs of formulas: common practice, no source
 * Example   csvText({ head: ['a'], rows: [['=1+1']] }) is "a\r\n'=1+1\r\n"
 */
export function csvText({ head, rows }: CsvSheet, { separator = ',', mark = false }: CsvManner = {}): string {
  const line = (cells: readonly CsvValue[]): string =>
    `${cells.map((cell) => cellText(cell, separator)).join(separator)}\r\n`;
  return `${mark ? '\ufeff' : ''}${[head, ...rows].map(line).join('')}`;
}

function cellText(value: CsvValue, separator: string): string {
  if (value === undefined) return '';
  if (typeof value === 'number') return Number.isFinite(value) ? String(value) : '';
  const guarded = formulaSign.test(value) ? `'${value}` : value;
  const tame = guarded
    .split(/\r\n|\r|\n/u)
    .map(visible)
    .join('\n');
  return tame.includes('"') || tame.includes('\n') || tame.includes(separator) || /^\s|\s$/u.test(tame)
    ? `"${tame.replaceAll('"', '""')}"`
    : tame;
}
