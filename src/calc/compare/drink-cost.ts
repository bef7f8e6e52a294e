/** What a litre of the drink costs in what is weighed into it. */

import type { BookEntry } from '../book.ts';
import { type Cost, costOf } from '../cost.ts';
import type { Mixture, ResolvedStage } from '../mixture/picture.ts';

export interface CostWays {
  /** The trial in `emulsion of 13`. */
  readonly trialIn: (item: string) => number | undefined;
  /** A stage of another trial. */
  readonly stageOf: (trial: number, stage: string) => ResolvedStage | undefined;
}

/**
 * Formula   sum over the ingredients of g in a litre x price of a gram
 * Input     a mixture with a drink; where stages of other trials are
 * Output    lines and totals for a litre, and what has no price; undefined without a drink
 */
export function costOfLitre(mixture: Mixture, ways: CostWays): Cost | undefined {
  const { drink } = mixture;
  if (!drink) return undefined;
  const bought: { entry: BookEntry; grams: number }[] = [];
  walk(drink, 1000 / drink.volumeMillilitres, undefined);
  return costOf(bought);

  function walk(stage: ResolvedStage, times: number, trial: number | undefined): void {
    for (const { name, massGrams, source } of stage.items) {
      const grams = massGrams * times;
      if (source.kind === 'ingredient') {
        bought.push({ entry: source.entry, grams });
        continue;
      }
      const other = source.kind === 'other trial' ? ways.trialIn(name) : trial;
      const used = source.kind === 'other trial' ? source.stage : stageNamed(source.stage, trial);
      if (used) walk(used, grams / used.massGrams, other);
    }
  }

  function stageNamed(name: string, trial: number | undefined): ResolvedStage | undefined {
    return trial === undefined
      ? mixture.stages.find((stage) => stage.name === name)
      : ways.stageOf(trial, name);
  }
}
