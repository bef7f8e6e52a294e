/** What goes along with a formula or a trial: ingredients of the person's own, stages of other trials. */

import { type Book, makeBook } from '../calc/book.ts';
import type { Mixture, ResolvedStage } from '../calc/mixture/picture.ts';
import { trimmedNumber } from '../calc/number-text.ts';
import type { IngredientCard, StageCard, TrialCard } from '../ledger/cards.ts';
import { shelfKeys } from '../ledger/give/given-ingredient.ts';
import type { Extra, Giving } from '../ledger/give/giving.ts';
import { type NeededStages, neededStages } from '../ledger/give/needed-stages.ts';
import { passedNames, renamedIn } from '../ledger/give/passed-names.ts';
import { resolveTrial, type Sources } from '../ledger/resolve.ts';
import { openTrialsUsedBy } from '../ledger/single-trial.ts';
import { isSameName } from '../ledger/stage-name.ts';
import { readTime } from '../ledger/times.ts';
import type { TreeNode } from '../ledger/tree.ts';
import { writtenTime } from '../ledger/typed-time.ts';
import type { Problem } from '../problem.ts';
import { bookOf, openIngredients } from './ledger-book.ts';
import { type OpenedDesign, resolveDesign } from './open-formula.ts';
import type { Here } from './open-ledger.ts';

/** A trial of which stages go along. */
export interface Along {
  readonly card: TrialCard;
  readonly root: TreeNode;
  readonly stages: readonly StageCard[];
  readonly mixture: Mixture;
}

export interface Gathered {
  readonly design: OpenedDesign;
  readonly book: Book;
  readonly mixture: Mixture;
  readonly sources: Sources;
  /** In the order of their numbers. */
  readonly along: readonly Along[];
  /** What of the person's own book is in it. */
  readonly ingredients: readonly IngredientCard[];
  /** The names under which they are passed on. */
  readonly names: ReadonlyMap<string, string>;
  readonly nameOf: (name: string) => string;
  readonly proseOf: (text: string) => string;
  readonly warnings: readonly Problem[];
}

export async function gather(
  here: Here,
  design: OpenedDesign,
  wanted: ReadonlySet<Extra>,
): Promise<Gathered> {
  const book = await bookOf(here);
  const { mixture, sources, warnings } = await resolveDesign(here, design, book);
  const used = await openTrialsUsedBy(here, design.card);
  const needed = neededStages(design.card.stages, (number) => used.get(number)?.card);
  const along = [...used]
    .sort(([one], [other]) => one - other)
    .flatMap(([number, { card, document }]) =>
      card && needed.has(number) ? [alongOf(card, document.root, needed, sources)] : [],
    );
  const stages = [...design.card.stages, ...along.flatMap((one) => one.stages)];
  const own = (await openIngredients(here))?.card?.ingredients ?? [];
  const { ingredients: builtIn } = await import('../reference/library.ts');
  const reference = makeBook({ builtIn, own: [] }).book;
  const ingredients = ownIn(stages, own, book).filter(
    ({ name, node }) => reference.find(name) === undefined || saysMore(node),
  );
  const names = passedNames({ ingredients, book, withLots: wanted.has('lots') });
  return {
    design,
    book,
    mixture,
    sources,
    along,
    ingredients,
    names,
    nameOf: (name) => passedName(name, book, names),
    proseOf: (text) => renamedIn(text, names),
    warnings,
  };
}

function alongOf(card: TrialCard, root: TreeNode, needed: NeededStages, sources: Sources): Along {
  const { mixture } = resolveTrial(card, sources);
  if (!mixture) throw new Error(`trial ${card.number} was resolved before`);
  const names = needed.get(card.number);
  return {
    card,
    root,
    stages: card.stages.filter(({ name }) => names?.has(name)),
    mixture: { ...mixture, stages: mixture.stages.filter(({ name }) => names?.has(name)) },
  };
}

/** Whether an own record of a built-in name says anything besides what is about the bottle on the shelf. */
const saysMore = (node: TreeNode): boolean =>
  node.kind === 'map' &&
  node.entries.some(({ key }) => key.text !== 'aliases' && !shelfKeys.includes(key.text));

/** The person's own words and brand words are passed on as the names that they stand for; a stage as it is. */
function passedName(name: string, book: Book, names: ReadonlyMap<string, string>): string {
  const entry = book.find(name);
  if (!entry) return name;
  const isPlain = !entry.own && (entry.record.aliases ?? []).some((alias) => isSameName(alias, name));
  return names.get(entry.name) ?? (isPlain ? name : entry.name);
}

/** Own ingredients among the items, with those that they are like or contain, in the order of the book. */
function ownIn(
  stages: readonly StageCard[],
  own: readonly IngredientCard[],
  book: Book,
): readonly IngredientCard[] {
  const byName = new Map(own.map((card): [string, IngredientCard] => [card.name, card]));
  const found = new Set<IngredientCard>();
  const waiting = stages.flatMap(({ items }) => items.map(({ name }) => name));
  for (let name = waiting.pop(); name !== undefined; name = waiting.pop()) {
    const card = byName.get(book.find(name)?.name ?? name);
    if (!card || found.has(card)) continue;
    found.add(card);
    waiting.push(...(card.like ? [card.like.text] : []), ...card.contains.map((part) => part.name));
  }
  return own.filter((card) => found.has(card));
}

/** How the records of this ledger are passed on. */
export function givingOf(
  { names, nameOf, proseOf, along }: Gathered,
  here: Here,
  wanted: ReadonlySet<Extra>,
): Giving {
  const numbers = new Set(along.map(({ card }) => card.number));
  return {
    with: wanted,
    nameOf: (name) => names.get(name) ?? nameOf(name),
    proseOf,
    timeOf: (text) => withOffset(text, here),
    numberOf: (number) => (numbers.has(number) ? number : undefined),
  };
}

function withOffset(text: string, { settings: { zone } }: Here): string {
  const time = readTime(text, zone);
  if (!time.ok || /(?:z|[+-]\d\d:?\d\d)$/iu.test(text.slice(10))) return text;
  const { epochMilliseconds, isDay } = time.value;
  return isDay ? text : writtenTime(epochMilliseconds, zone, epochMilliseconds % 60_000 !== 0);
}

/** Drops from the dropper of this bench are passed on as grams: the next bench has another one. */
export const gramsForDrops =
  (stages: readonly StageCard[], mixture: Mixture) =>
  (stage: string, at: number): string | undefined => {
    const card = stages.find(({ name }) => name === stage)?.items[at];
    const item = mixture.stages.find(({ name }) => isSameName(name, stage))?.items[at];
    if (card?.amount.quantity.dimension !== 'drops' || !item) return undefined;
    return ownDrop(item) ? undefined : `${trimmedNumber(item.plannedGrams, 12)} g`;
  };

const ownDrop = ({ source }: ResolvedStage['items'][number]): boolean =>
  source.kind === 'ingredient' && source.entry.dropGrams !== undefined;
