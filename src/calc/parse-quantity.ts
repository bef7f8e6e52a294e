/** `number unit` as people type it. The same grammar for files, options, items, aims and CSV. */

import { type Parsed, parsed, refused } from '../problem.ts';
import { arithmeticLength, parseArithmetic } from './arithmetic.ts';
import { commaFault, notFinite, numberPattern, parseNumber } from './number.ts';
import type { Dimension, Quantity } from './quantity.ts';
import { toInner, type Unit, unitTyped } from './unit.ts';
import { isDoubtfulUnit, kindWords, unitFault } from './unit-faults.ts';
import { unitWordsAt } from './unit-words.ts';

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

/**
 * An amount with its unit.
 *
 * Input     `2.5 g`, `2g`, `3 * 1.5 g`, `(30 + 2.5) g`; the kinds that are wanted, any where left out
 * Output    the number as typed (after the arithmetic), the unit's symbol, the same in the inner unit
 * Refuses   no number, no unit, an unknown or doubtful unit, commas, a wrong kind, a negative amount (temperatures in C
 *           and F and pressures may be negative), a temperature below absolute zero, what is not finite
 * Example   parseQuantity('4.5 g/l') -> 4.5 g/L, inner 0.0045
 */
export function parseQuantity(text: string, accepted?: readonly Dimension[]): Parsed<Quantity> {
  const head = readAmountHead(text);
  if (!head.ok) return head;
  const { value, typed, rest, restAt } = head.value;
  const written = text.trim();
  const start = text.length - text.trimStart().length;
  const whole: Span = [start, start + written.length];
  if (rest === '') return noUnit(typed, accepted, whole);
  const unit = unitTyped(rest);
  if (!unit) return notAUnit(head.value, [restAt, restAt + rest.length]);
  const kindFault = wrongKind({ written, dimension: unit.dimension, accepted, span: whole });
  if (kindFault) return kindFault;
  return makeQuantity({ value, unit, written, span: whole });
}

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
  if (/^[xXbBoO][\da-fA-F]/u.test(rest) && typed === '0') {
    return refused(
      'not-a-number',
      `"${written}" is not a number in digits`,
      'write it in digits, such as 16 g',
      span,
    );
  }
  const value = signedNumber.test(typed)
    ? parseNumber(typed, { signed: true })
    : parseArithmetic(typed, start);
  if (!value.ok) return value;
  return parsed({ value: value.value, typed, rest, restAt: start + written.length - rest.length });
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
  return refused(
    'no-amount',
    `"${written}" does not begin with a number`,
    'write a number and a unit, such as 2.5 g',
    span,
  );
}

function noUnit(typed: string, accepted: readonly Dimension[] | undefined, span: Span): Parsed<never> {
  const kinds =
    accepted && accepted.length > 0 ? accepted.slice(0, 3) : (['mass', 'volume', 'share'] as const);
  const choices = kinds.map((kind) => `${typed} ${unitOf(kindWords[kind].example)}`);
  return refused('no-unit', `"${typed}" has no unit`, `write ${choices.join(' or ')}`, span);
}

const unitOf = (example: string): string => example.slice(example.indexOf(' ') + 1);

/** What is wrong with the words after the number, none of which make a unit together. */
function notAUnit({ typed, rest, value }: AmountHead, span: Span): Parsed<never> {
  const words = rest.split(/\s+/u);
  const count = unitWordsAt(words, 0);
  const after = words.slice(count).join(' ');
  if (count === 0 || after === '' || isDoubtfulUnit(rest))
    return unitFault({ word: rest, number: typed, span });
  const unit = words.slice(0, count).join(' ');
  const hint = /^[-+*/(\d]/u.test(after)
    ? `do the arithmetic before the unit: (${typed} + ${value}) ${unit}`
    : `write ${typed} ${unit} alone`;
  return refused('after-unit', `"${after}" stands after the unit`, hint, [span[1] - after.length, span[1]]);
}

interface KindCheck {
  readonly written: string;
  readonly dimension: Dimension;
  readonly accepted: readonly Dimension[] | undefined;
  readonly span: Span;
}

/** The fault of an amount of a kind that is not wanted; undefined where it is. */
export function wrongKind({ written, dimension, accepted, span }: KindCheck): Parsed<never> | undefined {
  if (!accepted || accepted.includes(dimension)) return undefined;
  const wanted = accepted.map((kind) => kindWords[kind].name).join(' or ');
  const first = accepted[0];
  const example = first ? `, such as ${kindWords[first].example}` : '';
  return refused(
    'wrong-kind',
    `"${written}" is ${kindWords[dimension].name}`,
    `give ${wanted}${example}`,
    span,
  );
}

interface QuantityParts {
  readonly value: number;
  readonly unit: Unit;
  readonly written: string;
  readonly span: Span;
}

function makeQuantity({ value, unit, written, span }: QuantityParts): Parsed<Quantity> {
  const { symbol, dimension } = unit;
  const inner = toInner(value, unit);
  if (!Number.isFinite(inner)) return notFinite(written, span);
  if (dimension === 'temperature' && inner < 0) {
    return refused(
      'below-absolute-zero',
      `"${written}" is below absolute zero`,
      'nothing is colder than -273.15 C',
      span,
    );
  }
  if (value < 0 && dimension !== 'temperature' && dimension !== 'pressure') {
    const hint = `write ${-value} ${symbol}, an amount is 0 or more`;
    return refused('negative-amount', `"${written}" is negative`, hint, span);
  }
  return parsed({ value, unit: symbol, dimension, inner, written });
}
