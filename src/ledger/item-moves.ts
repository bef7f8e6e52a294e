/** What a drink becomes when one item is more or less than it says: every stage solved again. */

import type { Mixture } from '../calc/mixture/picture.ts';
import type { Quantity } from '../calc/quantity.ts';
import type { BatchCard, FormulaCard, ItemCard, TrialCard } from './cards.ts';
import { resolveStages, type Sources } from './resolve.ts';
import { isSameName, otherStageOf } from './stage-name.ts';

export type WithStages = FormulaCard | TrialCard | BatchCard;

/** An item by the places of its stage and of itself. */
export interface ItemPlace {
  readonly stage: number;
  readonly item: number;
  readonly name: string;
  readonly isMakeUp: boolean;
}

/** The items that are ingredients; what is a stage itself moves everything in it, which says little. */
export function ingredientPlaces({ stages }: WithStages): readonly ItemPlace[] {
  return stages.flatMap(({ items }, stage) =>
    items.flatMap(({ name, amount }, item) =>
      otherStageOf(name) || stages.some((one) => isSameName(one.name, name))
        ? []
        : [{ stage, item, name, isMakeUp: amount.makeUp }],
    ),
  );
}

/**
 * The mixture with one item multiplied, as weighed where it was weighed.
 *
 * Formula   the amount times the factor; make-up lines and amounts that hang on the others follow
 * Input     a card, the place of the item, the factor
 * Output    the mixture; undefined where it can't be solved
 */
export function mixtureWith(
  card: WithStages,
  sources: Sources,
  { place, factor }: { readonly place: ItemPlace; readonly factor: number },
): Mixture | undefined {
  const stages = card.stages.map((stage, at) =>
    at === place.stage
      ? {
          ...stage,
          items: stage.items.map((item, index) => (index === place.item ? times(item, factor) : item)),
        }
      : stage,
  );
  const number = card.kind === 'trial' ? card.number : undefined;
  const made = card.kind === 'formula' ? undefined : card.made;
  return resolveStages({ stages, made, number }, sources).mixture;
}

function times(item: ItemCard, factor: number): ItemCard {
  const { amount, weighed } = item;
  const quantity = multiplied(amount.quantity, factor);
  return {
    ...item,
    amount: { ...amount, quantity },
    ...(weighed ? { weighed: multiplied(weighed, factor) } : {}),
  };
}

const multiplied = (quantity: Quantity, factor: number): Quantity => ({
  ...quantity,
  value: quantity.value * factor,
  inner: quantity.inner * factor,
});

export interface ItemMove extends ItemPlace {
  /** Of the figure, for 1 % more of the item. */
  readonly change: number;
}

export const ONE_PERCENT = 1.01;

/** Which items move a figure, the one that moves it most first; make-up lines are left out. */
export function itemMoves(
  card: WithStages,
  sources: Sources,
  {
    figureOf,
    value,
  }: { readonly figureOf: (mixture: Mixture) => number | undefined; readonly value: number },
): readonly ItemMove[] {
  return ingredientPlaces(card)
    .filter(({ isMakeUp }) => !isMakeUp)
    .flatMap((place) => {
      const mixture = mixtureWith(card, sources, { place, factor: ONE_PERCENT });
      const moved = mixture && figureOf(mixture);
      const change = moved === undefined ? 0 : moved - value;
      return Math.abs(change) > Math.abs(value) * 1e-9 ? [{ ...place, change }] : [];
    })
    .sort((left, right) => Math.abs(right.change) - Math.abs(left.change));
}
