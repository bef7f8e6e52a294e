/** Facts, lists among them, as the ledger types them: block style, one fact a line. */

import type { Plain } from '../edit-facts.ts';
import { keyText, plainOrQuoted } from '../yaml-text.ts';

export type PlainFacts = readonly (readonly [string, Plain])[];

const step = 2;

/** The lines of facts, each beginning with `indent` spaces. */
export const plainLines = (facts: PlainFacts, indent: number): readonly string[] =>
  facts.flatMap(([key, value]) => factOf(`${' '.repeat(indent)}${keyText(key)}:`, value, indent + step));

function factOf(head: string, value: Plain, indent: number): readonly string[] {
  if (typeof value === 'string') return [`${head} ${plainOrQuoted(value, indent)}`];
  if ('list' in value)
    return value.list.length === 0
      ? [`${head} []`]
      : [head, ...value.list.flatMap((one) => entry(one, indent))];
  return value.map.length === 0 ? [`${head} {}`] : [head, ...plainLines(value.map, indent)];
}

/** An entry of a list whose dash stands at `indent`. */
function entry(value: Plain, indent: number): readonly string[] {
  const dash = `${' '.repeat(indent)}- `;
  if (typeof value === 'string') return [`${dash}${plainOrQuoted(value, indent + step)}`];
  if ('list' in value || value.map.length === 0) return [`${dash}${'list' in value ? '[]' : '{}'}`];
  return plainLines(value.map, indent + step).map((line, at) => (at === 0 ? dash + line.trimStart() : line));
}

/** The text of a file. */
export const plainText = (facts: PlainFacts): string => `${plainLines(facts, 0).join('\n')}\n`;

export const textUnderKey = (facts: PlainFacts, key: string): string | undefined => {
  const value = facts.find(([name]) => name === key)?.[1];
  return typeof value === 'string' ? value : undefined;
};
