/** Who gets what in which order, and what stands on the glasses. */

import { shuffled } from '../shuffled.ts';
import { glassCodes } from './codes.ts';

export type Drink = 'A' | 'B';

export interface Glass {
  readonly code: string;
  readonly drink: Drink;
}

/** One tasting: its glasses from left to right. */
export type Serving = readonly Glass[];

export type ServingKind = 'triangle' | 'pair';

const ordersOf = (text: string): readonly (readonly Drink[])[] =>
  text.split(' ').map((word) => [...word].map((sign) => (sign === 'A' ? 'A' : 'B')));

/** A is the odd one, B is the odd one: each in every place. */
const oddA = ordersOf('ABB BAB BBA');
const oddB = ordersOf('BAA ABA AAB');

export const orders: Readonly<Record<ServingKind, readonly (readonly Drink[])[]>> = {
  triangle: [...oddA, ...oddB],
  pair: ordersOf('AB BA'),
};

/** How many tastings there are codes for. */
export const mostServings = (kind: ServingKind): number =>
  Math.floor(glassCodes.length / (kind === 'triangle' ? 3 : 2));

/**
 * A serving plan in balanced orders.
 *
 * Formula   every order as often as every other, those left over each once and in turn from both odd ones; all of it
 *           in random order; codes drawn without putting back
 * Input     kind; servings, a whole number from 1 to `mostServings`; random, numbers from 0 to 1
 * Output    one row of glasses a tasting, no code twice in the plan
 * Source    ISO 4120 and ISO 5495: all orders equally often, three-digit codes
 */
export function servingPlan(asked: {
  readonly kind: ServingKind;
  readonly servings: number;
  readonly random: () => number;
}): readonly Serving[] {
  const { kind, servings, random } = asked;
  const all = orders[kind];
  const whole = Math.floor(servings / all.length);
  const rows = [
    ...Array.from({ length: whole }, () => all).flat(),
    ...leftOver(kind, random).slice(0, servings - whole * all.length),
  ];
  const codes = shuffled(glassCodes, random);
  let next = 0;
  return shuffled(rows, random).map((row) =>
    row.map((drink) => {
      const code = codes[next] ?? '';
      next += 1;
      return { code, drink };
    }),
  );
}

/** The orders for what is no whole round: A odd and B odd by turns. */
function leftOver(kind: ServingKind, random: () => number): readonly (readonly Drink[])[] {
  if (kind === 'pair') return shuffled(orders.pair, random);
  const [first = [], second = []] = shuffled([shuffled(oddA, random), shuffled(oddB, random)], random);
  return first.flatMap((row, at) => [row, second[at] ?? row]);
}
