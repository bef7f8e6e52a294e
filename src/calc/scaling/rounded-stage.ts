/** What is really weighed: every item rounded to its balance, the rounding of all pushed into the one that makes up. */

import { isWater } from '../density/blend.ts';
import type { ItemNote } from './batch-stages.ts';
import type { ScaledItem, ScaledStage } from './scale-stages.ts';
import { type WeighingBench, type WeighingChoice, weighingFor } from './weighing-choice.ts';

export interface WeighedItem {
  readonly name: string;
  readonly about: ItemNote;
  readonly source: ScaledItem['item']['source'];
  readonly exactGrams: number;
  /** In all sub-batches together. */
  readonly weighGrams: number;
  /** One portion of one sub-batch. */
  readonly portionGrams: number;
  /** Of one sub-batch. */
  readonly portions: number;
  readonly divisionGrams: number;
  /** Relative: weighed over exact, less one. */
  readonly deviation: number;
  readonly choice: WeighingChoice;
  readonly takesRounding: boolean;
}

export interface WeighedStage {
  readonly scaled: ScaledStage;
  readonly subBatches: number;
  /** Decimals in which every mass of the stage is printed. */
  readonly decimals: number;
  /** The sum of what is weighed, in all sub-batches. */
  readonly totalGrams: number;
  readonly items: readonly WeighedItem[];
}

export interface RoundingInput {
  readonly scaled: ScaledStage;
  readonly subBatches: number;
  readonly bench: WeighingBench;
  /** g that there are of a stage that is used: weighed there, less what was taken. */
  readonly available: ReadonlyMap<string, number>;
}

/**
 * A stage in divisions of the balances.
 *
 * Formula   weighed = n d k, n whole, k = sub-batches x portions; the item that makes up gets the sum of the exact
 *           masses less the others as weighed, rounded so too; of a stage that is used never more than there is
 * Input     a scaled stage, in how many sub-batches, the bench
 * Output    masses that add up to the total in the digits in which they are printed
 * Example   1.006, 2.009 and water 46.985 g on 0.01 g -> 1.01, 2.01, 46.98 g
 */
export function roundedStage({ scaled, subBatches, bench, available }: RoundingInput): WeighedStage {
  const makeUpAt = makeUpPlace(scaled);
  const choices = scaled.items.map(({ exactGrams, item }) =>
    weighingFor(exactGrams / subBatches, millilitresOf(item.source, exactGrams, scaled) / subBatches, bench),
  );
  const decimals = Math.max(...choices.map(({ scale }) => exactDecimals(scale.divisionGrams)));
  const stepsOf = (grams: number, at: number): number => {
    const choice = choices[at];
    const step = stepUnits(choice, decimals) * subBatches * (choice?.portions ?? 1);
    return Math.round((grams * 10 ** decimals) / step) * step;
  };
  const units = scaled.items.map(({ item, exactGrams }, at) => {
    const rounded = stepsOf(exactGrams, at);
    const most = item.source.kind === 'stage' ? available.get(item.source.stage) : undefined;
    return most === undefined
      ? rounded
      : Math.min(rounded, floorSteps(most, choices[at], { decimals, subBatches }));
  });
  if (makeUpAt >= 0) {
    const over = scaled.items.reduce(
      (sum, { exactGrams }, at) =>
        at === makeUpAt ? sum : sum + exactGrams - inGrams(units[at] ?? 0, decimals),
      0,
    );
    const wanted = (scaled.items[makeUpAt]?.exactGrams ?? 0) + over;
    if (wanted > 0) units[makeUpAt] = stepsOf(wanted, makeUpAt);
  }
  return {
    scaled,
    subBatches,
    decimals,
    totalGrams: inGrams(
      units.reduce((sum, one) => sum + one, 0),
      decimals,
    ),
    items: scaled.items.map((one, at) =>
      weighedItem(one, {
        units: units[at] ?? 0,
        decimals,
        subBatches,
        choice: choices[at] ?? noChoice(),
        takesRounding: at === makeUpAt,
      }),
    ),
  };
}

const noChoice = (): never => {
  throw new Error('an item of a batch has no balance');
};

const inGrams = (units: number, decimals: number): number =>
  Number((units / 10 ** decimals).toFixed(decimals));

/** Units of the last printed decimal in one division. */
const stepUnits = (choice: WeighingChoice | undefined, decimals: number): number =>
  Math.max(1, Math.round((choice?.scale.divisionGrams ?? 1) * 10 ** decimals));

function floorSteps(
  grams: number,
  choice: WeighingChoice | undefined,
  { decimals, subBatches }: { readonly decimals: number; readonly subBatches: number },
): number {
  const step = stepUnits(choice, decimals) * subBatches * (choice?.portions ?? 1);
  return Math.floor((grams * 10 ** decimals * (1 + 1e-12)) / step) * step;
}

/** The fewest decimals that show a division as it is. */
export function exactDecimals(divisionGrams: number): number {
  for (let decimals = 0; decimals < 9; decimals += 1) {
    const units = divisionGrams * 10 ** decimals;
    if (units >= 1 - 1e-9 && Math.abs(units - Math.round(units)) < 1e-6 * units) return decimals;
  }
  return 9;
}

/** What the stage is made up with; else its largest water. */
function makeUpPlace({ items }: ScaledStage): number {
  const typed = items.findIndex(({ item }) => item.about.makesUp);
  if (typed >= 0) return typed;
  const waters = items.filter(({ item }) => item.source.kind === 'ingredient' && isWater(item.source.entry));
  const largest = waters.toSorted((one, other) => other.exactGrams - one.exactGrams)[0];
  return largest ? items.indexOf(largest) : -1;
}

/** About: solids lie loosely, so less dense than they are; what is not known counts as water. */
function millilitresOf(
  source: ScaledItem['item']['source'],
  grams: number,
  { resolved }: ScaledStage,
): number {
  if (source.kind !== 'ingredient') return grams / resolved.densityGramsPerMillilitre;
  return grams / Math.min(1, source.entry.record.figures.density?.value ?? 1);
}

function weighedItem(
  { item, exactGrams }: ScaledItem,
  of: {
    readonly units: number;
    readonly decimals: number;
    readonly subBatches: number;
    readonly choice: WeighingChoice;
    readonly takesRounding: boolean;
  },
): WeighedItem {
  const { units, decimals, subBatches, choice } = of;
  const weighGrams = inGrams(units, decimals);
  return {
    name: item.name,
    about: item.about,
    source: item.source,
    exactGrams,
    weighGrams,
    portionGrams: inGrams(Math.round(units / subBatches / choice.portions), decimals),
    portions: choice.portions,
    divisionGrams: choice.scale.divisionGrams,
    deviation: exactGrams > 0 ? weighGrams / exactGrams - 1 : 0,
    choice,
    takesRounding: of.takesRounding,
  };
}
