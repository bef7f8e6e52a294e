/** The built-in ingredients by name, and as entries of the book. */

import type { Ingredient } from '../../reference/ingredient.ts';
import { normaliseName } from '../../reference/name.ts';
import type { BookEntry, ListedName, SubstanceShare } from '../book.ts';

export interface Shelf {
  /** By a normalised name or alias. */
  readonly find: (key: string) => Ingredient | undefined;
  readonly ingredients: readonly Ingredient[];
  readonly names: () => readonly ListedName[];
}

const shelves = new WeakMap<readonly Ingredient[], Shelf>();

/** One shelf a list, indexed at the first look-up. */
export function builtInShelf(ingredients: readonly Ingredient[]): Shelf {
  const known = shelves.get(ingredients);
  if (known) return known;
  let index: ReadonlyMap<string, Ingredient> | undefined;
  const shelf: Shelf = {
    ingredients,
    find: (key) => {
      index ??= indexOf(ingredients);
      return index.get(key);
    },
    names: () => ingredients.flatMap(namesOf),
  };
  shelves.set(ingredients, shelf);
  return shelf;
}

/** Names stand before aliases. */
function indexOf(ingredients: readonly Ingredient[]): ReadonlyMap<string, Ingredient> {
  const index = new Map<string, Ingredient>();
  const put = (name: string, ingredient: Ingredient): void => {
    const key = normaliseName(name);
    if (!index.has(key)) index.set(key, ingredient);
  };
  for (const ingredient of ingredients) put(ingredient.name, ingredient);
  for (const ingredient of ingredients) for (const alias of ingredient.aliases ?? []) put(alias, ingredient);
  return index;
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
