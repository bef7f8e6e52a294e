/** What to say when a word stands where a unit should and is none. */

import { type Parsed, refused } from '../problem.ts';
import type { Dimension } from './quantity.ts';
import { units, unitTyped } from './unit.ts';

/** Words that mean different amounts in different countries or trades, and what to write. */
const doubtfulUnits: ReadonlyMap<string, readonly string[]> = new Map([
  ['oz', ['oz av', 'US fl oz', 'imp fl oz']],
  ['ozs', ['oz av', 'US fl oz', 'imp fl oz']],
  ['ounce', ['oz av', 'US fl oz', 'imp fl oz']],
  ['ounces', ['oz av', 'US fl oz', 'imp fl oz']],
  ['floz', ['US fl oz', 'imp fl oz']],
  ['fl oz', ['US fl oz', 'imp fl oz']],
  ['tsp', ['US tsp', 'metric tsp']],
  ['teaspoon', ['US tsp', 'metric tsp']],
  ['teaspoons', ['US tsp', 'metric tsp']],
  ['tbsp', ['US tbsp', 'metric tbsp']],
  ['tablespoon', ['US tbsp', 'metric tbsp']],
  ['tablespoons', ['US tbsp', 'metric tbsp']],
  ['cup', ['US cup', 'metric cup']],
  ['cups', ['US cup', 'metric cup']],
  ['gal', ['US gal', 'imp gal']],
  ['gallon', ['US gal', 'imp gal']],
  ['gallons', ['US gal', 'imp gal']],
  ['pt', ['US pint', 'imp pint']],
  ['pint', ['US pint', 'imp pint']],
  ['pints', ['US pint', 'imp pint']],
  ['qt', ['US qt', 'imp qt']],
  ['quart', ['US qt', 'imp qt']],
  ['quarts', ['US qt', 'imp qt']],
]);

/** Other words that are no units here, with the unit to write instead. */
const mends: ReadonlyMap<string, string> = new Map([
  ['M', 'mol/L'],
  ['mM', 'mmol/L'],
  ['T', 'US tbsp'],
  ['gr', 'g'],
  ['gm', 'g'],
  ['gms', 'g'],
  ['kgs', 'kg'],
  ['mgs', 'mg'],
  ['ppm as CaCO3', 'mg/L as CaCO3'],
  ['g/100 mL', '% w/v'],
  ['g/100mL', '% w/v'],
  ['$/kg', 'USD/kg'],
  ['$/L', 'USD/L'],
  ['€/kg', 'EUR/kg'],
  ['€/L', 'EUR/L'],
  ['£/kg', 'GBP/kg'],
  ['£/L', 'GBP/L'],
]);

/** Turbidity of other meters and scales. */
const otherHaze = /^(?:FNU|FTU|EBC|ASBC)$/iu;

/** Months and years differ in length. */
const longTimes = /^(?:months?|years?|yrs?)$/iu;

/** Whether words that are no unit have a mend of their own, so that no part of them is taken for a unit. */
export const hasOwnMend = (text: string): boolean => mends.has(text);

export const isDoubtfulUnit = (text: string): boolean => doubtfulUnits.has(text.toLowerCase());

interface UnitSlip {
  /** The word that is no unit. */
  readonly word: string;
  /** The number before it as typed. */
  readonly number: string;
  readonly span: readonly [number, number];
}

/** The fault of a word that is no unit, with the nearest unit or the exact spellings in the hint. */
export function unitFault({ word, number, span }: UnitSlip): Parsed<never> {
  const exact = doubtfulUnits.get(word.toLowerCase().replaceAll('.', ''));
  if (exact) {
    const choices = exact.map((symbol) => `${number} ${symbol}`).join(' or ');
    return refused('doubtful-unit', `"${word}" is not the same everywhere`, `write ${choices}`, span);
  }
  if (longTimes.test(word)) {
    return refused('unknown-unit', `"${word}" has no fixed length`, 'count it in days, such as 30 d', span);
  }
  if (otherHaze.test(word))
    return refused(
      'unknown-unit',
      `"${word}" is of another meter than NTU, and is not converted`,
      'give NTU, as a white-light meter shows it',
      span,
    );
  const mend = mends.get(word) ?? caseMend(word) ?? nearestUnit(word);
  const hint = mend ? `write ${number} ${mend}, if that is meant` : 'use a unit such as g, mL, %, ppm or g/L';
  return refused('unknown-unit', `"${word}" is not a unit`, hint, span);
}

