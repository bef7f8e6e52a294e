/** What a weighing is worth on the balances that there are. */

import type { Scale } from '../weighing/balance.ts';

/** One weighing as it is done. */
export interface OneWeighing {
  readonly massGrams: number;
  readonly divisionGrams: number;
  /** In how many equal portions; 1 where the balance takes it at once. */
  readonly portions: number;
  /** Half a division over the mass of a portion. */
  readonly relativeError: number;
  readonly standardUncertaintyGrams: number;
}

/**
 * Standard uncertainty of a mass read between two readings of a digital balance, in divisions.
 *
 * Formula   each reading is off by up to half a division, evenly: (1/2)/sqrt(3); two of them: sqrt(1/6)
 * Source    JCGM 100:2008, 4.3.7 and F.2.2.1; the 0.41 d of USP <41> is the same figure
 */
export const divisionsPerWeighing = Math.sqrt(1 / 6);

interface Load {
  readonly massGrams: number;
  /** What stands on the balance beside it: the vessel, and what is in it. */
  readonly besideGrams?: number;
}

/**
 * A mass on the finest balance that takes it, in equal portions where none does.
 *
 * Formula   relativeError = (d/2)/m;  u = d sqrt(n/6), n portions
 * Input     balances; massGrams; besideGrams on the balance with it
 * Output    division, portions, relative error, standard uncertainty in g; undefined without a balance, or where
 *           what stands beside it alone is too much
 * Source    JCGM 100:2008, 4.3.7 and F.2.2.1
 * Example   0.5 g on 0.01 g -> relativeError 0.01, u 0.0041 g
 */
export function weighingOf(
  scales: readonly Scale[],
  { massGrams, besideGrams = 0 }: Load,
): OneWeighing | undefined {
  const finestFirst = scales.toSorted((one, other) => one.divisionGrams - other.divisionGrams);
  const room = (scale: Scale): number => (scale.limitGrams ?? Number.POSITIVE_INFINITY) - besideGrams;
  const whole = finestFirst.find((scale) => massGrams <= room(scale));
  const scale = whole ?? finestFirst.toSorted((one, other) => room(other) - room(one))[0];
  if (!scale || room(scale) <= 0) return undefined;
  const portions = whole ? 1 : Math.ceil(massGrams / room(scale) - 1e-9);
  const division = scale.divisionGrams;
  return {
    massGrams,
    divisionGrams: division,
    portions,
    relativeError: (0.5 * division * portions) / massGrams,
    standardUncertaintyGrams: division * divisionsPerWeighing * Math.sqrt(portions),
  };
}

/** A hair of room, so that half a division of 0.5 g at 1 % counts as 1 %. */
export const isFineEnough = (weighing: OneWeighing, accepted: number): boolean =>
  weighing.relativeError <= accepted * (1 + 1e-9);

/** The least mass that a balance weighs within the relative error. */
export const leastMass = (scale: Scale, accepted: number): number => (0.5 * scale.divisionGrams) / accepted;

/** True where the mass is a whole number of divisions, as far as a double tells. */
export const isWholeDivisions = (massGrams: number, divisionGrams: number): boolean => {
  const steps = massGrams / divisionGrams;
  return Math.abs(steps - Math.round(steps)) < 1e-6;
};

/** A mass to the nearest division. */
export const toDivision = (massGrams: number, divisionGrams: number): number =>
  Number((Math.round(massGrams / divisionGrams) * divisionGrams).toPrecision(12));
