/** Writing a calculator's answer back into the trial, one fact a line. */

import { edit } from './edit.ts';
import { plainFact, plainOf } from './edit-facts.ts';
import { addListEntry } from './edit-list.ts';
import { readPage } from './edit-page.ts';
import type { Fact } from './fact-text.ts';
import type { Added } from './observations-edit.ts';
import { answerContent } from './same-fact.ts';
import { entryOf } from './tree.ts';

export interface NewResult {
  /** When it was reckoned, ISO 8601 with offset. */
  readonly at: string;
  readonly calculator: string;
  readonly stage?: string;
  /** The eight hex digits over everything that went in. */
  readonly of: string;
  /** What was typed over the trial, by field, so that the answer can be given again. */
  readonly typed?: readonly (readonly [field: string, text: string])[];
  readonly given?: readonly (readonly [label: string, text: string])[];
  readonly figures: readonly (readonly [label: string, text: string])[];
}

function factsOf({ at, calculator, stage, of, typed = [], given = [], figures }: NewResult): readonly Fact[] {
  return [
    ['at', at],
    ['calculator', calculator],
    ...(stage === undefined ? [] : [['stage', stage] as const]),
    ['of', of],
    ...(typed.length === 0 ? [] : [['typed', typed] as const]),
    ...(given.length === 0 ? [] : [['given', given] as const]),
    ...figures,
  ];
}

/**
 * Adds a result at the end of the list, unless an equal one (calculator, `of`, figures) is there already.
 * Input     the file's name, its text, and the answer with its figures as they are to be written
 * Output    the new text and the line, or the old text and `unchanged`
 */
export function addResult(file: string, text: string, result: NewResult): Added {
  const read = readPage(file, text);
  if (!read.ok) return { ok: false, problems: read.problems };
  const facts = factsOf(result);
  const answer = answerContent(plainFact(facts));
  const list = entryOf(read.page.root, 'results')?.value;
  const there =
    list?.kind === 'list' ? list.items.find((item) => answerContent(plainOf(item)) === answer) : undefined;
  if (there)
    return { ok: true, text, line: text.slice(0, there.start).split('\n').length, state: 'unchanged' };
  const edited = edit(file, text, addListEntry({ key: 'results', facts }));
  return edited.ok ? { ...edited, state: 'added' } : edited;
}
