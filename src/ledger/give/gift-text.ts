/** A recipe as one YAML file that another ledger takes in. */

import type { Mixture } from '../../calc/mixture/picture.ts';
import { trimmedNumber } from '../../calc/number-text.ts';
import { normaliseName } from '../../reference/name.ts';
import type { Plain } from '../edit-facts.ts';
import { type PlainFacts, plainText } from './plain-lines.ts';

/** The first key of such a file, with the version of its form. */
export const giftKey = 'given';
export const giftVersion = '1';

export const giftKeys = [
  giftKey,
  'what',
  'temperature',
  'ingredients',
  'trials',
  'formulas',
  'comes to',
] as const;

export interface GiftText {
  /** `formula orange cardamom` */
  readonly what: string;
  readonly temperature: string;
  readonly ingredients: PlainFacts;
  readonly trials: readonly PlainFacts[];
  readonly formulas: readonly PlainFacts[];
  /** By `formula NAME` and `trial NUMBER`: what each came to, so that it can be held against what it comes to elsewhere. */
  readonly comesTo: PlainFacts;
}

const head = `# A recipe passed on with neckring. In another ledger, neckring take FILE brings it in.
`;

export function giftText({ what, temperature, ingredients, trials, formulas, comesTo }: GiftText): string {
  const list = (key: string, all: readonly PlainFacts[]): PlainFacts =>
    all.length === 0 ? [] : [[key, { list: all.map((map): Plain => ({ map })) }]];
  return `${head}${plainText([
    [giftKey, giftVersion],
    ['what', what],
    ['temperature', temperature],
    ...(ingredients.length === 0 ? [] : ([['ingredients', { map: ingredients }]] as const)),
    ...list('trials', trials),
    ...list('formulas', formulas),
    ...(comesTo.length === 0 ? [] : ([['comes to', { map: comesTo }]] as const)),
  ])}`;
}

const digits = 12;

/** Grams of every substance in every stage, under the names that `nameOf` gives them. */
export const comesToFacts = (
  { stages }: Pick<Mixture, 'stages'>,
  nameOf: (name: string) => string,
): Plain => ({
  map: stages.map((stage) => [
    stage.name,
    { map: [...gramsOf(stage, nameOf)].map(([name, grams]) => [name, `${trimmedNumber(grams, digits)} g`]) },
  ]),
});

/** The same substance under two roles counts once. */
export function gramsOf(
  { substances }: Mixture['stages'][number],
  nameOf: (name: string) => string = (name) => name,
): ReadonlyMap<string, number> {
  const grams = new Map<string, number>();
  const shown = new Map<string, string>();
  for (const { name, massGrams } of substances) {
    const passed = nameOf(name);
    const key = shown.get(normaliseName(passed)) ?? passed;
    shown.set(normaliseName(passed), key);
    grams.set(key, (grams.get(key) ?? 0) + massGrams);
  }
  return grams;
}
