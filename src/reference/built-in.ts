/** The built-in ingredients for looking up: a record is read when its name is asked for, and no other. */

import type { Ingredient } from './ingredient.ts';
import { type KeptIngredients, kept } from './kept-ingredients.ts';

export interface BuiltIn {
  /** By a name or alias as it is compared. */
  readonly find: (key: string) => Ingredient | undefined;
  readonly all: () => readonly Ingredient[];
}

export function openKept({ names, records }: KeptIngredients): BuiltIn {
  const lines = records.split('\n');
  const read: Ingredient[] = [];
  const at = (place: number): Ingredient => {
    const record: Ingredient = read[place] ?? JSON.parse(lines[place] ?? '');
    read[place] = record;
    return record;
  };
  return {
    find: (key) => {
      if (/[\t\n]/.test(key)) return undefined;
      const found = names.indexOf(`\n${key}\t`);
      return found < 0 ? undefined : at(Number.parseInt(names.slice(found + key.length + 2), 10));
    },
    all: () => lines.map((_, place) => at(place)),
  };
}

export const builtIn = openKept(kept);
