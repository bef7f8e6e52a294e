/** Ingredients of a drink in the descending order of their mass. */

import type { BookEntry } from '../book.ts';
import type { Mixture, ResolvedStage } from '../mixture/picture.ts';

export interface LabelLine {
  readonly ingredient: string;
  readonly eNumber: string | undefined;
  readonly massFraction: number;
}

/**
 * What was weighed in, through all stages.
 *
 * Formula   mass of an ingredient in the drink = sum over the stages of its share in the stage times the stage's share
 * Input     a resolved mixture
 * Output    ingredients by mass, heaviest first; a lot goes under the name of what it is made like, a stock
 *           dilution under what it holds
 */
export function labelLines({ stages, drink }: Mixture): readonly LabelLine[] {
  if (!drink) return [];
  const heaps = new Map<string, { readonly entry: BookEntry; massFraction: number }>();
  const put = (entry: BookEntry, massFraction: number): void => {
    if (entry.composition.length > 1) {
      for (const one of entry.composition) put(one.substance, massFraction * one.massFraction);
      return;
    }
    const name = plainName(entry);
    const heap = heaps.get(name);
    if (heap) heap.massFraction += massFraction;
    else heaps.set(name, { entry, massFraction });
  };
  const walk = (stage: ResolvedStage, share: number): void => {
    for (const { source, massGrams } of stage.items) {
      const here = (share * massGrams) / stage.massGrams;
      if (source.kind === 'ingredient') put(source.entry, here);
      else if (source.kind === 'other trial') walk(source.stage, here);
      else {
        const used = stages.find(({ name }) => name === source.stage);
        if (used) walk(used, here);
      }
    }
  };
  walk(drink, 1);
  return [...heaps]
    .map(([ingredient, { entry, massFraction }]) => ({
      ingredient,
      eNumber: entry.record.eNumber,
      massFraction,
    }))
    .filter(({ massFraction }) => massFraction > 0)
    .sort((left, right) => right.massFraction - left.massFraction);
}

/** `orange oil lot 2231` is `sweet orange oil`; both kinds of water are water. */
function plainName({ name, like, record }: BookEntry): string {
  return record.role === 'water' ? 'water' : (like?.at(-1) ?? name);
}
