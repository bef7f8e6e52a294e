/** A name that is neither in the book nor a stage, or that is nothing to drink. */

import type { Book } from '../calc/book.ts';
import { isMeterStandard } from '../reference/solution/standard-substances.ts';
import { nearOf } from './nearest.ts';
import type { Finding } from './places.ts';

export function unknownIngredient(name: string, book: Book, stageNames: readonly string[]): Finding {
  const near = [nearOf(name, stageNames) ?? [], book.nearest(name, 3)].flat();
  const add = 'add it to ingredients.yaml';
  const hint = near.length > 0 ? `write ${near.map((one) => `"${one}"`).join(' or ')}, or ${add}` : add;
  return { code: 'unknown-ingredient', message: `"${name}" is not a known ingredient`, hint };
}

/** What sets a pH meter is no ingredient, whatever the own book says. */
export function meterStandard(name: string, like: readonly string[] = []): Finding | undefined {
  if (![name, ...like].some(isMeterStandard)) return undefined;
  return {
    code: 'meter-standard',
    message: `"${name}" is a standard for pH meters and nothing to drink`,
    hint: 'take it out of the stage; a buffer salt for drinks is trisodium citrate dihydrate',
  };
}
