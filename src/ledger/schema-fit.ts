/**
 * Whether a tree fits a shape, said quickly and without words: most files fit, and then the slower look at what is
 * wrong is not needed. The plan is made from the same shapes, once.
 */

import type { FileShape } from './shape-words.ts';
import type { TreeNode } from './tree.ts';

export interface Plan {
  readonly text: boolean;
  readonly words: ReadonlySet<string> | undefined;
  readonly list: Plan | undefined;
  readonly map: MapPlan | undefined;
  /** Whether nothing at all will do too. */
  readonly empty: boolean;
  readonly any: boolean;
}

interface MapPlan {
  readonly keys: ReadonlyMap<string, Plan>;
  readonly required: readonly string[];
  /** What may stand under any other key. */
  readonly rest: Plan | undefined;
}

const nothing: Plan = {
  text: false,
  words: undefined,
  list: undefined,
  map: undefined,
  empty: false,
  any: false,
};

/** The plan of a shape. */
export function planOf(shape: FileShape): Plan {
  switch (shape.is) {
    case 'text':
      return { ...nothing, text: true };
    case 'word':
      return { ...nothing, text: true, words: new Set(shape.words) };
    case 'anything':
      return { ...nothing, any: true };
    case 'optional':
      return { ...planOf(shape.of), empty: true };
    case 'list':
      return { ...nothing, list: planOf(shape.of) };
    case 'either':
      return shape.of.map(planOf).reduce(either, nothing);
    case 'names':
      return { ...nothing, map: { keys: new Map(), required: [], rest: planOf(shape.of) } };
    case 'keys':
      return { ...nothing, map: mapPlan(shape) };
  }
}

function mapPlan({ keys: shapes, rest }: Extract<FileShape, { is: 'keys' }>): MapPlan {
  const keys = new Map(Object.entries(shapes).map(([key, value]): [string, Plan] => [key, planOf(value)]));
  const required = [...keys].flatMap(([key, plan]) => (plan.empty || plan.any ? [] : [key]));
  return { keys, required, rest: rest && planOf(rest) };
}

const either = (one: Plan, other: Plan): Plan => ({
  text: one.text || other.text,
  words: one.words ?? other.words,
  list: one.list ?? other.list,
  map: one.map ?? other.map,
  empty: one.empty || other.empty,
  any: one.any || other.any,
});

/** False may also mean that only the slower look can tell. */
export function fits(node: TreeNode, plan: Plan): boolean {
  if (plan.any) return true;
  if (node.kind === 'text') return plan.text && (plan.words === undefined || plan.words.has(node.text));
  if (node.kind === 'empty') return plan.empty;
  if (node.kind === 'map') return plan.map !== undefined && fitsMap(node, plan.map);
  const { list } = plan;
  if (!list) return false;
  for (let index = 0; index < node.items.length; index += 1) {
    const item = node.items[index];
    if (!item || !fits(item, list)) return false;
  }
  return true;
}

function fitsMap({ entries }: Extract<TreeNode, { kind: 'map' }>, plan: MapPlan): boolean {
  let required = 0;
  for (let index = 0; index < entries.length; index += 1) {
    const entry = entries[index];
    const under = entry && (plan.keys.get(entry.key.text) ?? plan.rest);
    if (!entry || !under || !fits(entry.value, under)) return false;
    if (!under.empty && plan.required.includes(entry.key.text)) required += 1;
  }
  return required >= plan.required.length;
}
