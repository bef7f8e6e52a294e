/** Writing another record over one of the shelf; the old one stays as a comment above it. */

import { type Change, type Proposal, plainPage, type Refusal, refuse } from '../edit.ts';
import { changedAt } from '../edit-facts.ts';
import { columnOf, lineEnd } from '../edit-lines.ts';
import { lastOffset } from '../edit-page.ts';
import { entryOf } from '../tree.ts';
import { type PlainFacts, plainLines } from './plain-lines.ts';

export const replaceIngredient =
  (name: string, facts: PlainFacts): Change =>
  (page): Proposal | Refusal => {
    const book = entryOf(page.root, 'ingredients')?.value;
    const entry = entryOf(book, name);
    if (!entry || book?.kind !== 'map' || book.flow)
      return refuse(
        'edit-refused',
        `the record of "${name}" can't be replaced`,
        'change it in the file by hand',
      );
    const { text } = page;
    const column = columnOf(text, entry.key.start);
    const start = entry.key.start - column;
    const last = entry.value.kind === 'empty' ? entry.key : entry.value;
    const end = lineEnd(text, lastOffset(page, last, true));
    const newline = text.includes('\r\n') ? '\r\n' : '\n';
    const margin = ' '.repeat(column);
    const old = text
      .slice(start, end)
      .trimEnd()
      .split(/\r?\n/u)
      .map((line) => `${margin}# ${line.slice(Math.min(column, line.length))}`.trimEnd());
    const lines = [`${margin}# before:`, ...old, ...plainLines([[name, { map: facts }]], column)];
    return {
      ways: [{ start, end, text: lines.map((line) => line.replaceAll('\n', newline) + newline).join('') }],
      expected: changedAt(plainPage(page), ['ingredients', name], () => ({ map: facts })),
    };
  };
