/**
 * `--batch 50 g` typed without quotes: a bare number and the unit words after it are joined where they stand
 * after an option that takes an amount, and nowhere else.
 */

import { unitWordsAt } from '../calc/item-text.ts';
import { isBareNumber } from '../calc/number.ts';
import type { CommandSpec } from './command.ts';

export function joinAmountWords(words: readonly string[], spec: CommandSpec): readonly string[] {
  const amountOptions = new Set(spec.options.filter((one) => one.isAmount).map((one) => `--${one.name}`));
  const joined: string[] = [];
  for (let at = 0; at < words.length; at++) {
    const word = words[at] ?? '';
    joined.push(word);
    const number = words[at + 1];
    if (!amountOptions.has(word) || number === undefined || !isBareNumber(number)) continue;
    const count = unitWordsAt(words, at + 2);
    if (count === 0) continue;
    joined.push(words.slice(at + 1, at + 2 + count).join(' '));
    at += 1 + count;
  }
  return joined;
}
