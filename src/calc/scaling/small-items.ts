/** Items that no balance weighs well enough: a stock is made of them in something of the same stage. */

import { type Parsed, parsed } from '../../problem.ts';
import type { BookEntry, SubstanceShare } from '../book.ts';
import { type Chain, planChain } from '../dilution/chain.ts';
import type { Mixture } from '../mixture/picture.ts';
import { trimmedNumber } from '../number-text.ts';
import type { BatchItem } from './batch-stages.ts';
import type { ScaledItem, ScaledStage } from './scale-stages.ts';
import { recipeFor, type StockStep } from './stock-recipe.ts';
import { type WeighingBench, weighingFor } from './weighing-choice.ts';

/** A stock that is made before the stage, and what it is made with. */
export interface BatchStock {
  readonly stage: string;
  /** Of what. */
  readonly of: string;
  /** What it is called where it is weighed in. */
  readonly name: string;
  readonly solvent: string;
  readonly steps: readonly StockStep[];
}

export interface StockedStage {
  readonly scaled: ScaledStage;
  readonly stocks: readonly BatchStock[];
  /** Items that stay too small, since nothing in the stage could carry them. */
  readonly left: readonly string[];
}

export interface StockInput {
  readonly scaled: ScaledStage;
  readonly subBatches: number;
  readonly mixture: Mixture;
  readonly bench: WeighingBench;
  /** 100 for at most 1:100 a step. */
  readonly largestDilution: number;
}

/**
 * A stage whose smallest items are weighed as stocks. What the stock brings of its solvent is left out of the item of
 * that name in the same stage, so that the stage stays what it was.
 *
 * Formula   the chain of `planChain` from the item itself to its share of the stage
 * Input     a scaled stage, in how many sub-batches; the bench
 * Output    the stage with stocks in place of those items, the recipes of the stocks
 * Refuses   what no chain of this bench can bring in, with what would do
 * Example   0.02 g of an aroma in 1 kg with water, on 0.01 g at 1 % -> 1 g of a stock of 1 in 50
 */
export function withStocks(input: StockInput): Parsed<StockedStage> {
  const { bench, subBatches } = input;
  let { scaled } = input;
  const stocks: BatchStock[] = [];
  const left: string[] = [];
  for (const { item, exactGrams } of input.scaled.items) {
    const choice = weighingFor(exactGrams / subBatches, exactGrams / subBatches, bench);
    if (!choice.isTooSmall || choice.isAssumed || !(exactGrams > 0)) continue;
    const solvent = solventFor(item, scaled);
    if (!solvent) {
      left.push(item.name);
      continue;
    }
    const chain = planChain({
      of: item.name,
      sources: [{ name: item.name, strength: 1 }],
      target: exactGrams / scaled.exactGrams,
      finalMassGrams: scaled.exactGrams / subBatches,
      bench: {
        scales: bench.scales,
        weighing: bench.weighing,
        largestDilution: input.largestDilution,
        vessels: bench.vessels.flatMap(({ millilitres, massGrams }) =>
          millilitres === undefined ? [] : [{ millilitres, massGrams }],
        ),
      },
    });
    if (!chain.ok) return chain;
    const made = stocked(input, { scaled, item, solvent, chain: chain.value });
    if (!made) {
      left.push(item.name);
      continue;
    }
    ({ scaled } = made);
    stocks.push(made.stock);
  }
  return parsed({ scaled, stocks, left });
}

/** What must be left of the solvent's item, so that it still makes up. */
const leastLeft = 0.2;

