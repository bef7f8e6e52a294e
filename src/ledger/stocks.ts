/** Stocks on the shelf: own ingredients made up at the bench, with their age and the end of keeping. */

import type { Book, BookEntry } from '../calc/book.ts';
import type { IngredientCard } from './cards.ts';

const millisecondsInSecond = 1000;

export interface ShelfStock {
  readonly card: IngredientCard;
  readonly entry: BookEntry;
  readonly madeEpoch: number | undefined;
  /** The owner's own estimate; undefined where nothing is said of keeping. */
  readonly endEpoch: number | undefined;
  readonly isExpired: boolean;
  /** g, through its density where a volume is left. */
  readonly leftGrams: number | undefined;
}

/** True for what was made up here: it says what it contains, and when it was made or how long it keeps. */
const isStock = ({ contains, made, keep }: IngredientCard): boolean =>
  contains.length > 0 && (made !== undefined || keep !== undefined);

/** When keeping ends, in milliseconds since 1970: the day of making and the time it is thought to keep. */
export function endOfKeeping({ made, keep }: Pick<IngredientCard, 'made' | 'keep'>): number | undefined {
  return made && keep ? made.epochMilliseconds + keep.inner * millisecondsInSecond : undefined;
}

export const isExpiredAt = (card: Pick<IngredientCard, 'made' | 'keep'>, now: number): boolean => {
  const end = endOfKeeping(card);
  return end !== undefined && end < now;
};

interface Shelf {
  readonly cards: readonly IngredientCard[];
  readonly book: Book;
  /** Milliseconds since 1970. */
  readonly now: number;
}

/** Every stock, in the order of the file. */
export const shelfStocks = (shelf: Shelf): readonly ShelfStock[] =>
  shelf.cards.filter(isStock).flatMap((card) => madeUp(card, shelf) ?? []);

/** Everything that contains something else, also what says nothing of when it was made. */
export const madeUpIngredients = (shelf: Shelf): readonly ShelfStock[] =>
  shelf.cards.filter(({ contains }) => contains.length > 0).flatMap((card) => madeUp(card, shelf) ?? []);

function madeUp(card: IngredientCard, { book, now }: Shelf): ShelfStock | undefined {
  const entry = book.find(card.name);
  if (!entry) return undefined;
  return {
    card,
    entry,
    madeEpoch: card.made?.epochMilliseconds,
    endEpoch: endOfKeeping(card),
    isExpired: isExpiredAt(card, now),
    leftGrams: leftGrams(card, entry),
  };
}

function leftGrams({ left }: IngredientCard, entry: BookEntry): number | undefined {
  if (!left) return undefined;
  return left.dimension === 'mass' ? left.inner : left.inner * (entry.record.figures.density?.value ?? 1);
}
