/** Lines of a text by offset: where they begin and end, how far they are indented, what ends them. */

const mark = '\ufeff';

/** The offset of the first character of the line, after a byte order mark. */
export function lineStart(text: string, offset: number): number {
  const start = offset === 0 ? 0 : text.lastIndexOf('\n', offset - 1) + 1;
  return start === 0 && text.startsWith(mark) ? 1 : start;
}

/** The offset after the line's own end. */
export function lineEnd(text: string, offset: number): number {
  const end = text.indexOf('\n', offset);
  return end === -1 ? text.length : end + 1;
}

/** How many characters stand before this one on its line. */
export const columnOf = (text: string, offset: number): number => offset - lineStart(text, offset);

/** The line end that the file uses, by its first line. */
export const newlineOf = (text: string): string => (/^[^\n]*\r\n/.test(text) ? '\r\n' : '\n');

export const isBlank = (line: string): boolean => /^[ \t]*\r?\n?$/.test(line);
export const isComment = (line: string): boolean => /^[ \t]*#/.test(line);
export const indentOf = (line: string): number => /^ */.exec(line)?.[0].length ?? 0;

/** The line at an offset, with its end. */
export const lineAt = (text: string, offset: number): string => text.slice(offset, lineEnd(text, offset));

/**
 * Where something new goes after the line that holds `last`.
 * Input     the offset of a block's last character, and the column where its entries begin
 * Output    the offset after that line and after the comments below it that are indented like the entries
 */
export function afterBlock(text: string, last: number, column: number): number {
  let place = lineEnd(text, last);
  let hasBlank = false;
  for (let offset = place; offset < text.length; offset = lineEnd(text, offset)) {
    const line = lineAt(text, offset);
    if (isBlank(line)) {
      hasBlank = true;
      continue;
    }
    // At the margin a comment set off by a blank line is the heading of what follows.
    const isOurs = isComment(line) && indentOf(line) >= column && !(column === 0 && hasBlank);
    if (!isOurs) break;
    place = lineEnd(text, offset);
  }
  return place;
}

/** Where something new goes before the line that holds `first`: above the comments that belong to it. */
export function beforeBlock(text: string, first: number): number {
  let place = lineStart(text, first);
  const column = columnOf(text, first);
  while (place > 0) {
    const above = lineStart(text, place - 1);
    const line = lineAt(text, above);
    if (above === place || !isComment(line) || indentOf(line) !== column) break;
    place = above;
  }
  return place;
}

/** Whether a blank line stands above the one at this offset. */
export function hasBlankAbove(text: string, offset: number): boolean {
  const start = lineStart(text, offset);
  return start > 1 && isBlank(lineAt(text, lineStart(text, start - 1)));
}

/** The end of the last line that is not blank. */
export const contentEnd = (text: string): number =>
  text.trimEnd() === '' ? text.length : lineEnd(text, text.trimEnd().length - 1);

export interface Splice {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

/** Whole new lines at the start of a line; a file without a last line end gets one first. */
export function insertLines(text: string, offset: number, lines: readonly string[]): Splice {
  const newline = newlineOf(text);
  const body = lines.flatMap((line) => line.split('\n')).join(newline) + newline;
  const isOpen = offset === text.length && offset > lineStart(text, offset);
  return { start: offset, end: offset, text: isOpen ? newline + body : body };
}

/**
 * The ways of putting lines at one of these places, best first. `isSpaced`: below a blank line, unless a
 * blank line would be read as part of the text above.
 */
export function insertBelow(
  text: string,
  places: readonly number[],
  lines: readonly string[],
  isSpaced: boolean,
): readonly Splice[] {
  const layouts = isSpaced ? [['', ...lines], lines] : [lines];
  return layouts.flatMap((layout) => places.map((place) => insertLines(text, place, layout)));
}

export const spliced = (text: string, { start, end, text: written }: Splice): string =>
  text.slice(0, start) + written + text.slice(end);
