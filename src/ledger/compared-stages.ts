/** The stages of a file as they are laid beside those of another, amount by amount. */

import type { Book } from '../calc/book.ts';
import { type ComparedStage, pairsOf, typedMeasure } from '../calc/slip-guard/factor-slips.ts';
import type { StageCard } from './cards.ts';
import { isSameName, otherStageOf } from './stage-name.ts';

export const comparedStages = (stages: readonly StageCard[], book: Book): readonly ComparedStage[] =>
  stages.map(({ name, items, makes }) => ({
    name,
    items: items.map((item) => ({
      name: item.name,
      key: keyOf(item.name, book),
      measure: typedMeasure(item.amount),
    })),
    ...(makes
      ? { makes: typedMeasure({ quantity: makes, makeUp: false, inDrink: false, written: makes.written }) }
      : {}),
  }));

/** `emulsion of 13` stands for the same as `emulsion of 14`, a lot for the ingredient that it is like. */
function keyOf(name: string, book: Book): string {
  const entry = book.find(name);
  return entry ? (entry.like?.at(-1) ?? entry.name) : (otherStageOf(name)?.stage ?? name);
}

interface Spot {
  readonly stage: string;
  readonly item: number;
}

/** Items that stand in both, in units that can't be compared as they were typed. */
export function differInKind(
  now: readonly ComparedStage[],
  before: readonly ComparedStage[],
): readonly Spot[] {
  return now.flatMap((stage) => {
    const earlier = before.find(({ name }) => isSameName(name, stage.name));
    const pairs = earlier ? pairsOf(stage, earlier) : [];
    return pairs
      .filter((pair) => pair.now.measure.kind !== pair.before.measure.kind)
      .map(({ item }) => ({ stage: stage.name, item }));
  });
}
