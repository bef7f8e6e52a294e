/** What may stand as a value, by its kind; the likeliest first. */

import { looks } from '../ledger/card-basics.ts';
import { itemOffers, knownIngredients } from './complete-items.ts';
import { benchTastes, namesIn, type Offer, ownIngredients, partsOf, trialFiles } from './complete-ledger.ts';
import type { ValuePlace } from './complete-place.ts';
import type { Kind } from './completion-kinds.ts';

interface Asked {
  readonly place: ValuePlace;
  /** What is typed of the value, without what stands before it in the word. */
  readonly typed: string;
  readonly root: string | undefined;
}

export async function valueOffers(asked: Asked): Promise<readonly Offer[]> {
  const { kinds, choices } = asked.place.wanted;
  const offers: Offer[] = choices.map((text) => ({ text }));
  for (const kind of inOrder(kinds, asked)) offers.push(...(await offersOf(kind, asked)));
  return offers;
}

/** After a trial its look comes next. */
function inOrder(kinds: readonly Kind[], { place }: Asked): readonly Kind[] {
  const isAfterTrial = /^\d/.test(place.words.at(-1) ?? '');
  return kinds.includes('look') && isAfterTrial ? [...kinds].reverse() : kinds;
}

async function offersOf(kind: Kind, asked: Asked): Promise<readonly Offer[]> {
  const { place, typed, root } = asked;
  if (kind === 'item') return itemOffers(typed, await knownIngredients(root, place.name));
  if (kind === 'ingredient') return knownIngredients(root, place.name);
  if (kind === 'look') return lookOffers(typed);
  return root === undefined ? [] : ledgerOffers(kind, asked, root);
}

function ledgerOffers(kind: Kind, { place, typed }: Asked, root: string): readonly Offer[] {
  switch (kind) {
    case 'trial':
      return trialFiles(root).map(({ number, title }) => ({ text: String(number), says: title }));
    case 'trials':
      return rangeOffers(root, typed);
    case 'series':
      return named(namesIn(root, 'series', 'series'), 'series');
    case 'formula':
      return named(namesIn(root, 'formulas', 'formula'), 'formula');
    case 'batch':
      return named(namesIn(root, 'batches', 'batch'), 'batch');
    case 'stage':
      return named(partsOf(root, place.words[0] ?? '', 'stages'), 'stage');
    case 'sample':
      return named(partsOf(root, place.words[0]?.split('-')[0] ?? '', 'samples'), 'sample');
    case 'lot':
      return ownIngredients(root).flatMap(({ name, facts }) => {
        const lot = facts['lot'];
        return lot === undefined ? [] : [{ text: lot, says: `lot of ${name}` }];
      });
    case 'taste word':
      return benchTastes(root).map((text) => ({ text }));
    case 'taste':
      return typed.includes('=')
        ? [0, 1, 2, 3, 4, 5].map((score) => ({ text: `${typed.slice(0, typed.indexOf('='))}=${score}` }))
        : benchTastes(root).map((word) => ({ text: `${word}=` }));
    default:
      return [];
  }
}

const named = (names: readonly string[], says: string): readonly Offer[] =>
  names.map((text) => ({ text, says }));

/** `14`, and after `14-` every later trial as the end of a range. */
function rangeOffers(root: string, typed: string): readonly Offer[] {
  const [, first] = /^(\d+)-/.exec(typed) ?? [];
  const all = trialFiles(root).map(({ number, title }) => ({ number, says: title }));
  if (first === undefined) return all.map(({ number, says }) => ({ text: String(number), says }));
  return all
    .filter(({ number }) => number > Number(first))
    .reverse()
    .map(({ number, says }) => ({ text: `${first}-${number}`, says }));
}

/** One look or several with commas: what is typed stands, and none is offered twice. */
function lookOffers(typed: string): readonly Offer[] {
  const before = /^(?:.*,\s*)?/.exec(typed)?.[0] ?? '';
  const said = before.split(',').map((one) => one.trim());
  return looks.filter((one) => !said.includes(one)).map((one) => ({ text: before + one }));
}
