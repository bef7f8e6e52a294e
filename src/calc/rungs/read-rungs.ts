/** The rungs as a person types them: a list, or two ends. */

import { type Parsed, parsed, refused } from '../../problem.ts';
import { isBareNumber, parseNumber } from '../number.ts';
import { parseAmount } from '../parse-amount.ts';
import type { Amount } from '../quantity.ts';
import { parseRatio } from '../ratio.ts';
import { unitWordsAt } from '../unit-words.ts';

/**
 * A ratio of two things.
 *
 * Input     `1:4`, `1 to 4`, or `0.25`; `isTurned` where the other thing is typed first
 * Output    the first per the second, above 0
 * Refuses   0, negative numbers, anything else
 * Example   parseRungRatio('1:4', false) -> 0.25
 */
export function parseRungRatio(text: string, isTurned: boolean): Parsed<number> {
  const typed = text.trim();
  const value = /^[-+.\d]/u.test(typed) && !/[:/]|\sto\s/u.test(typed) ? plainRatio(typed) : pairRatio(typed);
  return value.ok && isTurned ? parsed(1 / value.value) : value;
}

function plainRatio(typed: string): Parsed<number> {
  const number = parseNumber(typed);
  if (!number.ok) return number;
  if (number.value > 0) return number;
  return refused('not-a-ratio', `"${typed}" is no ratio`, 'write one above 0, such as 1:4 or 0.25');
}

function pairRatio(typed: string): Parsed<number> {
  const pair = parseRatio(typed);
  return pair.ok ? parsed(pair.value.left / pair.value.right) : pair;
}

/** A plain number above 0: an HLB. */
export function parseRungNumber(text: string): Parsed<number> {
  const number = parseNumber(text);
  if (!number.ok || number.value > 0) return number;
  return refused('not-a-number', `"${text.trim()}" is not above 0`, 'write a number above 0, such as 12');
}

/** The parts of a list; commas stand between them, and between ratios blanks will do. */
export function listParts(text: string): Parsed<readonly string[]> {
  const isSpaced = /^\S+:\S+(?:\s+\S+:\S+)+$/u.test(text.trim());
  const parts = isSpaced && !text.includes(',') ? text.trim().split(/\s+/u) : commaParts(text);
  const empty = parts.indexOf('');
  if (empty === -1) return parsed(parts);
  return refused(
    'empty-rung',
    text.trim() === '' ? 'there are no rungs' : `rung ${empty + 1} of "${text.trim()}" is empty`,
    'write them with commas between them, such as "1:4, 1:3, 1:2"',
  );
}

const commaParts = (text: string): readonly string[] => text.split(',').map((part) => part.trim());

/** The two ends of a range; both kinds of ratio have their own `to`. */
export function rangeEnds(text: string): Parsed<readonly [string, string]> {
  const ends = text.trim().split(/\s+to\s+/iu);
  const [low, high, more] = ends;
  if (low !== undefined && high !== undefined && more === undefined && low !== '' && high !== '')
    return parsed([low, high]);
  return refused(
    'not-a-range',
    `"${text.trim()}" is not a range`,
    'write two ends with "to" between them, such as "1:4 to 1:1"',
  );
}

/** `4, 6, 8 g`: a unit that stands once, at the end, is that of all. */
function withUnits(parts: readonly string[]): readonly string[] {
  const words = (parts.at(-1) ?? '').split(/\s+/u);
  const count = unitWordsAt(words, 1);
  const unit = isBareNumber(words[0] ?? '') && count === words.length - 1 ? words.slice(1).join(' ') : '';
  return parts.map((part) => (unit !== '' && isBareNumber(part) ? `${part} ${unit}` : part));
}

/**
 * Amounts of an item, all of one kind of unit.
 *
 * Input     the parts of a list or the ends of a range
 * Output    amounts in order
 * Refuses   what `parseAmount` refuses; make-up lines; two kinds of unit
 * Example   parseRungAmounts(['4', '6', '8 g']) -> 4 g, 6 g, 8 g
 */
export function parseRungAmounts(parts: readonly string[]): Parsed<readonly Amount[]> {
  const amounts: Amount[] = [];
  for (const part of withUnits(parts)) {
    const amount = parseAmount(part);
    if (!amount.ok) return amount;
    if (amount.value.makeUp)
      return refused('make-up-rung', `"${part}" makes the stage up`, 'write amounts, such as "4 g, 6 g"');
    amounts.push(amount.value);
  }
  const [first] = amounts;
  const other = amounts.find(
    (one) => one.quantity.dimension !== first?.quantity.dimension || one.inDrink !== first.inDrink,
  );
  if (!other) return parsed(amounts);
  return refused(
    'two-units',
    `"${first?.written}" and "${other.written}" are of two kinds`,
    'write all rungs in one kind of unit',
  );
}
