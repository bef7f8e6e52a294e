/** What was left out and is named all the same, in a title or a note. */

import type { StageCard } from '../ledger/cards.ts';
import type { Extra } from '../ledger/give/giving.ts';
import type { Problem } from '../problem.ts';
import type { Gathered } from './give-gather.ts';

/** Shorter ones stand in any text. */
const shortest = 3;

export function leaksIn(text: string, gathered: Gathered, wanted: ReadonlySet<Extra>): readonly Problem[] {
  const stages = [...gathered.design.card.stages, ...gathered.along.flatMap((one) => one.stages)];
  const leaks = [
    ...(wanted.has('lots') ? [] : lotsOf(stages, gathered).map((lot) => ['lot', lot] as const)),
    ...(wanted.has('names') ? [] : namesOf(stages, gathered).map((name) => ['name', name] as const)),
  ].filter(([, word]) => word.length >= shortest && isIn(text, word));
  return leaks.map(([kind, word]) => ({
    code: 'still-named',
    severity: 'warning',
    message: `the ${kind} "${word}" was left out, and is named in a text that goes along`,
    hint: 'read it through before it is passed on',
  }));
}

const isIn = (text: string, word: string): boolean =>
  new RegExp(`(?<![\\p{L}\\d])${word.replace(/[.*+?^${}()|[\]\\]/gu, '\\$&')}(?![\\p{L}\\d])`, 'iu').test(
    text,
  );

const distinct = (words: readonly (string | undefined)[]): readonly string[] => [
  ...new Set(words.flatMap((word) => (word === undefined ? [] : [word]))),
];

const lotsOf = (stages: readonly StageCard[], { ingredients }: Gathered): readonly string[] =>
  distinct([
    ...ingredients.map(({ lot }) => lot),
    ...stages.flatMap(({ items }) => items.map(({ lot }) => lot)),
  ]);

function namesOf(stages: readonly StageCard[], { design: { card } }: Gathered): readonly string[] {
  const made = card.kind === 'trial' ? [card.by, ...card.observations.map(({ by }) => by)] : [];
  return distinct([...made, ...stages.map(({ by }) => by)]);
}
