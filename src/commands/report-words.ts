/** Small parts that several pages of a report share. */

import type { Caution, Citation } from '../calc/answer.ts';
import type { Part, Section } from '../output/report/model.ts';
import { visible } from '../output/visible.ts';
import type { Problem } from '../problem.ts';

/** A section, or none where there is nothing to show. */
export function section(
  id: string,
  title: string,
  parts: readonly Part[],
  note?: string,
): readonly Section[] {
  if (parts.length === 0) return [];
  return [{ id, title, parts, ...(note === undefined ? {} : { note }) }];
}

/** Each once, however many answers raised it. */
export function cautionSection(cautions: readonly Caution[]): readonly Section[] {
  const notes = [...new Set(cautions.map(({ text, source }) => `${text} [${source}]`))];
  if (notes.length === 0) return [];
  return section('cautions', 'Cautions', [{ kind: 'notes', mark: '!', notes, tone: 'warn' }]);
}

export function sourceSection(sources: readonly Citation[]): readonly Section[] {
  const notes = [
    ...new Set(sources.map((one) => `${one.for}: ${one.source}${one.fromMemory ? ' (from memory)' : ''}`)),
  ];
  if (notes.length === 0) return [];
  return section(
    'sources',
    'Sources',
    [{ kind: 'notes', mark: '-', notes }],
    'Where the figures of this page come from. What is marked was written from memory: look it up before it counts.',
  );
}

export function problemPart(problems: readonly Problem[]): readonly Part[] {
  if (problems.length === 0) return [];
  const notes = problems.map(({ message, hint }) => visible(`${message}; ${hint}`));
  return [{ kind: 'notes', mark: '!', notes: [...new Set(notes)], tone: 'warn' }];
}

/** `11`, `11 and 12`, `none` */
export const numbersText = (numbers: readonly number[]): string =>
  numbers.length === 0 ? 'none' : [...numbers].sort((one, other) => one - other).join(', ');
