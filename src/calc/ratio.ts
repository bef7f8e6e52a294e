/** Ratios such as `1:2`, and the throw of a syrup such as `1+4`. */

import { type Parsed, parsed, refused } from '../problem.ts';
import { commaFault, parseNumber } from './number.ts';

export interface Ratio {
  readonly left: number;
  readonly right: number;
}

/** One or more parts of syrup with so many parts of water. */
export interface Throw {
  readonly syrupParts: number;
  readonly waterParts: number;
  /** `1+4` */
  readonly written: string;
}

/**
 * A ratio of two numbers.
 *
 * Input     `1:2`, `1 : 2` or `1 to 2`
 * Output    both numbers, above 0
 * Refuses   anything else
 * Example   parseRatio('1:2.5') -> left 1, right 2.5
 */
export function parseRatio(text: string): Parsed<Ratio> {
  const typed = text.trim();
  const span: readonly [number, number] = [0, text.length];
  const [left, right, more] = typed.split(/\s*:\s*|\s+to\s+/u);
  if (left === undefined || right === undefined || more !== undefined) {
    const slash = /^([\d.]+)\s*[/+-]\s*([\d.]+)$/u.exec(typed);
    const hint = slash ? `write ${slash[1]}:${slash[2]}` : 'write two numbers with a colon, such as 1:2';
    return refused('not-a-ratio', `"${typed}" is not a ratio`, hint, span);
  }
  return pair(left, right, { typed, code: 'not-a-ratio', example: '1:2' });
}

interface PairWords {
  readonly typed: string;
  readonly code: string;
  readonly example: string;
}

function pair(left: string, right: string, { typed, code, example }: PairWords): Parsed<Ratio> {
  const [one, other] = [parseNumber(left), parseNumber(right)];
  const span: readonly [number, number] = [0, typed.length];
  if (!one.ok) return { ok: false, fault: { ...one.fault, message: `${one.fault.message} in "${typed}"` } };
  if (!other.ok)
    return { ok: false, fault: { ...other.fault, message: `${other.fault.message} in "${typed}"` } };
  if (one.value > 0 && other.value > 0) return parsed({ left: one.value, right: other.value });
  return refused(code, `"${typed}" has a side that is 0`, `both sides are above 0, such as ${example}`, span);
}

/**
 * How a syrup is thrown.
 *
 * Input     `1+4` (one part of syrup and four of water make five of drink), or `4` for the same
 * Output    the parts of syrup and of water
 * Refuses   `1:4`, which some read as 1+4 and some as 1+3; parts of 0
 * Example   parseThrow('4') -> 1 part of syrup, 4 of water, written 1+4
 */
export function parseThrow(text: string): Parsed<Throw> {
  const typed = text.trim();
  const doubtful = /^([\d.]+)\s*(?::|\/|\s+to\s+|\s+in\s+)\s*([\d.]+)$/u.exec(typed);
  if (doubtful) return doubtfulThrow(typed, Number(doubtful[1]), Number(doubtful[2]));
  const comma = commaFault(typed, 0, '');
  if (comma) return comma;
  const [left = '', right, more] = typed.split('+');
  if (more !== undefined || left.trim() === '' || right?.trim() === '') {
    const hint = 'write the parts of syrup and of water, such as 1+4';
    return refused('not-a-throw', `"${typed}" is not a throw`, hint, [0, text.length]);
  }
  const parts = pair(right === undefined ? '1' : left, right ?? left, {
    typed,
    code: 'not-a-throw',
    example: '1+4',
  });
  if (!parts.ok) return parts;
  const { left: syrupParts, right: waterParts } = parts.value;
  return parsed({ syrupParts, waterParts, written: `${syrupParts}+${waterParts}` });
}

function doubtfulThrow(typed: string, syrup: number, other: number): Parsed<never> {
  const span: readonly [number, number] = [0, typed.length];
  const onTop = `${syrup}+${other} (${syrup} of syrup and ${other} of water)`;
  if (!(other > syrup)) return refused('not-a-throw', `"${typed}" is not a throw`, `write ${onTop}`, span);
  const water = Number((other - syrup).toPrecision(12));
  const inAll = `${syrup}+${water} (${syrup} of syrup in ${other} of drink)`;
  return refused('doubtful-throw', `"${typed}" may be read in two ways`, `write ${onTop} or ${inAll}`, span);
}
