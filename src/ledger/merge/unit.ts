/** A file in the stretches that belong together, every byte of it in exactly one: what a merge takes from each side. */

import type { TreeNode } from '../tree.ts';

/** An entry of a map or a list with the comments right above it, or comments that stand for themselves. */
export interface Unit {
  readonly kind: 'entry' | 'comment';
  /** The key in a map; of an item of a list, the first key under its dash. */
  readonly key: string;
  /** The column in which the key or the dash stands. */
  readonly column: number;
  /** Blank lines above. */
  readonly space: string;
  /** Comment lines right above, indented as they stand. */
  readonly lead: string;
  readonly body: Body;
  /** What is under the key or behind the dash. */
  readonly node?: TreeNode;
  /** The body as if it stood at the margin: by this two are told to be the same. */
  readonly normal: string;
}

export type Body =
  /** One line: `key: `, what it says, and what stands behind that with the line end. */
  | { readonly form: 'line'; readonly head: string; readonly value: string; readonly tail: string }
  /** Lines that are taken whole; the first without its indentation. */
  | { readonly form: 'block'; readonly text: string }
  /** A head with units below it; a head without a line end is a dash with the first unit on its line. */
  | { readonly form: 'map' | 'list'; readonly head: string; readonly units: readonly Unit[] };

/** Moves lines to the right, or to the left as far as there is room; blank lines and the first stay. */
function shifted(text: string, by: number, firstToo: boolean): string {
  if (by === 0) return text;
  const move = (line: string): string => {
    if (line.trim() === '') return line;
    if (by > 0) return ' '.repeat(by) + line;
    const room = /^ */u.exec(line)?.[0].length ?? 0;
    return line.slice(Math.min(room, -by));
  };
  return text
    .split('\n')
    .map((line, index) => (index === 0 && !firstToo ? line : move(line)))
    .join('\n');
}

export const bodyText = (body: Body): string => {
  if (body.form === 'line') return body.head + body.value + body.tail;
  if (body.form === 'block') return body.text;
  const isInline = !body.head.includes('\n');
  return body.head + body.units.map((unit, index) => unitText(unit, isInline && index === 0)).join('');
};

/** A unit as it stands in its own file; `isInline` right behind a dash. */
export function unitText(unit: Unit, isInline = false): string {
  if (unit.kind === 'comment') return unit.space + bodyText(unit.body);
  const indent = isInline ? '' : ' '.repeat(unit.column);
  return unit.space + unit.lead + indent + bodyText(unit.body);
}

/** Only its own lines, as they are written in a column. */
export function bodyAt(unit: Unit, column: number, isInline = false): string {
  const by = column - unit.column;
  const text = bodyText(unit.body);
  if (unit.kind === 'comment') return shifted(text, by, true);
  return (isInline ? '' : ' '.repeat(column)) + shifted(text, by, false);
}

export const leadAt = (unit: Unit, column: number): string => shifted(unit.lead, column - unit.column, true);

/** All of it as it is written in a column. */
export const unitAt = (unit: Unit, column: number, isInline = false): string =>
  unit.space + leadAt(unit, column) + bodyAt(unit, column, isInline);

const evenEnds = (text: string): string => text.replaceAll('\r\n', '\n');

/** Whether two stretches of text are the same apart from their line ends. */
export const isSameText = (one: string, other: string): boolean =>
  one === other || evenEnds(one) === evenEnds(other);

/** A unit with its `normal`. */
export function madeUnit(parts: Omit<Unit, 'normal'>): Unit {
  const text = bodyText(parts.body);
  return { ...parts, normal: evenEnds(shifted(text, -parts.column, parts.kind === 'comment')) };
}

export const normalLead = (unit: Unit): string => evenEnds(shifted(unit.lead, -unit.column, true));

/** Whether a side left a unit as it was, comments and all. */
export const isSameUnit = (one: Unit, other: Unit): boolean =>
  one.normal === other.normal && normalLead(one) === normalLead(other);
