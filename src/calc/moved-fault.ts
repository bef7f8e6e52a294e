/** A fault found in a piece of a text, with its offsets counted in the whole text. */

import type { Fault } from '../problem.ts';

export function movedFault(fault: Fault, by: number): Fault {
  return {
    ...fault,
    ...(fault.start === undefined ? {} : { start: fault.start + by }),
    ...(fault.end === undefined ? {} : { end: fault.end + by }),
  };
}
