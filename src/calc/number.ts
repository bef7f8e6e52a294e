/** Numbers as people type them. One grammar serves files, options, items, aims and CSV. */

import { type Parsed, parsed, refused } from '../problem.ts';

/** Digits with an optional decimal point and exponent; no sign. */
export const numberPattern = String.raw`(?:\d+(?:\.\d+)?|\.\d+)(?:[eE][+-]?\d+)?`;

const numberAlone = new RegExp(`^${numberPattern}$`, 'u');
const signedAlone = new RegExp(`^[+-]?${numberPattern}$`, 'u');

const commaAlone = /^[+-]?\d[\d.]*(?:,\d[\d.]*)+$/u;

/** A number written with commas, from its first digit on. */
const commaNumber = /^([+-]?\d[\d.]*(?:,\d[\d.]*)+)/u;

/**
 * A number alone.
 *
 * Input     text such as `2.5`, `.5`, `1e-3`; with `signed`, also `-2.5` and `+2.5`
 * Output    the number, finite
 * Refuses   anything else: hexadecimal, empty, words, commas (the hint shows the mend), what can't be meant
 * Example   parseNumber('2.5e3') -> 2500
 */
export function parseNumber(text: string, options: { readonly signed?: boolean } = {}): Parsed<number> {
  const typed = text.trim();
  const start = text.length - text.trimStart().length;
  const span: readonly [number, number] = [start, start + typed.length];
  if (typed === '') return refused('no-number', 'there is no number', 'write digits, such as 2.5', span);
  const comma = commaFault(typed, start, '');
  if (comma) return comma;
  if (isNotFiniteWord(typed)) return notFinite(typed, span);
  if (!(options.signed ? signedAlone : numberAlone).test(typed)) return notANumber(typed, span);
  const value = Number(typed);
  if (!Number.isFinite(value)) return notFinite(typed, span);
  return isOrdinary(value) ? parsed(value + 0) : notOrdinary(typed, value, span);
}

const leastOrdinary = 1e-30;
const largestOrdinary = 1e30;

/**
 * Whether a number can be meant: 0, or within thirty powers of ten of 1. A trace of a picogram in ten tonnes is nineteen
 * away, and no product of what is typed leaves the doubles.
 */
export const isOrdinary = (value: number): boolean =>
  value === 0 || (Math.abs(value) >= leastOrdinary && Math.abs(value) <= largestOrdinary);

export function notOrdinary(typed: string, value: number, span: readonly [number, number]): Parsed<never> {
  const message = `"${typed}" is too ${Math.abs(value) < 1 ? 'small' : 'large'} to be meant`;
  return refused('not-ordinary', message, 'check its zeros and its e: 2e3 is 2000', span);
}

/** Whether a word is a number and nothing else, such as the `50` of `--batch 50 g`; commas are refused later. */
export const isBareNumber = (text: string): boolean => signedAlone.test(text) || commaAlone.test(text);

const isNotFiniteWord = (text: string): boolean => /^[+-]?(?:nan|inf|infinity|∞)$/iu.test(text);

function notANumber(typed: string, span: readonly [number, number]): Parsed<never> {
  if (/^[+-]/u.test(typed) && signedAlone.test(typed)) {
    return refused('signed-number', `"${typed}" has a sign`, `write ${typed.slice(1)}`, span);
  }
  if (/^\d+\.$/u.test(typed)) {
    return refused('not-a-number', `"${typed}" ends in a point`, `write ${typed.slice(0, -1)}`, span);
  }
  const hint = 'write digits with a decimal point, such as 2.5 or 1.2e-3';
  return refused('not-a-number', `"${typed}" is not a number`, hint, span);
}

export function notFinite(typed: string, span: readonly [number, number]): Parsed<never> {
  return refused(
    'not-finite',
    `"${typed}" is not an ordinary number`,
    'write it in digits, such as 2.5',
    span,
  );
}

/**
 * The fault of a number that begins a text and holds commas; undefined where it holds none.
 *
 * Input     the text from the number on; the offset of that text; what follows the number in the mend, such as ` g`
 */
export function commaFault(text: string, offset: number, after: string): Parsed<never> | undefined {
  const typed = commaNumber.exec(text)?.[1];
  if (typed === undefined) return undefined;
  const span: readonly [number, number] = [offset, offset + typed.length];
  const [whole = '', ...groups] = typed.split(',');
  const last = groups.at(-1) ?? '';
  const isThousands =
    groups.every((group) => /^\d{3}(?:\.\d+)?$/u.test(group)) && /^[+-]?\d{1,3}$/u.test(whole);
  if (isThousands && whole.replace(/[+-]/u, '') !== '0') {
    return thousandsFault({
      typed,
      plain: `${whole}${groups.join('')}`,
      isSingle: groups.length === 1,
      after,
      span,
    });
  }
  const mend =
    groups.length === 1 && !last.includes('.') ? `${whole.replaceAll('.', '')}.${last}` : undefined;
  const hint = mend ? `write ${mend}${after}` : 'write digits with one decimal point, such as 2.5';
  return refused('decimal-comma', `"${typed}" has a comma where the decimal point belongs`, hint, span);
}

interface ThousandsSlip {
  readonly typed: string;
  readonly plain: string;
  readonly isSingle: boolean;
  readonly after: string;
  readonly span: readonly [number, number];
}

function thousandsFault({ typed, plain, isSingle, after, span }: ThousandsSlip): Parsed<never> {
  const decimal =
    isSingle && !plain.includes('.') ? ` (or ${typed.replace(',', '.')}${after} for a decimal comma)` : '';
  return refused('thousands-comma', `"${typed}" has a comma in it`, `write ${plain}${after}${decimal}`, span);
}
