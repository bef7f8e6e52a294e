/** The items of a design in which one ingredient stands for another, with their new amounts. */

import type { BookEntry } from '../calc/book.ts';
import { trimmedNumber } from '../calc/number-text.ts';
import { parseAmount } from '../calc/parse-amount.ts';
import type { Amount } from '../calc/quantity.ts';
import type { ItemCard, StageCard } from '../ledger/cards.ts';
import { isSameName } from '../ledger/stage-name.ts';
import { fail } from '../problem.ts';

export interface SwappedItem {
  readonly stage: string;
  readonly index: number;
  readonly before: ItemCard;
  readonly after: ItemCard;
}

export interface SwapOf {
  readonly out: BookEntry;
  readonly into: BookEntry;
  /** g of the new one for a gram of the old one. */
  readonly factor: number;
  readonly find: (name: string) => BookEntry | undefined;
  /** g of the bench's own drop. */
  readonly dropGrams: number | undefined;
}

/** Every item that is the old ingredient. */
export function swappedItems(stages: readonly StageCard[], swap: SwapOf): readonly SwappedItem[] {
  const names = stages.map(({ name }) => name);
  return stages.flatMap(({ name: stage, items }) =>
    items.flatMap((before, index): readonly SwappedItem[] => {
      const isStage = names.some((name) => isSameName(name, before.name));
      if (isStage || swap.find(before.name)?.name !== swap.out.name) return [];
      const { weighed: _, lot: __, ...kept } = before;
      return [
        { stage, index, before, after: { ...kept, name: swap.into.name, amount: newAmount(before, swap) } },
      ];
    }),
  );
}

/** In the unit in which the old amount was typed; drops become grams. */
function newAmount({ name, amount }: ItemCard, swap: SwapOf): Amount {
  const { quantity, makeUp, inDrink } = amount;
  if (makeUp) return amount;
  if (quantity.dimension === 'drops') {
    const drop = swap.out.dropGrams ?? swap.dropGrams;
    if (drop === undefined) return noFigure(name, 'the mass of a drop');
    return readAmount(`${trimmedNumber(quantity.value * drop * swap.factor, 5)} g`);
  }
  const text = `${trimmedNumber(quantity.value * swap.factor * unitFactor(quantity.dimension, swap), 5)} ${quantity.unit}`;
  return readAmount(`${text}${inDrink ? ' in drink' : ''}`);
}

/** What the unit asks for beside mass: volumes go through both densities, moles through both molar masses. */
function unitFactor(dimension: Amount['quantity']['dimension'], { out, into }: SwapOf): number {
  const ratio = (figure: 'density' | 'molar mass'): number => {
    const [old, fresh] = [out, into].map(({ record }) => record.figures[figure]?.value);
    if (old === undefined) return noFigure(out.name, `the ${figure}`);
    return fresh === undefined ? noFigure(into.name, `the ${figure}`) : old / fresh;
  };
  if (dimension === 'volume' || dimension === 'share v/v' || dimension === 'volume per volume')
    return ratio('density');
  return dimension === 'moles per volume' || dimension === 'moles per mass' ? ratio('molar mass') : 1;
}

const noFigure = (name: string, what: string): never =>
  fail(
    'no-figure',
    `${what} of ${name} is not known`,
    'add it in ingredients.yaml, or give the amount as a mass',
  );

function readAmount(text: string): Amount {
  const read = parseAmount(text);
  return read.ok ? read.value : fail(read.fault.code, read.fault.message, read.fault.hint);
}
