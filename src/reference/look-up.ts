/** Tables that are asked for words that people typed. */

/** What a table holds under a word; words that every object answers to, such as `constructor`, are none of its own. */
export const lookUp = <Value>(table: Readonly<Record<string, Value>>, word: string): Value | undefined =>
  Object.hasOwn(table, word) ? table[word] : undefined;
