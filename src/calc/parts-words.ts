/** Mass fractions and masses in the words of the trade. */

import { trimmedNumber } from './number-text.ts';

const scale = [
  { unit: '%', factor: 1e-2, from: 1e-3 },
  { unit: 'ppm', factor: 1e-6, from: 1e-7 },
  { unit: 'ppb', factor: 1e-9, from: 1e-10 },
  { unit: 'ppt', factor: 1e-12, from: 0 },
] as const;

/**
 * A mass fraction in %, ppm, ppb or ppt by mass.
 *
 * Example   partsWords(1e-4) -> 100 ppm
 */
export function partsWords(massFraction: number, digits = 4): string {
  const { unit, factor } = scale.find(({ from }) => massFraction >= from * (1 - 1e-9)) ?? scale[3];
  return `${trimmedNumber(massFraction / factor, digits)} ${unit}`;
}

/** `19.9975 kg`, `2.5 g` */
export const massWords = (grams: number): string =>
  grams >= 1000 ? `${trimmedNumber(grams / 1000, 6)} kg` : `${trimmedNumber(grams, 6)} g`;
