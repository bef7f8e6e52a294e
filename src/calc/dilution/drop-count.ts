/** A mass as drops, and how far drops can be trusted. */

import { dropperError } from '../../reference/drops.ts';

export interface Dropper {
  readonly dropGrams: number;
  /** Standard deviation of one drop, where it was measured. */
  readonly spreadGrams?: number | undefined;
  /** Drops that were weighed for it. */
  readonly weighedDrops?: number | undefined;
}

export interface DropCount {
  readonly drops: number;
  readonly wholeDrops: number;
  /** What whole drops come to, over what is wanted, less 1. */
  readonly deviation: number;
  /** Relative standard uncertainty of that many drops. */
  readonly relativeUncertainty: number;
  readonly isMeasured: boolean;
}

/**
 * A mass as drops.
 *
 * Formula   n = m/m_drop;  u/m = (s/m_drop) sqrt(1/n + 1/N), s the spread of a drop, N the drops weighed for m_drop;
 *           without a measured spread the 15 per cent of a dropper in normal use
 * Input     massGrams; mass of a drop, its spread in g, how many were weighed
 * Output    drops, whole drops, deviation of whole drops, relative standard uncertainty
 * Source    JCGM 100:2008, equation 10; USP 32 <1101> for an unmeasured dropper
 * Example   0.21 g by drops of 0.021 g, spread 0.001 g of 20 -> 10 drops, 0.0184
 */
export function dropsOf(massGrams: number, dropper: Dropper): DropCount {
  const { dropGrams, spreadGrams, weighedDrops } = dropper;
  const drops = massGrams / dropGrams;
  const wholeDrops = Math.max(1, Math.round(drops));
  const known = spreadGrams === undefined ? undefined : spreadGrams / dropGrams;
  return {
    drops,
    wholeDrops,
    deviation: wholeDrops / drops - 1,
    relativeUncertainty:
      known === undefined
        ? dropperError.value
        : known * Math.sqrt(1 / wholeDrops + (weighedDrops ? 1 / weighedDrops : 0)),
    isMeasured: known !== undefined,
  };
}
