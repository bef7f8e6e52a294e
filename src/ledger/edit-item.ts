/** What is known of an item of a stage: its amount, and the facts that stand under it. */

import { type Change, type Proposal, plainPage, type Refusal, refuse } from './edit.ts';
import { changedAt, type Path, withKey } from './edit-facts.ts';
import { setScalar, waysIntoMap } from './edit-map.ts';
import type { Page } from './edit-page.ts';
import { flowPair } from './fact-text.ts';
import { type MapNode, nodeAt } from './tree.ts';
import { keyText, quotedText } from './yaml-text.ts';

/** In the order in which they are written. */
const itemFacts = ['weighed', 'lot', 'role', 'note'] as const;
export type ItemFact = (typeof itemFacts)[number];

const order: readonly string[] = itemFacts;
const orderOf = (key: string): number => order.indexOf(key);

interface FoundItem {
  readonly path: Path;
  readonly map: MapNode;
  /** The position of the pair that holds name and amount. */
  readonly name: number;
}

/** A stage is a list of items, or a map with `items`. */
function findItem(page: Page, stagePath: Path, index: number): FoundItem | Refusal {
  const stage = nodeAt(page.root, stagePath);
  const path: Path = [...stagePath, ...(stage?.kind === 'map' ? ['items'] : []), index];
  const item = nodeAt(page.root, path);
  if (item?.kind !== 'map') {
    return refuse(
      'no-such-item',
      `${stagePath.join(', ')} has no item ${index + 1} with an amount`,
      'write an item as `- name: amount`',
    );
  }
  const name = item.entries.findIndex((pair) => orderOf(pair.key.text) === -1);
  return { path, map: item, name: Math.max(0, name) };
}

/** `[orange oil: 2 g]`: an item without braces of its own gets them when it gets a second fact. */
const isBare = (page: Page, map: MapNode): boolean => map.flow && page.text.charAt(map.start) !== '{';

/**
 * Adds a fact under an item, after those there are in the order weighed, lot, role, note; replaces the text of
 * one that is there already.
 */
export const addItemFact =
  (stagePath: Path, index: number, key: ItemFact, text: string): Change =>
  (page): Proposal | Refusal => {
    const item = findItem(page, stagePath, index);
    if ('message' in item) return item;
    const { map, path } = item;
    if (map.entries.some((pair) => pair.key.text === key)) return setScalar([...path, key], text)(page);
    const above = map.entries.findLastIndex(
      (pair, at) =>
        at === item.name || (orderOf(pair.key.text) !== -1 && orderOf(pair.key.text) < orderOf(key)),
    );
    const position = Math.max(above, item.name) + 1;
    const whole = page.text.slice(map.start, map.end);
    const ways = isBare(page, map)
      ? [{ start: map.start, end: map.end, text: `{ ${whole}, ${flowPair([key, text])} }` }]
      : waysIntoMap(page, map, [[key, text]], position);
    return { ways, expected: changedAt(plainPage(page), path, withKey(position, key, text)) };
  };

/** Replaces the amount of an item, as `- name: amount` has it. */
export const setItemAmount =
  (stagePath: Path, index: number, amount: string): Change =>
  (page): Proposal | Refusal => {
    const item = findItem(page, stagePath, index);
    if ('message' in item) return item;
    const key = item.map.entries[item.name]?.key.text ?? '';
    return setScalar([...item.path, key], amount)(page);
  };

/** Replaces the name of an item; its amount and what stands under it stay. */
export const renameItem =
  (stagePath: Path, index: number, name: string): Change =>
  (page): Proposal | Refusal => {
    const item = findItem(page, stagePath, index);
    if ('message' in item) return item;
    const pair = item.map.entries[item.name];
    if (!pair) return refuse('no-such-item', `item ${index + 1} has no name`, 'write it as `- name: amount`');
    const { start, end } = pair.key;
    return {
      ways: [keyText(name), quotedText(name)].map((text) => ({ start, end, text })),
      expected: changedAt(plainPage(page), item.path, (old) =>
        typeof old === 'object' && 'map' in old
          ? { map: old.map.map(([key, value], at) => [at === item.name ? name : key, value]) }
          : old,
      ),
    };
  };
