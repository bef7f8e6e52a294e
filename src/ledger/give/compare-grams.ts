/** What a recipe came to where it was given, held against what it comes to here. */

import type { Book } from '../../calc/book.ts';
import type { Mixture } from '../../calc/mixture/picture.ts';
import { numberText } from '../../calc/number-text.ts';
import { normaliseName } from '../../reference/name.ts';
import { isSameName } from '../stage-name.ts';
import { gramsOf } from './gift-text.ts';
import type { GivenGrams } from './read-gift.ts';

export interface GramsHere {
  readonly given: readonly GivenGrams[];
  readonly mixture: Mixture;
  readonly book: Book;
  /** The name that stands here for a given one. */
  readonly nameOf: (name: string) => string;
}

/** A difference smaller than this share is one of the last digit. */
const smallest = 1e-6;
/** g; below this a substance is as good as absent. */
const nothing = 1e-12;

/** What differs, the largest difference first, in words; empty where everything comes to the same. */
export function differingGrams({ given, mixture, book, nameOf }: GramsHere): readonly string[] {
  const keyOf = (name: string): string => normaliseName(book.find(name)?.name ?? name);
  const differences: { readonly share: number; readonly words: string }[] = [];
  for (const stage of mixture.stages) {
    const grams = new Map([...gramsOf(stage)].map(([name, mass]): [string, number] => [keyOf(name), mass]));
    for (const one of given.filter((there) => isSameName(there.stage, stage.name))) {
      const here = grams.get(keyOf(nameOf(one.substance))) ?? 0;
      const size = Math.max(here, one.grams);
      const share = size <= nothing ? 0 : Math.abs(here - one.grams) / size;
      if (share <= smallest) continue;
      const words = `${stage.name}: ${numberText(one.grams, 6)} g of ${one.substance} there, ${numberText(here, 6)} g here`;
      differences.push({ share, words });
    }
  }
  return differences.sort((one, other) => other.share - one.share).map(({ words }) => words);
}
