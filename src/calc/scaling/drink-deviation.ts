/** What rounding does to the finished drink. */

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
  const exact = drinkShares(design, () => undefined);
  const found = drinkShares(design, (stage, at) => {
    const one = weighed.find(({ scaled }) => scaled.stage.name === stage);
    return one?.items[at]?.weighGrams;
  });
  if (!exact || !found) return undefined;
  let most: DrinkDeviation = { relative: 0, substance: '' };
  for (const [substance, share] of exact) {
    if (!(share > 0)) continue;
    const relative = (found.get(substance) ?? 0) / share - 1;
    if (Math.abs(relative) > Math.abs(most.relative)) most = { relative, substance };
  }
  return most;
}

function drinkShares(
  design: DeviationInput['design'],
  gramsOf: (stage: string, at: number) => number | undefined,
): Shares | undefined {
  const shares = new Map<string, Shares>();
  for (const { name, items } of design) {
    const masses = items.map(({ exactGrams }, at) => gramsOf(name, at) ?? exactGrams);
    const whole = masses.reduce((sum, one) => sum + one, 0);
    const mixed = new Map<string, number>();
    for (const [at, { item }] of items.entries())
      for (const [substance, share] of sharesOf(item, shares))
        mixed.set(substance, (mixed.get(substance) ?? 0) + ((masses[at] ?? 0) / whole) * share);
    shares.set(name, mixed);
  }
  return shares.get('drink');
}

function sharesOf({ source }: BatchItem, earlier: ReadonlyMap<string, Shares>): Shares {
  if (source.kind === 'stage') return earlier.get(source.stage) ?? new Map();
  if (source.kind !== 'ingredient') return new Map();
  return new Map(
    source.entry.composition.map(({ substance, massFraction }) => [substance.name, massFraction]),
  );
}
