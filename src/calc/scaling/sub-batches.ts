/** In which vessel a stage is made, and how often. */

import { type Parsed, parsed, refused } from '../../problem.ts';
import { trimmedNumber } from '../number-text.ts';

export interface BatchVessel {
  readonly name?: string | undefined;
  readonly millilitres?: number | undefined;
  readonly massGrams?: number | undefined;
}

export interface VesselChoice {
  /** Absent where the bench names no vessel with a volume. */
  readonly vessel: BatchVessel | undefined;
  readonly count: number;
}

/** More fillings of a vessel than this are nobody's plan. Common practice, no source. */
const mostFillings = 25;

/**
 * The vessel of a stage.
 *
 * Formula   the smallest that holds all of it; else the largest, filled ceil(V / V_vessel) times with equal parts
 * Input     name and volume of the stage in mL; its largest item in mL; the vessels of the bench
 * Output    vessel and number of equal sub-batches
 * Refuses   a largest vessel that is smaller than a single item of the stage and would be filled more than 25 times
 * Source    arithmetic
 * Example   33 L in vessels of 5 and 20 L -> 20 L, 2 times
 */
export function vesselFor(given: {
  readonly stage: string;
  readonly millilitres: number;
  readonly largestItem: { readonly name: string; readonly millilitres: number };
  readonly vessels: readonly BatchVessel[];
}): Parsed<VesselChoice> {
  const { stage, millilitres, largestItem, vessels } = given;
  const sorted = vessels
    .filter((one) => (one.millilitres ?? 0) > 0)
    .toSorted((one, other) => (one.millilitres ?? 0) - (other.millilitres ?? 0));
  const largest = sorted.at(-1);
  if (!largest) return parsed({ vessel: undefined, count: 1 });
  const whole = sorted.find((one) => (one.millilitres ?? 0) >= millilitres * (1 - 1e-9));
  if (whole) return parsed({ vessel: whole, count: 1 });
  const room = largest.millilitres ?? 1;
  const count = Math.ceil((millilitres / room) * (1 - 1e-9));
  if (count <= mostFillings || largestItem.millilitres <= room) return parsed({ vessel: largest, count });
  return refused(
    'vessel-too-small',
    `the largest vessel (${vesselWords(largest)}) is smaller than the ${largestItem.name} of ${stage} alone (${volumeWords(largestItem.millilitres)}): it would be filled ${count} times`,
    `add a larger one to vessels in bench.yaml, name one for this batch (--vessel "${volumeWords(niceAbove(millilitres))}"), or make less`,
  );
}

/** `tank (25 L)`; a name that says how large it is stands alone. */
export function vesselWords({ name, millilitres }: BatchVessel): string {
  const size = millilitres === undefined ? '' : volumeWords(millilitres);
  if (name === undefined) return size === '' ? 'a vessel' : `a vessel of ${size}`;
  return size === '' || /\d/u.test(name) ? name : `${name} (${size})`;
}

const volumeWords = (millilitres: number): string =>
  millilitres >= 1000 ? `${trimmedNumber(millilitres / 1000, 4)} L` : `${trimmedNumber(millilitres, 4)} mL`;

/** 1, 2 or 5 times a power of ten. */
function niceAbove(value: number): number {
  const decade = 10 ** Math.floor(Math.log10(value));
  return decade * ([1, 2, 5].find((digit) => digit * decade >= value) ?? 10);
}
