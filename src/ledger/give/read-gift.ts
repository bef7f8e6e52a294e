/** A recipe that somebody gave, read as the ledger reads its own files: every part by the reader of its kind. */

import { parseQuantity } from '../../calc/parse-quantity.ts';
import type { Problem } from '../../problem.ts';
import { normaliseName } from '../../reference/name.ts';
import type { FormulaCard, IngredientCard, TrialCard } from '../cards.ts';
import { offer } from '../nearest.ts';
import { type LedgerDocument, parseDocument } from '../parse.ts';
import { type Finding, problemAt } from '../places.ts';
import { readFormulaCard } from '../read-formula.ts';
import { readIngredientsCard } from '../read-ingredients.ts';
import { readTrialCard } from '../read-trial.ts';
import type { Read, ReadSettings } from '../reading.ts';
import { otherStageOf } from '../stage-name.ts';
import { entryOf, type MapNode, type Span, type TreeNode, valueUnder } from '../tree.ts';
import { wayTo } from '../used-loop.ts';
import { hiddenProblems } from './gift-guard.ts';
import { giftKey, giftKeys, giftVersion } from './gift-text.ts';

/** A card with the part of the file that it was read from. */
export interface GivenRecord<Card> {
  readonly card: Card;
  readonly root: TreeNode;
}

/** `formula orange cardamom`, a stage, a substance, and the grams of it. */
export interface GivenGrams {
  readonly of: string;
  readonly stage: string;
  readonly substance: string;
  readonly grams: number;
}

export interface Gift {
  readonly ingredients: readonly IngredientCard[];
  readonly trials: readonly GivenRecord<TrialCard>[];
  readonly formulas: readonly GivenRecord<FormulaCard>[];
  readonly comesTo: readonly GivenGrams[];
}

export const mostRecords = 100;

/**
 * Reads a given recipe.
 * Input     the name of the file as it was typed, its text
 * Output    the recipe where nothing is wrong with it, and every problem at its line
 * Refuses   files of another kind, keys that are not known, hidden signs, whatever the readers of a ledger refuse
 */
export function readGift(file: string, text: string, settings: ReadSettings): Read<Gift> {
  const document = parseDocument(file, text);
  const { root } = document;
  if (!document.isReadable) return { card: undefined, problems: document.problems };
  const wrongKind = kindProblem(document);
  if (wrongKind) return { card: undefined, problems: [wrongKind] };
  const problems = [
    ...document.problems,
    ...(root.kind === 'map' ? unknownKeys(document, root) : []),
    ...hiddenProblems(document.source, root),
  ];
  const parts = partsOf(document, settings, problems);
  const isSound = problems.every(({ severity }) => severity !== 'error');
  return { card: isSound ? parts : undefined, problems };
}

const at = ({ source }: LedgerDocument, finding: Finding, span: Span): Problem =>
  problemAt(source, finding, span);

function kindProblem(document: LedgerDocument): Problem | undefined {
  const { root } = document;
  const version = valueUnder(root, giftKey);
  if (version?.kind === 'text' && version.text === giftVersion) return undefined;
  const start = { start: root.start, end: root.start + 1 };
  if (version)
    return at(
      document,
      {
        code: 'newer-form',
        message: 'this file has a form that is not known here',
        hint: 'take it in with a newer neckring, or ask for it as a card',
      },
      version,
    );
  const own = ['trial', 'formula', 'series', 'batch', 'ingredients', 'ledger'].find((key) =>
    entryOf(root, key),
  );
  return at(
    document,
    {
      code: 'not-given',
      message: 'this is not a file that neckring give wrote',
      hint:
        own === undefined
          ? 'ask for it with neckring give NAME --as yaml'
          : 'it looks like a file of a ledger: whoever has it types neckring give NAME --as yaml',
    },
    start,
  );
}

const unknownKeys = (document: LedgerDocument, root: MapNode): readonly Problem[] =>
  root.entries
    .filter(({ key }) => !giftKeys.some((known) => known === key.text))
    .map(({ key }) =>
      at(
        document,
        { code: 'unknown-key', message: `"${key.text}" is not known here`, hint: offer(key.text, giftKeys) },
        key,
      ),
    );

