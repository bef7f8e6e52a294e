/** The items of a trial as they are weighed: in the order of addition, with what the balance should read. */

import type { Mixture } from '../calc/mixture/picture.ts';
import { numberText } from '../calc/number-text.ts';
import { asShown, balanceFor, isOverEvery, type Scale } from '../calc/weighing/balance.ts';
import type { BenchCard, ItemCard, StageCard, TrialCard } from '../ledger/cards.ts';
import { isSameName } from '../ledger/stage-name.ts';
import { fail } from '../problem.ts';
import { nearestNames, normaliseName } from '../reference/name.ts';

/** One addition. */
export interface Addition {
  readonly stage: StageCard;
  /** The place of the item in its stage. */
  readonly index: number;
  readonly item: ItemCard;
  /** What to weigh, given what was weighed before it: a make-up line adapts. */
  readonly plannedGrams: number;
  /** What the plan alone asks for. */
  readonly plannedAtFirstGrams: number;
  readonly divisionGrams: number;
}

const unknownDivision = 0.01;

export const scalesOf = (bench: BenchCard): readonly Scale[] =>
  bench.balances.map((one) => ({ divisionGrams: one.division.inner, limitGrams: one.limit?.inner }));

/** All additions of the stages, or of one stage. */
export function additionsOf(
  card: Pick<TrialCard, 'stages' | 'number'>,
  mixture: Mixture,
  bench: BenchCard,
  stageName: string | undefined,
): readonly Addition[] {
  const stages = stageName === undefined ? card.stages : [stageNamed(card, stageName)];
  return stages.flatMap((stage) => {
    const solved = mixture.stages.find((one) => one.name === stage.name);
    const scale = balanceFor(scalesOf(bench), solved?.massGrams ?? 0);
    return stage.items.map((item, index) => ({
      stage,
      index,
      item,
      plannedGrams:
        (item.weighed ? solved?.items[index]?.plannedGrams : solved?.items[index]?.massGrams) ?? 0,
      plannedAtFirstGrams: solved?.items[index]?.plannedGrams ?? 0,
      divisionGrams: scale?.divisionGrams ?? unknownDivision,
    }));
  });
}

function stageNamed(card: Pick<TrialCard, 'stages' | 'number'>, typed: string): StageCard {
  const names = card.stages.map((one) => one.name);
  return (
    card.stages.find((one) => isSameName(one.name, typed)) ??
    fail(
      'unknown-stage',
      `trial ${card.number} has no stage "${typed}"`,
      `its stages are ${names.join(', ')}`,
    )
  );
}

/** The one addition that a typed name means: its whole name, or words of it that fit no other. */
export function additionNamed(additions: readonly Addition[], typed: string): Addition {
  const exact = additions.filter((one) => isSameName(one.item.name, typed));
  const wanted = normaliseName(typed);
  const fitting =
    exact.length > 0 ? exact : additions.filter((one) => normaliseName(one.item.name).includes(wanted));
  const [first, second] = fitting;
  if (first && !second) return first;
  if (first) {
    const places = fitting.map((one) => `${one.item.name} in ${one.stage.name}`);
    return fail(
      'which-item',
      `"${typed}" fits ${places.join(' and ')}`,
      'type more of the name, or --stage STAGE',
    );
  }
  const names = [...new Set(additions.map((one) => one.item.name))];
  const near = nearestNames(typed, names, 2);
  return fail(
    'unknown-item',
    `there is no item "${typed}"`,
    `did you mean ${(near.length > 0 ? near : names).join(', ')}?`,
  );
}

/** Before the first pour: stages that no balance takes at once. */
export function loadCautions(card: TrialCard, mixture: Mixture, bench: BenchCard): readonly string[] {
  const scales = scalesOf(bench);
  const most = Math.max(...scales.map((scale) => scale.limitGrams ?? Number.POSITIVE_INFINITY));
  return card.stages.flatMap((stage) => {
    const solved = mixture.stages.find((one) => one.name === stage.name);
    if (!solved) return [];
    const vessel = bench.vessels
      .filter((one) => one.mass && (one.volume?.inner ?? 0) >= solved.volumeMillilitres)
      .sort((left, right) => (left.volume?.inner ?? 0) - (right.volume?.inner ?? 0))[0];
    const load = solved.massGrams + (vessel?.mass?.inner ?? 0);
    if (!isOverEvery(scales, load)) return [];
    const what = vessel ? `with its vessel (${vessel.name ?? vessel.mass?.written})` : 'without its vessel';
    return [
      `${stage.name} comes to ${numberText(load, 4)} g ${what}, more than the ${numberText(most, 4)} g that the largest balance takes: weigh it in portions`,
    ];
  });
}

/** What the balance should read after each addition of a stage, on one tare; as weighed where weighed. */
export function readings(additions: readonly Addition[]): readonly string[] {
  const totals = new Map<StageCard, number>();
  return additions.map(({ stage, item, plannedGrams, divisionGrams }) => {
    const total = (totals.get(stage) ?? 0) + (item.weighed?.inner ?? plannedGrams);
    totals.set(stage, total);
    return asShown(total, divisionGrams);
  });
}
