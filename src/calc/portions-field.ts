/** Items of a solution: `4.5 g/L citric acid`, `0.05 mol/kg potassium dihydrogen citrate`, `65 % sucrose`, `water`. */

import { type Parsed, parsed, refused } from '../problem.ts';
import type { BookEntry } from './book.ts';
import { type Field, several } from './fields.ts';
import { parseItemText } from './item-text.ts';
import { unknownName } from './known-name.ts';
import { wrongKind } from './parse-quantity.ts';
import type { Dimension, Quantity } from './quantity.ts';
import type { Concentration, Portion } from './solution/dissolve.ts';
import { acidSubstanceName, neutralName } from './solution/substance.ts';

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
  return several<PortionItem>(
    { help, placeholder: 'ITEMS', positional: true, isAmount: false },
    (text, { book }) =>
      readPortion(
        text,
        accepts,
        (name) => book.find(name),
        (name) => unknownName(name, book),
      ),
    (items) =>
      items.map(({ name, quantity }) => ({
        item: name,
        ...(quantity ? { amount: { value: quantity.value, unit: quantity.unit } } : {}),
      })),
    ({ name, quantity }) =>
      `${name} ${quantity ? `${quantity.inner.toPrecision(10)} ${quantity.dimension}` : ''}`,
  );
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
