/** A rung of a ladder: the stage with one thing changed, its amounts as the bench can weigh them. */

import type { Mixture, ResolvedStage } from '../calc/mixture/picture.ts';
import type { Amount } from '../calc/quantity.ts';
import { isWeighedOut, roundedAmount, timesAmount } from '../calc/rungs/amount-for.ts';
import { type Parsed, parsed, refused } from '../problem.ts';
import type { ItemCard, Moment, StageCard } from './cards.ts';
import { resolveStages, type Sources } from './resolve.ts';

/** What a ladder starts from: a plan without weighed amounts, and the stage in which one thing is varied. */
export interface LadderBase {
  readonly stages: readonly StageCard[];
  readonly made?: Moment | undefined;
  readonly number?: number | undefined;
  readonly sources: Sources;
  readonly mixture: Mixture;
  readonly stageAt: number;
  /** The item that takes the rest. */
  readonly restAt: number | undefined;
  /** Of the balance that takes the stage. */
  readonly divisionGrams: number;
}

/** What is wanted of one rung. */
export interface RungWanted {
  /** Masses in g, where an item is to weigh something else than now. */
  readonly masses: ReadonlyMap<number, number>;
  /** Amounts as they are to be typed. */
  readonly amounts?: ReadonlyMap<number, Amount>;
  /** How far the amounts of these items are off: the wanted figure over that of the mixture; 1 when they are right. */
  readonly correction?: ((mixture: Mixture) => ReadonlyMap<number, number>) | undefined;
  /** The rest is still to be found, since the masses don't tell it. */
  readonly fillsRest?: boolean;
}

export interface SolvedRung {
  /** The items of the stage with the amounts to type, rounded for the bench. */
  readonly items: readonly ItemCard[];
  /** Places of the items whose amount is not as in the base. */
  readonly changed: readonly number[];
  /** As typed. */
  readonly mixture: Mixture;
  /** With every item on the balance as the balance shows it. */
  readonly weighedMixture: Mixture;
}

export const stageOf = ({ mixture, stageAt }: Pick<LadderBase, 'mixture' | 'stageAt'>): ResolvedStage =>
  mixture.stages[stageAt] ?? missingStage();

const missingStage = (): never => {
  throw new Error('a ladder without its stage');
};

const mostRounds = 12;
const closeEnough = 1e-10;

/**
 * Formula   amounts in proportion to the wanted masses, in the kind of unit typed; the rest takes what is left of the
 *           mass of the stage; corrected on the mixture until it is right, then rounded
 * Refuses   masses for which there is no room, and what the mixture refuses
 */
export function solveRung(base: LadderBase, wanted: RungWanted): Parsed<SolvedRung> {
  const start = startItems(base, wanted);
  if (!start.ok) return start;
  const exact = corrected(base, wanted, start.value);
  if (!exact.ok) return exact;
  const rounded = exact.value.map((item, at) =>
    item === base.stages[base.stageAt]?.items[at] || wanted.amounts?.has(at)
      ? item
      : { ...item, amount: roundedAmount(item.amount, base.divisionGrams) },
  );
  const mixture = mixtureWith(base, rounded);
  if (!mixture.ok) return mixture;
  const weighed = mixtureWith(base, asWeighedOut(base, rounded, mixture.value));
  if (!weighed.ok) return weighed;
  const now = base.stages[base.stageAt]?.items ?? [];
  return parsed({
    items: rounded,
    changed: rounded.flatMap((item, at) => (item.amount.written === now[at]?.amount.written ? [] : [at])),
    mixture: mixture.value,
    weighedMixture: weighed.value,
  });
}

function startItems(base: LadderBase, { masses, amounts }: RungWanted): Parsed<readonly ItemCard[]> {
  const now = stageOf(base).items;
  const items = base.stages[base.stageAt]?.items ?? [];
  const started: ItemCard[] = [];
  for (const [at, item] of items.entries()) {
    const typed = amounts?.get(at);
    const grams = masses.get(at);
    const from = now[at]?.massGrams ?? 0;
    if (typed) started.push({ ...item, amount: typed });
    else if (grams === undefined || grams === from) started.push(item);
    else if (from > 0) started.push({ ...item, amount: timesAmount(item.amount, grams / from) });
    else if (item.amount.quantity.dimension === 'mass') {
      const quantity = { ...item.amount.quantity, inner: grams };
      started.push({ ...item, amount: { ...item.amount, quantity } });
    } else {
      const message = `${item.name} is ${item.amount.written} in the trial`;
      return refused('nothing-there', message, 'give it an amount in g to start from');
    }
  }
  return parsed(started);
}

