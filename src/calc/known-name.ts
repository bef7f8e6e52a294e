/** Names that were typed: not in the book, or in it so that nothing is worked out for them. */

import { type Parsed, refused } from '../problem.ts';
import type { Book, BookEntry } from './book.ts';

/** What was withdrawn from food is named with who did it; nothing is worked out for it. */
export function refusedDose({ name, record }: BookEntry): Parsed<never> | undefined {
  const withdrawn = record.withdrawn?.find(({ partly }) => !partly);
  return withdrawn
    ? refused(
        'withdrawn',
        `${name}: ${withdrawn.by} ${withdrawn.what} [${withdrawn.source}]`,
        'no dose is given for it; ask a qualified person',
      )
    : undefined;
}

/** The same of anything in a stock. */
export function refusedStock(entry: BookEntry): Parsed<never> | undefined {
  const parts = entry.composition.map(({ substance }) => substance);
  return [entry, ...parts].flatMap((one) => refusedDose(one) ?? [])[0];
}

export function unknownName(name: string, book: Book): Parsed<never> {
  const near = book.nearest(name, 3);
  const hint =
    near.length > 0 ? `did you mean ${near.join(', ')}?` : 'neckring ingredient WORDS finds the names';
  return refused('unknown-ingredient', `"${name}" is not an ingredient that is known`, hint);
}
