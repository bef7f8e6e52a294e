/** What goes into resolving a mixture and what comes out: stages, items, substances. */

import type { Role } from '../../reference/ingredient.ts';
import type { BookEntry } from '../book.ts';
import type { Amount, Quantity } from '../quantity.ts';

export type ItemSource =
  | { readonly kind: 'ingredient'; readonly entry: BookEntry }
  /** An earlier stage of the same trial. */
  | { readonly kind: 'stage'; readonly stage: string }
  /** A stage of another trial, already resolved: `emulsion of 14`. */
  | { readonly kind: 'other trial'; readonly stage: ResolvedStage };

export interface ItemInput {
  readonly name: string;
  readonly source: ItemSource;
  readonly amount: Amount;
  /** What the balance said; used instead of the planned amount where it stands. */
  readonly weighedGrams?: number;
  /** A role that this item plays here, over the ingredient's own. */
  readonly role?: Role;
}

export interface StageInput {
  readonly name: string;
  readonly items: readonly ItemInput[];
  /** Total mass or volume, needed where all items are parts or shares. */
  readonly makes?: Quantity;
  /** Measured. */
  readonly densityGramsPerMillilitre?: number;
}

export interface ResolvedItem {
  readonly name: string;
  readonly role: Role;
  readonly massGrams: number;
  /** What the plan alone would come to, where weighed amounts stand. */
  readonly plannedGrams: number;
  readonly weighed: boolean;
  readonly source: ItemSource;
}

/** One pure substance in a stage. The same substance under two roles stands twice. */
export interface ResolvedSubstance {
  readonly name: string;
  readonly role: Role;
  readonly entry: BookEntry;
  readonly massGrams: number;
  readonly massFraction: number;
  readonly gramsPerLitre: number;
}

export interface ResolvedStage {
  readonly name: string;
  readonly massGrams: number;
  readonly densityGramsPerMillilitre: number;
  /** `measured`, or an estimate with the words that say what it rests on. */
  readonly densityFrom: { readonly measured: boolean; readonly words: string };
  readonly volumeMillilitres: number;
  readonly items: readonly ResolvedItem[];
  readonly substances: readonly ResolvedSubstance[];
  /** The share of this stage's mass that goes into the stage named `drink`; 0 when none does or there is none. */
  readonly shareInDrink: number;
}

export interface Mixture {
  readonly stages: readonly ResolvedStage[];
  readonly drink: ResolvedStage | undefined;
}

/** Why a stage can't be solved: which stage, and which item by its place in the stage. */
export interface MixtureFault {
  readonly code: string;
  readonly severity: 'error' | 'warning';
  readonly message: string;
  readonly hint: string;
  readonly stage: string;
  readonly item?: number;
}
