/** Items of a solution: `4.5 g/L citric acid`, `0.05 mol/kg potassium dihydrogen citrate`, `65 % sucrose`, `water`. */

import { type Parsed, parsed, refused } from '../problem.ts';
import type { BookEntry } from './book.ts';
import { type Field, type FieldContext, several } from './fields.ts';
import { parseItemText } from './item-text.ts';
import { unknownName } from './known-name.ts';
import { wrongKind } from './parse-quantity.ts';
import type { Dimension, Quantity } from './quantity.ts';
import type { Concentration, Portion } from './solution/dissolve.ts';
import { acidSubstanceName, neutralName } from './solution/substance.ts';
import { itemMended } from './usual-unit.ts';

export interface PortionItem {
  readonly name: string;
  readonly entry: BookEntry | undefined;
  /** Absent for water that is named alone: the rest is water anyway. */
  readonly quantity: Quantity | undefined;
}

const kinds: readonly Dimension[] = ['mass per volume', 'moles per mass', 'moles per volume', 'share'];

interface Words {
  readonly help: string;
  readonly accepts?: readonly Dimension[];
}

export function portionsField({ help, accepts = kinds }: Words): Field<readonly PortionItem[]> {
  const readOne = (text: string, { book }: FieldContext): Parsed<PortionItem> => {
    const read = readPortion(
      text,
      accepts,
      (name) => book.find(name),
      (name) => unknownName(name, book),
    );
    return read.ok ? read : { ok: false, fault: itemMended(read.fault, text, help, accepts) };
  };
  const field = several<PortionItem>(
    { help, placeholder: 'ITEMS', positional: true, isAmount: false },
    readOne,
    (items) =>
      items.map(({ name, quantity }) => ({
        item: name,
        ...(quantity ? { amount: { value: quantity.value, unit: quantity.unit } } : {}),
      })),
    ({ name, quantity }) =>
      `${name} ${quantity ? `${quantity.inner.toPrecision(10)} ${quantity.dimension}` : ''}`,
  );
  return {
    ...field,
    read: (texts, context) => {
      const read = field.read(texts, context);
      return read.ok ? read : (unquoted(texts, (text) => readOne(text, context).ok) ?? read);
    },
  };
}

/** Items whose words came apart for want of quotes; undefined where each was typed as one. */
function unquoted(texts: readonly string[], isItem: (text: string) => boolean): Parsed<never> | undefined {
  const first = texts.find((text) => !isItem(text));
  if (texts.length < 2 || first === undefined || /\s/u.test(first.trim())) return undefined;
  const all = texts.join(' ');
  const runs: string[] = [];
  for (const text of texts) {
    const isNew = runs.length === 0 || /^[\d.]/u.test(text) || /\s/u.test(text);
    runs.push(isNew ? text : `${runs.pop()} ${text}`);
  }
  const items = isItem(all) ? [all] : runs;
  const hint = `put quotes around an item: ${items.map((item) => `"${item}"`).join(' ')}`;
  return refused('unquoted', `"${first}" alone is no item`, hint);
}

/** One such item behind an option. */
export function portionOptionField({ help }: Words): Field<PortionItem | undefined> {
  const { read, show, basis, remarks: _, ...data } = portionsField({ help, accepts: ['mass per volume'] });
  return {
    ...data,
    placeholder: 'ITEM',
    positional: false,
    isAmount: true,
    many: false,
    read: (texts, context) => {
      const items = read(texts.slice(0, 1), context);
      if (texts.length > 1)
        return refused('given-twice', `"${texts[0]}" and "${texts[1]}" are both given`, 'give it once');
      return items.ok ? parsed(items.value[0]) : items;
    },
    show: (item) => (item ? show([item]) : undefined),
    basis: (item) => (item ? basis([item]) : ''),
  };
}

function readPortion(
  text: string,
  accepts: readonly Dimension[],
  find: (name: string) => BookEntry | undefined,
  unknown: (name: string) => Parsed<never>,
): Parsed<PortionItem> {
  const isKnown = (name: string): boolean => find(name) !== undefined || isSolutionName(name);
  const alone = find(text.trim());
  if (alone?.record.role === 'water') return parsed({ name: alone.name, entry: alone, quantity: undefined });
  const item = parseItemText(text, isKnown, { amount: 'required' });
  if (!item.ok) return item;
  const { name, quantity } = item.value;
  if (!isKnown(name)) return unknown(name);
  const wrong =
    quantity &&
    wrongKind({
      written: quantity.written,
      dimension: quantity.dimension,
      accepted: accepts,
      span: [0, text.length],
    });
  const entry = find(name);
  return wrong ?? parsed({ name: entry?.name ?? name, entry, quantity });
}

const isSolutionName = (name: string): boolean =>
  acidSubstanceName(name) !== undefined || neutralName(name) !== undefined;

/** What goes into the equilibrium; water is what is left. */
export function portionsOf(items: readonly PortionItem[]): readonly Portion[] {
  return items.flatMap(({ name, entry, quantity }) =>
    quantity && entry?.record.role !== 'water'
      ? [{ substance: name, amount: concentrationOf(quantity) }]
      : [],
  );
}

function concentrationOf({ dimension, inner }: Quantity): Concentration {
  if (dimension === 'moles per mass') return { unit: 'mol/kg water', value: inner * 1000 };
  if (dimension === 'moles per volume') return { unit: 'mol/L', value: inner * 1000 };
  if (dimension === 'share') return { unit: 'mass fraction', value: inner };
  return { unit: 'g/L', value: inner * 1000 };
}
