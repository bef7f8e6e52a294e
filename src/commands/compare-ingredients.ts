/** What both use and what says something else on either side: why a figure moves though no line does. */

import type { BookEntry } from '../calc/book.ts';
import type { ComparedFact } from '../calc/compare/document.ts';
import { factChanges } from '../calc/compare/facts.ts';
import type { ResolvedStage } from '../calc/mixture/picture.ts';
import { numberText, trimmedNumber } from '../calc/number-text.ts';
import { flatFacts, rounded } from '../ledger/flat-facts.ts';
import { valueUnder } from '../ledger/tree.ts';
import type { FigureName } from '../reference/ingredient.ts';
import { normaliseName } from '../reference/name.ts';
import type { Side } from './compare-side.ts';

export interface DefinitionChange {
  readonly ingredient: string;
  readonly was?: string;
  readonly facts: readonly { readonly fact: string; readonly before: string; readonly after: string }[];
}

const told: readonly FigureName[] = ['density', 'hlb', 'required hlb'];

export const definitionChanges = (before: Side, after: Side): readonly DefinitionChange[] => [
  ...ingredientChanges(before, after),
  ...stagesOfOthers(before, after),
  ...benchChanges(before, after),
];

function ingredientChanges(before: Side, after: Side): readonly DefinitionChange[] {
  const seen = new Set<string>();
  return namesOf(after).flatMap((name): readonly DefinitionChange[] => {
    const now = after.book.find(name);
    const then = now && sameThen(before, name, now);
    if (!now || !then || seen.has(now.name)) return [];
    seen.add(now.name);
    const facts = factsOf(then, now);
    const was = then.name === now.name ? {} : { was: then.name };
    return facts.length > 0 ? [{ ingredient: now.name, ...was, facts }] : [];
  });
}

/** `emulsion of 13`, where trial 13 itself is not what it was. */
function stagesOfOthers(before: Side, after: Side): readonly DefinitionChange[] {
  const was = otherStages(before);
  return [...otherStages(after)].flatMap(([name, now]) => {
    const then = was.get(name);
    const facts = then ? substancesOf(then, now) : [];
    return facts.length > 0 ? [{ ingredient: name, facts }] : [];
  });
}

function otherStages({ solved }: Side): ReadonlyMap<string, ResolvedStage> {
  const items = (solved?.mixture.stages ?? []).flatMap((stage) => stage.items);
  return new Map(
    items.flatMap(({ name, source }): readonly [string, ResolvedStage][] =>
      source.kind === 'other trial' ? [[name, source.stage]] : [],
    ),
  );
}

function substancesOf(then: ResolvedStage, now: ResolvedStage): DefinitionChange['facts'] {
  const names = new Set([...then.substances, ...now.substances].map(({ name }) => name));
  const share = (stage: ResolvedStage, name: string): string => {
    const all = stage.substances.filter((one) => one.name === name);
    return all.length === 0 ? '' : shareText(all.reduce((sum, one) => sum + one.massFraction, 0));
  };
  return [...names]
    .map((name) => ({ fact: name, before: share(then, name), after: share(now, name) }))
    .filter((one) => one.before !== one.after);
}

const benchKeys = ['water', 'temperature', 'drop'] as const;

/** What the bench says that goes into the figures. */
function benchChanges({ here: then }: Side, { here: now }: Side): readonly DefinitionChange[] {
  if (then.bench === now.bench) return [];
  const facts = benchKeys.flatMap((key) => {
    const of = ({ bench, settings }: Side['here']): readonly ComparedFact[] =>
      flatFacts({ node: valueUnder(valueUnder(bench.root, 'bench'), key), zone: settings.zone, under: key });
    return factChanges(of(then), of(now));
  });
  return facts.length === 0
    ? []
    : [
        {
          ingredient: 'the bench',
          facts: facts.map(({ key, before = '', after = '' }) => ({ fact: key, before, after })),
        },
      ];
}

const namesOf = ({ card }: Side): readonly string[] =>
  (card?.stages ?? []).flatMap(({ items }) => items.map(({ name }) => name));

/** Under the same name; else the one that goes back to the same record, where there is one alone. */
function sameThen({ book, card }: Side, name: string, now: BookEntry): BookEntry | undefined {
  const names = (card?.stages ?? []).flatMap(({ items }) => items.map((item) => item.name));
  if (names.some((one) => normaliseName(one) === normaliseName(name))) return book.find(name);
  const root = now.like?.at(-1) ?? now.name;
  const alike = names.flatMap((one) => {
    const entry = book.find(one);
    return entry && (entry.like?.at(-1) ?? entry.name) === root ? [entry] : [];
  });
  return alike.length === 1 ? alike[0] : undefined;
}

function factsOf(then: BookEntry, now: BookEntry): DefinitionChange['facts'] {
  const figures = told.map((name) => ({
    fact: name,
    before: figureText(then.record.figures[name]?.value),
    after: figureText(now.record.figures[name]?.value),
  }));
  const rest = [
    { fact: 'role', before: then.record.role, after: now.record.role },
    { fact: 'fold', before: figureText(then.record.fold), after: figureText(now.record.fold) },
    { fact: 'drop', before: figureText(then.dropGrams), after: figureText(now.dropGrams) },
    { fact: 'price', before: then.price?.written ?? '', after: now.price?.written ?? '' },
    { fact: 'holds', before: contents(then), after: contents(now) },
  ];
  return [...figures, ...rest].filter((one) => one.before !== one.after);
}

const figureText = (value: number | undefined): string =>
  value === undefined ? '' : trimmedNumber(Number(rounded(value)), 6);

const contents = (entry: BookEntry): string =>
  entry.composition.length === 1 && entry.composition[0]?.substance === entry
    ? ''
    : entry.composition
        .map(({ substance, massFraction }) => `${substance.name} ${shareText(massFraction)}`)
        .join(', ');

const shareText = (share: number): string =>
  share >= 0.001 ? `${trimmedNumber(share * 100, 4)} %` : `${numberText(share * 1e6, 3)} ppm`;
