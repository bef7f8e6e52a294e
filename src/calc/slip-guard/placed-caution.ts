/** A caution that knows which line it is about. */

import type { Caution } from '../answer.ts';

export interface Spot {
  readonly stage: string;
  /** By its place in the stage. */
  readonly item?: number;
  /** By its place in the process. */
  readonly step?: number;
}

export interface PlacedCaution extends Caution {
  /** For a list of warnings: what is seen, where the text says why too. */
  readonly short?: string;
  /** For a list of warnings: what to do, or why. */
  readonly hint: string;
  readonly at?: Spot;
}

export const plainCaution = ({ code, text, source }: Caution): Caution => ({ code, text, source });

export const withMemory = (source: string, fromMemory?: boolean): string =>
  fromMemory ? `${source} (from memory)` : source;
