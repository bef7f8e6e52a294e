/**
 * The one way in which a text of the ledger is changed: one span is replaced, the result is read again, and it
 * is refused unless it says what the old one said plus the one fact that was meant.
 */

import type { Problem } from '../problem.ts';
import { isSame, type Plain, plainOf } from './edit-facts.ts';
import { type Splice, spliced } from './edit-lines.ts';
import { type Page, readPage } from './edit-page.ts';

/** What a change wants done. */
export interface Proposal {
  /** Ways of writing it, best first; the first that reads back as meant is taken. */
  readonly ways: readonly Splice[];
  readonly expected: Plain;
}

export interface Refusal {
  readonly code: string;
  readonly message: string;
  readonly hint: string;
}

export type Change = (page: Page) => Proposal | Refusal;

export type Edited =
  | {
      readonly ok: true;
      readonly text: string;
      /** The line on which what was written begins, from 1. */
      readonly line: number;
    }
  | { readonly ok: false; readonly problems: readonly Problem[] };

export const refuse = (code: string, message: string, hint: string): Refusal => ({ code, message, hint });

const refusedWith = ({ code, message, hint }: Refusal): Edited => ({
  ok: false,
  problems: [{ code, severity: 'error', message, hint }],
});

/**
 * Changes one fact of a text.
 * Input     the file's name (for problems only), its text, the change, and the text's page where it has been read
 * Output    the new text, in which every untouched character is as it was
 * Refuses   a text that can't be read, and a change that would make it read as anything but what was meant
 */
export function edit(file: string, text: string, change: Change, before = readPage(file, text)): Edited {
  if (!before.ok) return { ok: false, problems: before.problems };
  const proposal = change(before.page);
  if ('message' in proposal) return refusedWith(proposal);
  let problems: readonly Problem[] = [];
  for (const way of proposal.ways) {
    const written = spliced(text, way);
    const after = readPage(file, written);
    if (!after.ok) problems = after.problems;
    else if (after.page.warnings > before.page.warnings) continue;
    else if (isSame(plainOf(after.page.root), proposal.expected))
      return { ok: true, text: written, line: lineOf(written, way) };
  }
  return unwritable(file, problems);
}

const lineOf = (written: string, { start, text }: Splice): number =>
  written.slice(0, start + (/^[\r\n]*/.exec(text)?.[0].length ?? 0)).split('\n').length;

function unwritable(file: string, problems: readonly Problem[]): Edited {
  const [first] = problems;
  const why = first ? `: ${first.message}` : '';
  return refusedWith(
    refuse(
      'edit-refused',
      `${file} can't take this without changing something else${why}`,
      first?.hint ? first.hint : 'type it into the file by hand',
    ),
  );
}

/** Several changes one after the other, all or none. */
export function editAll(file: string, text: string, changes: readonly Change[]): Edited {
  let edited: Edited = { ok: true, text, line: 1 };
  for (const change of changes) {
    if (!edited.ok) return edited;
    edited = edit(file, edited.text, change);
  }
  return edited;
}

export const plainPage = (page: Page): Plain => plainOf(page.root);
