/** What every record of a ledger's files is made of. */

import type { MapNode, Span } from './tree.ts';

export const looks = [
  'clear',
  'bluish',
  'hazy',
  'cloudy',
  'specks',
  'ring',
  'sediment',
  'gel',
  'broken',
] as const;

export type Look = (typeof looks)[number];

/** A time, or a day alone (then its first instant), in the file. */
export interface Moment extends Span {
  readonly written: string;
  readonly epochMilliseconds: number;
  /** True where only a date was typed. */
  readonly isDay: boolean;
}

/** A text with its place. */
export interface Named extends Span {
  readonly text: string;
}

/** What every file's record has. */
export interface FileCard {
  /** From the root of the ledger, with `/`. */
  readonly file: string;
  /** The tree; read again from the text when it is asked for, so that a thousand cards don't hold theirs. */
  readonly root: MapNode;
  /** True where nothing is wrong in the file itself, so that calculators may use it. */
  readonly isSound: boolean;
}
