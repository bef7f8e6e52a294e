/** What stands between entries: which comments belong to what is below, what is above, or to nobody. */

import { indentOf, isBlank, isComment, lineAt, lineEnd } from '../edit-lines.ts';
import { madeUnit, type Unit } from './unit.ts';

export function linesOf(text: string): readonly string[] {
  const lines: string[] = [];
  for (let offset = 0; offset < text.length; offset = lineEnd(text, offset)) lines.push(lineAt(text, offset));
  return lines;
}

/** Whether nothing but comments and blank lines stands in a gap. */
export const isGap = (text: string): boolean =>
  linesOf(text).every((line) => isBlank(line) || isComment(line));

/** How much of a gap belongs to the block above it: up to the last comment indented as far as its entries. */
export function tailLength(gap: string, column: number): number {
  let length = 0;
  let offset = 0;
  for (const line of linesOf(gap)) {
    offset += line.length;
    if (isBlank(line)) continue;
    if (indentOf(line) < column) break;
    length = offset;
  }
  return length;
}

export interface Gap {
  /** Comments that stand for themselves. */
  readonly comments: readonly Unit[];
  /** Of the entry below. */
  readonly space: string;
  readonly lead: string;
}

/**
 * Parts a gap above an entry, or at the end of a block.
 * Input     the lines, the column of the entries of the block, whether an entry follows
 */
export function partedGap(gap: string, column: number, hasNext: boolean): Gap {
  const lines = [...linesOf(gap)];
  const lead: string[] = [];
  const isLead = (line: string | undefined): line is string =>
    hasNext && line !== undefined && isComment(line) && indentOf(line) === column;
  for (let line = lines.at(-1); isLead(line); line = lines.at(-1)) lead.unshift(lines.pop() ?? '');
  const space: string[] = [];
  while (hasNext && isBlank(lines.at(-1) ?? '#')) space.unshift(lines.pop() ?? '');
  return { comments: paragraphs(lines, column), space: space.join(''), lead: lead.join('') };
}

/** Comment after comment; what a blank line or another indentation sets off is another one. */
function paragraphs(lines: readonly string[], column: number): readonly Unit[] {
  const found: Unit[] = [];
  let space = '';
  let text = '';
  const push = (): void => {
    if (space + text === '') return;
    found.push(
      madeUnit({ kind: 'comment', key: '', column, space, lead: '', body: { form: 'block', text } }),
    );
    space = '';
    text = '';
  };
  for (const line of lines) {
    const isOther = isBlank(line) || indentOf(line) !== indentOf(text);
    if (text !== '' && isOther) push();
    if (isBlank(line)) space += line;
    else text += line;
  }
  push();
  return found;
}
