/** Aims such as `2.9 to 3.2`, `at least 4.3 g/L`, `330 mL`. */

import { type Parsed, parsed, refused } from '../problem.ts';
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

type Kinds = readonly (Dimension | 'number')[] | undefined;

/**
 * A range, one side of one, or one figure.
 *
 * Input     `2.9 to 3.2`, `4.3 to 4.7 g/L` (the unit may stand once), `at least 2.9`, `at most 3.2`, `3.0`; the kinds
 *           that are wanted, `number` for figures without a unit; any where left out
 * Output    the sides that are there, each with its inner figure
 * Refuses   sides in the wrong order or of different kinds; dashes and signs for words; what `parseQuantity` refuses
 * Example   parseRange('4.3 to 4.7 g/L') -> low 4.3 g/L, high 4.7 g/L
 */
export function parseRange(text: string, accepted?: readonly (Dimension | 'number')[]): Parsed<Range> {
  const written = text.trim();
  const slip = slipFault(written);
  if (slip) return slip;
  const side = /^at\s+(least|most)\s+(.+)$/iu.exec(written);
  if (side) {
    const bound = parseBound(side[2] ?? '', accepted);
    if (!bound.ok) return bound;
    return parsed(
      side[1]?.toLowerCase() === 'least' ? { low: bound.value, written } : { high: bound.value, written },
    );
  }
  const [low = '', high, more] = written.split(/\s+to\s+/iu);
  if (more !== undefined)
    return refused('not-a-range', `"${written}" says "to" twice`, 'write two figures: 2.9 to 3.2');
  if (high !== undefined) return between({ low, high, written, accepted });
  const exact = parseBound(low, accepted);
  return exact.ok ? parsed({ exact: exact.value, written }) : exact;
}

interface Sides {
  readonly low: string;
  readonly high: string;
  readonly written: string;
  readonly accepted: Kinds;
}

function between({ low, high, written, accepted }: Sides): Parsed<Range> {
  const upper = parseBound(high, accepted);
  if (!upper.ok) return upper;
  const sharesUnit = isBareNumber(low.trim()) && upper.value.unit !== '';
  const lower = parseBound(sharesUnit ? `${low.trim()} ${upper.value.unit}` : low, accepted);
  if (!lower.ok) return lower;
  if (lower.value.dimension !== upper.value.dimension) {
    return refused(
      'not-a-range',
      `"${written}" has sides of different kinds`,
      'give both sides in units of one kind',
    );
  }
  if (lower.value.inner > upper.value.inner) {
    const lowText = lower.value.unit === upper.value.unit ? `${upper.value.value}` : upper.value.written;
    const hint = `write ${lowText} to ${lower.value.written}`;
    return refused('reversed-range', `"${written}" runs from high to low`, hint);
  }
  return parsed({ low: lower.value, high: upper.value, written });
}

/** One side: a quantity, or a plain number where those are wanted. */
function parseBound(text: string, accepted: Kinds): Parsed<Bound> {
  const typed = text.trim();
  const kinds = accepted?.filter((kind) => kind !== 'number');
  const takesNumber = !accepted || accepted.includes('number');
  if (takesNumber && isBareNumber(typed)) {
    const number = parseNumber(typed);
    if (!number.ok) return number;
    return parsed({
      value: number.value,
      unit: '',
      dimension: 'number',
      inner: number.value,
      written: typed,
    });
  }
  if (kinds?.length !== 0) return parseQuantity(typed, kinds);
  return numberWanted(typed);
}

function numberWanted(typed: string): Parsed<never> {
  const quantity = parseQuantity(typed);
  if (!quantity.ok && quantity.fault.code === 'arithmetic-not-loaded') return quantity;
  const span: readonly [number, number] = [0, typed.length];
  if (quantity.ok) {
    const hint = `give a number without a unit: ${quantity.value.value}`;
    return refused('wrong-kind', `"${typed}" has a unit`, hint, span);
  }
  return refused(
    'not-a-number',
    `"${typed}" is not a number`,
    'write a number without a unit, such as 3.0',
    span,
  );
}

function slipFault(written: string): Parsed<never> | undefined {
  const span: readonly [number, number] = [0, written.length];
  if (written === '') return refused('no-range', 'there is no figure', 'write one, such as 2.9 to 3.2', span);
  const dash = /^([\d.]+)\s*([^\s\d.]*[^\s\d.]?)\s*(?:-|–|—|\.\.+)\s*([\d.]+.*)$/u.exec(written);
  if (dash && !/[*+/(]/u.test(written)) {
    const hint = `write ${[dash[1], dash[2]].filter((part) => part !== '').join(' ')} to ${dash[3]}`;
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
  return commaFault(written, 0, '');
}
