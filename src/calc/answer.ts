/** An answer of a calculator, as data. Tables, JSON and the ledger are all made from this one record. */

import type { Problem } from '../problem.ts';

/** A number with its unit. `value` is null for a figure that does not exist, such as an open side. */
export interface Leaf {
  readonly value: number | null;
  readonly unit: string;
}

export type Entry = Leaf | string | boolean;
export type Row = Readonly<Record<string, Entry>>;
export type Facts = Readonly<Record<string, Entry | readonly Row[] | readonly Leaf[] | readonly string[]>>;

export interface Caution {
  readonly code: string;
  readonly text: string;
  readonly source: string;
}

/** Which constant came from where. */
export interface Citation {
  readonly for: string;
  readonly source: string;
  readonly fromMemory: boolean;
  /** Where the source says that it holds; shown with `--explain`. */
  readonly range?: string;
}

/** One line of the working: the equation in words, and again with the numbers in it. */
export interface WorkingLine {
  readonly equation: string;
  readonly numbers: string;
}

export interface Answer {
  readonly calculator: string;
  readonly version: number;
  readonly given: Facts;
  readonly found: Facts;
  readonly working: readonly WorkingLine[];
  readonly cautions: readonly Caution[];
  readonly sources: readonly Citation[];
  readonly problems: readonly Problem[];
  /** A sentence that must be read before the figures. */
  readonly lead?: string;
  /** True where the answer needs attention: no solution, out of reach. Exit code 1. */
  readonly attention: boolean;
}
