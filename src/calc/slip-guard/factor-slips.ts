/** Amounts that differ by 10, 100 or 1000 from what they were: a point or a unit is easily misplaced. */

import { normaliseName } from '../../reference/name.ts';
import { slipFactors } from '../../reference/usual-bands.ts';
import type { Caution } from '../answer.ts';
import type { Mixture } from '../mixture/picture.ts';
import { trimmedNumber } from '../number-text.ts';
import type { Amount } from '../quantity.ts';
import type { PlacedCaution } from './placed-caution.ts';

/** How much, in a unit that only the same `kind` shares. */
export interface Measure {
  readonly kind: string;
  readonly inner: number;
  /** True where it grows with the batch. */
  readonly isWhole: boolean;
  readonly written: string;
}

export interface ComparedItem {
  readonly name: string;
  /** What it is the same as: one lot of an oil as another, a stage of one trial as that of another. */
  readonly key: string;
  readonly measure: Measure;
}

export interface ComparedStage {
  readonly name: string;
  readonly items: readonly ComparedItem[];
  /** What the stage makes, where that is written. */
  readonly makes?: Measure;
}

const wholeKinds: ReadonlySet<string> = new Set(['mass', 'volume', 'drops', 'parts']);

/** An amount as it was typed. */
export const typedMeasure = ({ quantity, makeUp, inDrink, written }: Amount): Measure => ({
  kind: `${makeUp ? 'to ' : ''}${quantity.dimension}${inDrink ? ' in drink' : ''}`,
  inner: quantity.inner,
  isWhole: wholeKinds.has(quantity.dimension),
  written,
});

/** Planned masses of a mixture, for amounts that were typed in units of different kinds. */
export const comparedMixture = ({ stages }: Mixture): readonly ComparedStage[] =>
  stages.map(({ name, items }) => ({
    name,
    items: items.map((item) => ({
      name: item.name,
      key: item.name,
      measure: {
        kind: 'planned mass',
        inner: item.plannedGrams,
        isWhole: true,
        written: `${trimmedNumber(item.plannedGrams, 4)} g`,
      },
    })),
  }));

/**
 * The factor by which two amounts differ, where it looks like a slip.
 *
 * Formula   larger / smaller within 5 % of 10, 100 or 1000
 * Output    10, 100 or 1000; undefined for any other difference
 * Example   slipFactor(20, 2.05) -> 10
 */
export function slipFactor(one: number, other: number): number | undefined {
  if (!(one > 0 && other > 0)) return undefined;
  const ratio = Math.max(one, other) / Math.min(one, other);
  return slipFactors.factors.find((factor) => Math.abs(ratio / factor - 1) <= slipFactors.within + 1e-12);
}

export interface Compared {
  readonly now: readonly ComparedStage[];
  readonly before: readonly ComparedStage[];
  /** What it came from, in words: `trial 11`. */
  readonly from: string;
}

/**
 * Items that differ by a slip's factor from the same item of what the trial came from. A stage of which everything
 * grew or shrank alike is a bigger or smaller batch and is not asked about.
 *
 * Input     stages with the amounts of their items; the same of the trial that it came from
 * Output    cautions with the code `slip-factor`, each at its item
 * Example   20 g where trial 11 has 2 g, the rest alike -> slip-factor
 */
export function factorSlips({ now, before, from }: Compared): readonly PlacedCaution[] {
  return now.flatMap((stage) => {
    const earlier = before.find(({ name }) => isSame(name, stage.name));
    return earlier ? stageSlips(stage, earlier, from) : [];
  });
}

export interface Pair {
  readonly item: number;
  readonly now: ComparedItem;
  readonly before: ComparedItem;
}

function stageSlips(stage: ComparedStage, earlier: ComparedStage, from: string): readonly PlacedCaution[] {
  const pairs = pairsOf(stage, earlier).filter(({ now, before }) => now.measure.kind === before.measure.kind);
  const isBatch = isOtherBatch(stage, earlier, pairs);
  return pairs.flatMap(({ item, now, before }) => {
    const factor = slipFactor(now.measure.inner, before.measure.inner);
    if (factor === undefined || (isBatch && now.measure.isWhole)) return [];
    const way = now.measure.inner > before.measure.inner ? 'more' : 'less';
    return [
      {
        code: 'slip-factor',
        text: `${now.measure.written} of ${now.name} is ${factor} times ${way} than in ${from} (${before.measure.written}): is this meant?`,
        source: slipFactors.source,
        hint: 'check the decimal point and the unit',
        at: { stage: stage.name, item },
      },
    ];
  });
}

/** The same item in both, the second of a name with the second: by its name, else by what it is the same as. */
export function pairsOf(stage: ComparedStage, earlier: ComparedStage): readonly Pair[] {
  const left = [...earlier.items];
  return stage.items.flatMap((now, item) => {
    const byName = left.findIndex(({ name }) => name === now.name);
    const at = byName >= 0 ? byName : sameItem(left, now);
    const [before] = at < 0 ? [] : left.splice(at, 1);
    return before ? [{ item, now, before }] : [];
  });
}

function sameItem(items: readonly ComparedItem[], { name, key }: ComparedItem): number {
  const byName = items.findIndex((one) => isSame(one.name, name));
  return byName >= 0 ? byName : items.findIndex((one) => isSame(one.key, key));
}

const isSame = (one: string, other: string): boolean =>
  one === other || normaliseName(one) === normaliseName(other);

const nearlyOne = (ratio: number): boolean => Math.abs(ratio - 1) <= slipFactors.within;

function isOtherBatch(stage: ComparedStage, earlier: ComparedStage, pairs: readonly Pair[]): boolean {
  const whole = pairs.filter(({ now }) => now.measure.isWhole);
  const ratios = whole.map(({ now, before }) => now.measure.inner / before.measure.inner);
  const { makes } = stage;
  if (makes && makes.kind === earlier.makes?.kind) ratios.push(makes.inner / earlier.makes.inner);
  const [first] = ratios;
  const isAlone = stage.items.length === whole.length && ratios.length < 2;
  return first !== undefined && !isAlone && ratios.every((ratio) => nearlyOne(ratio / first));
}

/**
 * The question about a weighing that is 10, 100 or 1000 times its plan, or a part of it.
 *
 * Input     plannedGrams, weighedGrams
 * Output    one caution with the code `slip-weighed`, or none
 * Example   slipsOfWeighing(2, 20.3) -> slip-weighed
 */
export function slipsOfWeighing(plannedGrams: number, weighedGrams: number): readonly Caution[] {
  const factor = slipFactor(weighedGrams, plannedGrams);
  if (factor === undefined) return [];
  const way = weighedGrams > plannedGrams ? 'more' : 'less';
  return [
    {
      code: 'slip-weighed',
      text: `${trimmedNumber(weighedGrams)} g weighed is ${factor} times ${way} than the planned ${trimmedNumber(plannedGrams, 4)} g: is this meant?`,
      source: slipFactors.source,
    },
  ];
}
