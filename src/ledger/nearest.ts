/** A hint that offers the word that was probably meant. */

import { nearestNames } from '../reference/name.ts';

/** The nearest word, or all of them where none is near and they are few. */
export function offer(word: string, words: readonly string[]): string {
  const near = nearOf(word, words);
  if (near !== undefined) return `write "${near}"`;
  return words.length === 0 ? 'delete it' : `write one of: ${words.join(', ')}`;
}

/** The nearest word; undefined where none is near. */
export function nearOf(word: string, words: readonly string[]): string | undefined {
  const typed = word.toLowerCase();
  const longer = typed.length > 2 ? words.find((known) => known.toLowerCase().startsWith(typed)) : undefined;
  return nearestNames(word, words, 1)[0] ?? longer;
}
