/** The built-in ingredients by name, and as entries of the book. */

import type { BuiltIn } from '../../reference/built-in.ts';
import type { Ingredient } from '../../reference/ingredient.ts';
import { placesByName } from '../../reference/places-by-name.ts';
import type { BookEntry, ListedName, SubstanceShare } from '../book.ts';

export interface Shelf {
  /** By a normalised name or alias. */
  readonly find: (key: string) => Ingredient | undefined;
  readonly all: () => readonly Ingredient[];
  readonly names: () => readonly ListedName[];
}

/** The built-in ingredients as a list, or as what finds them by name. */
export type BuiltInIngredients = readonly Ingredient[] | BuiltIn;

const shelves = new WeakMap<BuiltInIngredients, Shelf>();

/** One shelf a list, indexed at the first look-up. */
export function builtInShelf(ingredients: BuiltInIngredients): Shelf {
  const known = shelves.get(ingredients);
  if (known) return known;
  const { find, all } = 'all' in ingredients ? ingredients : builtInOf(ingredients);
  const shelf: Shelf = { find, all, names: () => all().flatMap(namesOf) };
  shelves.set(ingredients, shelf);
  return shelf;
}

function builtInOf(ingredients: readonly Ingredient[]): BuiltIn {
  let places: ReadonlyMap<string, number> | undefined;
  return {
    find: (key) => {
      places ??= placesByName(ingredients);
      return ingredients[places.get(key) ?? -1];
    },
    all: () => ingredients,
  };
}

export function namesOf({ name, aliases, searchWords }: Ingredient): readonly ListedName[] {
  return [
    ...[name, ...(aliases ?? [])].map((typed) => ({ typed, shown: typed, of: name })),
    ...(searchWords ?? []).map((typed) => ({ typed, shown: name, of: name })),
  ];
}

/** A pure substance: what it holds is itself. */
export function pureEntry(parts: Omit<BookEntry, 'composition'>): BookEntry {
  const composition: SubstanceShare[] = [];
  const entry: BookEntry = { ...parts, composition };
  composition.push({ substance: entry, massFraction: 1 });
  return entry;
}

export const isPure = (entry: BookEntry): boolean => entry.composition[0]?.substance === entry;
