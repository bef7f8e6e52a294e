/** The number or the arithmetic with which an amount begins. */

import { type Parsed, parsed, refused } from '../problem.ts';
import { arithmeticLength, parseArithmetic } from './arithmetic.ts';
import { commaFault, notFinite, numberPattern, parseNumber } from './number.ts';
import { unitTyped } from './unit.ts';

type Span = readonly [number, number];

/** The number at the head of an amount, and what stands after it. */
export interface AmountHead {
  readonly value: number;
  /** The number or the arithmetic as typed. */
  readonly typed: string;
  /** What follows, trimmed, and where it begins in the whole text. */
  readonly rest: string;
  readonly restAt: number;
}

const signedNumber = new RegExp(`^[+-]?${numberPattern}$`, 'u');

const currencies: ReadonlyMap<string, string> = new Map([
  ['$', 'USD'],
  ['€', 'EUR'],
  ['£', 'GBP'],
]);

/** The number or arithmetic at the head of a text; `parseQuantity` and items share it. */
export function readAmountHead(text: string): Parsed<AmountHead> {
  const written = text.trim();
  const start = text.length - text.trimStart().length;
  const span: Span = [start, start + written.length];
  if (written === '')
    return refused('no-amount', 'there is no amount', 'write a number and a unit, such as 2.5 g', span);
  const unsigned = written.replace(/^[+-]\s*/u, '');
  if (/^(?:nan|inf|infinity|∞)(?![a-z])/iu.test(unsigned)) return notFinite(written, span);
  const comma = commaFault(written, start, unitAfterComma(written));
  if (comma) return comma;
  const length = arithmeticLength(written);
  const typed = written.slice(0, length);
  const rest = written.slice(length).trimStart();
  if (typed === '' || !/\d/u.test(typed)) return noNumber(written, span);
  const slip = restFault({ typed, rest, written, span });
  if (slip) return slip;
  const value = signedNumber.test(typed)
    ? parseNumber(typed, { signed: true })
    : parseArithmetic(typed, start);
  if (!value.ok) return value;
  return parsed({ value: value.value, typed, rest, restAt: start + written.length - rest.length });
}

interface RestCheck {
  readonly typed: string;
  readonly rest: string;
  readonly written: string;
  readonly span: Span;
}

/** The fault of a number that breaks off where no unit begins; undefined where a unit may begin. */
function restFault({ typed, rest, written, span }: RestCheck): Parsed<never> | undefined {
  if (typed === '0' && /^[xXbBoO][\da-fA-F]/u.test(rest)) {
    return refused(
      'not-a-number',
      `"${written}" is not a number in digits`,
      'write it in digits, such as 16 g',
      span,
    );
  }
  const at = span[1] - rest.length;
  if (/^\.(?!\d)/u.test(rest)) {
    const hint = `write ${typed} ${rest.slice(1).trim()}`.trim();
    return refused('not-a-number', `"${typed}." ends in a point`, hint, [span[0], at + 1]);
  }
  const sign = /^([×÷−–·x_'])\s*[\d(]/u.exec(rest)?.[1];
  if (sign === undefined) return undefined;
  const hint = 'use digits, + - * / and parentheses only';
  return refused('bad-arithmetic', `"${sign}" can't stand in a number`, hint, [at, at + 1]);
}

function unitAfterComma(written: string): string {
  const rest = written.replace(/^[+-]?[\d.,]+/u, '').trim();
  return rest === '' ? '' : ` ${unitTyped(rest)?.symbol ?? rest}`;
}

function noNumber(written: string, span: Span): Parsed<never> {
  const swapped = /^(.*?[^\d.])\s*([+-]?[\d.]+)$/u.exec(written);
  const unit = swapped?.[1] === undefined ? undefined : unitTyped(swapped[1].trim());
  if (unit) {
    const hint = `write ${swapped?.[2]} ${unit.symbol}`;
    return refused('unit-first', `"${written}" has the unit before the number`, hint, span);
  }
  const [, before = '', amount, per] = /^([$€£]|[A-Z]{3})\s*([\d.]+)\s*\/\s*(\w+)$/u.exec(written) ?? [];
  if (before !== '') {
    const hint = `write ${amount} ${currencies.get(before) ?? before}/${per}`;
    return refused('unit-first', `"${written}" has the currency first`, hint, span);
  }
  return refused(
    'no-amount',
    `"${written}" does not begin with a number`,
    'write a number and a unit, such as 2.5 g',
    span,
  );
}