/** The unit that differs from the word in capitals alone. */
function caseMend(word: string): string | undefined {
  const small = word.toLowerCase();
  const price = /^([a-z]{3})\/(.+)$/u.exec(small);
  const asPrice = price ? unitTyped(`${price[1]?.toUpperCase()}/${price[2]}`)?.symbol : undefined;
  const same = units.find((unit) => unit.symbol.toLowerCase() === small);
  return same?.symbol ?? unitTyped(small)?.symbol ?? asPrice;
}

/** The unit whose symbol or spelling takes the fewest changes to reach, where few are needed. */
export function nearestUnit(word: string): string | undefined {
  const most = word.length <= 4 ? 1 : 2;
  const ranked = units
    .map((unit) => ({
      symbol: unit.symbol,
      distance: Math.min(...[unit.symbol, ...(unit.spellings ?? [])].map((text) => editDistance(text, word))),
    }))
    .filter(({ distance }) => distance <= most && distance < word.length)
    .sort((one, other) => one.distance - other.distance);
  return ranked[0]?.symbol;
}

/** Letters to add, drop or change to turn one text into the other. */
function editDistance(one: string, other: string): number {
  if (Math.abs(one.length - other.length) > 3) return Number.POSITIVE_INFINITY;
  let row = Array.from({ length: other.length + 1 }, (_, index) => index);
  for (let line = 1; line <= one.length; line += 1) {
    const next = [line];
    for (let column = 1; column <= other.length; column += 1) {
      const changed = (row[column - 1] ?? 0) + (one[line - 1] === other[column - 1] ? 0 : 1);
      next.push(Math.min(changed, (row[column] ?? 0) + 1, (next[column - 1] ?? 0) + 1));
    }
    row = next;
  }
  return row[other.length] ?? 0;
}

/** How each kind is called in a message, and an amount of it as an example. */
export const kindWords: Readonly<Record<Dimension, { readonly name: string; readonly example: string }>> = {
  mass: { name: 'a mass', example: '2.5 g' },
  volume: { name: 'a volume', example: '250 mL' },
  drops: { name: 'a number of drops', example: '3 drops' },
  parts: { name: 'a number of parts', example: '3 parts' },
  share: { name: 'a share by mass', example: '4 %' },
  'share w/v': { name: 'a share of mass in volume', example: '4 % w/v' },
  'share v/v': { name: 'a share by volume', example: '4 % v/v' },
  'mass per volume': { name: 'a mass per volume', example: '4.5 g/L' },
  'volume per volume': { name: 'a volume per volume', example: '2 mL/L' },
  'moles per volume': { name: 'an amount of substance per volume', example: '20 mmol/L' },
  'moles per mass': { name: 'an amount of substance per mass', example: '20 mmol/kg' },
  temperature: { name: 'a temperature', example: '20 C' },
  time: { name: 'a time', example: '7 d' },
  pressure: { name: 'a pressure', example: '2.5 bar' },
  length: { name: 'a length', example: '50 nm' },
  turbidity: { name: 'a turbidity', example: '3 NTU' },
  stirring: { name: 'a stirring speed', example: '400 rpm' },
  carbonation: { name: 'a carbonation', example: '3.5 vol' },
  alkalinity: { name: 'an alkalinity', example: '120 mg/L as CaCO3' },
  'price per mass': { name: 'a price per mass', example: '42 EUR/kg' },
  'price per volume': { name: 'a price per volume', example: '3.2 EUR/L' },
};
