/** What goes in only at the drink, where a batch stops before it. */

import { isWater } from '../calc/density/blend.ts';
import { numberText } from '../calc/number-text.ts';
import type { BatchPlan } from '../calc/scaling/batch-plan.ts';
import { massOf } from '../calc/scaling/batch-stages.ts';
import { isSameName } from '../ledger/stage-name.ts';
import type { BatchDesign } from './scale-design.ts';

export interface LeftOut {
  /** What is made: `syrup`. */
  readonly stage: string;
  /** Of the drink that it makes. */
  readonly litres: number;
  readonly items: readonly { readonly name: string; readonly grams: number }[];
}

/** Of the drink alone: its water and the stages in it are left aside. Undefined where it takes nothing more. */
export function leftOut({ stages, mixture }: BatchDesign, { target }: BatchPlan): LeftOut | undefined {
  const stage = target.stage.name;
  const drink = stages.find(({ name }) => isSameName(name, 'drink'));
  const [whole] = drink?.items.filter(({ name }) => isSameName(name, stage)) ?? [];
  if (!drink || !mixture.drink || !whole || !(massOf(whole) > 0)) return undefined;
  const times = target.neededGrams / massOf(whole);
  const items = drink.items.flatMap((item) =>
    item.source.kind === 'ingredient' && !isWater(item.source.entry) && massOf(item) > 0
      ? [{ name: item.name, grams: massOf(item) * times }]
      : [],
  );
  return items.length === 0
    ? undefined
    : { stage, litres: (mixture.drink.volumeMillilitres * times) / 1000, items };
}

export function leftOutWords({ stage, litres, items }: LeftOut): string {
  const each = items.map(({ name, grams }) => `${name} ${massText(grams)}`).join(', ');
  return `Not in this ${stage}: ${each}, for the ${numberText(litres, 3)} L of drink that this ${stage} makes.`;
}

const massText = (grams: number): string =>
  grams >= 1000 ? `${numberText(grams / 1000, 4)} kg` : `${numberText(grams, 4)} g`;
