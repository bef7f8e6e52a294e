/** Inputs that name something: items with their amounts, and names alone. */

import { type Parsed, type Problem, parsed, refused } from '../problem.ts';
import type { Row } from './answer.ts';
import type { Book, BookEntry } from './book.ts';
import { type Field, type FieldWords, leaf, several, steady } from './fields.ts';
import { parseItemText } from './item-text.ts';
import { refusedDose, unknownName } from './known-name.ts';
import { wrongKind } from './parse-quantity.ts';
import type { Dimension, Quantity } from './quantity.ts';
import { itemMended } from './usual-unit.ts';

/** An item on the command line: its name, how much of it, and the value typed after `@`. */
export interface NamedItem {
  readonly name: string;
  /** Undefined where the name is not in the book; allowed where `@` gives what is needed. */
  readonly entry: BookEntry | undefined;
  readonly quantity: Quantity;
  readonly value: number | undefined;
}

export function itemsField(
  words: FieldWords & { readonly accepts: readonly Dimension[] },
): Field<readonly NamedItem[]> {
  return {
    ...several<NamedItem>(
      { placeholder: 'ITEM', ...words, isAmount: true },
      (text, context) => readItem(text, words, context.book),
      (items) => items.map(showItem),
      (item) => `${item.name} ${steady(item.quantity.inner)} ${item.quantity.dimension} @${item.value ?? ''}`,
    ),
    remarks: (items) => items.filter((item) => !item.entry).map(unknownRemark),
  };
}

const unknownRemark = (item: NamedItem): Problem => ({
  code: 'unknown-ingredient',
  severity: 'warning',
  message: `"${item.name}" is not known here; ${item.value} is taken as you gave it`,
  hint: 'neckring ingredient WORDS finds the names that are known',
});

export function namesField(words: FieldWords): Field<readonly BookEntry[]> {
  const field = several<BookEntry>(
    { placeholder: 'NAME', ...words, isAmount: false },
    (text, { book }) => {
      const entry = book.find(text);
      return entry ? (refusedDose(entry) ?? parsed(entry)) : unknownName(text, book);
    },
    (entries) => entries.map((entry) => entry.name),
    (entry) => entry.name,
  );
  return { ...field, takes: ['ingredient'] };
}

interface ItemWords {
  readonly help: string;
  readonly accepts: readonly Dimension[];
}

function readItem(text: string, { help, accepts }: ItemWords, book: Book): Parsed<NamedItem> {
  const item = parseItemText(text, (name) => book.find(name) !== undefined);
  if (!item.ok) return { ok: false, fault: itemMended(item.fault, text, help, accepts) };
  const { name, quantity, value } = item.value;
  if (!quantity)
    return refused('no-amount', `"${text}" says no amount`, `type the amount first: "2 g ${name}"`);
  const kind = wrongKind({
    written: quantity.written,
    dimension: quantity.dimension,
    accepted: accepts,
    span: [0, text.length],
  });
  if (kind) return kind;
  const entry = book.find(name);
  if (!entry && value === undefined) return unknownName(name, book);
  const withdrawn = entry && refusedDose(entry);
  return withdrawn ?? parsed({ name: entry?.name ?? name, entry, quantity, value });
}

function showItem(item: NamedItem): Row {
  return {
    item: item.name,
    amount: leaf(item.quantity),
    ...(item.value === undefined ? {} : { value: { value: item.value, unit: '' } }),
    ...(item.entry ? {} : { known: false }),
  };
}
