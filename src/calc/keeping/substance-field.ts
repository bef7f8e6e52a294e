/** What is lost: a name of the book, or one of the substances of which constants are known. */

import { parsed } from '../../problem.ts';
import { esterConstants, notTold } from '../../reference/kinetics.ts';
import { lookUp } from '../../reference/look-up.ts';
import { normaliseName } from '../../reference/name.ts';
import type { BookEntry } from '../book.ts';
import { type Field, fieldOfOne } from '../fields.ts';
import { unknownName } from '../known-name.ts';

export interface LostSubstance {
  readonly name: string;
  /** The name and those of what it was made like, by which constants are looked up. */
  readonly names: readonly string[];
}

export const lostSubstance = ({ name, like }: Pick<BookEntry, 'name' | 'like'>): LostSubstance => ({
  name,
  names: [name, ...(like ?? [])],
});

/** Names that chemists use beside those of the book. */
const otherNames: Readonly<Record<string, string>> = {
  'ethyl butanoate': 'ethyl butyrate',
  'ethyl propanoate': 'ethyl propionate',
  'ethyl pentanoate': 'ethyl valerate',
  'ethyl caproate': 'ethyl hexanoate',
  'ethyl caprylate': 'ethyl octanoate',
  'ethyl 2-methylbutanoate': 'ethyl 2-methylbutyrate',
  sugar: 'sucrose',
};

export const substanceField = ({ help }: { readonly help: string }): Field<LostSubstance | undefined> => ({
  ...fieldOfOne<LostSubstance>(
    { help, placeholder: 'NAME', positional: true, isAmount: false },
    (text, { book }) => {
      const typed = normaliseName(text);
      const name = lookUp(otherNames, typed) ?? typed;
      const entry = book.find(name);
      if (entry) return parsed(lostSubstance(entry));
      if (lookUp(esterConstants, name) || lookUp(notTold, name)) return parsed({ name, names: [name] });
      return unknownName(text, book);
    },
    ({ name }) => name,
    ({ names }) => names.join(' '),
  ),
  takes: ['ingredient'],
});
