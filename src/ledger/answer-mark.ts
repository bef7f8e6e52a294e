/** The mark `of` of an answer: eight hex digits over everything that went into it. */

import { createHash } from 'node:crypto';

/**
 * Input     what the answer rests on, one fact a text: calculator and version, amounts in inner units, figures used
 * Output    eight hex digits; equal for equal facts in the same order
 */
export function answerMark(basis: readonly string[]): string {
  return createHash('sha256').update(basis.join('\n')).digest('hex').slice(0, 8);
}