function partsOf(document: LedgerDocument, settings: ReadSettings, problems: Problem[]): Gift {
  const { root } = document;
  const under = (part: TreeNode): LedgerDocument => ({ ...document, root: part, problems: [] });
  const records = <Card>(
    key: string,
    read: (part: LedgerDocument, settings: ReadSettings) => Read<Card>,
  ): readonly GivenRecord<Card>[] =>
    listUnder(document, key, problems).flatMap((part) => {
      const { card, problems: found } = read(under(part), settings);
      problems.push(...found);
      return card ? [{ card, root: part }] : [];
    });
  const entry = entryOf(root, 'ingredients');
  const shelf: TreeNode = {
    kind: 'map',
    flow: false,
    entries: entry ? [entry] : [],
    start: root.start,
    end: root.end,
  };
  const book = entry ? readIngredientsCard(under(shelf), settings) : undefined;
  problems.push(...(book?.problems ?? []));
  const trials = records('trials', readTrialCard);
  const formulas = records('formulas', readFormulaCard);
  const given = book?.card?.ingredients ?? [];
  problems.push(...twice(document, trials, formulas), ...leftBehind(document, { given, trials, formulas }));
  if (trials.length + formulas.length === 0 && problems.every(({ severity }) => severity !== 'error')) {
    const finding = { code: 'empty', message: 'there is no recipe in this file', hint: 'ask for it again' };
    problems.push(at(document, finding, { start: root.start, end: root.start + 1 }));
  }
  return {
    ingredients: book?.card?.ingredients ?? [],
    trials,
    formulas,
    comesTo: comesTo(document, problems),
  };
}

function listUnder(document: LedgerDocument, key: string, problems: Problem[]): readonly TreeNode[] {
  const entry = entryOf(document.root, key);
  if (!entry || entry.value.kind === 'empty') return [];
  const { value } = entry;
  if (value.kind === 'list' && value.items.length <= mostRecords) return value.items;
  const finding = {
    code: 'wrong-shape',
    message: value.kind === 'list' ? `there are more than ${mostRecords} ${key}` : `"${key}" is no list`,
    hint: 'write each after a dash of its own, a few of them',
  };
  problems.push(at(document, finding, entry.key));
  return [];
}

function twice(
  document: LedgerDocument,
  trials: readonly GivenRecord<TrialCard>[],
  formulas: readonly GivenRecord<FormulaCard>[],
): readonly Problem[] {
  const seen = new Set<string>();
  const names = [
    ...trials.map(({ card }) => [`trial ${card.number}`, card.numberSpan] as const),
    ...formulas.map(({ card }) => [`formula ${card.name}`, card.nameSpan] as const),
  ];
  return names.flatMap(([name, span]) => {
    if (!seen.has(name)) {
      seen.add(name);
      return [];
    }
    return [
      at(
        document,
        { code: 'name-twice', message: `${name} stands here twice`, hint: 'keep one of them' },
        span,
      ),
    ];
  });
}

interface Parts {
  readonly given: readonly IngredientCard[];
  readonly trials: readonly GivenRecord<TrialCard>[];
  readonly formulas: readonly GivenRecord<FormulaCard>[];
}

/** Stages of trials that are not in the file: here such a number would mean another trial. */
function leftBehind(document: LedgerDocument, { given, trials, formulas }: Parts): readonly Problem[] {
  const numbers = new Set(trials.map(({ card }) => card.number));
  const byNumber = new Map(trials.map(({ card }): [number, TrialCard] => [card.number, card]));
  const uses = {
    trialOf: (number: number) => byNumber.get(number),
    uses: new Map<number, readonly number[]>(),
  };
  const known = new Set(given.flatMap(({ name, aliases }) => [name, ...aliases]).map(normaliseName));
  return [...trials, ...formulas].flatMap(({ card }) => {
    const { stages } = card;
    const own = new Set([...known, ...stages.map(({ name }) => normaliseName(name))]);
    return stages
      .flatMap(({ items }) => items)
      .flatMap(({ name, nameSpan }) => {
        const other = own.has(normaliseName(name)) ? undefined : otherStageOf(name);
        if (!other) return [];
        if (card.kind === 'trial' && wayTo(other.trial, card.number, uses)) {
          const circle = `"${name}" is made with trial ${card.number} itself`;
          return [at(document, { code: 'used-loop', message: circle, hint: 'ask for it again' }, nameSpan)];
        }
        if (numbers.has(other.trial)) return [];
        const message = `"${name}" is used here, and trial ${other.trial} is not in the file`;
        const hint = 'ask for it again: neckring give takes such trials along';
        return [at(document, { code: 'left-behind', message, hint }, nameSpan)];
      });
  });
}

/** What is no mass is left out: it is only held against what comes out here. */
function comesTo(document: LedgerDocument, problems: Problem[]): readonly GivenGrams[] {
  const entry = entryOf(document.root, 'comes to');
  const grams: GivenGrams[] = [];
  for (const [of, stages] of mapsIn(entry?.value))
    for (const [stage, substances] of mapsIn(stages))
      for (const [substance, value] of mapsIn(substances)) {
        const mass = value.kind === 'text' ? parseQuantity(value.text, ['mass']) : undefined;
        if (mass?.ok) grams.push({ of, stage, substance, grams: mass.value.inner });
        else if (mass) problems.push(at(document, { ...mass.fault }, value));
      }
  return grams;
}

const mapsIn = (node: TreeNode | undefined): readonly (readonly [string, TreeNode])[] =>
  node?.kind === 'map' ? node.entries.map(({ key, value }) => [key.text, value] as const) : [];
