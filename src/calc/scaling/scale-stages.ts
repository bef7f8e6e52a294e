/** How much of every stage a batch needs, exactly. */

import { type Parsed, parsed, refused } from '../../problem.ts';
import { normaliseName } from '../../reference/name.ts';
import { addedVolume, isWater } from '../density/blend.ts';
import type { Mixture, ResolvedStage } from '../mixture/picture.ts';
import { trimmedNumber } from '../number-text.ts';
import { type BatchItem, type BatchStage, massOf } from './batch-stages.ts';
import { type BatchTarget, wholeOf } from './target.ts';

export interface ScaledItem {
  readonly item: BatchItem;
  readonly exactGrams: number;
}

export interface ScaledStage {
  readonly stage: BatchStage;
  /** As in the design; densities and shares are read from here. */
  readonly resolved: ResolvedStage;
  /** What is wanted of it, before what stays in vessels. */
  readonly neededGrams: number;
  /** What is made of it. */
  readonly exactGrams: number;
  /** Times the design. */
  readonly factor: number;
  readonly items: readonly ScaledItem[];
}

export interface ScaleInput {
  readonly stages: readonly BatchStage[];
  /** Of these stages, in the same order. */
  readonly mixture: Mixture;
  readonly target: BatchTarget;
  /** The share of every stage that stays in vessels, from 0 to below 1. */
  readonly loss: number;
  /** A stage of which nothing stays behind: the drink where it is put together in the bottle. */
  readonly lossless?: string | undefined;
  /** g of a stage below which its items can't be weighed; the target is made as asked all the same. */
  readonly leastOf?: (stage: BatchStage) => number;
}

export interface Scaled {
  /** In the order in which they are made; stages that the target does not need are left out. */
  readonly stages: readonly ScaledStage[];
  readonly target: ScaledStage;
}

/** The part of a stage of which no density is known, from which on its volume can't be told. */
const unknownPart = 0.01;

/**
 * Every stage scaled to what is wanted.
 *
 * Formula   made = needed / (1 - loss); needed of a stage = sum over the stages that use it of made x its share there
 * Input     stages with their mixture; the target; the share that stays in vessels
 * Output    stages with exact masses in g
 * Refuses   a stage that is not there; bottles where there is no drink; a loss of all; a volume of a stage whose density is not known
 * Source    conservation of mass
 * Example   drink of 1 kg with 100 g of syrup, to 20 kg of drink, no loss -> syrup 2 kg
 */
export function scaleStages(input: ScaleInput): Parsed<Scaled> {
  const { stages, mixture, target, loss } = input;
  if (!(loss >= 0 && loss < 1))
    return refused(
      'loss-of-all',
      `a loss of ${trimmedNumber(loss * 100, 4)} % leaves nothing`,
      'give what stays in the vessels, such as 3 %',
    );
  const found = targetPlace(input);
  if (!found.ok) return found;
  const wanted = wantedGrams(mixture.stages[found.value], target);
  if (!wanted.ok) return wanted;
  const masses = massesOf(input, { at: found.value, grams: wanted.value });
  const all = stages.map((stage, place) =>
    scaledStage(stage, mixture.stages[place], masses[place] ?? { needed: 0, made: 0 }),
  );
  const scaled = all.filter((one): one is ScaledStage => one !== undefined);
  const last = all[found.value];
  if (!last) throw new Error('the target of a batch comes to nothing');
  return parsed({ stages: scaled, target: last });
}

function targetPlace({ stages, mixture, target }: ScaleInput): Parsed<number> {
  const { stage, written, count } = target;
  const names = stages.map(({ name }) => name);
  const drinkAt = names.indexOf('drink');
  if (stage === undefined && count !== undefined && drinkAt < 0) return noDrink(mixture, target);
  if (stage === undefined) return parsed(drinkAt >= 0 ? drinkAt : names.length - 1);
  const wanted = normaliseName(stage);
  const place = names.findIndex((name) => normaliseName(name) === wanted);
  if (place >= 0) return parsed(place);
  return refused(
    'unknown-stage',
    `"${written}": there is no stage "${stage}"`,
    `its stages are ${names.join(', ')}`,
  );
}

