/** What a new number changed, and what was left alone, in words. */

import type { TrialCard } from '../ledger/cards.ts';
import type { Ledger } from '../ledger/ledger.ts';
import type { Block, Page } from '../output/view.ts';
import { visible } from '../output/visible.ts';
import type { Problem } from '../problem.ts';
import { placeWords, type RefersHere, type Settled } from './renumber-places.ts';

export interface Renumbered {
  /** As it was. */
  readonly ledger: Ledger;
  readonly trial: TrialCard;
  readonly to: number;
  readonly settled: Settled;
  /** The new name of its file. */
  readonly file: string;
}

const at = ({ file, line }: { readonly file: string; readonly line: number }): string =>
  `${visible(file)}:${line}`;

const placeLine = (place: RefersHere): string => `  ${at(place)}  ${visible(placeWords(place.reference))}`;

export function renumberedPage(told: Renumbered): Page {
  const { trial, to, settled, file } = told;
  const mentions = mentionsIn(told);
  return [
    { kind: 'heading', text: `trial ${trial.number} -> ${to}` },
    { kind: 'lines', lines: [`  ${visible(trial.file)} -> ${visible(file)}`] },
    ...listed('Refers to it, and now says so', settled.moving.map(placeLine)),
    ...listed('Means the other one, and stays', settled.staying.map(placeLine)),
    ...listed(
      'Mentioned in words, left as it is',
      mentions.map((mention) => `  ${at(mention)}  ${visible(mention.text)}`),
    ),
  ];
}

const listed = (heading: string, lines: readonly string[]): readonly Block[] =>
  lines.length === 0
    ? []
    : [
        { kind: 'text', text: heading },
        { kind: 'lines', lines },
      ];

interface Mention {
  readonly file: string;
  readonly line: number;
  readonly text: string;
}

/** Lines of prose and comments that name the trial. */
function mentionsIn({ ledger, trial, settled }: Renumbered): readonly Mention[] {
  const known = new Set([...settled.moving, ...settled.staying].map(at));
  const pattern = new RegExp(`\\b(?:trials?|beakers?)\\s+0*${trial.number}\\b`, 'iu');
  return [...ledger.documents].flatMap(([file, { source }]) =>
    source.text.split(/\r?\n/u).flatMap((text, index) => {
      const mention = { file, line: index + 1, text: text.trim() };
      return pattern.test(text) && !known.has(at(mention)) ? [mention] : [];
    }),
  );
}

export function renumberedJson(told: Renumbered): Readonly<Record<string, unknown>> {
  const { trial, to, settled, file } = told;
  const placed = ({ file: where, line, reference }: RefersHere) => ({
    file: where,
    line,
    key: reference.key,
  });
  return {
    number: { value: to, unit: '' },
    before: { value: trial.number, unit: '' },
    file,
    changed: settled.moving.map(placed),
    left: settled.staying.map(placed),
    mentions: mentionsIn(told),
  };
}

/** Files that could not be looked through. */
export const unreadProblems = ({ unread }: Ledger, { number }: TrialCard): readonly Problem[] =>
  unread.map((file) => ({
    code: 'not-looked-through',
    severity: 'warning',
    message: `${file} can't be read, so it was not looked through for ${number}`,
    hint: `neckring check ${file} says why; then look in it for ${number} yourself`,
  }));
