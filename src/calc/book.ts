/** The ingredients that a person can name: the built-in reference with their own book laid over it. */

import type { FigureName, Ingredient, Role } from '../reference/ingredient.ts';
import { nearestNames, normaliseName } from '../reference/name.ts';
import { ownShelf } from './book/own-shelf.ts';
import { type BuiltInIngredients, builtInShelf } from './book/shelf.ts';
import type { Amount, Quantity } from './quantity.ts';

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

/** A figure that the person gives, in the unit of `figureUnits`. */
export interface OwnFigure {
  readonly value: number;
  /** Where they have it from, in their words. */
  readonly source: string;
  readonly temperatureCelsius?: number | undefined;
}

export interface OwnContent {
  readonly name: string;
  readonly amount: Amount | 'rest';
}

/** One entry of the person's own book, as typed. */
export interface OwnEntry {
  readonly name: string;
  readonly like?: string | undefined;
  readonly role?: Role | undefined;
  readonly fold?: number | undefined;
  readonly lot?: string | undefined;
  readonly aliases?: readonly string[] | undefined;
  readonly figures?: Readonly<Partial<Record<FigureName, OwnFigure>>> | undefined;
  readonly contains?: readonly OwnContent[] | undefined;
  readonly dropGrams?: number | undefined;
  readonly price?: Quantity | undefined;
  readonly made?: string | undefined;
  readonly keep?: Quantity | undefined;
}

export interface BookFault {
  readonly code: string;
  readonly message: string;
  readonly hint: string;
  /** The own entry, by its place in the list that was given. */
  readonly entry: number;
  /** The line of `contains`, by its place. */
  readonly content?: number;
  /** The field that is meant, where it is not the whole entry. */
  readonly field?: 'like' | 'contains';
}

export interface BookInput {
  readonly builtIn: BuiltInIngredients;
  readonly own: readonly OwnEntry[];
}

export interface OpenedBook {
  readonly book: Book;
  /** Worked out when it is first asked for. An entry with a fault stands in the book as a pure substance. */
  readonly faults: readonly BookFault[];
}

/**
 * The book. Nothing is worked out before it is asked for.
 *
 * Input     the built-in ingredients; the person's own entries, which stand before built-in ones of the same name
 * Output    the book, and what is wrong with the own entries
 */
export function makeBook({ builtIn, own }: BookInput): OpenedBook {
  const shelf = builtInShelf(builtIn);
  const owned = ownShelf({ own, shelf });
  let entries: readonly BookEntry[] | undefined;
  let faults: readonly BookFault[] | undefined;
  const book: Book = {
    find: (name) => owned.find(normaliseName(name)),
    nearest: (name, count = 3) =>
      nearestEntries(name, { count, names: () => [...owned.names(), ...shelf.names()] }),
    get entries() {
      entries ??= [...owned.entries(), ...owned.builtInEntries()];
      return entries;
    },
  };
  return {
    book,
    get faults() {
      faults ??= ownShelf({ own, shelf }).faults();
      return faults;
    },
  };
}

/** A name that can be typed, and how it is shown: a brand word is shown as the plain name. */
export interface ListedName {
  readonly typed: string;
  readonly shown: string;
  /** The ingredient behind it; only its best name is offered. */
  readonly of: string;
}

function nearestEntries(
  name: string,
  { count, names }: { readonly count: number; readonly names: () => readonly ListedName[] },
): readonly string[] {
  const listed = names();
  const byTyped = new Map(listed.map((one) => [one.typed, one]));
  const found = new Map<string, string>();
  for (const typed of nearestNames(name, [...byTyped.keys()], count * 4)) {
    const one = byTyped.get(typed);
    if (one && !found.has(one.of) && found.size < count) found.set(one.of, one.shown);
  }
  return [...found.values()];
}
