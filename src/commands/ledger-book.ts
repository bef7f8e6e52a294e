/** The book of the ledger in a folder: the built-in ingredients with the person's own over them. */

import { join } from 'node:path';
import type { Book } from '../calc/book.ts';
import type { Io } from '../io.ts';
import type { IngredientsCard } from '../ledger/cards.ts';
import { ingredientsFile, type LedgerPlace } from '../ledger/folder.ts';
import { type Opened, openFile } from '../ledger/open-file.ts';
import { openOwnBook } from '../ledger/own-book.ts';
import { readIngredientsCard } from '../ledger/read-ingredients.ts';
import { type Problem, ProblemError } from '../problem.ts';
import { openHere } from './open-ledger.ts';

/** The person's own book as it stands in the file; undefined where there is none. */
export async function openIngredients({
  root,
  port,
  settings,
}: LedgerPlace): Promise<Opened<IngredientsCard> | undefined> {
  if (port.sizeOf(join(root, ingredientsFile)) === undefined) return undefined;
  return openFile(port, {
    root,
    file: ingredientsFile,
    read: (document) => readIngredientsCard(document, settings),
  });
}

/** The book, refused with its problems where the person's own file has errors. */
export async function bookOf(place: LedgerPlace): Promise<Book> {
  const { builtIn } = await import('../reference/built-in.ts');
  const own = await openIngredients(place);
  const opened = openOwnBook(builtIn, own?.card, own?.document.source);
  const isError = (one: Problem): boolean => one.severity === 'error';
  const errors = (own?.problems ?? []).filter(isError);
  if (errors.length > 0) throw new ProblemError(errors);
  const faults = own ? opened.problems().filter(isError) : [];
  if (faults.length > 0) throw new ProblemError(faults);
  return opened.book;
}

export const openLedgerBook = async (io: Io): Promise<Book> => bookOf(await openHere(io));
