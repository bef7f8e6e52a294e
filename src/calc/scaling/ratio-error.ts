/** What reading the balances does to the ratio of oil to emulsifier. */

import type { WeighedItem, WeighedStage } from './rounded-stage.ts';

export interface RatioError {
  readonly stage: string;
  /** Relative, at worst. */
  readonly relative: number;
}

/**
 * Formula   sum of d/2 over the oils / their mass + the same of the emulsifiers, all on one side at worst
 * Input     stages as weighed
 * Output    the first stage that weighs both, with the relative error of their ratio; undefined where none does
 * Source    reading error of half a division: common practice, no source
 * Example   2 g of oil and 6 g of emulsifier on 0.01 g -> 0.33 %
 */
export function ratioError(stages: readonly WeighedStage[]): RatioError | undefined {
  for (const { scaled, items } of stages) {
    const oil = readingError(items.filter((item) => roleOf(item) === 'oil'));
    const emulsifier = readingError(items.filter((item) => roleOf(item) === 'emulsifier'));
    if (oil !== undefined && emulsifier !== undefined)
      return { stage: scaled.stage.name, relative: oil + emulsifier };
  }
  return undefined;
}

const roleOf = ({ source }: WeighedItem): string | undefined =>
  source.kind === 'ingredient' ? source.entry.record.role : undefined;

function readingError(items: readonly WeighedItem[]): number | undefined {
  const grams = items.reduce((sum, { weighGrams }) => sum + weighGrams, 0);
  if (!(grams > 0)) return undefined;
  return items.reduce((sum, { weighGrams, choice }) => sum + weighGrams * choice.relativeError, 0) / grams;
}
