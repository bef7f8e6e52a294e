/**
 * Comma-separated values as RFC 4180 has them, and as spreadsheets write them: line ends of any kind, a byte order
 * mark, semicolons or tabs between the cells. One pass over the text.
 */

import { Buffer, isUtf8 } from 'node:buffer';
import { type Problem, ProblemError } from '../../problem.ts';
import { problemAt, type SourceText, sourceText } from '../places.ts';

export const largestCsvBytes = 4 * 1024 * 1024;
export const mostColumns = 500;
export const longestCell = 4000;
/** Empty rows too: a sheet that was saved whole has a million of them. */
const mostRecords = 20_000;

export const separators = { comma: ',', semicolon: ';', tab: '\t' } as const;
export type Separator = (typeof separators)[keyof typeof separators];

export interface CsvCell {
  readonly text: string;
  /** Offsets into the whole text, quotes included. */
  readonly start: number;
  readonly end: number;
}

export interface CsvTable {
  readonly source: SourceText;
  readonly separator: Separator;
  readonly head: readonly CsvCell[];
  /** Rows with something in them, as wide as they are typed. */
  readonly rows: readonly (readonly CsvCell[])[];
}

/** Bytes as text. A file that is too large, or is not UTF-8, is refused. */
export function decodeCsv(file: string, bytes: Uint8Array): string {
  if (bytes.length > largestCsvBytes) refuseWhole(file, tooLarge(bytes.length));
  if ((bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff))
    refuseWhole(file, ['utf-16', 'the file is written in UTF-16', utf8Hint]);
  const text = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.length).toString('utf8');
  if (isUtf8(bytes)) return text;
  const at = Math.max(0, text.indexOf('\ufffd'));
  const finding = { code: 'not-utf-8', message: 'a character here is not written in UTF-8', hint: utf8Hint };
  throw new ProblemError([problemAt(sourceText(file, text), finding, { start: at, end: at + 1 })]);
}

const utf8Hint = 'save it as "CSV UTF-8" in the spreadsheet';

type Words = readonly [code: string, message: string, hint: string];

export const tooLarge = (bytes: number): Words => [
  'file-too-large',
  `the file is too large to be read (${Math.ceil(bytes / 1024)} KiB)`,
  `keep it to ${largestCsvBytes / 1024} KiB: split it, the head line on each part`,
];

export function refuseWhole(file: string, [code, message, hint]: Words): never {
  throw new ProblemError([{ code, severity: 'error', message: `${file}: ${message}`, hint }]);
}

/**
 * Reads a text as a table with a head line.
 * Input     the name of the file for problems, its text, and the separator where it is told
 * Output    head and rows, each cell with its place
 * Refuses   a NUL, a quote that is not closed, text after a closing quote, more than 500 columns, an empty file
 * Source    RFC 4180, section 2
 */
export function readCsv(file: string, text: string, told?: Separator): CsvTable {
  const source = sourceText(file, text);
  const nul = text.indexOf('\0');
  if (nul !== -1) refuseAt(source, nul, ['nul', 'there is a NUL character here', 'delete it']);
  const start = text.startsWith('\ufeff') ? 1 : 0;
  const separator = told ?? separatorOf(text, start);
  const records = [...recordsOf(source, start, separator)].filter((cells) =>
    cells.some((cell) => cell.text.trim() !== ''),
  );
  const [head, ...rows] = records;
  if (!head)
    return refuseWhole(file, ['empty', 'nothing stands in the file', 'the first line names the columns']);
  return { source, separator, head, rows };
}

function refuseAt(source: SourceText, at: number, [code, message, hint]: Words): never {
  throw new ProblemError([problemAt(source, { code, message, hint }, { start: at, end: at + 1 })]);
}

/** The sign that stands most often in the head line, outside quotes; a comma where none does. */
function separatorOf(text: string, start: number): Separator {
  const counts = new Map<string, number>();
  let isQuoted = false;
  for (let at = start; at < text.length; at += 1) {
    const sign = text.charAt(at);
    if (sign === '"') isQuoted = !isQuoted;
    else if (!isQuoted && (sign === '\n' || sign === '\r')) break;
    else if (!isQuoted) counts.set(sign, (counts.get(sign) ?? 0) + 1);
  }
  const [first, ...others] = [separators.comma, separators.semicolon, separators.tab];
  return others.reduce<Separator>(
    (best, one) => ((counts.get(one) ?? 0) > (counts.get(best) ?? 0) ? one : best),
    first ?? ',',
  );
}

function* recordsOf(source: SourceText, start: number, separator: Separator): Generator<readonly CsvCell[]> {
  const { text } = source;
  let cells: CsvCell[] = [];
  let records = 0;
  let at = start;
  while (at < text.length) {
    if (cells.length === 0 && isLineEnd(text.charCodeAt(at))) {
      at += 1;
      continue;
    }
    const cell = text.charAt(at) === '"' ? quotedCell(source, at, separator) : bareCell(text, at, separator);
    cells.push(cell);
    if (cells.length > mostColumns)
      refuseAt(source, cell.start, [
        'too-many-columns',
        `there are more than ${mostColumns} columns here`,
        'keep to the columns that are imported',
      ]);
    at = cell.end;
    if (text.charAt(at) === separator) {
      at += 1;
      if (at === text.length) cells.push({ text: '', start: at, end: at });
      continue;
    }
    yield cells;
    records += 1;
    if (records > mostRecords)
      refuseAt(source, cell.start, [
        'too-many-rows',
        `there are more than ${mostRecords} rows, empty ones counted`,
        'delete the empty rows below the table, or split it',
      ]);
    cells = [];
    at += text.startsWith('\r\n', at) ? 2 : 1;
  }
  if (cells.length > 0) yield cells;
}

const isLineEnd = (code: number): boolean => code === 10 || code === 13;

function bareCell(text: string, start: number, separator: Separator): CsvCell {
  let end = start;
  for (; end < text.length; end += 1) {
    const sign = text.charAt(end);
    if (sign === separator || sign === '\n' || sign === '\r') break;
  }
  return { text: text.slice(start, end), start, end };
}

function quotedCell(source: SourceText, start: number, separator: Separator): CsvCell {
  const { text } = source;
  const parts: string[] = [];
  for (let from = start + 1; ; ) {
    const quote = text.indexOf('"', from);
    if (quote === -1)
      return refuseAt(source, start, ['open-quote', 'this quote is not closed', 'end the cell with "']);
    parts.push(text.slice(from, quote));
    if (text.charAt(quote + 1) !== '"')
      return closedCell(source, { start, quote, text: parts.join('"') }, separator);
    from = quote + 2;
  }
}

function closedCell(
  source: SourceText,
  { start, quote, text }: { readonly start: number; readonly quote: number; readonly text: string },
  separator: Separator,
): CsvCell {
  const next = source.text.charAt(quote + 1);
  if (next === '' || next === separator || next === '\n' || next === '\r')
    return { text, start, end: quote + 1 };
  return refuseAt(source, quote + 1, [
    'after-quote',
    'something stands after the closing quote',
    'write a quote inside a cell twice: ""',
  ]);
}

export const cellProblem = (source: SourceText, cell: CsvCell, [code, message, hint]: Words): Problem =>
  problemAt(source, { code, message, hint }, { start: cell.start, end: Math.max(cell.start + 1, cell.end) });
