/** Short ways to write what is known of aroma compounds: thresholds, use levels, and records that hold little else. */

import type { Figure, Ingredient } from '../ingredient.ts';
import { molarMass, recalled } from './figure-makers.ts';

type Rest = Omit<Figure, 'value' | 'source'>;

/** Odour threshold in water, by the nose, ug/kg, where the source could be read. */
export const threshold = (value: number, source: string, rest: Rest = {}): Figure => ({
  value,
  source,
  ...rest,
});

/** The same from handbooks that could not be read; the lower end where there is a range. */
export const recalledThreshold = (low: number, high = low, rest: Rest = {}): Figure =>
  recalled(low, { source: 'aroma-handbooks', ...(low < high ? { low, high } : {}), ...rest });

/** mg/kg in finished drinks without alcohol; the upper end is the figure, so that more than it stands out. */
export const useLevel = (low: number, high: number): Figure =>
  recalled(high, {
    low,
    high,
    source: 'fema-use-survey',
    note: 'order of magnitude; the upper end of the range',
  });

/** g/mL near 25 C, from handbooks that could not be read. */
export const recalledDensity = (value: number, rest: Rest = {}): Figure =>
  recalled(value, { temperatureCelsius: 25, source: 'aroma-handbooks', ...rest });

export interface Aroma extends Omit<Ingredient, 'role' | 'figures'> {
  readonly mass: number;
  /** Left out for solids. */
  readonly density?: Figure;
  readonly threshold?: Figure;
  /** mg/kg in finished drinks without alcohol, lowest and highest. */
  readonly use?: readonly [number, number];
  readonly more?: Ingredient['figures'];
}

/** The record of an aroma compound. */
export function aroma({ mass, density, threshold: smelled, use, more, ...record }: Aroma): Ingredient {
  return {
    ...record,
    role: 'aroma',
    figures: {
      ...(density ? { density } : {}),
      'molar mass': molarMass(mass),
      ...(smelled ? { 'odour threshold': smelled } : {}),
      ...(use ? { 'use level': useLevel(...use) } : {}),
      ...more,
    },
  };
}
