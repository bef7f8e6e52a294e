/** How much each property of a drink moves for 1 % more of each item. */

import { type FinishedDrink, finishedDrink } from '../calc/drink/finished-drink.ts';
import { ingredientPlaces, mixtureWith, ONE_PERCENT, type WithStages } from './item-moves.ts';
import type { Sources } from './resolve.ts';

export interface ItemSensitivity {
  readonly stage: string;
  readonly item: string;
  /** Of each property, for 1 % more of the item; make-up lines follow. */
  readonly ph: number;
  readonly acid: number;
  readonly brix: number;
  readonly density: number;
  readonly waterActivity: number;
}

/**
 * Formula   property(item x 1.01) - property, every stage solved again
 * Input     a card with its sources; its drink
 * Output    a row an item in the order of the file, items that move nothing left out: pH, g/L, Brix, g/mL, water activity
 */
export function sensitivities(
  card: WithStages,
  sources: Sources,
  drink: FinishedDrink,
): readonly ItemSensitivity[] {
  return ingredientPlaces(card)
    .filter(({ isMakeUp }) => !isMakeUp)
    .flatMap((place): readonly ItemSensitivity[] => {
      const mixture = mixtureWith(card, sources, { place, factor: ONE_PERCENT });
      const moved = mixture && finishedDrink(mixture, drink.conditions);
      if (!moved?.ok) return [];
      const row = {
        stage: card.stages[place.stage]?.name ?? '',
        item: place.name,
        ...changes(drink, moved.value),
      };
      const moves = [row.ph, row.acid, row.brix, row.density, row.waterActivity];
      return moves.some((move) => Math.abs(move) > NOISE) ? [row] : [];
    });
}

/** Less is rounding of the arithmetic. */
const NOISE = 1e-9;

const changes = (from: FinishedDrink, to: FinishedDrink) => ({
  ph: (to.acidity?.ph ?? 0) - (from.acidity?.ph ?? 0),
  acid: (to.acidity?.titratableAsCitric ?? 0) - (from.acidity?.titratableAsCitric ?? 0),
  brix: to.brix - from.brix,
  density: to.densityGramsPerMillilitre - from.densityGramsPerMillilitre,
  waterActivity: (to.waterActivity ?? 0) - (from.waterActivity ?? 0),
});
