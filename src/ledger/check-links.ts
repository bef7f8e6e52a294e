/** Checks of what one file says of another: trials, series, batches, formulas, photos. */

import type { Problem } from '../problem.ts';
import type { FileCard, Named, TrialCard } from './cards.ts';
import { type Check, type CheckContext, found, madeIn } from './check.ts';
import { offer } from './nearest.ts';
import { isSameName } from './stage-name.ts';
import { entryOf, type Span } from './tree.ts';

export const checkLinks: Check = (context) => {
  const { trials, series, batches, formulas } = context.ledger;
  return [
    ...trials.flatMap((trial) => trialLinks(context, trial)),
    ...series.flatMap((one) => [
      ...trialNamed(context, one, 'control', one.control),
      ...trialNamed(context, one, 'blank', one.blank),
    ]),
    ...formulas.flatMap((one) => trialNamed(context, one, 'from', one.from)),
    ...batches.flatMap((batch) => [
      ...trialNamed(context, batch, 'trial', batch.trial),
      ...named(context, batch, batch.formula, { what: 'formula', names: formulas.map(({ name }) => name) }),
    ]),
  ];
};

function trialLinks(context: CheckContext, trial: TrialCard): readonly Problem[] {
  const { series, batches } = context.ledger;
  const own = trial.from === trial.number ? valueSpan(trial, 'from') : undefined;
  const message = `trial ${trial.number} can't be changed from itself`;
  const hint = 'write the number of the trial before it';
  return [
    ...(own ? [found(context, trial, { code: 'from-itself', message, hint }, own)] : []),
    ...trialNamed(context, trial, 'from', trial.from),
    ...named(context, trial, trial.series, { what: 'series', names: series.map(({ name }) => name) }),
    ...named(context, trial, trial.batch, { what: 'batch', names: batches.map(({ name }) => name) }),
  ];
}

const valueSpan = ({ root }: FileCard, key: string): Span | undefined => entryOf(root, key)?.value;

const isTrial = ({ sources }: CheckContext, number: number): boolean =>
  sources.trialOf(number) !== undefined || sources.isUnread?.(number) === true;

/** A number of a trial that is not there. */
function trialNamed(
  context: CheckContext,
  card: FileCard,
  key: string,
  number: number | undefined,
): readonly Problem[] {
  if (number === undefined || isTrial(context, number)) return [];
  const span = valueSpan(card, key) ?? card.root;
  const message = `there is no trial ${number}`;
  const hint = 'write the number of a trial that is there, or leave it out';
  return [found(context, card, { code: 'unknown-trial', message, hint }, span)];
}

interface Among {
  readonly what: 'series' | 'batch' | 'formula';
  readonly names: readonly string[];
}

function named(
  context: CheckContext,
  card: FileCard,
  link: Named | undefined,
  { what, names }: Among,
): readonly Problem[] {
  if (!link || names.some((name) => isSameName(name, link.text))) return [];
  const folder = { series: 'series', batch: 'batches', formula: 'formulas' }[what];
  if (context.ledger.unread.some((file) => file.startsWith(`${folder}/`))) return [];
  const make = `make ${folder}/NAME.yaml with "${what}: ${link.text}"`;
  const hint = names.length === 0 ? make : `${offer(link.text, names)}, or ${make}`;
  const message = `there is no ${what} "${link.text}"`;
  return [found(context, card, { code: `unknown-${what}`, message, hint }, link)];
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
