/** Stages of which a glance tells that emulsifier per oil is usual, so that `check` need not solve a thousand of them. */

import type { Book } from '../calc/book.ts';
import { emulsifierPerOilBand } from '../reference/usual-bands.ts';
import type { ItemCard, StageCard } from './cards.ts';

/**
 * Whether nothing is to be asked about emulsifier per oil: ingredients only, and in each stage that holds both, all
 * of them in masses or all in shares, within the band. False says nothing.
 */
export const isPlainlyInBand = (stages: readonly StageCard[], book: Book): boolean =>
  stages.every((stage) => isPlain(stage, book));

function isPlain({ items }: StageCard, book: Book): boolean {
  let oil = 0;
  let emulsifier = 0;
  const kinds = new Set<string>();
  for (const item of items) {
    const parts = partsOf(item, book);
    if (!parts) return false;
    if (parts.oil === 0 && parts.emulsifier === 0) continue;
    oil += parts.oil;
    emulsifier += parts.emulsifier;
    kinds.add(parts.kind);
  }
  if (oil === 0 || emulsifier === 0) return true;
  const ratio = emulsifier / oil;
  return kinds.size === 1 && ratio >= emulsifierPerOilBand.low && ratio <= emulsifierPerOilBand.high;
}

interface Parts {
  readonly kind: string;
  readonly oil: number;
  readonly emulsifier: number;
}

/** How much of each an item brings; undefined where a glance does not tell. */
function partsOf({ name, amount, weighed, role }: ItemCard, book: Book): Parts | undefined {
  const entry = book.find(name);
  if (!entry) return undefined;
  let oil = 0;
  let emulsifier = 0;
  for (const { substance, massFraction } of entry.composition) {
    const is = role ?? substance.record.role;
    if (is === 'oil') oil += massFraction;
    if (is === 'emulsifier') emulsifier += massFraction;
  }
  if (oil === 0 && emulsifier === 0) return { kind: '', oil, emulsifier };
  const { dimension, inner } = weighed ?? amount.quantity;
  if (amount.makeUp || amount.inDrink || (dimension !== 'mass' && dimension !== 'share')) return undefined;
  return { kind: dimension, oil: oil * inner, emulsifier: emulsifier * inner };
}
