/** A merged text in pieces: lines that are settled, and lines of which a person has to choose. */

export interface Conflict {
  readonly ours: string;
  readonly theirs: string;
  /** Where in the file, from the root. */
  readonly path: readonly string[];
  readonly why: ConflictReason;
}

export type ConflictReason =
  | 'changed on both sides'
  | 'changed on one side, taken out on the other'
  | 'added on both sides'
  | 'moved on both sides'
  | 'does not fit together';

export type Piece = string | Conflict;

/** Whole lines that both begin or end with stand outside. */
export function conflictPieces(conflict: Conflict): readonly Piece[] {
  const ours = linesIn(conflict.ours);
  const theirs = linesIn(conflict.theirs);
  const room = Math.min(ours.length, theirs.length);
  let head = 0;
  while (head < room && ours[head] === theirs[head]) head += 1;
  let tail = 0;
  while (tail < room - head && ours.at(-1 - tail) === theirs.at(-1 - tail)) tail += 1;
  const middle = (lines: readonly string[]): string => lines.slice(head, lines.length - tail).join('');
  return [
    ours.slice(0, head).join(''),
    { ...conflict, ours: middle(ours), theirs: middle(theirs) },
    ours.slice(ours.length - tail).join(''),
  ].filter((piece) => piece !== '');
}

const linesIn = (text: string): readonly string[] => text.match(/[^\n]*\n|[^\n]+$/gu) ?? [];

export interface Labels {
  readonly ours: string;
  readonly theirs: string;
  /** How many characters a marker has; 7 where git says nothing. */
  readonly size: number;
}

/** The text with its conflicts as git writes them. */
export function piecesText(pieces: readonly Piece[], { ours, theirs, size }: Labels): string {
  return pieces
    .map((piece) => {
      if (typeof piece === 'string') return piece;
      const line = (mark: string, label: string): string => `${mark.repeat(size)}${label && ` ${label}`}\n`;
      return line('<', ours) + ended(piece.ours) + line('=', '') + ended(piece.theirs) + line('>', theirs);
    })
    .join('');
}

const ended = (text: string): string => (text === '' || text.endsWith('\n') ? text : `${text}\n`);

export const conflictsIn = (pieces: readonly Piece[]): readonly Conflict[] =>
  pieces.flatMap((piece) => (typeof piece === 'string' ? [] : [piece]));
