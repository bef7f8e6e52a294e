/** What becomes of each thing that is taken in. */

export type TakenHow = 'new' | 'here already' | 'renamed' | 'mine kept' | 'replaced' | 'not needed';

export interface TakenRow {
  readonly kind: 'ingredient' | 'trial' | 'formula';
  /** Its name or number in the given file. */
  readonly given: string;
  /** Its name or number here. */
  readonly here: string;
  readonly how: TakenHow;
  /** The file that is written. */
  readonly file?: string;
}

/** A name that is here and means something else. */
export interface Clash {
  readonly kind: 'ingredient' | 'formula';
  readonly name: string;
  /** What clashes, as a sentence without its full stop. */
  readonly text: string;
}

export const ways = ['rename', 'mine', 'theirs'] as const;
export type Way = (typeof ways)[number];

/** How a clash is settled; undefined where that is not known yet. */
export type Settle = (clash: Clash) => Way | undefined;
