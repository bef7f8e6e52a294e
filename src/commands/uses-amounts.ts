/** How much of what is looked for is in everything of a ledger, through stages, other trials and own solutions. */

import { contentShares } from '../calc/book/content-shares.ts';
import type { Book, BookEntry } from '../calc/book.ts';
import type { Mixture, ResolvedStage } from '../calc/mixture/picture.ts';
import { sum } from '../calc/sum.ts';
import type { IngredientCard, ItemCard } from '../ledger/cards.ts';
import { mixtureOf, type StagedCard } from '../ledger/check-slips.ts';
import type { Ledger } from '../ledger/ledger.ts';
import type { Sources } from '../ledger/resolve.ts';
import { isSameName, otherStageOf } from '../ledger/stage-name.ts';
import { isItsLot, type Wanted } from './uses-wanted.ts';

export interface Use {
  readonly kind: 'trial' | 'batch' | 'formula' | 'stock';
  readonly name: string;
  readonly file: string;
  /** Null where the file can't be worked out, or of a stock nobody wrote how much there is. */
  readonly massGrams: number | null;
  /** In the drink; null where there is none. */
  readonly gramsPerLitre: number | null;
  /** Of a stock. */
  readonly share: number | null;
}

interface Search {
  readonly ledger: Ledger;
  readonly book: Book;
  readonly sources: Sources;
  readonly wanted: Wanted;
}

/** Everything that holds it: trials, batches, formulas, then stocks. */
export function usesOf(search: Search): readonly Use[] {
  const { trials, batches, formulas, ingredients } = search.ledger;
  return [
    ...[...trials, ...batches, ...formulas].flatMap((card) => useIn(card, search)),
    ...(ingredients?.ingredients ?? []).flatMap((card) => stockUse(card, ingredients?.file ?? '', search)),
  ];
}

const nameOf = (card: StagedCard): string => (card.kind === 'trial' ? String(card.number) : card.name);

function useIn(card: StagedCard, search: Search): readonly Use[] {
  if (!holds(card, search)) return [];
  const base = { kind: card.kind, name: nameOf(card), file: card.file, share: null };
  const mixture = card.isSound ? mixtureOf(card, search.sources) : undefined;
  if (!mixture) return [{ ...base, massGrams: null, gramsPerLitre: null }];
  const massGrams = sum(mixture.stages.map((stage) => gramsBrought(stage, { card, mixture, search })));
  const { drink } = mixture;
  const inDrink = drink ? shareIn(drink, { card, mixture, search }) * drink.massGrams : 0;
  if (massGrams <= 0) return [];
  return [{ ...base, massGrams, gramsPerLitre: drink ? (inDrink / drink.volumeMillilitres) * 1000 : null }];
}

/** Whether any of its items holds it, by names alone. */
function holds(card: StagedCard, search: Search, above: readonly StagedCard[] = []): boolean {
  return card.stages.some(({ items }) =>
    items.some((item) => {
      if (isItsLot(item, search.wanted, search.book)) return true;
      if (card.stages.some((stage) => isSameName(stage.name, item.name))) return false;
      const entry = search.book.find(item.name);
      if (entry) return shareOfEntry(entry, search) > 0;
      const trial = search.sources.trialOf(otherStageOf(item.name)?.trial ?? -1);
      return trial !== undefined && !above.includes(trial) && holds(trial, search, [...above, card]);
    }),
  );
}

interface Inside {
  readonly card: StagedCard;
  readonly mixture: Mixture;
  readonly search: Search;
}

/** g that come into a stage from outside the file's own stages. */
function gramsBrought(stage: ResolvedStage, inside: Inside): number {
  return sum(
    stage.items.map((item, place) =>
      item.source.kind === 'stage' ? 0 : item.massGrams * itemShare(stage, place, inside),
    ),
  );
}

/** g in a gram of the stage. */
const shareIn = (stage: ResolvedStage, inside: Inside): number =>
  sum(stage.items.map((item, place) => item.massGrams * itemShare(stage, place, inside))) / stage.massGrams;

/** g in a gram of an item. */
function itemShare(stage: ResolvedStage, place: number, inside: Inside): number {
  const { card, mixture, search } = inside;
  const item = stage.items[place];
  const typed: ItemCard | undefined = card.stages.find(({ name }) => name === stage.name)?.items[place];
  if (!item || !typed) return 0;
  const { source } = item;
  if (isItsLot(typed, search.wanted, search.book)) return 1;
  if (source.kind === 'ingredient') return shareOfEntry(source.entry, search);
  if (source.kind === 'stage') {
    const used = mixture.stages.find(({ name }) => name === source.stage);
    return used ? shareIn(used, inside) : 0;
  }
  const trial = search.sources.trialOf(otherStageOf(item.name)?.trial ?? -1);
  const other = trial && mixtureOf(trial, search.sources);
  return trial && other ? shareIn(source.stage, { card: trial, mixture: other, search }) : 0;
}

/** g in a gram of an ingredient: itself, or through what the person's own solution contains. */
function shareOfEntry(entry: BookEntry, search: Search): number {
  const { wanted, ledger, book } = search;
  if (wanted.entries.has(entry.name)) return 1;
  const card = ledger.ingredients?.ingredients.find(({ name }) => isSameName(name, entry.name));
  if (!card || card.contains.length === 0) {
    return sum(
      entry.composition.map(({ substance, massFraction }) =>
        wanted.entries.has(substance.name) ? massFraction : 0,
      ),
    );
  }
  const contents = card.contains.map((content) => ({ ...content, entry: book.find(content.name) }));
  const { shares } = contentShares({
    name: entry.name,
    density: entry.record.figures.density?.value,
    contents,
  });
  return sum(
    contents.map(({ entry: content }, place) =>
      content && content.name !== entry.name ? (shares[place] ?? 0) * shareOfEntry(content, search) : 0,
    ),
  );
}

/** An own solution that holds it; how much there is of it is known where `left` is a mass. */
function stockUse(card: IngredientCard, file: string, search: Search): readonly Use[] {
  const entry = card.contains.length > 0 ? search.book.find(card.name) : undefined;
  const share = entry && !search.wanted.entries.has(entry.name) ? shareOfEntry(entry, search) : 0;
  if (share <= 0) return [];
  const leftGrams = card.left?.dimension === 'mass' ? card.left.inner : undefined;
  const massGrams = leftGrams === undefined ? null : leftGrams * share;
  return [{ kind: 'stock', name: card.name, file, massGrams, gramsPerLitre: null, share }];
}
