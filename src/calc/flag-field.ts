/** A field that is typed or not: `--mie`. */

import { parsed } from '../problem.ts';
import type { Field } from './fields.ts';

export function flagField({ help }: { readonly help: string }): Field<boolean> {
  return {
    placeholder: '',
    help,
    many: false,
    required: false,
    isAmount: false,
    isFlag: true,
    positional: false,
    read: (texts) => parsed(texts.length > 0),
    show: (value) => (value ? true : undefined),
    basis: (value) => (value ? 'yes' : ''),
  };
}
