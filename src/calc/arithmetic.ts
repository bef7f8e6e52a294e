/** Arithmetic before a unit, `(30 + 2.5) g`: what it may hold, and its value once the evaluator is loaded. */

import { type Parsed, parsed, refused } from '../problem.ts';
import { notFinite, numberPattern } from './number.ts';

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
const startsWithDigit = /^[.\d]/u;

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
  if (Number.isFinite(value)) return parsed(value + 0);
  return isZeroDivision(expression)
    ? refused('not-finite', `"${expression}" divides by zero`, 'write a divisor other than 0', span)
    : notFinite(expression, span);
}

const isZeroDivision = (expression: string): boolean => expression.includes('/');

/** What is wrong with an expression, found without evaluating it; undefined where nothing is. */
export function arithmeticFault(expression: string, offset = 0): Parsed<never> | undefined {
  if (expression.length > longestExpression) {
    const message = `the arithmetic is ${expression.length} characters long`;
    return refused('bad-arithmetic', message, `keep it to ${longestExpression}`, [
      offset,
      offset + expression.length,
    ]);
  }
  let depth = 0;
  let wantsNumber = true;
  let at = 0;
  const fault = (message: string, hint: string, length = 1): Parsed<never> =>
    refused('bad-arithmetic', message, hint, [
      offset + at,
      offset + Math.min(at + length, expression.length),
    ]);
  token.lastIndex = 0;
  while (at < expression.length) {
    const found = token.exec(expression)?.[0];
    if (found === undefined) {
      return fault(
        `"${expression.charAt(at)}" can't stand in arithmetic`,
        'use digits, + - * / and parentheses only',
      );
    }
    const isNumber = startsWithDigit.test(found);
    if (isNumber || found === '(') {
      if (!wantsNumber) return fault(...missingOperator(expression, at, found), found.length);
      wantsNumber = found === '(';
      if (found === '(') depth += 1;
      if (depth > deepestParentheses) {
        return fault('the parentheses are too deep', `keep them to ${deepestParentheses} inside each other`);
      }
    } else if (found === ')') {
      if (wantsNumber || depth === 0)
        return fault('")" comes too soon', 'close what was opened, after a number');
      depth -= 1;
    } else if (found.trim() !== '') {
      if (wantsNumber && (found === '*' || found === '/')) {
        return fault(`"${found}" has no number before it`, 'put a number on each side of it');
      }
      wantsNumber = true;
    }
    at += found.length;
  }
  if (depth > 0) return fault('a parenthesis is not closed', 'add ")"');
  return wantsNumber ? fault('the arithmetic ends without a number', 'end it with a number') : undefined;
}

function missingOperator(expression: string, at: number, found: string): readonly [string, string] {
  const before = /(\d+)\s+$/u.exec(expression.slice(0, at))?.[1];
  const hint =
    before && /^\d{3}$/u.test(found) ? `write ${before}${found} without the space` : 'put + - * or / between';
  return [`"${found}" follows a number with nothing between`, hint];
}
