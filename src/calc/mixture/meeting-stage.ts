/** The first stage in which oil and emulsifier meet, by role, counted in pure substances. */

import type { NamedItem } from '../fields.ts';
import { grams } from '../typed-quantity.ts';
import type { Mixture, ResolvedStage } from './picture.ts';

export interface Meeting {
  readonly stage: ResolvedStage;
  readonly oils: readonly NamedItem[];
  readonly emulsifiers: readonly NamedItem[];
  readonly oilGrams: number;
  readonly emulsifierGrams: number;
  readonly carrierGrams: number;
}

/** Input: a resolved mixture. Output: the meeting, masses in g; undefined where no stage holds both. */
export function meetingStage(mixture: Mixture): Meeting | undefined {
  for (const stage of mixture.stages) {
    const oils = itemsOf(stage, 'oil');
    const emulsifiers = itemsOf(stage, 'emulsifier');
    if (oils.length === 0 || emulsifiers.length === 0) continue;
    return {
      stage,
      oils,
      emulsifiers,
      oilGrams: massOf(oils),
      emulsifierGrams: massOf(emulsifiers),
      carrierGrams: massOf(itemsOf(stage, 'carrier')),
    };
  }
  return undefined;
}

function itemsOf(stage: ResolvedStage, role: 'oil' | 'emulsifier' | 'carrier'): readonly NamedItem[] {
  return stage.substances
    .filter((one) => one.role === role && one.massGrams > 0)
    .map((one) => ({ name: one.name, entry: one.entry, quantity: grams(one.massGrams), value: undefined }));
}

const massOf = (items: readonly NamedItem[]): number =>
  items.reduce((sum, item) => sum + item.quantity.inner, 0);
