/**
 * What a ledger's files say, as records: texts read into amounts, times and numbers once, here. Each record
 * keeps the stretches that a problem could point at; `placeAt` on its file's source shows them.
 */

import type { Quantity } from '../calc/quantity.ts';
import type { Range } from '../calc/range.ts';
import type { BenchCard, IngredientsCard } from './bench-cards.ts';
import type { FileCard, Look, Moment, Named } from './card-basics.ts';
import type { BatchCard, StageCard, TrialCard } from './made-cards.ts';
import type { Span } from './tree.ts';

export type * from './bench-cards.ts';
export { type FileCard, type Look, looks, type Moment, type Named } from './card-basics.ts';
export * from './made-cards.ts';

export interface Decision {
  readonly text?: string | undefined;
  readonly date?: Moment | undefined;
  /** What was decided on, as typed: a ratio, or the amount of what is varied. */
  readonly ratio?: string | undefined;
  readonly why?: string | undefined;
}

export interface SeriesCard extends FileCard {
  readonly kind: 'series';
  readonly name: string;
  readonly nameSpan: Span;
  readonly question?: string | undefined;
  readonly varies?: string | undefined;
  readonly same: readonly string[];
  readonly judge?: Named | undefined;
  /** `clear` where the file says nothing. */
  readonly passes: readonly Look[];
  readonly watch?: Quantity | undefined;
  readonly settle?: Quantity | undefined;
  /** Numbers of trials. */
  readonly control?: number | undefined;
  readonly blank?: number | undefined;
  readonly shape: 'edge' | 'window';
  /** Whose aims count: the head of a series over antifoam. */
  readonly formula?: Named | undefined;
  readonly note?: string | undefined;
  readonly decided?: Decision | undefined;
}

export interface AimCard {
  /** `ph`, `acid`, `brix`, `co2`, `look`, `serving` …, or a substance. */
  readonly name: string;
  readonly nameSpan: Span;
  readonly range?: Range | undefined;
  readonly looks?: readonly Look[] | undefined;
  readonly written: string;
  readonly span: Span;
}

export interface FormulaCard extends FileCard {
  readonly kind: 'formula';
  readonly name: string;
  readonly nameSpan: Span;
  readonly title?: string | undefined;
  readonly why?: string | undefined;
  readonly note?: string | undefined;
  /** The trial it was made from. */
  readonly from?: number | undefined;
  readonly stages: readonly StageCard[];
  readonly aims: readonly AimCard[];
}

export type AnyCard = BenchCard | IngredientsCard | TrialCard | SeriesCard | FormulaCard | BatchCard;
