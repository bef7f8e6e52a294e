/** The ingredients that a person can name: the built-in reference with their own book laid over it. */

import type { Ingredient } from '../reference/ingredient.ts';
import type { Quantity } from './quantity.ts';

/** A share of a pure substance in an ingredient. Shares of one ingredient add up to 1. */
export interface SubstanceShare {
  readonly substance: BookEntry;
  readonly massFraction: number;
}

export interface BookEntry {
  /** The name as the book gives it (an alias is resolved to the name). */
  readonly name: string;
  /** Built-in figures with the person's own laid over them. */
  readonly record: Ingredient;
  /** The pure substances in it; a pure substance holds itself, massFraction 1. */
  readonly composition: readonly SubstanceShare[];
  /** True when it comes from the person's own book. */
  readonly own: boolean;
  /** The names of the records that it was made `like`, nearest first. */
  readonly like?: readonly string[];
  readonly dropGrams?: number;
  readonly lot?: string;
  readonly price?: Quantity;
  readonly made?: string;
  readonly keep?: Quantity;
}

export interface Book {
  /** By name or alias, after Unicode NFC, collapsed spaces and case folding. */
  readonly find: (name: string) => BookEntry | undefined;
  /** Up to `count` names that look most like this one, best first. */
  readonly nearest: (name: string, count?: number) => readonly string[];
  readonly entries: readonly BookEntry[];
}
