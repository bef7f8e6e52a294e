/** From offsets to lines and columns. Made when the first problem of a file asks, so that good files don't pay. */

import type { Place, Problem, Severity } from '../problem.ts';
import type { Span } from './tree.ts';

export interface SourceText {
  /** The path as the person knows it, from the root of the ledger, with `/`. */
  readonly file: string;
  readonly text: string;
  readonly placeAt: (span: Span) => Place;
}

/** A file's text with the way from offsets to places. */
export function sourceText(file: string, text: string): SourceText {
  let starts: readonly number[] | undefined;
  const placeAt = ({ start, end }: Span): Place => {
    starts ??= lineStarts(text);
    const line = lineOf(starts, Math.min(start, text.length));
    const from = starts[line] ?? 0;
    const lineText = lineWithoutEnd(text, from);
    const hidden = from === 0 && lineText.startsWith('\ufeff') ? 1 : 0;
    const column = Math.max(0, Math.min(start - from, lineText.length) - hidden);
    const length = Math.max(1, Math.min(end - from, lineText.length) - hidden - column);
    return { file, line: line + 1, column: column + 1, length, lineText: lineText.slice(hidden) };
  };
  return { file, text, placeAt };
}

function lineStarts(text: string): readonly number[] {
  const starts = [0];
  for (let at = text.indexOf('\n'); at !== -1; at = text.indexOf('\n', at + 1)) starts.push(at + 1);
  return starts;
}

/** The line that holds an offset, counted from 0. */
function lineOf(starts: readonly number[], offset: number): number {
  let low = 0;
  let high = starts.length - 1;
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if ((starts[middle] ?? 0) <= offset) low = middle;
    else high = middle - 1;
  }
  return low;
}

function lineWithoutEnd(text: string, from: number): string {
  const end = text.indexOf('\n', from);
  const line = text.slice(from, end === -1 ? text.length : end);
  return line.endsWith('\r') ? line.slice(0, -1) : line;
}

export interface Finding {
  readonly code: string;
  readonly severity?: Severity;
  readonly message: string;
  readonly hint: string;
}

/** A problem with its place. */
export const problemAt = (
  source: SourceText,
  { code, severity, message, hint }: Finding,
  span: Span,
): Problem => ({ code, severity: severity ?? 'error', message, hint, place: source.placeAt(span) });
