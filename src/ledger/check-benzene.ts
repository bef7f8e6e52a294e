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
  const benzoate = firstItem(stages, (name) => partOf(book.find(name)) === 'benzoate');
  if (!benzoate) return [];
  const ascorbic = firstItem(stages, (name) => {
    const entry = book.find(name);
    return partOf(entry) === 'ascorbic' || [name, ...(entry?.like ?? [])].some(isJuiceName);
  });
  if (!ascorbic) return [];
  const caution = benzeneOf(benzoate.name, ascorbic.name);
  const short = `both precursors of benzene are in it: ${benzoate.name}, and ${ascorbic.name}`;
  const hint = 'take one of the two out, or have it measured';
  return [adviceAt(stages, { ...caution, short, hint, at: benzoate.at })];
}

interface ItemAt {
  readonly name: string;
  readonly at: { readonly stage: string; readonly item: number };
}

function firstItem(stages: StagesOf['stages'], isIt: (name: string) => boolean): ItemAt | undefined {
  for (const stage of stages) {
    const item = stage.items.findIndex(({ name }) => isIt(name));
    const name = stage.items[item]?.name;
    if (name !== undefined) return { name, at: { stage: stage.name, item } };
  }
  return undefined;
}

type Part = 'benzoate' | 'ascorbic' | 'neither';

/** Told once for each ingredient, however many stages hold it. */
const told = new WeakMap<BookEntry, Part>();

function partOf(entry: BookEntry | undefined): Part {
  if (!entry) return 'neither';
  const known = told.get(entry);
  if (known) return known;
  const part = holds(entry, benzene.precursors)
    ? 'benzoate'
    : holds(entry, benzene.partners)
      ? 'ascorbic'
      : 'neither';
  told.set(entry, part);
  return part;
}

const holds = ({ composition }: BookEntry, names: readonly string[]): boolean =>
  composition.some(({ substance }) => names.some((name) => isLike(substance, name)));
