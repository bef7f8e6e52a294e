/** Where a trial is referred to, and for each place whether the one that moves is meant. */

import { relative, resolve, sep } from 'node:path';
import type { Io } from '../io.ts';
import { branchesOf, type Twins, writtenFor } from '../ledger/branch-of.ts';
import type { AnyCard, TrialCard } from '../ledger/cards.ts';
import { openBookOf } from '../ledger/checks.ts';
import type { Ledger } from '../ledger/ledger.ts';
import type { ReadSettings } from '../ledger/reading.ts';
import { type Reference, referencesIn } from '../ledger/references.ts';
import { isSameName } from '../ledger/stage-name.ts';
import { fail } from '../problem.ts';
import type { Call } from './command.ts';

export interface RefersHere {
  readonly file: string;
  readonly reference: Reference;
  readonly line: number;
}

export interface Places {
  readonly trial: TrialCard;
  /** Others of the same number. */
  readonly twins: readonly TrialCard[];
  readonly places: readonly RefersHere[];
}

/** Every reference to the number of a trial. */
export async function placesOf(ledger: Ledger, trial: TrialCard): Promise<Places> {
  const { trials, series, formulas, batches } = ledger;
  const { ingredients } = await import('../reference/library.ts');
  const { book } = openBookOf(ledger, ingredients);
  const isIngredient = (name: string): boolean => book.find(name) !== undefined;
  const cards: readonly AnyCard[] = [...trials, ...series, ...formulas, ...batches];
  const places = cards.flatMap((card) =>
    referencesIn(card, isIngredient)
      .filter(({ to, number }) => to === 'trial' && number === trial.number)
      .map((reference) => ({ file: card.file, reference, line: lineOf(ledger, card.file, reference) })),
  );
  const twins = trials.filter((one) => one.number === trial.number && one.file !== trial.file);
  return { trial, twins, places };
}

const lineOf = ({ documents }: Ledger, file: string, { span }: Reference): number =>
  documents.get(file)?.source.placeAt(span).line ?? 1;

/** What was asked of a person, by place. */
export type Answers = Map<string, boolean>;

export interface Settled {
  readonly moving: readonly RefersHere[];
  readonly staying: readonly RefersHere[];
}

interface Around {
  readonly call: Call;
  readonly io: Io;
  readonly ledger: Ledger;
  readonly settings: ReadSettings;
  readonly answers: Answers;
}

/** Which references move. Refuses those of which nobody can tell. */
export async function settledPlaces(all: Places, around: Around): Promise<Settled> {
  const { trial, twins, places } = all;
  if (twins.length === 0) return { moving: places, staying: [] };
  const { root } = around.ledger;
  const together: Twins = {
    root,
    settings: around.settings,
    moving: trial.file,
    others: twins.map(({ file }) => file),
  };
  const branches = await branchesOf(together);
  const open: RefersHere[] = [];
  const found: Record<'moving' | 'other', RefersHere[]> = { moving: [], other: [] };
  for (const place of places) {
    const sure =
      meant(place, all) ??
      asTyped(place, around) ??
      (branches && (await writtenFor(place.reference, place.file, together, branches)));
    if (sure) found[sure].push(place);
    else open.push(place);
  }
  for (const place of open) found[(await asked(place, all, around)) ? 'moving' : 'other'].push(place);
  return { moving: found.moving, staying: found.other };
}

/** What only one of the two can be: a trial is not changed from itself, and has only the stages that it has. */
function meant({ file, reference }: RefersHere, { trial, twins }: Places): 'moving' | 'other' | undefined {
  if (file === trial.file) return 'other';
  if (twins.length === 1 && file === twins[0]?.file) return 'moving';
  const { stage } = reference;
  if (stage === undefined) return undefined;
  const has = (one: TrialCard): boolean => one.stages.some(({ name }) => isSameName(name, stage));
  if (has(trial) === twins.some(has)) return undefined;
  return has(trial) ? 'moving' : 'other';
}

function asTyped({ file }: RefersHere, { call, io, ledger }: Around): 'moving' | 'other' | undefined {
  const names = (option: 'with' | 'leave'): boolean =>
    (call.values[option] ?? []).some(
      (typed) =>
        typed === 'all' ||
        relative(ledger.root, resolve(io.workingFolder, typed)).split(sep).join('/') === file,
    );
  if (names('with')) return 'moving';
  return names('leave') ? 'other' : undefined;
}

async function asked(place: RefersHere, { trial, twins }: Places, { io, answers }: Around): Promise<boolean> {
  const { file, line, reference } = place;
  const words = `${file}:${line} ${placeWords(reference)}`;
  const known = answers.get(words);
  if (known !== undefined) return known;
  const others = twins.map((one) => one.file).join(' or ');
  if (!io.canAsk)
    return fail(
      'two-meanings',
      `it can't be told whether ${words} means ${trial.file} or ${others}`,
      `add --with ${file} if it means the one that moves, else --leave ${file}`,
    );
  const typed = await io.ask(`${words}: does that mean ${trial.file}, which moves? (y, n: ${others}) `);
  if (typed === undefined) return fail('left', 'nothing was written', 'type it again when you know');
  const isMoving = /^\s*y/iu.test(typed);
  answers.set(words, isMoving);
  return isMoving;
}

/** `from: 21`, `emulsion of 21` */
export const placeWords = ({ key, name }: Reference): string =>
  key === 'item' || key === 'stage' ? name : `${key}: ${name}`;
