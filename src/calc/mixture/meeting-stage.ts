/** The stage in which oil and emulsifier first meet, by role, counted in pure substances. */

import type { NamedItem } from '../item-fields.ts';
import { grams } from '../typed-quantity.ts';
import type { Mixture, ResolvedStage } from './picture.ts';

export interface Meeting {
  /** As the trial names it: `emulsion`, or `emulsion of 14` where they met in another trial. */
  readonly name: string;
  readonly stage: ResolvedStage;
  readonly oils: readonly NamedItem[];
  readonly emulsifiers: readonly NamedItem[];
  readonly oilGrams: number;
  readonly emulsifierGrams: number;
  readonly carrierGrams: number;
}

/**
 * The first stage that holds both; where they come in together with a stage of another trial, that stage.
 * Input     a resolved mixture
 * Output    the meeting, masses in g; undefined where no stage holds both
 */
export function meetingStage(mixture: Mixture): Meeting | undefined {
  for (const stage of mixture.stages) {
    for (const { name, source } of stage.items) {
      const elsewhere = source.kind === 'other trial' ? meetingIn(name, source.stage) : undefined;
      if (elsewhere) return elsewhere;
    }
    const here = meetingIn(stage.name, stage);
    if (here) return here;
  }
  return undefined;
}

function meetingIn(name: string, stage: ResolvedStage): Meeting | undefined {
  const oils = itemsOf(stage, 'oil');
  const emulsifiers = itemsOf(stage, 'emulsifier');
  if (oils.length === 0 || emulsifiers.length === 0) return undefined;
  return {
    name,
    stage,
    oils,
    emulsifiers,
    oilGrams: massOf(oils),
    emulsifierGrams: massOf(emulsifiers),
    carrierGrams: massOf(itemsOf(stage, 'carrier')),
  };
}

function itemsOf(stage: ResolvedStage, role: 'oil' | 'emulsifier' | 'carrier'): readonly NamedItem[] {
  return stage.substances
    .filter((one) => one.role === role && one.massGrams > 0)
    .map((one) => ({ name: one.name, entry: one.entry, quantity: grams(one.massGrams), value: undefined }));
}

const massOf = (items: readonly NamedItem[]): number =>
  items.reduce((sum, item) => sum + item.quantity.inner, 0);
