/** A name that is neither in the book nor a stage. */

import type { Book } from '../calc/book.ts';
import { nearOf } from './nearest.ts';
import type { Finding } from './places.ts';

export function unknownIngredient(name: string, book: Book, stageNames: readonly string[]): Finding {
  const near = [nearOf(name, stageNames) ?? [], book.nearest(name, 3)].flat();
  const add = 'add it to ingredients.yaml';
  const hint = near.length > 0 ? `write ${near.map((one) => `"${one}"`).join(' or ')}, or ${add}` : add;
  return { code: 'unknown-ingredient', message: `"${name}" is not a known ingredient`, hint };
}
