/** What is looked for: an ingredient with everything made like it, or a lot. */

import type { Book, BookEntry } from '../calc/book.ts';
import type { ItemCard } from '../ledger/cards.ts';
import { madeIn } from '../ledger/check.ts';
import type { Ledger } from '../ledger/ledger.ts';
import { isSameName } from '../ledger/stage-name.ts';

export interface Wanted {
  /** Names of the entries that count as it. */
  readonly entries: ReadonlySet<string>;
  /** A lot that may stand under an item, and the ingredient that it is of, where one was named. */
  readonly lot: string | undefined;
  readonly of: string | undefined;
}

/** Undefined where nothing of this name or lot is known. */
export function wantedOf(words: string, ledger: Ledger, book: Book): Wanted | undefined {
  const [, before, named] = /^(?:(.*\S)\s+)?lot\s+(\S.*)$/iu.exec(words.trim()) ?? [];
  const of = before === undefined ? undefined : book.find(before)?.name;
  const lot =
    named !== undefined && before !== undefined && of === undefined ? undefined : (named ?? words.trim());
  const exact = book.find(words);
  const entries = new Set<string>(exact ? likeIt(exact.name, book) : []);
  for (const entry of book.entries) {
    const isLot = lot !== undefined && entry.lot !== undefined && isSameName(entry.lot, lot);
    if (isLot && isOf(entry, of)) entries.add(entry.name);
  }
  const wanted = { entries, lot, of };
  const isKnown = entries.size > 0 || itemsIn(ledger).some((item) => isItsLot(item, wanted, book));
  return isKnown ? wanted : undefined;
}

const likeIt = (name: string, { entries }: Book): readonly string[] => [
  name,
  ...entries.filter(({ like }) => like?.includes(name)).map((entry) => entry.name),
];

const isOf = (entry: BookEntry | undefined, of: string | undefined): boolean =>
  of === undefined || entry?.name === of || entry?.like?.includes(of) === true;

const itemsIn = (ledger: Ledger): readonly ItemCard[] =>
  [...madeIn(ledger), ...ledger.formulas].flatMap(({ stages }) => stages.flatMap(({ items }) => items));

/** Whether the lot under an item is the one that is looked for. */
export const isItsLot = (item: ItemCard, { lot, of }: Wanted, book: Book): boolean =>
  lot !== undefined && item.lot !== undefined && isSameName(item.lot, lot) && isOf(book.find(item.name), of);
