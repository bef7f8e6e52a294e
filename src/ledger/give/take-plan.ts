/** What taking a recipe in comes to: the files that are written, and what becomes of each thing that was given. */

import { type Problem, ProblemError } from '../../problem.ts';
import { editAll } from '../edit.ts';
import type { Plain } from '../edit-facts.ts';
import type { Fact, FactValue } from '../fact-text.ts';
import { ingredientsFile } from '../folder.ts';
import { addIngredient, newBookText } from '../ingredient-edit.ts';
import type { FileChange } from '../land.ts';
import { withSchemaLine } from '../schema-files.ts';
import { numberInName } from '../single-trial.ts';
import type { Gift } from './read-gift.ts';
import { replaceIngredient } from './replace-ingredient.ts';
import { type Shelf, type TakenIngredient, takeIngredients } from './take-ingredients.ts';
import { type TakenFile, takeFormulas, takeTrials } from './take-records.ts';
import type { Clash, Settle, TakenRow } from './take-words.ts';

export interface TakePlan {
  /** Names that somebody must say something about first; then nothing else is planned. */
  readonly clashes: readonly Clash[];
  readonly rows: readonly TakenRow[];
  readonly changes: readonly FileChange[];
  /** Here, by the normalised names and the numbers in the given file. */
  readonly names: ReadonlyMap<string, string>;
  readonly numbers: ReadonlyMap<number, number>;
}

export interface TakeInto extends Shelf {
  /** Names of the files in `trials`, as they stand now. */
  readonly trialNames: readonly string[];
  readonly settle: Settle;
}

export function planTake(gift: Gift, into: TakeInto): TakePlan {
  const { ledger, trialNames, settle } = into;
  const ingredients = takeIngredients(gift.ingredients, into, settle);
  const last = Math.max(
    0,
    ...trialNames.flatMap((name) => numberInName(name) ?? []),
    ...ledger.trials.map(({ number }) => number),
  );
  const { names } = ingredients;
  const trials = takeTrials(gift, ledger, names, last + 1);
  const formulas = takeFormulas(gift.formulas, {
    ledger,
    trials: gift.trials,
    names,
    numbers: trials.numbers,
    settle,
  });
  const clashes = [...ingredients.clashes, ...formulas.clashes];
  const found = { clashes, names, numbers: trials.numbers };
  if (clashes.length > 0) return { ...found, rows: [], changes: [] };
  // Where mine is kept of everything that was given, what only theirs needs is not taken either.
  const isRefused = gift.formulas.length > 0 && formulas.taken.every(({ row }) => row.how === 'mine kept');
  if (isRefused)
    return {
      ...found,
      rows: [
        ...formulas.taken.map(({ row }) => row),
        ...[...ingredients.taken, ...trials.taken].map(({ row }) => notNeeded(row)),
      ],
      changes: [],
    };
  const records = [...trials.taken, ...formulas.taken];
  return {
    ...found,
    rows: [...formulas.taken, ...trials.taken, ...ingredients.taken].map(({ row }) => row),
    changes: [...bookChanges(ingredients.taken, into), ...records.flatMap((one) => recordChange(one, into))],
  };
}

const notNeeded = ({ file: _, ...row }: TakenRow): TakenRow =>
  row.how === 'new' || row.how === 'renamed' ? { ...row, here: '', how: 'not needed' } : row;

function recordChange({ row, text, replaces }: TakenFile, { ledger }: TakeInto): readonly FileChange[] {
  if (text === undefined || row.file === undefined) return [];
  const before = replaces === undefined ? undefined : ledger.documents.get(replaces)?.source.text;
  const kind = row.kind === 'formula' ? 'formula' : 'trial';
  return [{ path: row.file, before, after: withSchemaLine(ledger.hasFile, kind, text) }];
}

const factValue = (value: Plain): FactValue => {
  if (typeof value === 'string') return value;
  return 'map' in value ? value.map.map(([key, inner]): Fact => [key, factValue(inner)]) : [];
};

function bookChanges(taken: readonly TakenIngredient[], { ledger }: TakeInto): readonly FileChange[] {
  const written = taken.filter(({ facts }) => facts !== undefined);
  const [first, ...others] = written;
  if (!first) return [];
  const before = ledger.documents.get(ingredientsFile)?.source.text;
  const facts = ({ facts: some }: TakenIngredient): readonly Fact[] =>
    (some ?? []).map(([key, value]): Fact => [key, factValue(value)]);
  const start =
    before ?? withSchemaLine(ledger.hasFile, 'ingredients', newBookText(first.here, facts(first)));
  const edits = before === undefined ? others : written;
  const edited = editAll(
    ingredientsFile,
    start,
    edits.map((one) =>
      one.replaces
        ? replaceIngredient(one.replaces.name, one.facts ?? [])
        : addIngredient(one.here, facts(one)),
    ),
  );
  if (!edited.ok) throw new ProblemError(edited.problems);
  return [{ path: ingredientsFile, before, after: edited.text }];
}

/** Problems that are not there without the changes. */
export function newProblems(before: readonly Problem[], after: readonly Problem[]): readonly Problem[] {
  const key = ({ code, message, place }: Problem): string => JSON.stringify([code, message, place?.file]);
  const known = new Map<string, number>();
  for (const one of before) known.set(key(one), (known.get(key(one)) ?? 0) + 1);
  return after.filter((one) => {
    const count = known.get(key(one)) ?? 0;
    known.set(key(one), count - 1);
    return count <= 0;
  });
}
