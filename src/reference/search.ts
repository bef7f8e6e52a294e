/** Finds ingredients by part of a name, an alias, a brand word, a CAS or an E number. */

import type { Ingredient } from './ingredient.ts';
import { ingredients } from './ingredients/index.ts';
import { normaliseName } from './name.ts';

/** How well a record fits, lower being better. */
const fits = {
  name: 0,
  alias: 1,
  number: 1,
  searchWord: 2,
  nameStart: 3,
  namePart: 4,
  aliasPart: 5,
  scattered: 6,
} as const;

/**
 * The ingredients that the words may mean, best first: the whole name, another name or a number, a brand word, then
 * names that begin with the words, that hold them, and those whose words begin with each of them in any order;
 * among equals the shortest name first.
 *
 * Input     text as typed; an E number with or without its space
 * Output    records of the built-in reference; none where nothing fits
 * Example   searchIngredients('tween 80')[0]?.name is 'polysorbate 80'
 */
export function searchIngredients(words: string): readonly Ingredient[] {
  const wanted = normaliseName(words);
  if (wanted === '') return [];
  return ingredients
    .flatMap((record) => {
      const fit = fitOf(record, wanted);
      return fit === undefined ? [] : [{ record, fit }];
    })
    .sort((left, right) => left.fit - right.fit || left.record.name.length - right.record.name.length)
    .map((one) => one.record);
}

function fitOf(record: Ingredient, wanted: string): number | undefined {
  const name = normaliseName(record.name);
  const aliases = (record.aliases ?? []).map(normaliseName);
  const brands = (record.searchWords ?? []).map(normaliseName);
  if (name === wanted) return fits.name;
  if (aliases.includes(wanted)) return fits.alias;
  if (hasNumber(record, wanted)) return fits.number;
  if (brands.includes(wanted)) return fits.searchWord;
  if (name.startsWith(wanted)) return fits.nameStart;
  if (name.includes(wanted)) return fits.namePart;
  if ([...aliases, ...brands].some((one) => one.includes(wanted))) return fits.aliasPart;
  return [name, ...aliases, ...brands].some((one) => holdsEach(one, wanted)) ? fits.scattered : undefined;
}

function hasNumber(record: Ingredient, wanted: string): boolean {
  const eNumber = record.eNumber?.toLowerCase().replaceAll(' ', '');
  return record.cas === wanted || eNumber === wanted.replaceAll(' ', '');
}

/** True where every typed word begins a word of the name. */
function holdsEach(name: string, wanted: string): boolean {
  const parts = name.split(/[\s,/()-]+/u);
  return wanted.split(' ').every((word) => parts.some((part) => part.startsWith(word)));
}
