/** What an amount says about the mass of its item, as one term of the stage's equations. */

import { type Fault, type Parsed, parsed, refused } from '../../problem.ts';
import type { BookEntry } from '../book.ts';
import { isWater } from '../density/blend.ts';
import type { DensityModel } from '../density/estimate.ts';
import type { Dimension } from '../quantity.ts';
import type { ItemInput } from './picture.ts';

/**
 * The mass of an item in g is `factor` times: 1 (`fixed`), the mass of the stage in g, its volume in mL, the water
 * in it in g, or the stage's mass by parts; a make-up item is what is missing of `factor` g or mL.
 */
export type TermKind =
  | 'fixed'
  | 'per mass'
  | 'per volume'
  | 'per water'
  | 'parts'
  | 'make-up mass'
  | 'make-up volume';

export interface Term {
  readonly kind: TermKind;
  readonly factor: number;
  /** Place of the earlier stage whose density, in g/mL, the factor is still to be multiplied with. */
  readonly densityOfStage?: number;
  readonly inDrink: boolean;
}

export interface TermContext {
  readonly model: DensityModel;
  /** g, the bench's own drop. */
  readonly dropGrams: number | undefined;
  /** Place of a stage of this trial by its name. */
  readonly placeOfStage: (name: string) => number | undefined;
}

/** A density, in g/mL, or the place of the stage that has it. */
type Dense = { readonly value: number; readonly densityOfStage?: number };

const kinds: Readonly<Partial<Record<Dimension, TermKind>>> = {
  mass: 'fixed',
  volume: 'fixed',
  drops: 'fixed',
  parts: 'parts',
  share: 'per mass',
  'share w/v': 'per volume',
  'share v/v': 'per volume',
  'mass per volume': 'per volume',
  'volume per volume': 'per volume',
  'moles per volume': 'per volume',
  'moles per mass': 'per water',
};

/**
 * The term of an item.
 *
 * Formula   mass m; volume V rho; drops n m_drop; share w M; w/v c V; v/v phi V rho; mol/L c V M_molar; mol/kg b W M_molar
 * Input     an item as planned; the bench
 * Output    the term, its factor in g (per g, per mL, per g of water, per part)
 * Refuses   a volume without a density, drops without the mass of a drop, moles without a molar mass, a unit of another kind
 */
export function termOf(item: ItemInput, context: TermContext): Parsed<Term> {
  const { quantity, makeUp, inDrink } = item.amount;
  if (makeUp) {
    const kind = quantity.dimension === 'volume' ? 'make-up volume' : 'make-up mass';
    return parsed({ kind, factor: quantity.inner, inDrink: false });
  }
  const kind = kinds[quantity.dimension];
  if (kind === undefined) {
    return refused(
      'wrong-kind',
      `"${item.amount.written}" is no amount of ${item.name}`,
      'give a mass, a volume, drops, a share, a concentration or parts',
    );
  }
  const perUnit = gramsPerUnit(item, context);
  if (!perUnit.ok) return perUnit;
  const { value, densityOfStage } = perUnit.value;
  return parsed({
    kind,
    factor: quantity.inner * value,
    inDrink,
    ...(densityOfStage === undefined ? {} : { densityOfStage }),
  });
}

/** What one inner unit of the amount weighs: g per mL, per drop, per mol; 1 for masses and parts. */
function gramsPerUnit(item: ItemInput, context: TermContext): Parsed<Dense> {
  switch (item.amount.quantity.dimension) {
    case 'volume':
    case 'share v/v':
    case 'volume per volume':
      return densityOf(item, context);
    case 'drops':
      return dropOf(item, context);
    case 'moles per volume':
    case 'moles per mass':
      return molarMassOf(item);
    default:
      return parsed({ value: 1 });
  }
}

function densityOf({ name, source, amount }: ItemInput, { model, placeOfStage }: TermContext): Parsed<Dense> {
  if (source.kind === 'other trial') return parsed({ value: source.stage.densityGramsPerMillilitre });
  if (source.kind === 'stage') {
    const place = placeOfStage(source.stage);
    return parsed({ value: 1, ...(place === undefined ? {} : { densityOfStage: place }) });
  }
  const density = ingredientDensity(source.entry, model);
  return density === undefined
    ? {
        ok: false,
        fault: missing({
          code: 'no-density',
          what: `"${amount.written}" of ${name} is a volume, and no density of it is known`,
          add: `add its density to ingredients.yaml (density: 1.02 g/mL), or give a mass`,
        }),
      }
    : parsed({ value: density });
}

/** g/mL of an ingredient as it is measured out; plain water at the temperature of the bench. */
export function ingredientDensity(entry: BookEntry, model: DensityModel): number | undefined {
  const figure = entry.record.figures.density?.value;
  if (isWater(entry) && !entry.own) return model.waterDensity ?? figure;
  if (isWater(entry)) return figure ?? model.waterDensity;
  return figure;
}

function dropOf({ name, source, amount }: ItemInput, { dropGrams }: TermContext): Parsed<Dense> {
  const own = source.kind === 'ingredient' ? source.entry.dropGrams : undefined;
  const value = own ?? dropGrams;
  if (value !== undefined) return parsed({ value });
  const what = `"${amount.written}" of ${name}, and nobody weighed a drop`;
  const add = 'add drop: 0.030 g to bench.yaml, or to its record in ingredients.yaml, or give a mass';
  return { ok: false, fault: missing({ code: 'no-drop-mass', what, add }) };
}

function molarMassOf({ name, source, amount }: ItemInput): Parsed<Dense> {
  const value = source.kind === 'ingredient' ? source.entry.record.figures['molar mass']?.value : undefined;
  if (value !== undefined) return parsed({ value });
  const what = `"${amount.written}" of ${name} is in moles, and no molar mass of it is known`;
  const add =
    source.kind === 'ingredient'
      ? 'add its molar mass to ingredients.yaml (molar mass: 192.12 g/mol), or give g/L'
      : 'give a share or g/L: a mixture has no molar mass';
  return { ok: false, fault: missing({ code: 'no-molar-mass', what, add }) };
}

const missing = (words: { readonly code: string; readonly what: string; readonly add: string }): Fault => ({
  code: words.code,
  message: words.what,
  hint: words.add,
});
