/** One thing of a trial or formula varied: what its file becomes at each value, and what that weighs out to. */

import type { Mixture } from '../calc/mixture/picture.ts';
import type { Amount } from '../calc/quantity.ts';
import { blendMasses } from '../calc/rungs/blend-masses.ts';
import { type Kept, ratioMasses } from '../calc/rungs/ratio-masses.ts';
import { type Parsed, parsed, refused } from '../problem.ts';
import type { StageCard, TrialCard } from './cards.ts';
import type { Change } from './edit.ts';
import { setItemAmount } from './edit-item.ts';
import {
  blendItems,
  isItemCalled,
  ladderItems,
  restPlace,
  type StageSeen,
  sharesOf,
} from './ladder-items.ts';
import type { Sources } from './resolve.ts';
import { type LadderBase, type RungWanted, type SolvedRung, solveRung, withRest } from './rung-solve.ts';
import { type Varied, variedIn } from './varied.ts';

/** A value of what is varied: a figure (ratio, HLB), or an amount as typed. */
export type RungValue = number | Amount;

export interface VaryFrom {
  /** The plan: what was weighed is left out. Of a formula, its stages as a trial 0. */
  readonly trial: TrialCard;
  readonly mixture: Mixture;
  readonly sources: Sources;
  readonly varied: Varied;
  readonly kept: Kept;
  readonly divisionOf: (stageGrams: number) => number;
}

export interface VariedRung extends SolvedRung {
  readonly edits: readonly Change[];
  /** What is varied, as it was asked for and as the balance weighs it out, in the unit of `variedIn`. */
  readonly asked: number;
  readonly weighed: number;
}

export interface Variation {
  readonly base: LadderBase;
  readonly stage: StageCard;
  /** What the trial has now, in the unit of `variedIn`. */
  readonly now: number;
  /** The items that are varied. */
  readonly levers: readonly number[];
  readonly rungAt: (value: RungValue) => Parsed<VariedRung>;
  /** Everything but the oil. */
  readonly blank: () => Parsed<VariedRung>;
}

/**
 * Refuses   what is not in the trial, or comes from another trial; temperature and stirring, which are no amounts
 */
export function varying(from: VaryFrom): Parsed<Variation> {
  const { trial, mixture, varied } = from;
  const found = variedIn(varied, { trial, mixture });
  if ('lacks' in found) return refused(found.lacks.code, found.lacks.message, found.lacks.hint);
  const { stage } = found;
  if (!stage) return notAnAmount(varied);
  const stageAt = mixture.stages.indexOf(stage);
  const card = trial.stages[stageAt];
  if (!card) return fromElsewhere(from, stage.name);
  const seen: StageSeen = { card, stage, earlier: mixture.stages.slice(0, stageAt) };
  const levers = leversIn(from, seen);
  const base: LadderBase = {
    stages: trial.stages,
    made: trial.made,
    number: trial.number === 0 ? undefined : trial.number,
    sources: from.sources,
    mixture,
    stageAt,
    restAt: restPlace(seen, levers),
    divisionGrams: from.divisionOf(stage.massGrams),
  };
  const work: Work = { from, seen, base, levers };
  const known = new Map<number | string, Parsed<VariedRung>>();
  return parsed({
    base,
    stage: card,
    now: found.value,
    levers,
    rungAt: (value) => {
      const key = typeof value === 'number' ? value : value.written;
      const rung = known.get(key) ?? rungAt(work, value);
      known.set(key, rung);
      return rung;
    },
    blank: () => blankOf(work),
  });
}

interface Work {
  readonly from: VaryFrom;
  readonly seen: StageSeen;
  readonly base: LadderBase;
  readonly levers: readonly number[];
}

const notAnAmount = ({ text }: Varied): Parsed<never> =>
  refused(
    'not-an-amount',
    `${text} is no amount, so a ladder can't weigh it out`,
    `copy the trial for each rung with neckring new --from, and change the step`,
  );

function fromElsewhere({ mixture, varied }: VaryFrom, stage: string): Parsed<never> {
  const item = mixture.stages
    .flatMap(({ items }) => items)
    .find(({ source }) => source.kind === 'other trial' && source.stage.name === stage);
  const name = item?.name ?? stage;
  const number = /\d+$/u.exec(name)?.[0] ?? 'TRIAL';
  return refused(
    'from-elsewhere',
    `the ${varied.text} is that of "${name}", which is made in another trial`,
    `make the ladder from that trial: neckring ladder ${number}`,
  );
}

function leversIn({ varied, kept }: VaryFrom, seen: StageSeen): readonly number[] {
  const places = seen.stage.items.map((_, at) => at);
  if (varied.kind === 'blend hlb') return blendItems(seen).map(({ at }) => at);
  if (varied.kind === 'amount') return places.filter((at) => isItemCalled(seen, at, varied.of));
  if (varied.kind !== 'ratio') return [];
  const [over, under] = [sharesOf(seen, varied.over), sharesOf(seen, varied.under)];
  const isOver = (at: number): boolean => (over[at] ?? 0) > 0 && under[at] === 0;
  const isUnder = (at: number): boolean => (under[at] ?? 0) > 0 && over[at] === 0;
  return places.filter((at) => (kept !== 'over' && isOver(at)) || (kept !== 'under' && isUnder(at)));
}

