/**
 * What a calculator is: one object with its name, its fields as data, how it takes them from a resolved
 * trial, and its pure function. The quick command, the trial file and `reckon` all go through it.
 */

import type { Answer } from './answer.ts';
import type { Book } from './book.ts';
import type { Field, FieldData } from './fields.ts';
import type { OwnReading } from './light/meter-reading-field.ts';
import type { Mixture } from './mixture/picture.ts';
import type { Quantity } from './quantity.ts';
import type { Working } from './working.ts';

/** A figure that is found: its words on the screen and the one unit that its key always has. */
export interface Reading {
  readonly label: string;
  /** Left out for names and yes-or-no answers. */
  readonly unit?: string;
  /** Significant digits on the screen; 4 where it is left out. */
  readonly digits?: number;
  /** Shown as per cent, as parts per million or billion by size, as a whole number, or not at all. */
  readonly as?: 'percent' | 'parts' | 'count' | 'nowhere';
  /** A list: the readings of its columns. */
  readonly columns?: Readonly<Record<string, Reading>>;
}

export type Readings = Readonly<Record<string, Reading>>;

export type PlainEntry = number | null | string | boolean;
export type PlainFound = Readonly<
  Record<string, PlainEntry | readonly Readonly<Record<string, PlainEntry>>[]>
>;

/** What a calculator may read of a trial. */
export interface TrialPicture {
  readonly number: number | undefined;
  readonly mixture: Mixture;
  readonly dropGrams: number | undefined;
  /** Of the bench's own water. */
  readonly alkalinity?: Quantity | undefined;
  /** The newest droplet size that was measured. */
  readonly droplet?: Quantity | undefined;
  /** Of the bench. */
  readonly temperature?: Quantity | undefined;
  /** Readings of the person's own meter through the ledger; only where they are asked for. */
  readonly meter?: readonly OwnReading[];
}

export type Fields = Readonly<Record<string, Field<unknown>>>;
export type Given<F> = { readonly [K in keyof F]: F[K] extends Field<infer T> ? T : never };

/** The inputs for one answer as a trial gives them, and the stage that they come from. */
export interface Taken<F> {
  readonly stage: string;
  readonly given: Partial<Given<F>>;
}

/** Why a trial asks for no answer; and what a question that is typed takes of it all the same. */
export interface NothingAsked<F> {
  readonly why: string;
  readonly beside?: Taken<F>;
}

export interface Worked {
  readonly found: PlainFound;
  readonly lead?: string;
  readonly attention?: boolean;
}

export interface Example {
  /** What to type after `neckring`. */
  readonly line: string;
  readonly says: string;
}

export interface Definition<F> {
  readonly name: string;
  readonly version: number;
  readonly summary: string;
  readonly about?: string;
  readonly fields: F;
  readonly readings: Readings;
  readonly examples: readonly Example[];
  /** What gives way of the trial where a field is typed: `--target` stands instead of the trial's oils. */
  readonly instead?: { readonly [K in keyof F]?: readonly (keyof F & string)[] };
  /** Loads what only this calculator needs and is much; done before it works. */
  readonly loads?: () => Promise<void>;
  /** The inputs for each answer that the trial asks for, or why it asks for none. */
  readonly takes: (picture: TrialPicture) => readonly Taken<F>[] | NothingAsked<F>;
  /** The arithmetic. Refuses by `fail`. */
  readonly work: (given: Given<F>, working: Working) => Worked;
}

export interface TypedInputs {
  /** The texts typed for each field, by its name. */
  readonly typed: Readonly<Record<string, readonly string[]>>;
  readonly book: Book;
  readonly picture?: TrialPicture;
}

/** An answer with what the ledger needs to file it: the stage it is about and what it rests on. */
export interface FiledAnswer {
  readonly answer: Answer;
  readonly stage: string | undefined;
  readonly basis: readonly string[];
}

export interface Calculator {
  readonly name: string;
  readonly version: number;
  readonly summary: string;
  readonly about: string;
  readonly fields: Readonly<Record<string, FieldData>>;
  readonly readings: Readings;
  readonly examples: readonly Example[];
  readonly loads?: () => Promise<void>;
  readonly answer: (inputs: TypedInputs) => FiledAnswer;
  /** One answer for each part of the trial to which this calculator applies, or why it does not. */
  readonly answerTrial: (
    picture: TrialPicture,
    book: Book,
  ) => { readonly answers: readonly FiledAnswer[] } | { readonly why: string };
}

/** The option name of a field: `emulsifierShare` is typed `--emulsifier-share`. */
export const optionName = (field: string): string =>
  field.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);
