/** A refused result as the refusal of the whole answer. */

import { type Parsed, ProblemError } from '../problem.ts';

/** The value; where it was refused the answer is refused with the same words. */
export function answered<T>(result: Parsed<T>): T {
  if (result.ok) return result.value;
  const { code, message, hint } = result.fault;
  throw new ProblemError([{ code, severity: 'error', message, hint }]);
}
