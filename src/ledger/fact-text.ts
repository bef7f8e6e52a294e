/** Facts as the ledger types them: block style, one fact a line; inside a flow collection, in flow style. */

import { flowText, keyText, plainOrQuoted } from './yaml-text.ts';

/** A text, or facts under a key. */
export type FactValue = string | readonly Fact[];
export type Fact = readonly [key: string, value: FactValue];

/** How far facts stand in from the key above them. */
const step = 2;

/** The lines of facts, each beginning with `indent` spaces; a literal block is one entry with line feeds. */
export function factLines(facts: readonly Fact[], indent: number): readonly string[] {
  const margin = ' '.repeat(indent);
  return facts.flatMap(([key, value]) => {
    const head = `${margin}${keyText(key)}:`;
    if (typeof value === 'string') return [`${head} ${plainOrQuoted(value, indent + step)}`];
    return value.length === 0 ? [`${head} {}`] : [head, ...factLines(value, indent + step)];
  });
}

/** The lines of a list entry whose dash stands at `indent` and whose facts stand `inset` further in. */
export function entryLines(facts: readonly Fact[], indent: number, inset = 2): readonly string[] {
  const dash = `${' '.repeat(indent)}-${' '.repeat(inset - 1)}`;
  return factLines(facts, indent + inset).map((line, index) =>
    index === 0 ? dash + line.trimStart() : line,
  );
}

export const flowPair = ([key, value]: Fact): string => `${flowText(key)}: ${flowValue(value)}`;

export function flowValue(value: FactValue): string {
  if (typeof value === 'string') return flowText(value);
  return value.length === 0 ? '{}' : `{ ${value.map(flowPair).join(', ')} }`;
}
