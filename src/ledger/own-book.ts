/** The person's own ingredients as the book takes them, and the book's faults back at their lines. */

import type { BuiltInIngredients } from '../calc/book/shelf.ts';
import type { Book, BookFault, OwnEntry, OwnFigure } from '../calc/book.ts';
import { makeBook } from '../calc/book.ts';
import type { Problem } from '../problem.ts';
import type { FigureName } from '../reference/ingredient.ts';
import type { IngredientCard, IngredientsCard } from './cards.ts';
import { problemAt, type SourceText } from './places.ts';
import { entryOf, type Span } from './tree.ts';

export interface OpenedOwnBook {
  readonly book: Book;
  /** Works out every own ingredient. */
  readonly problems: () => readonly Problem[];
}

/** The book of a ledger: the built-in ingredients with the person's own laid over them. */
export function openOwnBook(
  builtIn: BuiltInIngredients,
  card: IngredientsCard | undefined,
  source: SourceText | undefined,
): OpenedOwnBook {
  const cards = card?.ingredients ?? [];
  const opened = makeBook({ builtIn, own: cards.map(ownEntry) });
  const problems = (): readonly Problem[] => {
    if (!source) return [];
    return opened.faults.map((fault) => {
      const { code, message, hint } = fault;
      return problemAt(source, { code, message, hint }, spanOf(cards, fault));
    });
  };
  return { book: opened.book, problems };
}

function spanOf(cards: readonly IngredientCard[], { entry, content, field }: BookFault): Span {
  const card = cards[entry];
  if (!card) return { start: 0, end: 0 };
  if (content !== undefined) return card.contains[content]?.nameSpan ?? card.nameSpan;
  if (field === 'like') return card.like ?? card.nameSpan;
  return (field && entryOf(card.node, field)?.key) ?? card.nameSpan;
}

function ownEntry(card: IngredientCard): OwnEntry {
  const { name, role, fold, lot, aliases, price, keep, contains } = card;
  return {
    name,
    like: card.like?.text,
    role,
    fold,
    lot,
    aliases,
    figures: ownFigures(card),
    contains: contains.length > 0 ? contains : undefined,
    dropGrams: card.drop?.massGrams,
    price,
    made: card.made?.written,
    keep,
  };
}

function ownFigures({ figures, source }: IngredientCard): OwnEntry['figures'] {
  const own: Partial<Record<FigureName, OwnFigure>> = {};
  for (const { name, value } of figures) own[name] = { value, source: source ?? 'own figure' };
  return own;
}
