/** How records are passed on: what goes along, and how names, times and texts read on the other side. */

import { type Plain, plainOf } from '../edit-facts.ts';
import type { TreeNode } from '../tree.ts';
import type { PlainFacts } from './plain-lines.ts';

/** What may be asked for besides the recipe. */
export const extras = ['lots', 'prices', 'names', 'sources', 'notes', 'looks'] as const;
export type Extra = (typeof extras)[number];

export interface Giving {
  readonly with: ReadonlySet<Extra>;
  /** The name under which an ingredient is passed on, as an item, an aim or a content. */
  readonly nameOf: (name: string) => string;
  /** A time with its offset. */
  readonly timeOf: (text: string) => string;
  /** Any text in plain words. */
  readonly proseOf: (text: string) => string;
  /** Trials that go along, by their number in the ledger that they come from. */
  readonly numberOf: (number: number) => number | undefined;
  /** The amount of an item where it is not passed on as typed. */
  readonly amountOf?: (stage: string, item: number) => string | undefined;
  /** Stages that go along; all where it is left out. */
  readonly hasStage?: (stage: string) => boolean;
}

export type Rule = 'prose' | 'as is' | 'time' | readonly [Extra, 'prose' | 'as is' | 'time'];
export type Rules = Readonly<Record<string, Rule>>;

function ruled(rule: Rule | undefined, text: string, giving: Giving): string | undefined {
  if (rule === undefined) return undefined;
  if (typeof rule !== 'string') return giving.with.has(rule[0]) ? ruled(rule[1], text, giving) : undefined;
  if (rule === 'prose') return giving.proseOf(text);
  return rule === 'time' ? giving.timeOf(text) : text;
}

/** The facts of a map by its rules; `others` says what is done with keys that no rule names. */
export function byRules(
  node: TreeNode,
  rules: Rules,
  giving: Giving,
  others: (key: string, value: TreeNode) => readonly [string, Plain] | undefined = () => undefined,
): PlainFacts {
  if (node.kind !== 'map') return [];
  return node.entries.flatMap(({ key, value }): PlainFacts => {
    if (!Object.hasOwn(rules, key.text)) {
      const fact = others(key.text, value);
      return fact ? [fact] : [];
    }
    if (value.kind !== 'text') return [];
    const text = ruled(rules[key.text], value.text, giving);
    return text === undefined ? [] : [[key.text, text]];
  });
}

export const asIs = (key: string, value: TreeNode): readonly [string, Plain] | undefined =>
  value.kind === 'empty' ? undefined : [key, plainOf(value)];
