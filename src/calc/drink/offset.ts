/** What this bench's water and meter add to what is reckoned, from drinks that were measured. */

import type { FinishedDrink } from './finished-drink.ts';
import type { Readings } from './measured.ts';

export type OffsetReading = 'ph' | 'acid' | 'brix';

/** One measured drink: what was read, and what was reckoned for it. */
export interface MeasuredPair {
  /** `trial 17` */
  readonly of: string;
  readonly measured: Readings;
  readonly reckoned: Readings;
}

export interface Offset {
  readonly reading: OffsetReading;
  /** Measured less reckoned, the mean: pH, g/L as citric, Brix. */
  readonly offset: number;
  /** Standard deviation of one drink. */
  readonly spread: number;
  readonly drinks: readonly string[];
  /** False where the mean lies within twice its own uncertainty. */
  readonly isClear: boolean;
}

/** Fewer say nothing. */
export const fewestDrinks = 3;

const readings: readonly OffsetReading[] = ['ph', 'acid', 'brix'];

/**
 * Formula   mean of (measured - reckoned); spread = sqrt(sum (d - mean)^2 / (n - 1)); clear above 2 spread/sqrt(n)
 * Input     drinks measured and reckoned
 * Output    an offset for each reading that three drinks or more have
 * Source    arithmetic; three as the fewest and twice as clear: common practice, no source
 * Example   pH +0.08, +0.10, +0.12 -> 0.10, spread 0.02
 */
export function offsetsOf(pairs: readonly MeasuredPair[]): readonly Offset[] {
  return readings.flatMap((reading): readonly Offset[] => {
    const known = pairs.flatMap(({ of, measured, reckoned }) => {
      const [seen, said] = [measured[reading], reckoned[reading]];
      return seen === undefined || said === undefined ? [] : [{ of, difference: seen - said }];
    });
    if (known.length < fewestDrinks) return [];
    const offset = known.reduce((sum, { difference }) => sum + difference, 0) / known.length;
    const squares = known.reduce((sum, { difference }) => sum + (difference - offset) ** 2, 0);
    const spread = Math.sqrt(squares / (known.length - 1));
    const isClear = Math.abs(offset) > (2 * spread) / Math.sqrt(known.length);
    return [{ reading, offset, spread, drinks: known.map(({ of }) => of), isClear }];
  });
}

/** The drink with its pH, acid and Brix moved; shares of acids and all else stay as reckoned. */
export function withOffsets(drink: FinishedDrink, offsets: readonly Offset[]): FinishedDrink {
  const by = (reading: OffsetReading): number => offsets.find((one) => one.reading === reading)?.offset ?? 0;
  const { acidity, refractometerBrix } = drink;
  const acid = Math.max(0, (acidity?.titratableAsCitric ?? 0) + by('acid'));
  const brix = Math.max(0, drink.brix + by('brix'));
  const percent = acid / drink.densityGramsPerMillilitre / 10;
  return {
    ...drink,
    brix,
    refractometerBrix: refractometerBrix === undefined ? undefined : refractometerBrix + by('brix'),
    acidity: acidity && { ...acidity, ph: acidity.ph + by('ph'), titratableAsCitric: acid },
    brixAcidRatio: brix > 0 && percent > 0 ? brix / percent : undefined,
  };
}
