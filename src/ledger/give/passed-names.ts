/** The names under which a person's own ingredients are passed on: without their lots, unless these go along. */

import type { Book } from '../../calc/book.ts';
import { normaliseName } from '../../reference/name.ts';
import type { IngredientCard } from '../cards.ts';

interface Passing {
  readonly ingredients: readonly IngredientCard[];
  readonly book: Book;
  readonly withLots: boolean;
}

/** By the name in the person's own book. */
export function passedNames({ ingredients, book, withLots }: Passing): ReadonlyMap<string, string> {
  const taken = new Set<string>();
  const names = new Map<string, string>();
  for (const { name, lot } of ingredients) {
    const plain = withLots ? name : withoutLot(name, lot);
    const isTaken = (one: string): boolean =>
      one !== name && (taken.has(normaliseName(one)) || book.find(one) !== undefined);
    const passed = freeName(plain === '' ? 'ingredient' : plain, isTaken);
    taken.add(normaliseName(passed));
    names.set(name, passed);
  }
  return names;
}

/** `orange oil lot 2231` is `orange oil`. */
export function withoutLot(name: string, lot: string | undefined): string {
  const known = lot === undefined ? undefined : literal(lot);
  const tail = known === undefined ? String.raw`lot\s+\S+` : String.raw`(?:lot\s+\S+|(?:lot\s+)?${known})`;
  return name.replace(new RegExp(String.raw`[\s,(]+${tail}\)?$`, 'iu'), '').trim();
}

const literal = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/gu, String.raw`\$&`);

function freeName(plain: string, isTaken: (name: string) => boolean): string {
  if (!isTaken(plain)) return plain;
  for (let count = 1; ; count += 1) {
    const name = `${plain} (own lot${count === 1 ? '' : ` ${count}`})`;
    if (!isTaken(name)) return name;
  }
}

/** Any text with the old names in it changed to those under which they are passed on. */
export function renamedIn(text: string, names: ReadonlyMap<string, string>): string {
  let changed = text;
  for (const [old, passed] of names) {
    if (old === passed) continue;
    changed = changed.replace(
      new RegExp(String.raw`(?<!\p{L})${literal(old)}(?!\p{L})`, 'giu'),
      () => passed,
    );
  }
  return changed;
}
