/** A stronger syrup for another throw: the same drink, its water moved from the syrup to the drink. */

import { type Parsed, parsed, refused } from '../../problem.ts';
import { isWater } from '../density/blend.ts';
import { trimmedNumber } from '../number-text.ts';
import { findRoot } from '../solution/root.ts';
import { type BatchItem, type BatchStage, massOf, withMass } from './batch-stages.ts';
import { mixtureOfStages } from './re-resolve.ts';

export interface Stronger {
  readonly stages: readonly BatchStage[];
  /** The stage that was made stronger. */
  readonly syrup: string;
  /** True where the drink takes another water than the syrup. */
  readonly isOtherWater: boolean;
  /** g of water that a gram of the old syrup gave up. */
  readonly movedShare: number;
}

/**
 * The syrup at `strength` times what it was, by volume, in a drink that holds the same of everything.
 *
 * Formula   V(syrup - x of water) = V(syrup) / strength; the drink gets x of water for the syrup that goes into it
 * Input     stages of masses; strength above 0 (1.2: as much in 1/1.2 of the volume); temperatureKelvin
 * Output    the stages with that water moved
 * Refuses   no drink; no syrup in it; no water in syrup or drink; more strength than the water in the syrup allows
 * Source    conservation of mass; volumes as of any mixture
 * Example   200 mL of syrup to 1 L at strength 1.25 -> 160 mL of syrup to 1 L
 */
export function strongerSyrup(given: {
  readonly stages: readonly BatchStage[];
  readonly strength: number;
  readonly temperatureKelvin: number;
}): Parsed<Stronger> {
  const { stages, strength, temperatureKelvin } = given;
  if (!(strength > 0))
    return refused('not-positive', `a strength of ${strength} is none`, 'give a figure such as 1.2');
  const places = syrupPlaces(stages);
  if (!places.ok) return places;
  const { syrupAt, drinkAt, useAt } = places.value;
  const syrup = unmeasured(stages[syrupAt]);
  const drink = unmeasured(stages[drinkAt]);
  const from = waterAt(syrup);
  const to = waterAt(drink, syrup.items[from]);
  if (from < 0 || to < 0)
    return refused(
      'no-water',
      `the ${from < 0 ? syrup.name : 'drink'} has no water of its own to ${from < 0 ? 'leave out' : 'take up what the syrup leaves out'}`,
      'a throw needs water in the syrup and in the drink',
    );
  const syrupGrams = gramsIn(syrup);
  const used = massOf(drink.items[useAt] ?? noItem());
  const volumeWithout = (share: number): number => {
    const changed = lessWater(syrup, from, share * syrupGrams);
    const all = stages.map((stage, place) => (place === syrupAt ? changed : stage));
    return (
      mixtureOfStages(all.slice(0, syrupAt + 1), temperatureKelvin).stages[syrupAt]?.volumeMillilitres ?? 0
    );
  };
  const whole = volumeWithout(0);
  const most = massOf(syrup.items[from] ?? noItem()) / syrupGrams;
  const least = -massOf(drink.items[to] ?? noItem()) / Math.max(used, Number.MIN_VALUE);
  const excess = (share: number): number => volumeWithout(share) - whole / strength;
  const [low, high] = [Math.max(least, -1e6), most];
  if (excess(high) > 1e-9 * whole) return tooStrong(syrup.name, whole / volumeWithout(high));
  if (excess(low) < 0)
    return refused(
      'too-weak',
      `at a strength of ${trimmedNumber(strength, 4)} there is no water left to add to the ${syrup.name}`,
      'give a figure nearer to 1',
    );
  const share = strength === 1 ? 0 : findRoot({ low, high, valueAt: excess, close: 1e-15 });
  const changed = stages.map((stage, place) => {
    if (place === syrupAt) return lessWater(syrup, from, share * syrupGrams);
    return place === drinkAt ? moreWater(drink, { useAt, to, moved: share * used }) : stage;
  });
  const isOtherWater = nameOf(syrup.items[from]) !== nameOf(drink.items[to]);
  return parsed({ stages: changed, syrup: syrup.name, isOtherWater, movedShare: share });
}

interface Places {
  readonly syrupAt: number;
  readonly drinkAt: number;
  /** The place of the syrup among the items of the drink. */
  readonly useAt: number;
}

/** The stage named syrup, or else the stage of which the drink takes most. */
function syrupPlaces(stages: readonly BatchStage[]): Parsed<Places> {
  const drinkAt = stages.findIndex(({ name }) => name === 'drink');
  const items = stages[drinkAt]?.items ?? [];
  const uses = items.filter(({ source }) => source.kind === 'stage');
  const syrup =
    uses.find(({ name }) => name === 'syrup') ??
    uses.toSorted((one, other) => massOf(other) - massOf(one))[0];
  if (!syrup)
    return refused(
      'no-syrup',
      drinkAt < 0 ? 'there is no stage named drink' : 'the drink is made without a syrup',
      'a strength is for a syrup that goes into a stage named drink',
    );
  const syrupAt = stages.findIndex(({ name }) => name === syrup.name);
  return parsed({ syrupAt, drinkAt, useAt: items.indexOf(syrup) });
}

const noItem = (): never => {
  throw new Error('an item of a batch is gone');
};

const gramsIn = ({ items }: BatchStage): number => items.reduce((sum, item) => sum + massOf(item), 0);

/** A density that was measured is that of the old strength. */
function unmeasured(stage: BatchStage | undefined): BatchStage {
  if (!stage) return noItem();
  const { densityGramsPerMillilitre: _, ...rest } = stage;
  return rest;
}

const nameOf = (item: BatchItem | undefined): string =>
  item?.source.kind === 'ingredient' ? item.source.entry.name : '';

/** The largest item that is water; of the same kind as `like` where there is one. */
function waterAt({ items }: BatchStage, like?: BatchItem): number {
  const waters = items
    .filter(({ source }) => source.kind === 'ingredient' && isWater(source.entry))
    .toSorted((one, other) => massOf(other) - massOf(one));
  const same = waters.find((item) => like !== undefined && nameOf(item) === nameOf(like));
  const best = same ?? waters[0];
  return best ? items.indexOf(best) : -1;
}

const lessWater = (stage: BatchStage, at: number, grams: number): BatchStage => ({
  ...stage,
  items: stage.items.map((item, place) =>
    place === at ? withMass(item, Math.max(0, massOf(item) - grams)) : item,
  ),
});

const moreWater = (
  drink: BatchStage,
  { useAt, to, moved }: { readonly useAt: number; readonly to: number; readonly moved: number },
): BatchStage => ({
  ...drink,
  items: drink.items.map((item, place) => {
    if (place === useAt) return withMass(item, massOf(item) - moved);
    return place === to ? withMass(item, massOf(item) + moved) : item;
  }),
});

const tooStrong = (name: string, most: number): Parsed<never> =>
  refused(
    'too-strong',
    `without any of its water the ${name} is ${trimmedNumber(most, 4)} times as strong`,
    `give at most --strength ${Math.floor(most * 100) / 100}, or take other water out of it first`,
  );
