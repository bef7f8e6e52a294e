/** What is known of a sample when its look is explained, as plain facts. */

import type { CauseCode } from '../../reference/why-causes.ts';
import { numberText } from '../number-text.ts';

/** What became of another beaker of the series. */
export type Neighbour = 'held' | 'failed' | 'watching';

export interface Known {
  readonly looks: readonly string[];
  /** Since it was made; undefined where nobody wrote when. */
  readonly ageDays: number | undefined;
  readonly settleDays: number;
  /** True where an earlier look was clear. */
  readonly wasClear: boolean;
  /** What sets it apart from the other beakers of its series, in words. */
  readonly differences: readonly string[];
  /** The last look before this one, with its day. */
  readonly before: string | undefined;
  /** The newest look after this one, where it is another, with its day. */
  readonly since: string | undefined;
  /** nm: the newest size that was measured of the sample up to this look. */
  readonly measuredDroplet: number | undefined;
  readonly control: Neighbour | undefined;
  readonly blank: Neighbour | undefined;
  readonly celsius: number;
  readonly vessel: string;
  readonly cover: string;
  /** Undefined where it was the usual one, or the bench has none. */
  readonly unusualView: string | undefined;
  readonly stress: string | undefined;
  readonly isDrink: boolean;
  /** Parts of emulsifier to one of oil, by mass. */
  readonly emulsifierPerOil: number | undefined;
  /** Of the stage that is looked at, by mass. */
  readonly emulsifierShare: number;
  readonly hasOil: boolean;
  readonly isCitrus: boolean;
  readonly hasAntifoam: boolean;
  readonly hasPreservative: boolean;
  /** Sentences on what would crystallise. */
  readonly crystals: readonly string[];
  /** Citrate or phosphate beside the bench's own water. */
  readonly bindsCalcium: boolean;
  /** mg/L as CaCO3 of the bench's water. */
  readonly hardness: number | undefined;
  /** kg/m3, of the medium less that of the oil; undefined where not known. */
  readonly densityDifference: number | undefined;
  /** nm: what rose 50 mm within its age is at least so large. */
  readonly leastRisen: number | undefined;
  /** Above 1 % of oil, where no size can be told from a haze. */
  readonly isConcentrate: boolean;
  /** nm: sizes that the haze could mean. */
  readonly implied:
    | {
        readonly low: number;
        readonly high: number;
        readonly from: string;
        /** By a meter; else by the look. */
        readonly isReading: boolean;
        /** nm: large droplets that a meter would read so too. */
        readonly largeFrom?: number;
      }
    | undefined;
  /** nm: the largest droplet that would not be seen at this dose. */
  readonly largestClear: number | undefined;
  /** nm: what the ratio makes where all oil goes into micelles. */
  readonly micelle: number | undefined;
}

export interface Cause {
  readonly code: CauseCode;
  /** 0 to 100; for the order, and shown as a word. */
  readonly weight: number;
  /** What speaks for it here. */
  readonly because: string;
  /** What to try next, where what is known leaves another step than the usual one. */
  readonly next?: string;
}

export const cause = (code: CauseCode, weight: number, because: string, next?: string): Cause => ({
  code,
  weight,
  because,
  ...(next === undefined ? {} : { next }),
});

/** How likely a cause is, as a word. */
export const likelihood = (weight: number): string =>
  weight >= 70 ? 'likely' : weight >= 40 ? 'possible' : 'less likely';

/** nm of the smallest and largest droplets that are looked for: an end that lies there is open. */
const open = { low: 2.5, high: 4900 } as const;

/** Example   spanWords({ low: 2, high: 68 }) -> up to 68 nm */
export function spanWords({ low, high }: { readonly low: number; readonly high: number }): string {
  if (low <= open.low) return `up to ${numberText(high, 2)} nm`;
  if (high >= open.high) return `from ${numberText(low, 2)} nm up`;
  return `of ${numberText(low, 2)} to ${numberText(high, 2)} nm`;
}

/** Example   orLarge({ largeFrom: 293 }) -> , or from 290 nm up, */
export const orLarge = ({ largeFrom }: { readonly largeFrom?: number }): string =>
  largeFrom === undefined ? '' : `, or from ${numberText(largeFrom, 2)} nm up,`;
