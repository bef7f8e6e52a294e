/** Which record a name means. */

import type { Ingredient } from './ingredient.ts';
import { normaliseName } from './name.ts';

/** The place in the list by each name and alias as they are compared. Names stand before aliases. */
export function placesByName(records: readonly Ingredient[]): ReadonlyMap<string, number> {
  const places = new Map<string, number>();
  const put = (name: string, place: number): void => {
    const key = normaliseName(name);
    if (!places.has(key)) places.set(key, place);
  };
  for (const [place, { name }] of records.entries()) put(name, place);
  for (const [place, { aliases = [] }] of records.entries()) for (const alias of aliases) put(alias, place);
  return places;
}
