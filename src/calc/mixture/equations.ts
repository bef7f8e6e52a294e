/** A stage as equations: what its items weigh in terms of the stage's own mass, volume and water. */

import type { Blend } from '../density/blend.ts';
import type { Term } from './term.ts';

/** Where an item comes from: an earlier stage by its place, or something of known blend. */
export type BlendSource = { readonly stage: number } | { readonly blend: Blend };

export interface EquationItem {
  readonly term: Term;
  readonly source: BlendSource;
}

/** `makes`: g, or mL. */
export interface Total {
  readonly kind: 'mass' | 'volume';
  readonly amount: number;
}

export interface StageEquations {
  readonly items: readonly EquationItem[];
  /** g/mL, measured. */
  readonly measuredDensity: number | undefined;
  readonly makes: Total | undefined;
}

export interface SolvedStage {
  /** g of each item, in order. */
  readonly grams: readonly number[];
  readonly massGrams: number;
  /** mL/g. */
  readonly specificVolume: number;
  readonly blend: Blend;
  /** What shares, concentrations and parts come to, g in a g of the stage. */
  readonly relativeShare: number;
  /** False where the equations have no answer at all: the shares take up the whole of the stage. */
  readonly solvable: boolean;
}

/** The finished drink as the last pass left it, per gram of it. */
export interface DrinkState {
  /** mL/g. */
  readonly specificVolume: number;
  /** g/g. */
  readonly waterShare: number;
}

/** True for a term that fixes a mass by itself, without the rest of its stage. */
export const isFixed = (term: Term): boolean => term.kind === 'fixed';

export const isMakeUp = (term: Term): boolean =>
  term.kind === 'make-up mass' || term.kind === 'make-up volume';

/** Every mass of the stage hangs on its total: shares, concentrations and parts alone. */
export const isOnlyRelative = (stage: StageEquations): boolean =>
  !stage.items.some(({ term }) => isFixed(term) || isMakeUp(term));
