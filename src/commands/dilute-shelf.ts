/** What a dilution can start from: the neat compound, stocks on the shelf, or what is named. */

import type { Caution } from '../calc/answer.ts';
import type { Book, BookEntry } from '../calc/book.ts';
import type { ChainSource } from '../calc/dilution/chain.ts';
import { unknownName } from '../calc/known-name.ts';
import { parseQuantity } from '../calc/parse-quantity.ts';
import { isLike } from '../calc/slip-guard/item-substances.ts';
import type { Io } from '../io.ts';
import type { BenchCard } from '../ledger/cards.ts';
import { findRoot } from '../ledger/find-root.ts';
import { madeUpIngredients, type ShelfStock } from '../ledger/stocks.ts';
import { writtenTime } from '../ledger/typed-time.ts';
import { fail } from '../problem.ts';
import { refuseWithdrawn } from './batch-options.ts';
import type { Call } from './command.ts';
import { bookOf, openIngredients } from './ledger-book.ts';
import { openBook } from './open-book.ts';
import { openHere } from './open-ledger.ts';

export interface DiluteShelf {
  readonly book: Book;
  /** Undefined outside a ledger. */
  readonly bench: BenchCard | undefined;
  readonly stocks: readonly ShelfStock[];
  readonly expired: (stock: ShelfStock) => Caution;
}

/** The ledger's own shelf; outside one, the built-in book alone. */
export async function openShelf(io: Io): Promise<DiluteShelf> {
  if ((await findRoot(io.workingFolder)) === undefined) {
    const { book } = await openBook(io);
    return { book, bench: undefined, stocks: [], expired: (stock) => expiredStock(stock, undefined) };
  }
  const here = await openHere(io);
  const book = await bookOf(here);
  const cards = (await openIngredients(here))?.card?.ingredients ?? [];
  return {
    book,
    bench: here.bench,
    stocks: madeUpIngredients({ cards, book, now: io.now() }),
    expired: (stock) => expiredStock(stock, here),
  };
}

type Place = Awaited<ReturnType<typeof openHere>>;

/** `cassis stock: past the end of keeping, 2026-06-07, as its owner thinks` */
export function expiredStock({ card, endEpoch }: ShelfStock, here: Place | undefined): Caution {
  const day = endEpoch === undefined ? '' : writtenTime(endEpoch, here?.settings.zone).slice(0, 10);
  return {
    code: 'past-keep',
    text: `${card.name}: past the end of its keeping, ${day}, which is its owner's estimate; smell it, or make it afresh`,
    source: `made and keep of ${card.name} in ingredients.yaml`,
  };
}

export interface Compound {
  /** As typed. */
  readonly name: string;
  readonly entry: BookEntry | undefined;
}

/** A compound that is not in the book will do where its strength is typed. */
export function compoundNamed(typed: string, { book }: DiluteShelf, call: Call): Compound {
  const entry = book.find(typed);
  refuseWithdrawn('of', entry);
  if (entry || (call.values['from'] ?? []).some(isStrength)) return { name: typed.trim(), entry };
  const unknown = unknownName(typed, book);
  return unknown.ok
    ? unknown.value
    : fail(
        unknown.fault.code,
        `--of: ${unknown.fault.message}`,
        `${unknown.fault.hint}, or give its strength: --from 100%`,
      );
}

const isStrength = (typed: string): boolean => parseQuantity(typed, ['share']).ok;

export interface FoundSources {
  readonly sources: readonly ChainSource[];
  /** Stocks that are not used, and why. */
  readonly leftAside: readonly string[];
}

/** What is named by --from; else the neat compound and every stock of it that has not expired. */
export function sourcesFor(call: Call, compound: Compound, shelf: DiluteShelf): FoundSources {
  const named = call.values['from'] ?? [];
  if (named.length > 0)
    return { sources: named.map((typed) => namedSource(typed, compound, shelf)), leftAside: [] };
  const holding = shelf.stocks.filter((stock) => strengthIn(stock.entry, compound) > 0);
  const isUsed = ({ isExpired }: ShelfStock): boolean => !isExpired || call.flags.has('expired');
  return {
    sources: [neat(compound), ...holding.filter(isUsed).map((stock) => stockSource(stock, compound))],
    leftAside: holding
      .filter((stock) => !isUsed(stock))
      .map((stock) => `${shelf.expired(stock).text}; --expired uses it all the same`),
  };
}

const neat = ({ name }: Compound): ChainSource => ({ name, strength: 1, isNeat: true });

const stockSource = ({ entry, leftGrams }: ShelfStock, compound: Compound): ChainSource => ({
  name: entry.name,
  strength: strengthIn(entry, compound),
  ...(leftGrams === undefined ? {} : { leftGrams }),
});

/** A strength such as `100 ppm`, `neat`, or the name of a stock. */
function namedSource(typed: string, compound: Compound, shelf: DiluteShelf): ChainSource {
  if (/^neat$/iu.test(typed.trim())) return neat(compound);
  const strength = parseQuantity(typed, ['share']);
  if (strength.ok) return typedStrength(strength.value.inner, strength.value.written, compound);
  if (/^[-+.\d]/u.test(typed.trim()) && !shelf.book.find(typed))
    return fail(strength.fault.code, `--from: ${strength.fault.message}`, strength.fault.hint);
  const entry = shelf.book.find(typed);
  if (!entry) {
    const near = shelf.book.nearest(typed, 3).join(', ');
    return fail(
      'unknown-ingredient',
      `--from: "${typed}" is not known here`,
      `did you mean ${near}? or give a strength, such as "100 ppm"`,
    );
  }
  const share = strengthIn(entry, compound);
  if (share <= 0)
    return fail(
      'not-in-stock',
      `--from: ${entry.name} holds no ${compound.name}`,
      'neckring stocks lists what holds what',
    );
  const stock = shelf.stocks.find((one) => one.entry.name === entry.name);
  return stock ? stockSource(stock, compound) : { name: entry.name, strength: share, isNeat: share === 1 };
}

function typedStrength(strength: number, written: string, compound: Compound): ChainSource {
  if (strength <= 0 || strength > 1)
    return fail(
      'out-of-range',
      `--from: "${written}" is no strength of a stock`,
      'give a strength such as 100 ppm or 1 %',
    );
  return strength === 1 ? neat(compound) : { name: `${written} ${compound.name}`, strength };
}

/** Mass fraction of the compound in an entry; 1 of what is the compound itself. */
function strengthIn(entry: BookEntry, { entry: compound }: Compound): number {
  if (!compound) return 0;
  if (entry.name === compound.name) return 1;
  return entry.composition
    .filter(({ substance }) => isLike(substance, compound.name))
    .reduce((sum, { massFraction }) => sum + massFraction, 0);
}
