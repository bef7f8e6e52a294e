/** What the things in a batch cost, by the prices in the person's own book. */

import type { BookEntry } from './book.ts';

export interface BoughtItem {
  readonly entry: BookEntry;
  readonly grams: number;
}

export interface CostLine {
  readonly ingredient: string;
  readonly grams: number;
  readonly currency: string;
  readonly amount: number;
}

export interface CostTotal {
  readonly currency: string;
  readonly amount: number;
}

export interface Cost {
  /** The dearest first. */
  readonly lines: readonly CostLine[];
  /** One a currency: nothing is converted. */
  readonly totals: readonly CostTotal[];
  /** What has no price, by name, with the grams of it. */
  readonly unpriced: readonly { readonly ingredient: string; readonly grams: number; readonly why: string }[];
}

interface PerGram {
  readonly currency: string;
  readonly amount: number;
}

/**
 * The cost of things weighed in.
 *
 * Formula   sum of g x price; a price per volume through the density; a solution without a price of its own by what it holds
 * Input     ingredients with g of each
 * Output    a line for each ingredient, totals by currency, what is not priced
 * Source    arithmetic
 * Example   36 g at 42 EUR/kg -> 1.512 EUR
 */
export function costOf(items: readonly BoughtItem[]): Cost {
  const heaps = new Map<string, { readonly entry: BookEntry; grams: number }>();
  for (const { entry, grams } of items) {
    const heap = heaps.get(entry.name);
    if (heap) heap.grams += grams;
    else heaps.set(entry.name, { entry, grams });
  }
  const lines: CostLine[] = [];
  const unpriced: { ingredient: string; grams: number; why: string }[] = [];
  for (const { entry, grams } of heaps.values()) {
    if (!(grams > 0)) continue;
    const price = perGram(entry);
    if (typeof price === 'string') unpriced.push({ ingredient: entry.name, grams, why: price });
    else
      lines.push({
        ingredient: entry.name,
        grams,
        currency: price.currency,
        amount: grams * price.amount,
      });
  }
  const totals = new Map<string, number>();
  for (const { currency, amount } of lines) totals.set(currency, (totals.get(currency) ?? 0) + amount);
  return {
    lines: lines.toSorted((one, other) => other.amount - one.amount),
    totals: [...totals].map(([currency, amount]) => ({ currency, amount })),
    unpriced,
  };
}

/** The price of a gram, or why there is none. */
function perGram(entry: BookEntry): PerGram | string {
  const { price, record, composition } = entry;
  if (!price) return byContents(entry, composition);
  const currency = price.unit.split('/')[0] ?? '';
  if (price.dimension === 'price per mass') return { currency, amount: price.inner };
  const density = record.figures.density?.value;
  return density === undefined
    ? `its price is per volume, and no density of it is known`
    : { currency, amount: price.inner / density };
}

function byContents(entry: BookEntry, composition: BookEntry['composition']): PerGram | string {
  const none = 'it has no price';
  if (composition.length < 2) return none;
  let total = 0;
  let currency: string | undefined;
  for (const { substance, massFraction } of composition) {
    const price = substance === entry ? none : perGram(substance);
    if (typeof price === 'string' || (currency !== undefined && price.currency !== currency)) return none;
    currency = price.currency;
    total += massFraction * price.amount;
  }
  return currency === undefined ? none : { currency, amount: total };
}
