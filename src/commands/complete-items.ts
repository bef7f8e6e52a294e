/** Names of ingredients, alone and inside an item: `2 g sweet or` goes on as `2 g sweet orange oil`. */

import { type Role, roles } from '../reference/ingredient.ts';
import { type Offer, ownIngredients } from './complete-ledger.ts';

export interface KnownIngredient extends Offer {
  readonly role: Role | undefined;
}

/** Options that mean a role by another word. */
const roleWords: Readonly<Record<string, Role>> = {
  blend: 'emulsifier',
  solvent: 'carrier',
  'weigh-with': 'oil',
  'instead-of': 'acid',
  of: 'aroma',
};

const roleNamed = (word: string | undefined): Role | undefined => roles.find((role) => role === word);

/** Own ingredients first, then the built-in ones; among them those of the role that the option names. */
export async function knownIngredients(
  root: string | undefined,
  option: string,
): Promise<readonly KnownIngredient[]> {
  const { ingredients } = await import('../reference/ingredients/index.ts');
  const builtIn = new Map(ingredients.map(({ name, role }) => [name, role]));
  const own = (root === undefined ? [] : ownIngredients(root)).map(({ name, facts }): KnownIngredient => {
    const role =
      roleNamed(facts['role']) ?? builtIn.get(facts['like'] ?? '') ?? builtIn.get(name) ?? undefined;
    return { text: name, says: 'your own', role };
  });
  const ownNames = new Set(own.map(({ text }) => text));
  const others = ingredients
    .filter(({ name }) => !ownNames.has(name))
    .map(({ name, role }): KnownIngredient => ({ text: name, says: role, role }));
  const wanted = roleWords[option] ?? roleNamed(option);
  const all = [...own, ...others];
  if (wanted === undefined) return all;
  const suits = (one: KnownIngredient): boolean => one.role === wanted;
  return [...all.filter(suits), ...all.filter((one) => !suits(one))];
}

const startsLike = (name: string, typed: string): boolean =>
  name.toLowerCase().startsWith(typed.toLowerCase());

/** An amount with its unit, after which a name may come. */
const isAmountHead = (head: string): boolean => /\d/.test(head) && !/[\d+*/(.,-]\s*$/.test(head);

/** What an item goes on as: its amount as typed, and each name that begins as its end does. */
export function itemOffers(typed: string, known: readonly KnownIngredient[]): readonly Offer[] {
  if (/\s@/.test(typed)) return [];
  const starts = [0, ...[...typed.matchAll(/\s+/g)].map(({ index, 0: blank }) => index + blank.length)];
  for (const start of starts) {
    const head = typed.slice(0, start);
    if (start > 0 && !isAmountHead(head)) continue;
    const offers = known.filter(({ text }) => startsLike(text, typed.slice(start)));
    if (offers.length > 0) return offers.map((one) => ({ ...one, text: head + one.text }));
  }
  return [];
}
