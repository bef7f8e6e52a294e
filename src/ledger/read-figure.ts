/** A figure of the person's own for an ingredient, in the unit in which the reference keeps it. */

import { parseNumber } from '../calc/number.ts';
import { parseQuantity } from '../calc/parse-quantity.ts';
import type { Dimension } from '../calc/quantity.ts';
import { inUnit } from '../calc/unit.ts';
import { type FigureName, figureUnits } from '../reference/ingredient.ts';
import type { OwnFigure } from './cards.ts';
import { find, findFault, type Reading } from './reading.ts';
import type { MapNode, TextNode } from './tree.ts';

const isFigureName = (text: string): text is FigureName => Object.hasOwn(figureUnits, text);

/** The figures among the keys of an ingredient. */
export function readFigures(reading: Reading, node: MapNode): readonly OwnFigure[] {
  return node.entries.flatMap(({ key, value }) => {
    if (!isFigureName(key.text) || value.kind !== 'text') return [];
    const figure = figureOf(reading, key.text, value);
    return figure === undefined ? [] : [{ name: key.text, value: figure, written: value.text }];
  });
}

/** Units that amounts know, with their kind and what an inner figure is divided by. */
const known: Readonly<Record<string, { readonly kind: Dimension; readonly unit: string }>> = {
  'g/mL': { kind: 'mass per volume', unit: 'g/mL' },
  C: { kind: 'temperature', unit: 'C' },
  'mg/L': { kind: 'mass per volume', unit: 'mg/L' },
  'ug/kg': { kind: 'share', unit: 'ppb' },
  'mg/kg': { kind: 'share', unit: 'ppm' },
  'mmol/L': { kind: 'moles per volume', unit: 'mmol/L' },
};

function figureOf(reading: Reading, name: FigureName, node: TextNode): number | undefined {
  const unit = figureUnits[name];
  const amount = known[unit];
  if (!amount) return plainFigure(reading, name, node);
  const quantity = parseQuantity(perKilogram(node.text), [amount.kind]);
  if (quantity.ok) return inUnit(quantity.value.inner, amount.unit);
  findFault(reading, quantity.fault, node);
  return undefined;
}

/** Shares may be typed as `mg/kg`. */
const perKilogram = (text: string): string =>
  text
    .replace(/\bmg\/kg$/u, 'ppm')
    .replace(/[uµμ]g\/kg$/u, 'ppb')
    .replace(/\bng\/kg$/u, 'ppt');

/** A number with the unit of the figure after it, or without. */
function plainFigure(reading: Reading, name: FigureName, node: TextNode): number | undefined {
  const unit = figureUnits[name];
  const text = node.text.trim();
  const bare = unit !== '' && text.endsWith(unit) ? text.slice(0, -unit.length) : text;
  const number = parseNumber(bare, { signed: true });
  if (number.ok) return number.value;
  if (/^[-+.\d]+ ?\p{L}/u.test(text)) {
    const hint = unit === '' ? 'write the number alone' : `give it in ${unit}`;
    find(reading, { code: 'wrong-kind', message: `"${text}" has another unit than "${name}"`, hint }, node);
  } else findFault(reading, number.fault, node);
  return undefined;
}
