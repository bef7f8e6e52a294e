/** Quantities that a calculation made, in the unit in which a person would have typed them. */

import type { Quantity } from './quantity.ts';

export const grams = (value: number): Quantity => ({
  value,
  unit: 'g',
  dimension: 'mass',
  inner: value,
  written: `${value} g`,
});

export const litres = (value: number): Quantity => ({
  value,
  unit: 'L',
  dimension: 'volume',
  inner: value * 1000,
  written: `${value} L`,
});

/** A mass fraction, written in the unit in which people say it: %, ppm or ppb. */
export function share(fraction: number): Quantity {
  const [unit, factor] = fraction >= 1e-3 ? ['%', 1e-2] : fraction >= 1e-7 ? ['ppm', 1e-6] : ['ppb', 1e-9];
  const value = Number((fraction / Number(factor)).toPrecision(12));
  return { value, unit: String(unit), dimension: 'share', inner: fraction, written: `${value} ${unit}` };
}

export const milligramsPerLitre = (value: number): Quantity => ({
  value,
  unit: 'mg/L',
  dimension: 'mass per volume',
  inner: value * 1e-6,
  written: `${value} mg/L`,
});
