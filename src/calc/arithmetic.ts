/** Arithmetic before a unit, `(30 + 2.5) g`: what it may hold, and its value once the evaluator is loaded. */

import { type Parsed, parsed, refused } from '../problem.ts';
import { isOrdinary, notFinite, notOrdinary, numberPattern } from './number.ts';

export const longestExpression = 200;
export const deepestParentheses = 16;

type Evaluate = (expression: string) => number;

let loaded: Evaluate | undefined;

/** Loads the evaluator. It is slow to load, so nothing does it before an expression is met. */
export async function loadArithmetic(): Promise<void> {
  if (loaded) return;
  const { evaluateArithmetic } = await import('./expression.ts');
  loaded = evaluateArithmetic;
}

const token = new RegExp(`${numberPattern}|[-+*/()]|\\s+`, 'uy');
const startsWithDigit = /^\.?\d/u;

/** How many characters at the head of a text are numbers, operators, parentheses and the spaces among them. */
export function arithmeticLength(text: string): number {
  let length = 0;
  token.lastIndex = 0;
  while (token.test(text)) length = token.lastIndex;
  return text.slice(0, length).trimEnd().length;
}

/**
 * The value of an arithmetic expression.
 *
 * Input     an expression of numbers, + - * / and parentheses; the offset at which it stands in the whole text
 * Output    its value, finite
 * Refuses   anything else, before it is evaluated; over 200 characters; over 16 parentheses deep; division by zero.
 *           While the evaluator is not loaded, code `arithmetic-not-loaded`: load it and read the text again
 * Example   parseArithmetic('(30 + 2.5) * 2') -> 65
 */
export function parseArithmetic(expression: string, offset = 0): Parsed<number> {
  const fault = arithmeticFault(expression, offset);
  if (fault) return fault;
  const span: readonly [number, number] = [offset, offset + expression.length];
  if (!loaded) {
    return refused(
      'arithmetic-not-loaded',
      `"${expression}" is arithmetic`,
      'work it out and write one number',
      span,
    );
  }
  const value = loaded(expression);
  if (Number.isFinite(value))
    return isOrdinary(value) ? parsed(value + 0) : notOrdinary(expression, value, span);
  return expression.includes('/')
    ? refused(
        'not-finite',
        `"${expression}" comes to no number`,
        'write a divisor that is not 0, nor next to it',
        span,
      )
    : notFinite(expression, span);
}

/** Where a reader of an expression stands: how many parentheses are open, and whether a number comes next. */
interface State {
  readonly depth: number;
  readonly wantsNumber: boolean;
}

interface Slip {
  readonly message: string;
  readonly hint: string;
}

/** What is wrong with an expression, found without evaluating it; undefined where nothing is. */
export function arithmeticFault(expression: string, offset = 0): Parsed<never> | undefined {
  if (expression.length > longestExpression) {
    const message = `the arithmetic is ${expression.length} characters long`;
    return refused('bad-arithmetic', message, `keep it to ${longestExpression}`, [
      offset,
      offset + expression.length,
    ]);
  }
  let state: State = { depth: 0, wantsNumber: true };
  let at = 0;
  token.lastIndex = 0;
  while (at < expression.length) {
    const found = token.exec(expression)?.[0] ?? expression.charAt(at);
    const next = step(found, state, expression.slice(0, at));
    if ('message' in next) return badArithmetic(next, [offset + at, offset + at + found.length]);
    state = next;
    at += found.length;
  }
  const slip = unfinished(state);
  return slip && badArithmetic(slip, [offset, offset + at]);
}

const badArithmetic = ({ message, hint }: Slip, span: readonly [number, number]): Parsed<never> =>
  refused('bad-arithmetic', message, hint, span);

function step(found: string, state: State, before: string): State | Slip {
  const { depth, wantsNumber } = state;
  if (found.trim() === '') return state;
  if (startsWithDigit.test(found)) {
    return wantsNumber ? { depth, wantsNumber: false } : missingOperator(before, found);
  }
  if (found === '(') {
    if (!wantsNumber) return missingOperator(before, found);
    if (depth < deepestParentheses) return { depth: depth + 1, wantsNumber: true };
    return {
      message: 'the parentheses are too deep',
      hint: `keep them to ${deepestParentheses} inside each other`,
    };
  }
  if (found === ')') {
    if (!wantsNumber && depth > 0) return { depth: depth - 1, wantsNumber: false };
    return { message: '")" comes too soon', hint: 'close what was opened, after a number' };
  }
  if (!'+-*/'.includes(found)) {
    return {
      message: `"${found}" can't stand in arithmetic`,
      hint: 'use digits, + - * / and parentheses only',
    };
  }
  if (!wantsNumber || found === '-' || found === '+') return { depth, wantsNumber: true };
  return { message: `"${found}" has no number before it`, hint: 'put a number on each side of it' };
}

function missingOperator(before: string, found: string): Slip {
  const digits = /(\d+)\s+$/u.exec(before.slice(-20))?.[1];
  const hint =
    digits && /^\d{3}$/u.test(found) ? `write ${digits}${found} without the space` : 'put + - * or / between';
  return { message: `"${found}" follows a number with nothing between`, hint };
}

function unfinished({ depth, wantsNumber }: State): Slip | undefined {
  if (wantsNumber) return { message: 'the arithmetic ends without a number', hint: 'end it with a number' };
  return depth > 0 ? { message: 'a parenthesis is not closed', hint: 'add ")"' } : undefined;
}
