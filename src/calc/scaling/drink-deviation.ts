/** What rounding does to the finished drink. */

import type { ItemSource } from '../mixture/picture.ts';
import type { BatchItem } from './batch-stages.ts';
import type { WeighedStage } from './rounded-stage.ts';

export interface DrinkDeviation {
  /** The largest relative change of a substance, by size. */
  readonly relative: number;
  readonly substance: string;
}

type Shares = ReadonlyMap<string, number>;

export interface DeviationInput {
  /** All stages of the design in the order in which they are made, with exact masses. */
  readonly design: readonly {
    readonly name: string;
    readonly items: readonly { readonly item: BatchItem; readonly exactGrams: number }[];
  }[];
  /** Those that the batch makes. */
  readonly weighed: readonly WeighedStage[];
}

/**
 * The substance of the drink that rounding changes most.
 *
 * Formula   mass fractions of the drink from the masses as weighed over those from the exact ones, less one
 * Input     the stages of the design; the stages as weighed. A drink that is not made in this batch keeps its ratios
 * Output    relative change and the substance; undefined where there is no drink
 * Source    conservation of mass
 * Example   acid 1.005 g weighed as 1.01 g in 100 g of drink -> +0.5 %
 */
export function drinkDeviation({ design, weighed }: DeviationInput): DrinkDeviation | undefined {
  const exact = drinkShares(design.map(({ name, items }) => ({ name, parts: items.map(exactPart) })));
  const found = drinkShares(
    design.map(({ name, items }) => {
      const made = weighed.find(({ scaled }) => scaled.stage.name === name);
      const parts = made?.items.map(({ source, weighGrams }) => ({ source, grams: weighGrams }));
      return { name, parts: parts ?? items.map(exactPart) };
    }),
  );
  if (!exact || !found) return undefined;
  let most: DrinkDeviation = { relative: 0, substance: '' };
  for (const [substance, share] of exact) {
    if (!(share > 0)) continue;
    const relative = (found.get(substance) ?? 0) / share - 1;
    if (Math.abs(relative) > Math.abs(most.relative)) most = { relative, substance };
  }
  return most;
}

type Part = { readonly source: ItemSource; readonly grams: number };

const exactPart = ({
  item,
  exactGrams,
}: {
  readonly item: BatchItem;
  readonly exactGrams: number;
}): Part => ({
  source: item.source,
  grams: exactGrams,
});

/** Mass fractions in the stage named drink. */
function drinkShares(
  stages: readonly { readonly name: string; readonly parts: readonly Part[] }[],
): Shares | undefined {
  const shares = new Map<string, Shares>();
  for (const { name, parts } of stages) {
    const whole = parts.reduce((sum, { grams }) => sum + grams, 0);
    const mixed = new Map<string, number>();
    for (const { source, grams } of parts)
      for (const [substance, share] of sharesOf(source, shares))
        mixed.set(substance, (mixed.get(substance) ?? 0) + (grams / whole) * share);
    shares.set(name, mixed);
  }
  return shares.get('drink');
}

function sharesOf(source: ItemSource, earlier: ReadonlyMap<string, Shares>): Shares {
  if (source.kind === 'stage') return earlier.get(source.stage) ?? new Map();
  if (source.kind !== 'ingredient') return new Map();
  return new Map(
    source.entry.composition.map(({ substance, massFraction }) => [substance.name, massFraction]),
  );
}
