/** What a block of a ledger's file is, by where it stands: how its entries are told apart and ordered. */

import type { Body } from './unit.ts';

/** A step into the entries of a list. */
export const entryStep = '-';

export interface Policy {
  /** `items` are known by name, `entries` by what they say. */
  readonly kind: 'keys' | 'items' | 'observations' | 'results' | 'entries';
  /** Whether the order is a fact of its own, follows from time, or means nothing. */
  readonly order: 'kept' | 'time' | 'free';
}

const keys: Policy = { kind: 'keys', order: 'free' };

/** The policy of the block at a path. */
export function policyAt(path: readonly string[], form: Body['form']): Policy {
  const [root, , third, fourth] = path;
  if (path.length === 1 && root === 'stages') return { kind: 'keys', order: 'kept' };
  if (form === 'map') return keys;
  if (path.length === 1 && root === 'observations') return { kind: 'observations', order: 'time' };
  if (path.length === 1 && root === 'results') return { kind: 'results', order: 'time' };
  const isItems = root === 'stages' && (path.length === 2 || (third === 'items' && fourth === undefined));
  return isItems ? { kind: 'items', order: 'kept' } : { kind: 'entries', order: 'kept' };
}

/**
 * Whether what stands at a path is taken whole from one side: the steps of a process, which have no names of
 * their own, and an answer, whose figures belong together.
 */
export const isWhole = (path: readonly string[]): boolean =>
  path.at(-1) === 'process' || (path[0] === 'results' && path.length === 2);
