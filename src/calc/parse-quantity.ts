/** `number unit` as people type it. The same grammar for files, options, items, aims and CSV. */

import { type Parsed, parsed, refused } from '../problem.ts';
import { type AmountHead, readAmountHead } from './amount-head.ts';
import { isOrdinary, notFinite, notOrdinary } from './number.ts';
import type { Dimension, Quantity } from './quantity.ts';
import { toInner, type Unit, unitTyped } from './unit.ts';
import { hasOwnMend, isDoubtfulUnit, kindWords, unitFault } from './unit-faults.ts';
import { unitWordsAt } from './unit-words.ts';

type Span = readonly [number, number];

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

function noUnit(typed: string, accepted: readonly Dimension[] | undefined, span: Span): Parsed<never> {
  const kinds =
    accepted && accepted.length > 0 ? accepted.slice(0, 3) : (['mass', 'volume', 'share'] as const);
  const choices = kinds.map((kind) => `${typed} ${unitOf(kindWords[kind].example)}`);
  return refused('no-unit', `"${typed}" has no unit`, `write ${choices.join(' or ')}`, span);
}

const unitOf = (example: string): string => example.slice(example.indexOf(' ') + 1);

/** What is wrong with the words after the number, which make no unit together. */
function notAUnit({ typed, rest }: AmountHead, span: Span): Parsed<never> {
  const words = rest.split(/\s+/u);
  const count = unitWordsAt(words, 0);
  const after = words.slice(count).join(' ');
  if (count === 0 || after === '' || isDoubtfulUnit(rest) || hasOwnMend(rest)) {
    return unitFault({ word: rest, number: typed, span });
  }
  const unit = words.slice(0, count).join(' ');
  const more = /^([-+*/])\s*([\d.]+)/u.exec(after);
  const hint = more
    ? `do the arithmetic before the unit: (${typed} ${more[1]} ${more[2]}) ${unit}`
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
  const [first, second] = accepted.map((kind) => kindWords[kind]);
  const isLong = accepted.length > 3;
  const wanted = isLong
    ? 'another kind of amount'
    : accepted.map((kind) => kindWords[kind].name).join(' or ');
  const example = first ? `, such as ${first.example}${isLong && second ? ` or ${second.example}` : ''}` : '';
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
  if (!isOrdinary(inner)) return notOrdinary(written, inner, span);
  if (dimension === 'temperature' && inner < 0) {
    return refused(
      'below-absolute-zero',
      `"${written}" is below absolute zero`,
      'nothing is colder than -273.15 C',
      span,
    );
  }
  if (value < 0 && dimension !== 'temperature' && dimension !== 'pressure') {
    const isPlain = /^-\s*[\d.]+\s*[^\d\s]/u.test(written);
    const hint = isPlain ? `write ${-value} ${symbol}` : 'an amount is 0 or more';
    return refused('negative-amount', `"${written}" is negative`, hint, span);
  }
  return parsed({ value, unit: symbol, dimension, inner, written });
}
