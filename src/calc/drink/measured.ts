/** Readings of a drink beside what is reckoned, and the one slip of the balance that would explain them. */

import { measuredTolerances } from '../../reference/aim-tolerances.ts';
import type { FinishedDrink } from './finished-drink.ts';

export type ReadingName = keyof typeof measuredTolerances;

/** acid in g/L as citric, density in g/mL, CO2 in volumes. */
export type Readings = Readonly<Partial<Record<ReadingName, number>>>;

export interface Compared {
  readonly reading: ReadingName;
  readonly measured: number;
  /** Absent where no recipe tells it. */
  readonly computed: number | undefined;
  readonly tolerance: number;
  readonly agrees: boolean;
}

const names: readonly ReadingName[] = ['ph', 'acid', 'brix', 'density', 'co2'];

/** What a drink is reckoned to show on the meter; Brix as a refractometer sees it, acid included. */
export function expectedReadings(drink: FinishedDrink): Readings {
  const { acidity, refractometerBrix, brix } = drink;
  return {
    ...(acidity ? { ph: acidity.ph, acid: acidity.titratableAsCitric } : {}),
    brix: refractometerBrix ?? brix,
    density: drink.densityGramsPerMillilitre,
  };
}

/**
 * Formula   agrees where |measured - computed| is within the tolerance of the reading
 * Input     readings; what is reckoned
 * Output    both, side by side, in a fixed order
 * Source    tolerances: common practice, no source
 */
export function compareReadings(readings: Readings, expected: Readings): readonly Compared[] {
  return names.flatMap((reading) => {
    const measured = readings[reading];
    if (measured === undefined) return [];
    const computed = expected[reading];
    const { value } = measuredTolerances[reading];
    const tolerance = reading === 'acid' ? value * (computed ?? measured) : value;
    const agrees = computed === undefined || Math.abs(measured - computed) <= tolerance * (1 + 1e-9);
    return [{ reading, measured, computed, tolerance, agrees }];
  });
}

export interface Slip {
  /** 1.12: 12 % more than written went in. */
  readonly factor: number;
  /** What is left unexplained, in tolerances; at most 1. */
  readonly worst: number;
}

const LOWEST = 0.02;
const HIGHEST = 4;
const ROUNDS = 6;

/**
 * The factor on one item that brings every reading within its tolerance.
 *
 * Formula   least squares of (measured - computed)/tolerance in the factor, its slope taken again at each step
 * Input     readings compared; what the drink would show at a factor
 * Output    the factor; undefined where none does it
 * Example   acid 10 % low, all else in order -> 0.9 of the citric acid
 */
export function slipThatExplains(
  compared: readonly Compared[],
  shownAt: (factor: number) => Readings | undefined,
): Slip | undefined {
  const known = compared.filter(({ computed }) => computed !== undefined);
  const misses = (factor: number): readonly number[] | undefined => {
    const shown = shownAt(factor);
    return (
      shown &&
      known.map(({ reading, measured, tolerance }) => (measured - (shown[reading] ?? measured)) / tolerance)
    );
  };
  let factor = 1;
  for (let round = 0; round < ROUNDS; round++) {
    const [here, near] = [misses(factor), misses(factor * 1.01)];
    if (!here || !near) return undefined;
    const slopes = here.map((miss, at) => ((near[at] ?? miss) - miss) / (factor * 0.01));
    const steep = slopes.reduce((sum, slope) => sum + slope * slope, 0);
    if (steep < 1e-12) return undefined;
    const step = here.reduce((sum, miss, at) => sum - miss * (slopes[at] ?? 0), 0) / steep;
    factor = Math.min(HIGHEST, Math.max(LOWEST, factor + step));
    if (Math.abs(step) < 1e-6) break;
  }
  const worst = Math.max(...(misses(factor) ?? [Number.POSITIVE_INFINITY]).map(Math.abs));
  return worst <= 1 ? { factor, worst } : undefined;
}
