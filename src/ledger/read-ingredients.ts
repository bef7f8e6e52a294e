/** The person's own book of ingredients. */

import { roles } from '../reference/ingredient.ts';
import type { ContentCard, DropCard, IngredientCard, IngredientsCard } from './cards.ts';
import type { LedgerDocument } from './parse.ts';
import { readFigures } from './read-figure.ts';
import { readFile } from './read-file.ts';
import {
  amountOf,
  countUnder,
  find,
  momentOf,
  namedUnder,
  numberUnder,
  proseUnder,
  quantityUnder,
  type Read,
  type Reading,
  type ReadSettings,
  textsUnder,
  textUnder,
  wordUnder,
} from './reading.ts';
import { type MapEntry, type TreeNode, valueUnder } from './tree.ts';

/** Reads `ingredients.yaml`. */
export function readIngredientsCard(document: LedgerDocument, settings: ReadSettings): Read<IngredientsCard> {
  return readFile<IngredientsCard>(document, settings, {
    kind: 'ingredients',
    read: (reading, root) => {
      const map = valueUnder(root, 'ingredients');
      const entries = map?.kind === 'map' ? map.entries : [];
      return {
        kind: 'ingredients',
        ingredients: entries.flatMap((entry) => readIngredient(reading, entry) ?? []),
      };
    },
  });
}

function readIngredient(reading: Reading, { key, value: node }: MapEntry): IngredientCard | undefined {
  if (node.kind !== 'map') return undefined;
  return {
    name: key.text,
    nameSpan: key,
    like: namedUnder(node, 'like'),
    role: wordUnder(node, 'role', roles),
    figures: readFigures(reading, node),
    fold: numberUnder(reading, node, 'fold'),
    contains: readContents(reading, valueUnder(node, 'contains')),
    aliases: textsUnder(node, 'aliases'),
    lot: textUnder(node, 'lot'),
    opened: momentOf(reading, valueUnder(node, 'opened'), 'time or day'),
    made: momentOf(reading, valueUnder(node, 'made'), 'time or day'),
    keep: quantityUnder(reading, node, 'keep', ['time']),
    price: quantityUnder(reading, node, 'price', ['price per mass', 'price per volume']),
    drop: readDrop(reading, node),
    left: quantityUnder(reading, node, 'left', ['mass', 'volume']),
    source: proseUnder(reading, node, 'source'),
    note: proseUnder(reading, node, 'note'),
    node,
  };
}

/** Shares by mass, masses or parts, and at most one rest. */
function readContents(reading: Reading, node: TreeNode | undefined): readonly ContentCard[] {
  if (node?.kind !== 'map') return [];
  let rest: string | undefined;
  return node.entries.flatMap(({ key, value }): readonly ContentCard[] => {
    if (value.kind !== 'text') return [];
    const named = { name: key.text, nameSpan: key };
    if (value.text.trim().toLowerCase() === 'rest') {
      if (rest !== undefined) {
        const message = `"${key.text}" is the rest, and so is "${rest}"`;
        find(reading, { code: 'two-rests', message, hint: 'give one of them an amount' }, value);
        return [];
      }
      rest = key.text;
      return [{ ...named, amount: 'rest' }];
    }
    const amount = amountOf(reading, value);
    return amount ? [{ ...named, amount }] : [];
  });
}

/** `drop: 0.021 g`, or `dropper` with what else is known of it. */
export function readDrop(reading: Reading, node: TreeNode): DropCard | undefined {
  const dropper = valueUnder(node, 'dropper');
  const mass = quantityUnder(reading, dropper ?? node, 'drop', ['mass']);
  if (!mass) return undefined;
  return {
    massGrams: mass.inner,
    standardDeviationGrams: quantityUnder(reading, dropper, 'spread', ['mass'])?.inner,
    liquid: textUnder(dropper, 'liquid'),
    temperature: quantityUnder(reading, dropper, 'temperature', ['temperature']),
    weighings: countUnder(reading, dropper, 'weighings'),
    drops: countUnder(reading, dropper, 'drops'),
  };
}
