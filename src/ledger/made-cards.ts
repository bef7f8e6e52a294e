/** What was made and looked at: trials and batches, their stages, samples, observations and answers. */

import type { Amount, Quantity } from '../calc/quantity.ts';
import type { Role } from '../reference/ingredient.ts';
import type { StressWord } from '../reference/stress-cycles.ts';
import type { FileCard, Look, Moment, Named } from './card-basics.ts';
import type { MapNode, Span } from './tree.ts';

export interface ItemCard extends Span {
  readonly name: string;
  readonly nameSpan: Span;
  readonly amount: Amount;
  readonly amountSpan: Span;
  /** A mass: what the balance said. */
  readonly weighed?: Quantity | undefined;
  readonly lot?: string | undefined;
  readonly role?: Role | undefined;
  readonly note?: string | undefined;
}

export const stepWords = ['mix', 'add', 'warm', 'hold', 'cool', 'shear', 'filter', 'rest'] as const;
export type StepWord = (typeof stepWords)[number];

/** A step of the process: a plain sentence, or what was done with its figures. */
export interface StepCard {
  readonly sentence?: string | undefined;
  readonly does?: StepWord | undefined;
  readonly what?: string | undefined;
  /** Temperatures. */
  readonly to?: Quantity | undefined;
  readonly at?: Quantity | undefined;
  /** Times. */
  readonly holds?: Quantity | undefined;
  readonly over?: Quantity | undefined;
  /** A speed; where it was typed in words, `stirWords`. */
  readonly stir?: Quantity | undefined;
  readonly stirWords?: string | undefined;
  readonly with?: string | undefined;
  readonly into?: string | undefined;
  readonly by?: string | undefined;
  readonly note?: string | undefined;
  /** Where it stands. */
  readonly node: Span;
}

export interface StageCard {
  readonly name: string;
  readonly nameSpan: Span;
  readonly items: readonly ItemCard[];
  readonly process: readonly StepCard[];
  /** A mass or a volume. */
  readonly makes?: Quantity | undefined;
  readonly made?: Moment | undefined;
  readonly by?: string | undefined;
  /** Measured. */
  readonly density?: Quantity | undefined;
  /** A mass, measured when the stage was done. */
  readonly weighs?: Quantity | undefined;
  readonly keep?: Quantity | undefined;
  readonly note?: string | undefined;
}

export interface SampleCard {
  /** As typed; of a sample that was left out, the name of its stage. */
  readonly name: string;
  readonly nameSpan: Span;
  /** True for the one sample that a file without `samples` has. */
  readonly isImplied: boolean;
  /** The name of a stage. */
  readonly of: string;
  readonly ofSpan: Span;
  readonly in?: string | undefined;
  readonly cover?: string | undefined;
  readonly coverSpan?: Span | undefined;
  /** A temperature; bench temperature where left out. */
  readonly at?: Quantity | undefined;
  readonly viewed?: string | undefined;
  /** How many alike, such as bottles kept back. */
  readonly count?: number | undefined;
  /** When to look, where it is not the bench's own schedule. */
  readonly looks?: readonly Quantity[] | undefined;
  readonly watch?: Quantity | undefined;
  /** Cycles of warm and cold; looks and watch then follow their ends where the file gives none. */
  readonly stress?: StressWord | undefined;
  readonly note?: string | undefined;
}

export interface TasteScore {
  readonly word: string;
  readonly wordSpan: Span;
  /** 0 to 5. */
  readonly score: number;
}

export interface ObservationCard extends Span {
  /** Its first line, up to the end of its time. */
  readonly headSpan: Span;
  readonly at: Moment;
  /** As typed; without it the observation belongs to the first sample. */
  readonly sample?: Named | undefined;
  readonly looks: readonly Look[];
  readonly temperature?: Quantity | undefined;
  readonly turbidity?: Quantity | undefined;
  readonly droplet?: Quantity | undefined;
  readonly ph?: number | undefined;
  readonly acid?: Quantity | undefined;
  readonly brix?: number | undefined;
  readonly density?: Quantity | undefined;
  readonly mass?: Quantity | undefined;
  readonly co2?: Quantity | undefined;
  readonly head?: Quantity | undefined;
  readonly headLife?: Quantity | undefined;
  readonly taste: readonly TasteScore[];
  readonly served?: string | undefined;
  readonly against?: string | undefined;
  readonly blind?: string | undefined;
  readonly smell?: string | undefined;
  readonly colour?: string | undefined;
  readonly viewed?: Named | undefined;
  readonly photo?: Named | undefined;
  readonly by?: string | undefined;
  readonly note?: string | undefined;
  readonly ended?: string | undefined;
}

/** A calculator's answer as it stands in the file; its other keys are read from the node. */
export interface ResultCard extends Span {
  readonly at: Moment;
  readonly calculator: string;
  readonly stage?: string | undefined;
  readonly of?: string | undefined;
  readonly node: MapNode;
}

/** What a trial and a batch have in common: something was made and looked at. */
export interface MadeCard extends FileCard {
  readonly title?: string | undefined;
  readonly made?: Moment | undefined;
  readonly by?: string | undefined;
  readonly why?: string | undefined;
  readonly concluded?: string | undefined;
  readonly note?: string | undefined;
  readonly stages: readonly StageCard[];
  /** Never empty where there are stages: the implied one stands here too. */
  readonly samples: readonly SampleCard[];
  readonly observations: readonly ObservationCard[];
  readonly results: readonly ResultCard[];
}

export interface TrialCard extends MadeCard {
  readonly kind: 'trial';
  readonly number: number;
  readonly numberSpan: Span;
  /** The trial it was changed from. */
  readonly from?: number | undefined;
  readonly series?: Named | undefined;
  readonly batch?: Named | undefined;
}

export interface BatchCard extends MadeCard {
  readonly kind: 'batch';
  readonly name: string;
  readonly nameSpan: Span;
  /** Of what: a formula with its git revision, or a trial. */
  readonly formula?: Named | undefined;
  readonly revision?: string | undefined;
  readonly trial?: number | undefined;
  /** As it was asked for: `20 L syrup`, `500 x 330 mL`. */
  readonly scaledTo?: string | undefined;
  readonly loss?: Quantity | undefined;
  /** A mass or a volume: what there was in the end. */
  readonly yield?: Quantity | undefined;
  readonly bottles?: number | undefined;
  readonly bottle?: Quantity | undefined;
}
