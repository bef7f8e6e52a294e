/** Stages: what was weighed in which order, and how it was made. Trials, formulas and batches share them. */

import { roles } from '../reference/ingredient.ts';
import { type ItemCard, type StageCard, type StepCard, stepWords } from './cards.ts';
import { offer } from './nearest.ts';
import {
  amountOf,
  find,
  momentOf,
  proseUnder,
  quantityUnder,
  type Reading,
  textNodeUnder,
  textUnder,
  warnOfCutText,
  wordUnder,
} from './reading.ts';
import { type ListNode, type MapEntry, type MapNode, type TreeNode, valueUnder } from './tree.ts';

/** The stages of a file in their order. */
export function readStages(reading: Reading, root: TreeNode): readonly StageCard[] {
  const stages = valueUnder(root, 'stages');
  if (stages?.kind !== 'map') return [];
  return stages.entries.map((entry) => readStage(reading, entry));
}

function readStage(reading: Reading, { key, value }: MapEntry): StageCard {
  const list = value.kind === 'list' ? value : valueUnder(value, 'items');
  const items = list?.kind === 'list' ? readItems(reading, list) : [];
  if (items.length === 0 && (list?.kind !== 'list' || list.items.length === 0) && !isMisshapen(value)) {
    const hint = 'add what goes in, one a line: "- water: 20 g"';
    find(reading, { code: 'no-items', message: `stage "${key.text}" holds nothing`, hint }, key);
  }
  return {
    name: key.text,
    nameSpan: key,
    items,
    process: readProcess(reading, valueUnder(value, 'process')),
    makes: quantityUnder(reading, value, 'makes', ['mass', 'volume']),
    made: momentOf(reading, valueUnder(value, 'made'), 'time or day'),
    by: textUnder(value, 'by'),
    density: quantityUnder(reading, value, 'density', ['mass per volume']),
    weighs: quantityUnder(reading, value, 'weighs', ['mass']),
    keep: quantityUnder(reading, value, 'keep', ['time']),
    note: proseUnder(reading, value, 'note'),
  };
}

/** The shape of the file has said already that this is no stage. */
const isMisshapen = (value: TreeNode): boolean => {
  if (value.kind === 'text') return true;
  const items = value.kind === 'map' ? valueUnder(value, 'items') : undefined;
  return items !== undefined && items.kind !== 'list';
};

const itemKeys = ['weighed', 'lot', 'role', 'note'] as const;
const isItemKey = (text: string): boolean => itemKeys.some((key) => key === text);

function readItems(reading: Reading, list: ListNode): readonly ItemCard[] {
  const items: ItemCard[] = [];
  for (const node of list.items) {
    const item = node.kind === 'map' ? readItem(reading, node) : undefined;
    if (item) items.push(item);
  }
  return items;
}

function readItem(reading: Reading, node: MapNode): ItemCard | undefined {
  let named: MapEntry | undefined;
  for (const entry of node.entries) {
    if (isItemKey(entry.key.text)) continue;
    if (named) secondName(reading, entry);
    else named = entry;
  }
  if (!named) {
    const message = 'this item has no name';
    find(reading, { code: 'no-name', message, hint: 'begin it with what it is: "- water: 20 g"' }, node);
    return undefined;
  }
  const { key, value } = named;
  if (value.kind === 'empty') {
    const hint = `write "${key.text}: 2 g"`;
    find(reading, { code: 'no-amount', message: `"${key.text}" has no amount`, hint }, key);
  }
  const weighed = quantityUnder(reading, node, 'weighed', ['mass']);
  const note = proseUnder(reading, node, 'note');
  if (value.kind !== 'text') return undefined;
  const amount = amountOf(reading, value);
  if (!amount) return undefined;
  return {
    name: key.text,
    nameSpan: key,
    amount,
    amountSpan: value,
    weighed,
    lot: textUnder(node, 'lot'),
    role: wordUnder(node, 'role', roles),
    note,
    start: node.start,
    end: node.end,
  };
}

/** A second name on one dash: a key with a slip in it, or a dash that was left out. */
function secondName(reading: Reading, { key }: MapEntry): void {
  const near = offer(key.text, itemKeys);
  const isSlip = near.startsWith('write "');
  const message = isSlip
    ? `"${key.text}" is not a word that an item can have`
    : `"${key.text}" stands under another item without a dash of its own`;
  const hint = isSlip ? near : `write "- ${key.text}: …" on a line of its own`;
  find(reading, { code: 'second-name', message, hint }, key);
}

function readProcess(reading: Reading, node: TreeNode | undefined): readonly StepCard[] {
  if (node?.kind !== 'list') return [];
  const steps: StepCard[] = [];
  for (const item of node.items) {
    if (item.kind === 'text') {
      warnOfCutText(reading, item);
      steps.push({ sentence: item.text, node: { start: item.start, end: item.end } });
    } else if (item.kind === 'map') steps.push(readStep(reading, item));
  }
  return steps;
}

function readStep(reading: Reading, node: MapNode): StepCard {
  const stirWords = textNodeUnder(node, 'stir');
  const isSpeed = stirWords !== undefined && /^[-+.(\d]/u.test(stirWords.text);
  return {
    does: wordUnder(node, 'do', stepWords),
    what: proseUnder(reading, node, 'what'),
    to: quantityUnder(reading, node, 'to', ['temperature']),
    at: quantityUnder(reading, node, 'at', ['temperature']),
    holds: quantityUnder(reading, node, 'for', ['time']),
    over: quantityUnder(reading, node, 'over', ['time']),
    stir: isSpeed ? quantityUnder(reading, node, 'stir', ['stirring']) : undefined,
    stirWords: isSpeed ? undefined : stirWords?.text,
    with: textUnder(node, 'with'),
    into: textUnder(node, 'into'),
    by: textUnder(node, 'by'),
    note: proseUnder(reading, node, 'note'),
    node: { start: node.start, end: node.end },
  };
}