/** The amounts moved until the figure is right, and the size of the stage where the masses don't tell it. */
function corrected(
  base: LadderBase,
  { correction, fillsRest }: RungWanted,
  start: readonly ItemCard[],
): Parsed<readonly ItemCard[]> {
  let items = start;
  for (let round = 0; round < mostRounds; round += 1) {
    const mixture = mixtureWith(base, items);
    if (!mixture.ok) return mixture;
    const off = new Map(correction?.(mixture.value));
    if (fillsRest && base.restAt !== undefined) off.set(base.restAt, restFactor(base, mixture.value));
    const factors = [...off.values()];
    if (factors.some((factor) => !(factor > 0))) return noRoom(base);
    if (factors.every((factor) => Math.abs(factor - 1) < closeEnough)) break;
    items = items.map((item, at) => {
      const factor = off.get(at);
      return factor === undefined || item.amount.makeUp
        ? item
        : { ...item, amount: timesAmount(item.amount, factor) };
    });
  }
  return parsed(items);
}

/** By how much more or less the rest has to be for the stage to weigh what it did. */
function restFactor(base: LadderBase, mixture: Mixture): number {
  const now = stageOf({ ...base, mixture });
  const grams = now.items[base.restAt ?? 0]?.massGrams ?? 0;
  return (grams + stageOf(base).massGrams - now.massGrams) / grams;
}

/**
 * The masses with that of the rest, where it is a plain amount and not a line that makes the stage up.
 *
 * Formula   rest = mass of the stage - the other masses
 * Refuses   a rest below nothing
 */
export function withRest(
  base: LadderBase,
  masses: ReadonlyMap<number, number>,
): Parsed<ReadonlyMap<number, number>> {
  const { restAt } = base;
  const stage = stageOf(base);
  if (restAt === undefined) return parsed(masses);
  const others = stage.items.reduce(
    (sum, { massGrams }, at) => (at === restAt ? sum : sum + (masses.get(at) ?? massGrams)),
    0,
  );
  const rest = stage.massGrams - others;
  if (rest < -1e-9 * stage.massGrams) return noRoom(base);
  const makesUp = base.stages[base.stageAt]?.items[restAt]?.amount.makeUp;
  return parsed(makesUp ? masses : new Map([...masses, [restAt, Math.max(0, rest)]]));
}

function noRoom(base: LadderBase): Parsed<never> {
  const stage = stageOf(base);
  const rest = stage.items[base.restAt ?? -1]?.name ?? 'the rest';
  return refused(
    'no-room',
    `there is no room for it: ${stage.name} is ${Number(stage.massGrams.toPrecision(4))} g in all, and ${rest} can't give way any further`,
    'choose a lower rung, or make the stage of the trial larger',
  );
}

function mixtureWith(base: LadderBase, items: readonly ItemCard[]): Parsed<Mixture> {
  const stages = base.stages.map((stage, at) => (at === base.stageAt ? { ...stage, items } : stage));
  const { mixture, found } = resolveStages({ stages, made: base.made, number: base.number }, base.sources);
  if (mixture) return parsed(mixture);
  const finding = found.find((one) => one.finding.severity !== 'warning')?.finding;
  return refused(
    finding?.code ?? 'not-solved',
    finding?.message ?? "the stage can't be worked out",
    finding?.hint ?? 'look at its amounts',
  );
}

function asWeighedOut(base: LadderBase, items: readonly ItemCard[], mixture: Mixture): readonly ItemCard[] {
  const stage = stageOf({ ...base, mixture });
  const division = base.divisionGrams;
  return items.map((item, at): ItemCard => {
    if (item.amount.makeUp || !isWeighedOut(item.amount.quantity.dimension)) return item;
    const inner = Math.round((stage.items[at]?.massGrams ?? 0) / division) * division;
    const weighed = { value: inner, unit: 'g', dimension: 'mass' as const, inner, written: `${inner} g` };
    return { ...item, weighed };
  });
}
