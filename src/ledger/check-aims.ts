/** Whether a formula comes to what it aims at. */

import { type JudgedAim, judgeAim, missedWords } from '../calc/drink/aims.ts';
import { type FinishedDrink, finishedDrink } from '../calc/drink/finished-drink.ts';
import type { Mixture } from '../calc/mixture/picture.ts';
import { trimmedNumber } from '../calc/number-text.ts';
import type { Problem } from '../problem.ts';
import type { AimCard, FormulaCard } from './cards.ts';
import { type Check, found } from './check.ts';
import { drinkConditions } from './drink-conditions.ts';
import { type ItemMove, itemMoves, type WithStages } from './item-moves.ts';
import { resolveStages, type Sources } from './resolve.ts';
import { isSameName } from './stage-name.ts';

export interface AimReport {
  readonly card: AimCard;
  readonly judged: JudgedAim;
  /** The item that moves it most, for a miss. */
  readonly mover: ItemMove | undefined;
}

/** A miss of a formula is an error at the line of the aim; a batch is made already, and its miss a warning. */
export const checkAims: Check = (context) => [...formulaMisses(context), ...batchMisses(context)];

const batchMisses: Check = (context) =>
  context.ledger.batches.flatMap((card): readonly Problem[] => {
    const formula = context.ledger.formulas.find(
      ({ name, isSound }) => isSound && card.formula && isSameName(name, card.formula.text),
    );
    if (!card.isSound || card.stages.length === 0 || !formula || formula.aims.length === 0) return [];
    const { mixture } = resolveStages(card, context.sources);
    const conditions = drinkConditions({ bench: context.sources.bench, card, formula });
    const drink = mixture && finishedDrink(mixture, conditions);
    if (!drink?.ok) return [];
    return aimReportsOf({ card, aims: formula.aims, drink: drink.value, sources: context.sources })
      .filter(({ judged }) => judged.state === 'missed')
      .map((report) =>
        found(context, card, { ...missFinding(report), severity: 'warning' }, card.formula ?? card.nameSpan),
      );
  });

const formulaMisses: Check = (context) =>
  context.ledger.formulas.flatMap((card): readonly Problem[] => {
    const [first] = card.aims;
    if (!card.isSound || !first) return [];
    const { mixture } = resolveStages(card, context.sources);
    if (!mixture) return [];
    const drink = finishedDrink(mixture, drinkConditions({ bench: context.sources.bench, card }));
    if (!drink.ok) {
      const { code, message, hint } = drink.fault;
      const finding = {
        code,
        severity: 'warning',
        message: `the aims are not judged: ${message}`,
        hint,
      } as const;
      return [found(context, card, finding, first.nameSpan)];
    }
    return aimReports(card, drink.value, context.sources)
      .filter(({ judged }) => judged.state === 'missed')
      .map((report) => found(context, card, missFinding(report), report.card.span));
  });

/** Every aim of a formula beside its drink. */
export const aimReports = (card: FormulaCard, drink: FinishedDrink, sources: Sources): readonly AimReport[] =>
  aimReportsOf({ card, aims: card.aims, drink, sources });

interface AimsOf {
  /** What is changed to move a figure: the formula itself, or a batch of it. */
  readonly card: WithStages;
  readonly aims: readonly AimCard[];
  readonly drink: FinishedDrink;
  readonly sources: Sources;
  /** What is laid over every drink before it is judged. */
  readonly moved?: (drink: FinishedDrink) => FinishedDrink;
}

export function aimReportsOf({ card, aims, sources, ...given }: AimsOf): readonly AimReport[] {
  const { moved = (same) => same } = given;
  const drink = moved(given.drink);
  return aims.map((aim) => {
    const judged = judgeAim(aim, drink);
    return {
      card: aim,
      judged,
      mover: judged.state === 'missed' ? moverOf(card, aim, { drink, judged, sources, moved }) : undefined,
    };
  });
}

interface MovedBy extends Pick<AimsOf, 'drink' | 'sources'> {
  readonly judged: JudgedAim;
  readonly moved: NonNullable<AimsOf['moved']>;
}

function moverOf(card: WithStages, aim: AimCard, given: MovedBy): ItemMove | undefined {
  const { conditions } = given.drink;
  const figureOf = (mixture: Mixture): number | undefined => {
    const drink = finishedDrink(mixture, conditions);
    return drink.ok ? judgeAim(aim, given.moved(drink.value)).value : undefined;
  };
  return itemMoves(card, given.sources, { figureOf, value: given.judged.value ?? 0 })[0];
}

export const missFinding = (report: AimReport) => ({
  code: 'aim-missed',
  severity: 'error' as const,
  message: missedWords(report.judged),
  hint: moverWords(report) ?? 'nothing that is weighed moves it: change the aim, or what is in the drink',
});

/** `1 % more citric acid moves it by 0.04 g/L; about 6 % more would do` */
export function moverWords({ judged, mover }: AimReport): string | undefined {
  if (!mover) return undefined;
  const sign = mover.change < 0 ? '-' : '';
  const change = `${sign}${trimmedNumber(Math.abs(mover.change), 2)}${judged.unit === '' ? '' : ` ${judged.unit}`}`;
  const needed = -(judged.by ?? 0) / mover.change;
  const amount = trimmedNumber(Math.abs(needed), 2);
  const enough = Math.abs(needed) < 50 ? `; about ${amount} % ${needed > 0 ? 'more' : 'less'} would do` : '';
  return `1 % more ${mover.name} moves it by ${change}${enough}`;
}
