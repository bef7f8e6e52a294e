/** Given ingredients beside those of this shelf: which are new, which are here, which only share a name. */

import type { Book } from '../../calc/book.ts';
import { normaliseName } from '../../reference/name.ts';
import type { IngredientCard, StageCard } from '../cards.ts';
import type { Plain } from '../edit-facts.ts';
import type { Ledger } from '../ledger.ts';
import { isSameName } from '../stage-name.ts';
import { givenIngredient } from './given-ingredient.ts';
import { extras, type Giving } from './giving.ts';
import type { PlainFacts } from './plain-lines.ts';
import type { Clash, Settle, TakenRow } from './take-words.ts';

export interface Shelf {
  readonly ledger: Ledger;
  readonly book: Book;
  /** The built-in ingredients alone. */
  readonly reference: Book;
}

export interface TakenIngredient {
  readonly row: TakenRow;
  /** The name that stands for it here. */
  readonly here: string;
  /** To be written; absent where it is here, or mine is kept. */
  readonly facts: PlainFacts | undefined;
  readonly replaces: IngredientCard | undefined;
}

export interface TakenIngredients {
  readonly taken: readonly TakenIngredient[];
  readonly clashes: readonly Clash[];
  /** Here, by the normalised name in the given file. */
  readonly names: ReadonlyMap<string, string>;
}

export function takeIngredients(
  given: readonly IngredientCard[],
  shelf: Shelf,
  settle: Settle,
): TakenIngredients {
  const used = usedNames(shelf);
  const settled = given.map((card) => settledOne(card, { ...shelf, used }, settle));
  const clashes = settled.flatMap((one) => ('clash' in one ? [one.clash] : []));
  const names = new Map<string, string>();
  for (const [at, card] of given.entries()) {
    const one = settled[at];
    const here = one && 'here' in one ? one.here : card.name;
    for (const name of [...card.aliases, card.name]) names.set(normaliseName(name), here);
  }
  const taken = settled.flatMap((one, at): readonly TakenIngredient[] => {
    const card = given[at];
    if ('clash' in one || !card) return [];
    const { here, how, mine } = one;
    const facts =
      how === 'new' || how === 'renamed' || how === 'replaced'
        ? factsHere(card, one, names, shelf)
        : undefined;
    const row: TakenRow = { kind: 'ingredient', given: card.name, here, how };
    return [{ row, here, facts, replaces: how === 'replaced' ? mine : undefined }];
  });
  return { taken, clashes, names };
}

type Settled =
  | { readonly clash: Clash }
  | { readonly here: string; readonly how: TakenRow['how']; readonly mine: IngredientCard | undefined };

function settledOne(
  card: IngredientCard,
  shelf: Shelf & { readonly used: ReadonlySet<string> },
  settle: Settle,
): Settled {
  const { name } = card;
  const mine = ownNamed(name, shelf.ledger);
  if (mine && isSameRecord(mine, card)) return { here: mine.name, how: 'here already', mine };
  const builtIn = mine ? undefined : shelf.reference.find(name);
  const isFree = !mine && (!builtIn || !shelf.used.has(builtIn.name));
  if (isFree) return { here: name, how: 'new', mine: undefined };
  const text = mine
    ? `"${mine.name}" stands on this shelf with other figures`
    : `"${name}" is a built-in ingredient that files here use, and given with figures of its own`;
  const clash: Clash = { kind: 'ingredient', name, text };
  const way = settle(clash);
  if (way === undefined) return { clash };
  if (way === 'mine') return { here: mine?.name ?? name, how: 'mine kept', mine };
  if (way === 'theirs') return { here: mine?.name ?? name, how: mine ? 'replaced' : 'new', mine };
  return renamed(card, shelf);
}

/** The first free name; one that holds the very same is taken. */
function renamed(card: IngredientCard, { ledger, book }: Shelf): Settled {
  for (let count = 2; ; count += 1) {
    const here = `${card.name} (${count})`;
    const there = ownNamed(here, ledger);
    if (there && isSameRecord(there, card)) return { here: there.name, how: 'here already', mine: there };
    if (!there && !book.find(here)) return { here, how: 'renamed', mine: undefined };
  }
}

function ownNamed(name: string, { ingredients }: Ledger): IngredientCard | undefined {
  const own = ingredients?.ingredients ?? [];
  return (
    own.find((one) => isSameName(one.name, name)) ??
    own.find(({ aliases }) => aliases.some((alias) => isSameName(alias, name)))
  );
}

const asTyped: Omit<Giving, 'with'> = {
  nameOf: (name) => name,
  proseOf: (text) => text,
  timeOf: (text) => text,
  numberOf: (number) => number,
};

/** What a record says apart from the bottle on the shelf, in no order; `like` where it says nothing of that. */
function recordOf({ node, like: said }: IngredientCard, like?: string): string {
  const facts = givenIngredient(node, { ...asTyped, with: new Set() });
  return JSON.stringify(sorted({ map: said || like === undefined ? facts : [['like', like], ...facts] }));
}

function sorted(value: Plain): unknown {
  if (typeof value === 'string') return normaliseName(value);
  if ('list' in value) return value.list.map(sorted);
  return value.map
    .map(([key, inner]): [string, unknown] => [normaliseName(key), sorted(inner)])
    .sort(([one], [other]) => (one < other ? -1 : 1));
}

/** A renamed copy of a built-in one says what it is like, which the first one need not. */
const isSameRecord = (mine: IngredientCard, given: IngredientCard): boolean =>
  recordOf(mine) === recordOf(given) ||
  (mine.like !== undefined && recordOf(mine) === recordOf(given, given.name));

function factsHere(
  card: IngredientCard,
  {
    here,
    how,
    mine,
  }: { readonly here: string; readonly how: TakenRow['how']; readonly mine: IngredientCard | undefined },
  names: ReadonlyMap<string, string>,
  { reference }: Shelf,
): PlainFacts {
  const nameOf = (name: string): string =>
    isSameName(name, card.name) ? name : (names.get(normaliseName(name)) ?? name);
  const facts = givenIngredient(card.node, { ...asTyped, nameOf, with: new Set(extras) });
  const isCopy = how === 'renamed' && !card.like && reference.find(card.name) !== undefined;
  const whole: PlainFacts = isCopy && !isSameName(here, card.name) ? [['like', card.name], ...facts] : facts;
  return mine ? [...whole, ...shelfFacts(mine, whole)] : whole;
}

/** Lot, price and the like of the record that is replaced stay, where the given one says nothing of them. */
function shelfFacts(mine: IngredientCard, facts: PlainFacts): PlainFacts {
  const about = givenIngredient(mine.node, { ...asTyped, with: new Set(extras) });
  const recipe = new Set(givenIngredient(mine.node, { ...asTyped, with: new Set() }).map(([key]) => key));
  return about.filter(([key]) => !recipe.has(key) && !facts.some(([other]) => other === key));
}

/** The names of the book that anything here rests on. */
function usedNames({ ledger, book }: Shelf): ReadonlySet<string> {
  const stages: readonly StageCard[] = [...ledger.trials, ...ledger.formulas, ...ledger.batches].flatMap(
    (card) => card.stages,
  );
  const typed = [
    ...stages.flatMap(({ items }) => items.map(({ name }) => name)),
    ...(ledger.ingredients?.ingredients ?? []).flatMap(({ like, contains }) => [
      ...(like ? [like.text] : []),
      ...contains.map(({ name }) => name),
    ]),
  ];
  return new Set([...new Set(typed)].flatMap((name) => book.find(name)?.name ?? []));
}