/** Bottles of a stage that is named are taken: a syrup is bottled too. */
function noDrink({ stages }: Mixture, target: BatchTarget): Parsed<never> {
  const last = stages.at(-1);
  const name = last?.name ?? '';
  const grams =
    wholeOf(target) * (target.each.dimension === 'mass' ? 1 : (last?.densityGramsPerMillilitre ?? 1));
  const mass = grams >= 1000 ? `${trimmedNumber(grams / 1000, 3)} kg` : `${trimmedNumber(grams, 3)} g`;
  return refused(
    'no-drink',
    `"${target.written}": this design has no drink stage, and bottles hold the drink`,
    `scale the ${name} by mass: --to "${mass} ${name}"`,
  );
}

function wantedGrams(stage: ResolvedStage | undefined, target: BatchTarget): Parsed<number> {
  const whole = wholeOf(target);
  if (!stage || target.each.dimension === 'mass') return parsed(whole);
  const unknown = stage.densityFrom.measured ? undefined : withoutDensity(stage);
  if (unknown === undefined) return parsed(whole * stage.densityGramsPerMillilitre);
  return refused(
    'no-density',
    `"${target.written}" is a volume, and no density is known of ${unknown} in ${stage.name}`,
    `add density: 1.02 g/mL under ${stage.name} or to ${unknown} in ingredients.yaml, or give a mass`,
  );
}

/** The substance that leaves the volume of a stage open; undefined where it is known well enough. */
function withoutDensity({ substances }: ResolvedStage): string | undefined {
  const unknown = substances.filter(
    ({ entry, massFraction }) => massFraction > 0 && !isWater(entry) && addedVolume(entry) === undefined,
  );
  const share = unknown.reduce((sum, { massFraction }) => sum + massFraction, 0);
  if (share <= unknownPart) return undefined;
  return unknown.toSorted((one, other) => other.massFraction - one.massFraction)[0]?.name;
}

interface StageMasses {
  readonly needed: number;
  readonly made: number;
}

/** g wanted and made of each stage, from the target back to the first. */
function massesOf(
  { stages, mixture, loss, lossless, leastOf }: ScaleInput,
  target: { readonly at: number; readonly grams: number },
): readonly StageMasses[] {
  const needed = stages.map((_, place) => (place === target.at ? target.grams : 0));
  const made = stages.map(() => 0);
  const places = new Map(stages.map(({ name }, place) => [name, place]));
  for (let user = target.at; user >= 0; user -= 1) {
    const stage = stages[user];
    const whole = mixture.stages[user]?.massGrams ?? 0;
    const wanted = needed[user] ?? 0;
    if (!stage || !(whole > 0) || !(wanted > 0)) continue;
    const least = user === target.at ? 0 : (leastOf?.(stage) ?? 0);
    const grams = Math.max(least, wanted / (1 - (stage.name === lossless ? 0 : loss)));
    made[user] = grams;
    for (const item of stage.items) {
      const place = item.source.kind === 'stage' ? places.get(item.source.stage) : undefined;
      if (place !== undefined) needed[place] = (needed[place] ?? 0) + (grams / whole) * massOf(item);
    }
  }
  return stages.map((_, place) => ({ needed: needed[place] ?? 0, made: made[place] ?? 0 }));
}

function scaledStage(
  stage: BatchStage,
  resolved: ResolvedStage | undefined,
  { needed, made }: StageMasses,
): ScaledStage | undefined {
  if (!resolved || !(made > 0)) return undefined;
  const factor = made / resolved.massGrams;
  return {
    stage,
    resolved,
    neededGrams: needed,
    exactGrams: made,
    factor,
    items: stage.items.map((item) => ({ item, exactGrams: massOf(item) * factor })),
  };
}
