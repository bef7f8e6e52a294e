/** A name looked up from inside an own entry. */

import type { BookEntry, BookFault } from '../book.ts';

/** What a search for another ingredient can come to, from inside an own entry. */
export type Found =
  | { readonly kind: 'found'; readonly entry: BookEntry }
  | { readonly kind: 'unknown'; readonly nearest: readonly string[] }
  | { readonly kind: 'loop'; readonly chain: readonly string[] };

/** The words for a name that leads nowhere, or back. */
export function notFound(
  name: string,
  found: Exclude<Found, { kind: 'found' }>,
): Pick<BookFault, 'code' | 'message' | 'hint'> {
  if (found.kind === 'loop') {
    const message = `${found.chain.join(' -> ')} goes round in a circle`;
    return { code: 'ingredient-loop', message, hint: 'take one of these lines out' };
  }
  const { nearest } = found;
  const hint = nearest.length > 0 ? `did you mean ${nearest.join(', ')}?` : 'add it to ingredients.yaml';
  return { code: 'unknown-ingredient', message: `"${name}" is not a known ingredient`, hint };
}
