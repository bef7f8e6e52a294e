/** What a drink of a trial brings to a question about its acid: everything but its acids, and its water. */

import { answered } from './answered.ts';
import { waterDensity } from './density/water-density.ts';
import { isBenchWater } from './drink/stage-solution.ts';
import type { ResolvedStage } from './mixture/picture.ts';
import type { PortionItem } from './portions-field.ts';
import type { Quantity } from './quantity.ts';
import { dissolve, type Portion } from './solution/dissolve.ts';
import { portionsIn } from './solution-portions.ts';

/** Litres of water in a litre of it. */
export function waterShare(portions: readonly Portion[], temperatureKelvin: number): number {
  const litre = answered(dissolve({ portions, temperatureKelvin }));
  return litre.waterKilograms / answered(waterDensity({ temperatureKelvin }));
}

/** Of all the water in a stage the share that comes from the bench's tap. */
export function benchWaterShare({ substances }: ResolvedStage): number {
  const water = substances.filter(({ role }) => role === 'water');
  const all = water.reduce((sum, { massGrams }) => sum + massGrams, 0);
  const own = water.filter(({ entry }) => isBenchWater(entry));
  return all > 0 ? own.reduce((sum, { massGrams }) => sum + massGrams, 0) / all : 0;
}

/** The sugars, preservatives and the like: the acids and salts are what is asked for. */
export const besideAcids = (drink: ResolvedStage): readonly PortionItem[] =>
  portionsIn(drink).filter(({ entry }) => {
    const role = entry?.record.role;
    return role !== 'acid' && role !== 'salt';
  });

export const times = (quantity: Quantity, factor: number): Quantity =>
  factor === 1 ? quantity : { ...quantity, value: quantity.value * factor, inner: quantity.inner * factor };
