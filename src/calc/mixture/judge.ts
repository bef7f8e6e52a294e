/** Faults that only the solved masses show. */

import type { Fault } from '../../problem.ts';
import { trimmedNumber } from '../number-text.ts';
import { isMakeUp, isOnlyRelative, type SolvedStage, type StageEquations } from './equations.ts';
import type { MixtureFault, StageInput } from './picture.ts';
import { atItem } from './plan.ts';

/** Shares that should come to 100 %, and a stage that should come to what it makes, may miss it by this. */
const WHOLE = 1e-3;
/** Below this share of the stage a missing mass is rounding. */
const ROUNDING = 1e-9;

export interface JudgedStage {
  readonly stage: StageInput;
  readonly equations: StageEquations;
  readonly solved: SolvedStage;
  /** g of it in a g of the drink. */
  readonly carried: number;
  /** True where weighed amounts stand in place of the plan. */
  readonly isWeighed: boolean;
}

/** The first thing that is wrong with a solved stage; undefined where it stands. */
export function judgeStage(judged: JudgedStage): MixtureFault | undefined {
  const { stage, equations, solved, carried, isWeighed } = judged;
  const inDrinkAt = equations.items.findIndex(({ term }) => term.inDrink);
  if (inDrinkAt >= 0 && !(carried > 0)) return atItem(notCarried(stage, inDrinkAt), stage.name, inDrinkAt);
  if (isOnlyRelative(equations)) return wholeFault(judged);
  const makeUpAt = equations.items.findIndex(({ term }) => isMakeUp(term));
  const lastAt = makeUpAt >= 0 ? makeUpAt : lastRelative(equations);
  if (isOver(solved, makeUpAt)) {
    if (solved.relativeShare > 1 - ROUNDING) return atItem(sharesOver(judged), stage.name, lastAt);
    if (makeUpAt >= 0) return atItem(overTotal(judged, makeUpAt), stage.name, makeUpAt);
  }
  if (!solved.solvable || !(solved.massGrams > 0)) {
    const message = `${stage.name} comes to 0 g`;
    return atItem(
      { code: 'empty-stage', message, hint: 'give at least one item an amount above 0' },
      stage.name,
    );
  }
  return isWeighed ? undefined : makesFault(judged);
}

function isOver(solved: SolvedStage, makeUpAt: number): boolean {
  if (makeUpAt < 0) return !solved.solvable || solved.massGrams < 0;
  return !solved.solvable || (solved.grams[makeUpAt] ?? 0) < -ROUNDING * Math.abs(solved.massGrams);
}

function lastRelative({ items }: StageEquations): number {
  const places = items.flatMap(({ term }, index) => (term.kind === 'fixed' ? [] : [index]));
  return places.at(-1) ?? items.length - 1;
}

function notCarried({ name, items }: StageInput, itemAt: number): Fault {
  const item = items[itemAt];
  return {
    code: 'not-in-drink',
    message: `"${item?.name}: ${item?.amount.written}" counts in the drink, and none of ${name} goes into the drink`,
    hint: `give ${name} an amount above 0 in the drink`,
  };
}

const percent = (share: number): string =>
  Number.isFinite(share) ? `${trimmedNumber(share * 100, 5)} %` : 'more than 100 %';

function sharesOver({ stage, equations, solved }: JudgedStage): Fault {
  const hasInDrink = equations.items.some(({ term }) => term.inDrink);
  const only = Math.abs(solved.relativeShare - 1) < ROUNDING ? ', and leave no room for the rest' : '';
  return {
    code: 'shares-over',
    message: `the shares and concentrations of ${stage.name} come to ${percent(solved.relativeShare)} of it${only}`,
    hint: hasInDrink
      ? `use more ${stage.name} in the drink, or ask for less in it`
      : 'take them down, so that all items together are 100 %',
  };
}

function overTotal({ stage, solved, isWeighed }: JudgedStage, makeUpAt: number): Fault {
  const item = stage.items[makeUpAt];
  const over = -(solved.grams[makeUpAt] ?? 0);
  const others = trimmedNumber(solved.massGrams + over, 6);
  const total = trimmedNumber(solved.massGrams, 6);
  const isVolume = item?.amount.quantity.dimension === 'volume';
  const whole = isVolume ? `${item.amount.written} is ${total} g` : `${item?.amount.written} is less`;
  return {
    code: 'over-total',
    message: `the other items of ${stage.name} come to ${others} g, and ${whole}`,
    hint: isWeighed
      ? `say what was weighed of ${item?.name}, such as weighed: 0 g`
      : `make up to at least ${others} g, or take the other items down`,
  };
}

/** Shares or parts alone must come to the whole. */
function wholeFault(judged: JudgedStage): MixtureFault | undefined {
  const { stage, equations, solved } = judged;
  const last = equations.items.length - 1;
  const makes = equations.makes?.amount ?? 0;
  if (!(makes > 0) || !solved.solvable) {
    const message = `${stage.name} makes ${stage.makes?.written ?? '0 g'}`;
    return atItem(
      { code: 'empty-stage', message, hint: 'give an amount above 0, such as makes: 50 g' },
      stage.name,
    );
  }
  if (solved.relativeShare > 1 + WHOLE) return atItem(sharesOver(judged), stage.name, last);
  if (solved.relativeShare >= 1 - WHOLE) return undefined;
  const message = `the shares of ${stage.name} come to ${percent(solved.relativeShare)}, not 100 %`;
  const hint = `let one item be the rest: leave out makes and write, such as water: to ${stage.makes?.written ?? '50 g'}`;
  return atItem({ code: 'not-whole', message, hint }, stage.name, last);
}

/** What it makes, beside amounts that settle it already, is only compared. */
function makesFault({ stage, equations, solved }: JudgedStage): MixtureFault | undefined {
  const { makes } = equations;
  if (!makes) return undefined;
  const isMass = makes.kind === 'mass';
  const found = isMass ? solved.massGrams : solved.massGrams * solved.specificVolume;
  if (Math.abs(found - makes.amount) <= WHOLE * makes.amount) return undefined;
  const message = `the items of ${stage.name} come to ${trimmedNumber(found, 6)} ${isMass ? 'g' : 'mL'}, and it says that it makes ${stage.makes?.written}`;
  const hint = 'leave out makes, or let one item make the stage up, such as water: to 50 g';
  return atItem({ code: 'makes-differs', message, hint }, stage.name);
}
