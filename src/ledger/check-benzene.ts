/** Benzoate and ascorbic acid in one design: the precursors of benzene. */

import type { BookEntry } from '../calc/book.ts';
import { benzeneOf, isJuiceName } from '../calc/drink/additive-cautions.ts';
import { isLike } from '../calc/slip-guard/item-substances.ts';
import { benzene } from '../reference/drink-keeping.ts';
import { type Advice, adviceAt, adviceProblem } from './advice.ts';
import type { Check } from './check.ts';
import type { Sources, StagesOf } from './resolve.ts';

export const checkBenzene: Check = (context) => {
  const { trials, formulas, batches } = context.ledger;
  return [...trials, ...formulas, ...batches].flatMap((card) =>
    card.isSound
      ? benzeneAdvice(card, context.sources).map((advice) => adviceProblem(context, card, advice))
      : [],
  );
};

/** At the benzoate; by what is weighed into any stage, juice counting as ascorbic acid. */
function benzeneAdvice({ stages }: StagesOf, { book }: Sources): readonly Advice[] {
  const items = stages.flatMap((stage) =>
    stage.items.map(({ name }, item) => ({ name, entry: book.find(name), at: { stage: stage.name, item } })),
  );
  const benzoate = items.find(({ entry }) => holds(entry, benzene.precursors));
  if (!benzoate) return [];
  const ascorbic = items.find(
    ({ name, entry }) => holds(entry, benzene.partners) || [name, ...(entry?.like ?? [])].some(isJuiceName),
  );
  if (!ascorbic) return [];
  const caution = benzeneOf(benzoate.name, ascorbic.name);
  const short = `both precursors of benzene are in it: ${benzoate.name}, and ${ascorbic.name}`;
  const hint = 'take one of the two out, or have it measured';
  return [adviceAt(stages, { ...caution, short, hint, at: benzoate.at })];
}

const holds = (entry: BookEntry | undefined, names: readonly string[]): boolean =>
  entry?.composition.some(({ substance }) => names.some((name) => isLike(substance, name))) ?? false;
