/** Checks of what one file says of another: trials, series, batches, formulas, photos. */

import type { Problem } from '../problem.ts';
import { normaliseName } from '../reference/name.ts';
import type { FileCard, Named, TrialCard } from './cards.ts';
import { type Check, type CheckContext, found, madeIn } from './check.ts';
import { offer } from './nearest.ts';
import { type Reference, referencesIn } from './references.ts';
import { entryOf } from './tree.ts';

export const checkLinks: Check = (context) => {
  const { trials, series, batches, formulas } = context.ledger;
  const known: Known = { series: namesOf(series), batch: namesOf(batches), formula: namesOf(formulas) };
  return [...trials, ...series, ...formulas, ...batches].flatMap((card) => [
    ...(card.kind === 'trial' ? fromItself(context, card) : []),
    ...referencesIn(card).flatMap((reference) => broken({ context, card, known }, reference)),
  ]);
};

/** The names that are there, as names are compared. */
type Known = Readonly<Record<keyof typeof folders, ReadonlySet<string>>>;

const namesOf = (cards: readonly { readonly name: string }[]): ReadonlySet<string> =>
  new Set(cards.map(({ name }) => normaliseName(name)));

interface LooksUp {
  readonly context: CheckContext;
  readonly card: FileCard;
  readonly known: Known;
}

/** What is said of stages of other trials is looked at where amounts are solved. */
function broken(from: LooksUp, reference: Reference): readonly Problem[] {
  const { to, key } = reference;
  if (key === 'item' || key === 'against' || key === 'stage') return [];
  return to === 'trial' ? trialNamed(from, reference) : named(from, reference, to);
}

function fromItself(context: CheckContext, trial: TrialCard): readonly Problem[] {
  const own = trial.from === trial.number ? entryOf(trial.root, 'from')?.value : undefined;
  const message = `trial ${trial.number} can't be changed from itself`;
  const hint = 'write the number of the trial before it';
  return own ? [found(context, trial, { code: 'from-itself', message, hint }, own)] : [];
}

const isTrial = ({ sources }: CheckContext, number: number): boolean =>
  sources.trialOf(number) !== undefined || sources.isUnread?.(number) === true;

/** A number of a trial that is not there. */
function trialNamed({ context, card }: LooksUp, reference: Reference): readonly Problem[] {
  const { number } = reference;
  if (number === undefined || isTrial(context, number)) return [];
  const message = `there is no trial ${number}`;
  const hint = 'write the number of a trial that is there, or leave it out';
  return [found(context, card, { code: 'unknown-trial', message, hint }, reference.span)];
}

const folders = { series: 'series', batch: 'batches', formula: 'formulas' } as const;

function named(
  { context, card, known }: LooksUp,
  { name, span }: Reference,
  what: keyof typeof folders,
): readonly Problem[] {
  if (known[what].has(normaliseName(name))) return [];
  const { series, batches, formulas, unread } = context.ledger;
  const names = { series, batch: batches, formula: formulas }[what].map((one) => one.name);
  const folder = folders[what];
  if (unread.some((file) => file.startsWith(`${folder}/`))) return [];
  const make = `make ${folder}/NAME.yaml with "${what}: ${name}"`;
  const hint = names.length === 0 ? make : `${offer(name, names)}, or ${make}`;
  const message = `there is no ${what} "${name}"`;
  return [found(context, card, { code: `unknown-${what}`, message, hint }, span)];
}

/** Photos lie inside the ledger, and are there. */
export const checkPhotos: Check = (context) =>
  madeIn(context.ledger).flatMap((card) =>
    card.observations.flatMap(({ photo }) => (photo ? photoProblems(context, card, photo) : [])),
  );

function photoProblems(context: CheckContext, card: FileCard, photo: Named): readonly Problem[] {
  const parts = photo.text.split(/[\\/]/u);
  const isOutside = /^(?:[\\/]|[A-Za-z]:)/u.test(photo.text) || parts.includes('..');
  if (isOutside) {
    const message = `the photo "${photo.text}" is outside the ledger`;
    const hint = 'copy it into the ledger and write its path from there, such as photos/a.jpg';
    return [found(context, card, { code: 'photo-outside', message, hint }, photo)];
  }
  if (context.ledger.hasFile(photo.text)) return [];
  const message = `there is no photo "${photo.text}"`;
  const hint = 'write its path from the root of the ledger, such as photos/a.jpg';
  return [found(context, card, { code: 'photo-missing', message, hint }, photo)];
}
