/** A small shelf for tests, and short ways to write stages. */

import type { Book, OwnEntry } from '../../../src/calc/book.ts';
import { makeBook } from '../../../src/calc/book.ts';
import type { ItemInput, ItemSource, ResolvedStage, StageInput } from '../../../src/calc/mixture/picture.ts';
import { type ResolvedMixture, resolveMixture } from '../../../src/calc/mixture/resolve-mixture.ts';
import { parseAmount } from '../../../src/calc/parse-amount.ts';
import { parseQuantity } from '../../../src/calc/parse-quantity.ts';
import type { Amount, Quantity } from '../../../src/calc/quantity.ts';
import type { Figure, Ingredient, Role } from '../../../src/reference/ingredient.ts';

const figure = (value: number): Figure => ({ value, source: 'for tests' });

/** Figures are round numbers near the real ones; no test of a published value rests on them. */
export const shelf: readonly Ingredient[] = [
  { name: 'water', role: 'water', figures: { density: figure(0.998), 'molar mass': figure(18.0153) } },
  { name: 'sucrose', role: 'sugar', aliases: ['table sugar'], figures: { 'apparent density': figure(1.62) } },
  { name: 'citric acid', role: 'acid', figures: { 'molar mass': figure(192.124), density: figure(1.665) } },
  { name: 'sodium chloride', role: 'salt', figures: { 'molar mass': figure(58.44), density: figure(2.16) } },
  { name: 'potassium citrate', role: 'salt', figures: { 'molar mass': figure(306.39) } },
  { name: 'sweet orange oil', role: 'oil', figures: { density: figure(0.845) } },
  {
    name: 'polysorbate 80',
    role: 'emulsifier',
    searchWords: ['zzbrand'],
    figures: { density: figure(1.07) },
  },
  { name: 'propylene glycol', role: 'carrier', figures: { density: figure(1.036) } },
  {
    name: 'ethanol',
    role: 'carrier',
    figures: { density: figure(0.789), 'molar mass': figure(46.068) },
  },
  { name: '4-methoxy-2-methyl-2-butanethiol', role: 'aroma', aliases: ['cassis thiol'], figures: {} },
];

export const ownEntries: readonly OwnEntry[] = [
  {
    name: 'cassis stock',
    role: 'aroma',
    dropGrams: 0.021,
    contains: [
      { name: 'cassis thiol', amount: amount('100 ppm') },
      { name: 'propylene glycol', amount: 'rest' },
    ],
  },
  {
    name: 'cassis stock in water',
    figures: { density: { value: 1, source: 'weighed at the bench' } },
    contains: [
      { name: 'cassis stock', amount: amount('10 g/L') },
      { name: 'ethanol', amount: amount('5 % w/v') },
      { name: 'water', amount: 'rest' },
    ],
  },
];

export const testBook: Book = makeBook({ builtIn: shelf, own: ownEntries }).book;

export function amount(text: string): Amount {
  const read = parseAmount(text);
  if (!read.ok) throw new Error(`${text}: ${read.fault.message}`);
  return read.value;
}

export function quantity(text: string): Quantity {
  const read = parseQuantity(text);
  if (!read.ok) throw new Error(`${text}: ${read.fault.message}`);
  return read.value;
}

interface More {
  readonly weighedGrams?: number;
  readonly role?: Role;
  /** Of another trial. */
  readonly from?: ResolvedStage;
}

/** A line as typed: `['water', 'to 50 g']`. */
export type TypedItem = readonly [name: string, amount: string, more?: More];

interface TypedStage {
  readonly items: readonly TypedItem[];
  readonly makes?: string;
  readonly density?: number;
}

export type TypedStages = Readonly<Record<string, readonly TypedItem[] | TypedStage>>;

const isLong = (stage: readonly TypedItem[] | TypedStage): stage is TypedStage => 'items' in stage;

export function stagesOf(typed: TypedStages): readonly StageInput[] {
  const names = new Set(Object.keys(typed));
  return Object.entries(typed).map(([name, stage]) => {
    const long = isLong(stage) ? stage : { items: stage };
    return {
      name,
      items: long.items.map((item) => itemOf(item, names)),
      ...(long.makes === undefined ? {} : { makes: quantity(long.makes) }),
      ...(long.density === undefined ? {} : { densityGramsPerMillilitre: long.density }),
    };
  });
}

function itemOf([name, written, more = {}]: TypedItem, stages: ReadonlySet<string>): ItemInput {
  const { from, ...rest } = more;
  return { name, source: sourceOf(name, { from, stages }), amount: amount(written), ...rest };
}

function sourceOf(
  name: string,
  { from, stages }: { readonly from: ResolvedStage | undefined; readonly stages: ReadonlySet<string> },
): ItemSource {
  if (from) return { kind: 'other trial', stage: from };
  const entry = testBook.find(name);
  if (entry && !stages.has(name)) return { kind: 'ingredient', entry };
  return { kind: 'stage', stage: name };
}

export function resolve(
  typed: TypedStages,
  more: { readonly dropGrams?: number; readonly celsius?: number } = {},
): ResolvedMixture {
  const { celsius = 20, ...rest } = more;
  return resolveMixture({ stages: stagesOf(typed), temperatureKelvin: celsius + 273.15, ...rest });
}

/** The mixture, where it must be solvable. */
export function solved(
  typed: TypedStages,
  more: Parameters<typeof resolve>[1] = {},
): readonly ResolvedStage[] {
  const { mixture, faults } = resolve(typed, more);
  if (!mixture) throw new Error(faults.map((fault) => `${fault.code}: ${fault.message}`).join('\n'));
  return mixture.stages;
}

export function stageNamed(stages: readonly ResolvedStage[], name: string): ResolvedStage {
  const stage = stages.find((one) => one.name === name);
  if (!stage) throw new Error(`no stage ${name}`);
  return stage;
}

export function gramsOf(stage: ResolvedStage, item: string): number {
  const found = stage.items.find((one) => one.name === item);
  if (!found) throw new Error(`no item ${item} in ${stage.name}`);
  return found.massGrams;
}
