/** Aims such as `2.9 to 3.2`, `at least 4.3 g/L`, `330 mL`. */

import { type Parsed, parsed, refused } from '../problem.ts';
import { movedFault } from './moved-fault.ts';
import { commaFault, isBareNumber, parseNumber } from './number.ts';
import { parseQuantity } from './parse-quantity.ts';
import type { Dimension, Quantity } from './quantity.ts';

/** A side of a range: a quantity, or a plain number (pH, Brix) whose dimension is `number` and unit is empty. */
export interface Bound extends Omit<Quantity, 'dimension'> {
  readonly dimension: Dimension | 'number';
}

/** `exact` stands alone; a side that is left open is absent. */
export interface Range {
  readonly low?: Bound;
  readonly high?: Bound;
  readonly exact?: Bound;
  readonly written: string;
}

type Kinds = readonly (Dimension | 'number')[];
type Span = readonly [number, number];

/**
 * A range, one side of one, or one figure.
 *
 * Input     `2.9 to 3.2`, `4.3 to 4.7 g/L` (the unit may stand once), `at least 2.9`, `at most 3.2`, `3.0`; the kinds
 *           that are wanted, `number` for figures without a unit; any where left out
 * Output    the sides that are there, each with its inner figure
 * Refuses   sides in the wrong order or of different kinds; dashes and signs for words; what `parseQuantity` refuses
 * Example   parseRange('4.3 to 4.7 g/L') -> low 4.3 g/L, high 4.7 g/L
 */
export function parseRange(text: string, accepted?: Kinds): Parsed<Range> {
  const written = text.trim();
  const start = text.length - text.trimStart().length;
  const span: Span = [start, start + written.length];
  const slip = slipFault(written, span);
  if (slip) return slip;
  const [, sideWords = '', side, figure = ''] = /^(at\s+(least|most)\s+)(.+)$/iu.exec(written) ?? [];
  if (side !== undefined) {
    const bound = parseBound({ text: figure, at: start + sideWords.length, accepted });
    if (!bound.ok) return bound;
    const key = side.toLowerCase() === 'least' ? 'low' : 'high';
    return parsed({ [key]: bound.value, written });
  }
  const [low = '', high, more] = written.split(/\s+to\s+/iu);
  if (more !== undefined) {
    return refused(
      'not-a-range',
      `"${written}" says "to" twice`,
      'write two figures, such as 2.9 to 3.2',
      span,
    );
  }
  if (high !== undefined) return between({ low, high, written, span, accepted });
  const exact = parseBound({ text: low, at: start, accepted });
  return exact.ok ? parsed({ exact: exact.value, written }) : exact;
}

interface Sides {
  readonly low: string;
  readonly high: string;
  readonly written: string;
  readonly span: Span;
  readonly accepted: Kinds | undefined;
}

function between({ low, high, written, span, accepted }: Sides): Parsed<Range> {
  const upper = parseBound({ text: high, at: span[1] - high.length, accepted });
  if (!upper.ok) return upper;
  const sharesUnit = isBareNumber(low) && upper.value.unit !== '';
  const lowText = sharesUnit ? `${low} ${upper.value.unit}` : low;
  const lower = parseBound({ text: lowText, at: span[0], accepted });
  if (!lower.ok) return lower;
  if (lower.value.dimension !== upper.value.dimension) {
    const hint = 'give both sides in units of one kind';
    return refused('not-a-range', `"${written}" has sides of different kinds`, hint, span);
  }
  if (lower.value.inner > upper.value.inner) {
    const first = sharesUnit ? `${upper.value.value}` : upper.value.written;
    const hint = `write ${first} to ${lower.value.written}`;
    return refused('reversed-range', `"${written}" runs from high to low`, hint, span);
  }
  return parsed({ low: lower.value, high: upper.value, written });
}

interface BoundText {
  readonly text: string;
  /** Where it begins in the whole text. */
  readonly at: number;
  readonly accepted: Kinds | undefined;
}

/** One side: a quantity, or a plain number where those are wanted. */
function parseBound({ text, at, accepted }: BoundText): Parsed<Bound> {
  const kinds = accepted?.filter((kind) => kind !== 'number');
  const takesNumber = !accepted || accepted.includes('number');
  const bound = takesNumber && isBareNumber(text) ? plainNumber(text) : quantityOrWord(text, kinds);
  return bound.ok ? bound : { ok: false, fault: movedFault(bound.fault, at) };
}

function plainNumber(text: string): Parsed<Bound> {
  const number = parseNumber(text);
  if (!number.ok) return number;
  return parsed({ value: number.value, unit: '', dimension: 'number', inner: number.value, written: text });
}

function quantityOrWord(text: string, kinds: readonly Dimension[] | undefined): Parsed<Bound> {
  if (kinds?.length === 0) return numberWanted(text);
  const quantity = parseQuantity(text, kinds);
  if (quantity.ok || quantity.fault.code !== 'no-amount') return quantity;
  const hint = 'write 2.9 to 3.2, at least 2.9 or at most 3.2, with the unit after it';
  return refused('not-a-range', `"${text}" is not a range`, hint, [0, text.length]);
}

function numberWanted(text: string): Parsed<never> {
  const quantity = parseQuantity(text);
  const span: Span = [0, text.length];
  if (quantity.ok) {
    const hint = `write the number alone: ${quantity.value.value}`;
    return refused('wrong-kind', `"${text}" has a unit`, hint, span);
  }
  if (quantity.fault.code === 'arithmetic-not-loaded') return quantity;
  return refused(
    'not-a-number',
    `"${text}" is not a number`,
    'write a number without a unit, such as 3.0',
    span,
  );
}

function slipFault(written: string, span: Span): Parsed<never> | undefined {
  if (written === '') return refused('no-range', 'there is no figure', 'write one, such as 2.9 to 3.2', span);
  const spaced = written.replace(/\s+/gu, ' ');
  const dash = /^([\d.]+(?![eE][-+]\d) ?[^\d (*+]*) ?(?:-|–|—|\.\.+) ?([\d.]+.*)$/u.exec(spaced);
  if (dash) {
    const hint = `write ${dash[1]?.trim()} to ${dash[2]}`;
    return refused('not-a-range', `"${written}" has a dash for "to"`, hint, span);
  }
  const sign = /^(<=?|>=?|≤|≥)\s*(.+)$/u.exec(written);
  if (sign) {
    const words = /[<≤]/u.test(sign[1] ?? '') ? 'at most' : 'at least';
    return refused('not-a-range', `"${written}" has a sign for words`, `write ${words} ${sign[2]}`, span);
  }
  if (/±|\+\/-|\+-/u.test(written)) {
    return refused('not-a-range', `"${written}" has a ± in it`, 'write both ends, such as 2.9 to 3.2', span);
  }
  return commaFault(written, span[0], '');
}
