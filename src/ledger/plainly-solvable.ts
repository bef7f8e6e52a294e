/** Stages of which a glance tells that they can be solved, so that `check` need not solve a thousand of them. */

import type { ItemInput, StageInput } from '../calc/mixture/picture.ts';

/**
 * Whether nothing can be wrong with the amounts: ingredients only, in masses and shares, one line that makes the
 * stage up to a mass, and the others well below it, as planned and as weighed. False says nothing.
 */
export const isPlainlySolvable = (stages: readonly StageInput[]): boolean => stages.every(isPlain);

function isPlain({ items, makes }: StageInput): boolean {
  const makeUps = items.filter(({ amount }) => amount.makeUp);
  const [makeUp] = makeUps;
  if (makes || makeUps.length !== 1 || !makeUp || !items.every(isPlainItem)) return false;
  const { quantity } = makeUp.amount;
  if (quantity.dimension !== 'mass' || makeUp.weighedGrams !== undefined) return false;
  const others = items.filter((item) => item !== makeUp);
  return others.reduce((total, item) => total + most(item, quantity.inner), 0) < wellBelow * quantity.inner;
}

const wellBelow = 0.999;

const isPlainItem = ({ amount, source }: ItemInput): boolean =>
  source.kind === 'ingredient' &&
  !amount.inDrink &&
  (amount.quantity.dimension === 'mass' || (amount.quantity.dimension === 'share' && !amount.makeUp));

/** g, the greater of plan and weighing. */
function most({ amount, weighedGrams }: ItemInput, totalGrams: number): number {
  const { dimension, inner } = amount.quantity;
  return Math.max(dimension === 'share' ? inner * totalGrams : inner, weighedGrams ?? 0);
}