function rungAt(work: Work, value: RungValue): Parsed<VariedRung> {
  if (typeof value !== 'number') return amountRung(work, value);
  return work.from.varied.kind === 'blend hlb' ? blendRung(work, value) : ratioRung(work, value);
}

function ratioRung(work: Work, wanted: number): Parsed<VariedRung> {
  const { varied, kept } = work.from;
  if (varied.kind !== 'ratio') return notAnAmount(varied);
  const { over, under } = varied;
  const items = ladderItems(work.seen, over, under);
  const masses = ratioMasses({ items, wanted, kept, overName: over, underName: under });
  if (!masses.ok) return masses;
  const isLever = (at: number): boolean => (items[at]?.[kept === 'over' ? 'under' : 'over'] ?? 0) > 0;
  const moved = work.levers.filter(isLever);
  return solved(work, new Map(masses.value.entries()), {
    asked: wanted,
    correction: (mixture) => {
      const factor = wanted / (figureIn(work, mixture) ?? wanted);
      return new Map(moved.map((at) => [at, kept === 'over' ? 1 / factor : factor]));
    },
  });
}

function blendRung(work: Work, wanted: number): Parsed<VariedRung> {
  const items = blendItems(work.seen);
  const unknown = items.find(({ hlb }) => Number.isNaN(hlb));
  if (unknown)
    return refused('no-hlb', `${unknown.name} has no HLB`, 'give it one in ingredients.yaml: "hlb: 15"');
  const masses = blendMasses(items, wanted);
  if (!masses.ok) return masses;
  return solved(work, new Map(items.map(({ at }, place) => [at, masses.value[place] ?? 0])), {
    asked: wanted,
  });
}

/** One item gets the amount as it is typed; several alike get it between them. */
function amountRung(work: Work, amount: Amount): Parsed<VariedRung> {
  const { seen, levers } = work;
  const [only, second] = levers;
  if (only === undefined) return noLine(work);
  const grams = (at: number): number => seen.stage.items[at]?.massGrams ?? 0;
  if (second !== undefined) {
    const total = levers.reduce((sum, at) => sum + grams(at), 0);
    const { quantity } = amount;
    if (quantity.dimension !== 'mass' || !(total > 0)) {
      const names = levers.map((at) => seen.stage.items[at]?.name ?? '').join(' and ');
      return refused('several-items', `${names} are varied together`, 'give their mass in all, such as 4 g');
    }
    const masses = new Map(levers.map((at) => [at, (grams(at) * quantity.inner) / total]));
    return solved(work, masses, { asked: quantity.inner });
  }
  const typed = seen.card.items[only]?.amount;
  if (typed?.makeUp) {
    const message = `${seen.stage.items[only]?.name} makes ${seen.stage.name} up (${typed.written}), so it is what is left`;
    return refused('makes-up', message, 'vary something else, or give it an amount of its own in the trial');
  }
  const isAlike = typed?.quantity.dimension === amount.quantity.dimension && typed.inDrink === amount.inDrink;
  const known = isAlike && typed.quantity.inner > 0;
  const masses: ReadonlyMap<number, number> = known
    ? new Map([[only, (grams(only) * amount.quantity.inner) / typed.quantity.inner]])
    : amount.quantity.dimension === 'mass'
      ? new Map([[only, amount.quantity.inner]])
      : new Map();
  return solved(work, masses, { amounts: new Map([[only, amount]]), fillsRest: masses.size === 0 });
}

const noLine = ({ from: { varied } }: Work): Parsed<never> =>
  refused(
    'no-lever',
    `${varied.text} has no line with an amount of its own`,
    'give it one in the trial, apart from what makes the stage up',
  );

/** Refuses a stage whose oil comes with something else. */
function blankOf(work: Work): Parsed<VariedRung> {
  const oil = sharesOf(work.seen, 'oil');
  const places = oil.flatMap((share, at) => (share > 0 ? [at] : []));
  const mixed = places.find((at) => (oil[at] ?? 0) < 1 - 1e-9 || work.seen.card.items[at]?.amount.makeUp);
  if (places.length === 0) return refused('no-oil', 'there is no oil to leave out', 'leave --blank out');
  if (mixed !== undefined) {
    const name = work.seen.stage.items[mixed]?.name ?? '';
    const message = `${name} is not oil alone, so a blank can't be made from this trial`;
    return refused('mixed-oil', message, 'leave --blank out, and make the blank by hand');
  }
  return solved(work, new Map(places.map((at) => [at, 0])), { asked: 0 });
}

const figureIn = ({ from: { varied, trial } }: Work, mixture: Mixture): number | undefined => {
  const found = variedIn(varied, { trial, mixture });
  return 'lacks' in found ? undefined : found.value;
};

function solved(
  work: Work,
  masses: ReadonlyMap<number, number>,
  how: Omit<RungWanted, 'masses'> & { readonly asked?: number },
): Parsed<VariedRung> {
  const { base, seen } = work;
  const all = how.fillsRest ? parsed(masses) : withRest(base, masses);
  if (!all.ok) return all;
  const rung = solveRung(base, { ...how, masses: all.value });
  if (!rung.ok) return rung;
  const { items, changed, mixture, weighedMixture } = rung.value;
  return parsed({
    ...rung.value,
    edits: changed.map((at) =>
      setItemAmount(['stages', seen.card.name], at, items[at]?.amount.written ?? ''),
    ),
    asked: how.asked ?? figureIn(work, mixture) ?? 0,
    weighed: figureIn(work, weighedMixture) ?? 0,
  });
}
