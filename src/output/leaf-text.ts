/** A number with its unit as people read it. */

import type { Entry, Leaf } from '../calc/answer.ts';
import type { Reading } from '../calc/calculator.ts';
import { numberText, trimmedNumber } from '../calc/number-text.ts';

/** `12.03`, `4.500 g/L`, `72.2 %`, `0.5 ppb`; a figure that does not exist is a dash. */
export function entryText(entry: Entry | undefined, reading: Reading): string {
  if (entry === undefined) return '-';
  if (typeof entry === 'string') return entry;
  if (typeof entry === 'boolean') return entry ? 'yes' : 'no';
  if (entry.value === null) return '-';
  if (reading.as === 'percent') return `${numberText(entry.value * 100, 3)} %`;
  if (reading.as === 'parts') return partsText(entry.value);
  if (reading.as === 'count') return String(entry.value);
  return leafText(entry, reading.digits);
}

export function leafText(leaf: Leaf, digits = 4): string {
  if (leaf.value === null) return '-';
  const value = cleaned(leaf.value);
  const { factor, unit } = (leaf.unit === 'g' && smallMass(value)) || { factor: 1, unit: leaf.unit };
  const number = numberText(value / factor, digits);
  return unit === '' ? number : `${number} ${unit}`;
}

/** The unit in which a mass below a milligram is read; what is dosed by drops comes to no more. */
function smallMass(grams: number): { readonly factor: number; readonly unit: string } | undefined {
  const size = Math.abs(grams);
  if (size === 0 || size >= 1e-3) return undefined;
  return size >= 1e-7 ? { factor: 1e-6, unit: 'ug' } : { factor: 1e-9, unit: 'ng' };
}

/** A mass fraction in the unit that keeps it readable: %, ppm, ppb or ppt, by mass. */
export function partsText(fraction: number): string {
  const scale = [
    { unit: '%', factor: 1e-2, from: 1e-3 },
    { unit: 'ppm', factor: 1e-6, from: 1e-7 },
    { unit: 'ppb', factor: 1e-9, from: 1e-10 },
    { unit: 'ppt', factor: 1e-12, from: 0 },
  ].find((one) => Math.abs(fraction) >= one.from);
  const { unit, factor } = scale ?? { unit: '', factor: 1 };
  return `${trimmedNumber(fraction / factor, 4)} ${unit}`;
}

/** What is only rounding noise of the arithmetic counts as nothing. */
const cleaned = (value: number): number => (Math.abs(value) < 1e-12 ? 0 : value);
