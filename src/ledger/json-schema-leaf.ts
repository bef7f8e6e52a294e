/** What a text in a file of the ledger may be, as editors check it: never more strictly than the reader does. */

import { benchDefaults } from './bench-defaults.ts';
import { looks } from './card-basics.ts';

/** A JSON Schema, draft-07, as plain data. */
export interface JsonSchema {
  readonly [keyword: string]: unknown;
}

/** What stands in a text: words of one's own, or something that is read further. */
export type Holds =
  | 'words'
  | 'amount'
  | 'share of a solution'
  | 'number'
  | 'figure'
  | 'score'
  | 'count'
  | 'time'
  | 'time or day'
  | 'look'
  | 'body'
  | 'version';

/**
 * One of these, which never hold together. Editors show a title once for `oneOf` and once a form for `anyOf`, and write
 * the colon after a key for `anyOf` alone.
 */
export function oneForm(...forms: readonly JsonSchema[]): JsonSchema {
  const flat = forms.flatMap((form) => formsOf.get(form) ?? [form]);
  const schema: JsonSchema = { anyOf: [{ oneOf: flat }] };
  formsOf.set(schema, flat);
  return schema;
}

/** The forms of what `oneForm` has made, so that forms of forms lie flat. */
const formsOf = new WeakMap<JsonSchema, readonly JsonSchema[]>();

/**
 * Editors read a bare 14 as a number and `yes` as a word; the ledger takes each as it was typed. Said by what it is not,
 * since editors would offer true, false and null for what may be one.
 */
const words: JsonSchema = { anyOf: [{ not: { type: ['object', 'array'] } }] };

/** Nothing at all, said so that editors don't offer the word null. */
export const nothing: JsonSchema = { not: { type: ['string', 'number', 'boolean', 'object', 'array'] } };

/** A number begins it, no comma stands in that, and something that is no number follows: the unit. */
const amountPattern = String.raw`^\s*(?:[Tt][Oo]\s)?[\s(+-]*\.?\d(?![\d.]*,\d)[\s\S]*[^\d\s.,()+*/-]`;
const dayPattern = String.raw`^\s*\d{4}-\d{2}-\d{2}`;

const numberLike = (limits: JsonSchema, errorMessage: string): JsonSchema => ({
  type: ['string', 'number'],
  pattern: String.raw`^\s*\.?\d`,
  ...limits,
  errorMessage,
});

const amountMessage = 'a number and a unit, such as 2.5 g';
const lookMessage = `one of ${looks.join(', ')}; or several with commas`;

/** Any letter of it large or small; the sign of kelvin is a K to whoever makes it small. */
const anyCase = (word: string): string =>
  [...word]
    .map((letter) => `[${letter}${letter.toUpperCase()}${letter === 'k' ? String.raw`\u212a` : ''}]`)
    .join('');

const lookPattern = String.raw`^[\s,]*(?:(?:${looks.map(anyCase).join('|')})\s*(?:,[\s,]*|$))*$`;

/** Whether nothing at all passes for words of one's own. */
export const takesNothing = (schema: JsonSchema): boolean =>
  schema === words || (formsOf.get(schema)?.includes(words) ?? false);

/** The schema of a text. What editors show where it is not met stands under `errorMessage`; validators pass over it. */
export const leafOf: Readonly<Record<Holds, JsonSchema>> = {
  words,
  amount: { type: 'string', pattern: amountPattern, errorMessage: amountMessage },
  'share of a solution': {
    type: 'string',
    pattern: `${amountPattern}|${String.raw`^\s*[Rr][Ee][Ss][Tt]\s*$`}`,
    errorMessage: 'a number and a unit, such as 100 ppm; or rest',
  },
  number: numberLike({ minimum: 0 }, 'a number, such as 3.05'),
  figure: { type: ['string', 'number'], pattern: String.raw`\d`, errorMessage: 'a number' },
  score: numberLike({ minimum: 0, maximum: 5 }, 'a number from 0 to 5'),
  count: {
    type: ['string', 'integer'],
    pattern: String.raw`^\d{1,9}$`,
    minimum: 1,
    errorMessage: 'a whole number from 1 up',
  },
  time: {
    type: 'string',
    pattern: String.raw`${dayPattern}[T ]\d{2}:\d{2}`,
    errorMessage: 'a day and a time, such as 2026-03-03T09:10+00:00',
  },
  'time or day': {
    type: 'string',
    pattern: dayPattern,
    errorMessage: 'a day such as 2026-03-03, with or without a time after it',
  },
  look: oneForm(
    { enum: [...looks], errorMessage: lookMessage },
    { type: 'string', pattern: lookPattern, not: { enum: [...looks] }, errorMessage: lookMessage },
  ),
  body: { enum: [...benchDefaults.limits] },
  version: { enum: [1, '1'] },
};
