/** Where a unit stands among words. */

import { unitTyped } from './unit.ts';
import { isDoubtfulUnit } from './unit-faults.ts';

const mostUnitWords = 4;

/**
 * How many words, from `at` on, make up a unit: the most that do, 0 where none do. Doubtful units (`oz`) count, so
 * that what is joined gets its own message.
 *
 * Example   unitWordsAt(['2', 'US', 'fl', 'oz', 'rum'], 1) -> 3
 */
export function unitWordsAt(words: readonly string[], at: number): number {
  for (let count = Math.min(mostUnitWords, words.length - at); count > 0; count -= 1) {
    const text = words.slice(at, at + count).join(' ');
    if (unitTyped(text) || isDoubtfulUnit(text)) return count;
  }
  return 0;
}

/** Whether a word is a unit or the first word of one, so that a bare number before it was meant to be joined. */
export function isPossibleUnit(word: string): boolean {
  return unitWordsAt([word], 0) > 0 || ['US', 'us', 'UK', 'imp', 'metric', '°'].includes(word);
}
