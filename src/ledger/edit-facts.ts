/** What a text says, apart from how it is laid out: the facts by which an edit is held to what was meant. */

import type { FactValue } from './fact-text.ts';
import type { Step, TreeNode } from './tree.ts';

export type Path = readonly Step[];

export type Plain =
  | string
  | { readonly list: readonly Plain[] }
  | { readonly map: readonly (readonly [string, Plain])[] };

export function plainOf(node: TreeNode): Plain {
  if (node.kind === 'empty') return '';
  if (node.kind === 'text') return node.text;
  if (node.kind === 'list') return { list: node.items.map(plainOf) };
  return { map: node.entries.map(({ key, value }) => [key.text, plainOf(value)]) };
}

export const plainFact = (value: FactValue): Plain =>
  typeof value === 'string' ? value : { map: value.map(([key, inner]) => [key, plainFact(inner)]) };

export const isSame = (left: Plain, right: Plain): boolean => JSON.stringify(left) === JSON.stringify(right);

/** The facts with what stands at a path replaced by what `change` makes of it. */
export function changedAt(plain: Plain, path: Path, change: (old: Plain) => Plain): Plain {
  const [step, ...rest] = path;
  if (step === undefined) return change(plain);
  if (typeof plain === 'string') return plain;
  if ('list' in plain) {
    return { list: plain.list.map((item, index) => (index === step ? changedAt(item, rest, change) : item)) };
  }
  return {
    map: plain.map.map(([key, value]) => [key, key === step ? changedAt(value, rest, change) : value]),
  };
}

/** Puts something into a list; an empty text is an empty list. */
export const withItem =
  (position: number, item: Plain) =>
  (old: Plain): Plain => {
    const list = typeof old === 'object' && 'list' in old ? old.list : [];
    return { list: list.toSpliced(position, 0, item) };
  };

/** Puts a key into a map; an empty text is an empty map. */
export const withKey =
  (position: number, key: string, value: Plain) =>
  (old: Plain): Plain => {
    const map = typeof old === 'object' && 'map' in old ? old.map : [];
    const pair: readonly [string, Plain] = [key, value];
    return { map: map.toSpliced(position, 0, pair) };
  };