function stocked(
  { mixture, subBatches, bench }: StockInput,
  given: {
    readonly scaled: ScaledStage;
    readonly item: BatchItem;
    readonly solvent: ScaledItem;
    readonly chain: Chain;
  },
): { readonly scaled: ScaledStage; readonly stock: BatchStock } | undefined {
  const { scaled, item, solvent, chain } = given;
  const last = chain.steps.at(-1);
  const recipe = chain.steps.slice(0, -1);
  const strength = recipe.at(-1)?.strength;
  if (!last || strength === undefined) return undefined;
  const grams = last.takeMassGrams * subBatches;
  const solventGrams = grams * (1 - strength);
  if (solventGrams > solvent.exactGrams * (1 - leastLeft)) return undefined;
  const name = `${item.name}, 1 in ${trimmedNumber(1 / strength, 4)}`;
  const stockItem: BatchItem = {
    ...item,
    name,
    source: {
      kind: 'ingredient',
      entry: stockEntry({ name, item, solvent: solvent.item, strength, mixture }),
    },
    about: { ...item.about, isDrops: false, note: undefined },
  };
  const items = scaled.items.map((one): ScaledItem => {
    if (one.item === item) return { item: stockItem, exactGrams: grams };
    return one === solvent ? { ...one, exactGrams: one.exactGrams - solventGrams } : one;
  });
  return {
    scaled: { ...scaled, items },
    stock: {
      stage: scaled.stage.name,
      of: item.name,
      name,
      solvent: solvent.item.name,
      steps: recipeFor(recipe, { of: item.name, neededGrams: grams, bench }),
    },
  };
}

const inWater: ReadonlySet<string> = new Set([
  'acid',
  'salt',
  'sugar',
  'sweetener',
  'preservative',
  'emulsifier',
  'colour',
  'carrier',
  'other',
]);

/** Something of the same stage in which the item dissolves: oils in an oil or a carrier, the rest in water. */
function solventFor(item: BatchItem, { items }: ScaledStage): ScaledItem | undefined {
  const largest = (roles: readonly string[]): ScaledItem | undefined =>
    items
      .filter(
        (one) =>
          one.item !== item && one.item.source.kind === 'ingredient' && roles.includes(roleOf(one.item)),
      )
      .toSorted((one, other) => other.exactGrams - one.exactGrams)[0];
  if (item.source.kind === 'stage') return largest(['water']);
  const role = roleOf(item);
  if (role === 'oil') return largest(['oil']) ?? largest(['carrier']);
  if (role === 'aroma' && !isSolution(item))
    return largest(['carrier']) ?? largest(['oil']) ?? largest(['water']);
  if (role === 'antifoam') return largest(['water']);
  return inWater.has(role) || isSolution(item) ? (largest(['water']) ?? largest(['carrier'])) : undefined;
}

const roleOf = ({ role, source }: BatchItem): string =>
  role ?? (source.kind === 'ingredient' ? source.entry.record.role : 'other');

const isSolution = ({ source }: BatchItem): boolean =>
  source.kind === 'ingredient' && source.entry.composition.length > 1;

interface StockOf {
  readonly name: string;
  readonly item: BatchItem;
  readonly solvent: BatchItem;
  readonly strength: number;
  readonly mixture: Mixture;
}

/** The stock as an ingredient: so much of the item, the rest solvent. */
function stockEntry({ name, item, solvent, strength, mixture }: StockOf): BookEntry {
  const own = substancesOf(item, mixture);
  const carried = substancesOf(solvent, mixture);
  const shares = new Map<BookEntry, number>();
  for (const [part, share] of [
    [own, strength],
    [carried, 1 - strength],
  ] as const)
    for (const { substance, massFraction } of part)
      shares.set(substance, (shares.get(substance) ?? 0) + share * massFraction);
  const record =
    item.source.kind === 'ingredient'
      ? item.source.entry.record
      : { name, role: 'other' as const, figures: {} };
  return {
    name,
    record: { ...record, name, figures: {} },
    composition: [...shares].map(([substance, massFraction]) => ({ substance, massFraction })),
    own: true,
  };
}

function substancesOf({ source }: BatchItem, { stages }: Mixture): readonly SubstanceShare[] {
  if (source.kind === 'ingredient') return source.entry.composition;
  const name = source.kind === 'stage' ? source.stage : source.stage.name;
  const stage = stages.find((one) => one.name === name);
  return (stage?.substances ?? []).map(({ entry, massFraction }) => ({ substance: entry, massFraction }));
}
