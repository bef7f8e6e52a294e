/** Arithmetic on plain numbers. The only file that knows mathjs; `arithmetic.ts` loads it when it is needed. */

import {
  addDependencies,
  create,
  divideDependencies,
  evaluateDependencies,
  multiplyDependencies,
  subtractDependencies,
  unaryMinusDependencies,
  unaryPlusDependencies,
} from 'mathjs/number';

const { evaluate } = create({
  ...evaluateDependencies,
  ...addDependencies,
  ...subtractDependencies,
  ...multiplyDependencies,
  ...divideDependencies,
  ...unaryMinusDependencies,
  ...unaryPlusDependencies,
});

/**
 * The value of an expression.
 *
 * Input     an expression that `arithmeticFault` has passed: numbers, + - * / and parentheses, nothing else
 * Output    its value; not finite where it divides by zero or overflows
 */
export function evaluateArithmetic(expression: string): number {
  const value: unknown = evaluate(expression);
  if (typeof value !== 'number') throw new Error(`"${expression}" did not come to a number`);
  return value;
}
