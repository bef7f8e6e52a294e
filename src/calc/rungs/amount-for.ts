/** The amount to type for a wanted mass, in the kind of unit that the trial has. */

import { trimmedNumber } from '../number-text.ts';
import type { Amount, Dimension, Quantity } from '../quantity.ts';
import { inUnit } from '../unit.ts';

/** Kinds that are weighed on the balance, whatever they are typed in. */
export const isWeighedOut = (dimension: Dimension): boolean =>
  dimension !== 'volume' && dimension !== 'drops';

/** The same amount, so many times; its text is made later, when it is rounded. */
export const timesAmount = (amount: Amount, factor: number): Amount => ({
  ...amount,
  quantity: {
    ...amount.quantity,
    value: amount.quantity.value * factor,
    inner: amount.quantity.inner * factor,
  },
});

/** Digits of an amount that no balance shows as it is typed. */
const digits = 4;

/**
 * An amount as a person would type it: a mass to the division of the balance, drops whole, the rest to four digits.
 *
 * Input     the amount with its exact figure; the division of the balance in g
 * Output    the amount with the rounded figure, and its text
 * Example   roundedAmount(2.3987 g, 0.01) -> 2.4 g
 */
export function roundedAmount(amount: Amount, divisionGrams: number): Amount {
  const { quantity } = amount;
  const inner = roundedInner(quantity, divisionGrams);
  const value = inUnit(inner, quantity.unit);
  const words = `${trimmedNumber(value, 12)} ${quantity.unit}`;
  const written = amount.inDrink ? `${words} in drink` : words;
  return { ...amount, written, quantity: { ...quantity, value, inner, written: words } };
}

function roundedInner({ dimension, inner, value, unit }: Quantity, divisionGrams: number): number {
  if (dimension === 'mass') return Math.round(inner / divisionGrams) * divisionGrams;
  if (dimension === 'drops') return Math.round(inner);
  return inner === 0 ? 0 : inner * (Number(value.toPrecision(digits)) / inUnit(inner, unit));
}
