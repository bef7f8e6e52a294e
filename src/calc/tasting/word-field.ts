/** Inputs of a tasting that are words, and questions that are asked or not. */

import { parsed, refused } from '../../problem.ts';
import type { Field } from '../fields.ts';

interface Words {
  readonly help: string;
  readonly placeholder: string;
}

/** A word or a few. */
export const wordField = ({ help, placeholder }: Words): Field<string | undefined> => ({
  placeholder,
  help,
  many: false,
  required: false,
  isAmount: false,
  positional: false,
  read: ([text, second]) => {
    if (second !== undefined)
      return refused('given-twice', `"${text}" and "${second}" are both given`, 'give it once');
    if (text === undefined) return parsed(undefined);
    const word = text.trim();
    return word === '' ? refused('missing', 'it is empty', `give ${placeholder}`) : parsed(word);
  },
  show: (value) => value,
  basis: (value) => value ?? '',
});

/** Asked or not. */
export const yesField = (help: string): Field<boolean> => ({
  placeholder: 'YES',
  help,
  many: false,
  required: false,
  isAmount: false,
  positional: false,
  read: (texts) => parsed(texts.length > 0),
  show: (value) => (value ? true : undefined),
  basis: (value) => (value ? 'yes' : ''),
});
