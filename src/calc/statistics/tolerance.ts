import { normalBelow } from './normal.ts';

/** How single beakers (or drops, or beetles) scatter about the common point. */
export type ToleranceCurve = 'normal' | 'logistic';

const logisticBelow = (z: number): number => 1 / (1 + Math.exp(-z));

type Shape = Readonly<Record<ToleranceCurve, (z: number) => number>>;

const below: Shape = { normal: normalBelow, logistic: logisticBelow };

/** Beyond this a curve is 1 to the last digit of a double, and below its negative nothing beside an odd chance. */
const fullFrom: Readonly<Record<ToleranceCurve, number>> = { normal: 8.3, logistic: 37 };

export interface Setting {
  /** Logarithm of the ratio or dose that was tried. */
  readonly logLevel: number;
  readonly scatter: number;
  readonly curve: ToleranceCurve;
  /** Chance that what is seen is the opposite of what the level would give. */
  readonly oddChance: number;
}

/**
 * Chance that a beaker fails (a dose is answered) at one level, for each of many possible break points.
 *
 * Formula   odd + (1 - 2 odd) F((x - mu) / scatter), F the normal or the logistic distribution
 * Input     logLevel x; locations mu, in the same logarithm; scatter above 0; oddChance from 0 to 1/2
 * Output    written into `into`, one chance for each location
 * Example   failChance({ logLevel: 1, scatter: 0.1, curve: 'normal', oddChance: 0 }, 1) -> 0.5
 */
export function failChances(setting: Setting, locations: Float64Array, into: Float64Array): void {
  const { logLevel, scatter, oddChance } = setting;
  const cumulative = below[setting.curve];
  const share = 1 - 2 * oddChance;
  const full = fullFrom[setting.curve];
  for (let index = 0; index < locations.length; index += 1) {
    const z = (logLevel - (locations[index] ?? 0)) / scatter;
    if (z > full) into[index] = oddChance + share;
    else into[index] = z < -full && oddChance > 0 ? oddChance : oddChance + share * cumulative(z);
  }
}

/** The same for a single location. */
export function failChance(setting: Setting, location: number): number {
  const chance = new Float64Array(1);
  failChances(setting, Float64Array.of(location), chance);
  return chance[0] ?? 0;
}
