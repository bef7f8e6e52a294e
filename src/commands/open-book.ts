/** The ingredients that the person can name here: the built-in ones, and their own where a ledger stands. */

import type { Book } from '../calc/book.ts';
import { makeBook } from '../calc/book.ts';
import type { Io } from '../io.ts';
import { findRoot } from '../ledger/find-root.ts';
import type { Source } from '../reference/sources.ts';

export interface BookAndSources {
  readonly book: Book;
  readonly sources: Readonly<Record<string, Source>>;
}

export async function openBook(io: Io): Promise<BookAndSources> {
  const { sources } = await import('../reference/kept-sources.ts');
  if ((await findRoot(io.workingFolder)) === undefined)
    return {
      book: makeBook({ builtIn: (await import('../reference/built-in.ts')).builtIn, own: [] }).book,
      sources,
    };
  const { openLedgerBook } = await import('./ledger-book.ts');
  return { book: await openLedgerBook(io), sources };
}
