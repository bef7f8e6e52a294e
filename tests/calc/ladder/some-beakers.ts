import fc from 'fast-check';
import type { Beaker } from '../../../src/calc/ladder/beaker.ts';
import { type BreakPoint, breakPoint } from '../../../src/calc/ladder/break-point.ts';
import { priorsFor } from '../../../src/calc/ladder/priors.ts';

export const priors = priorsFor('stirred');

/** Beakers from a line of words such as `0.3 held, 0.4 failed`, all of one day. */
export const beakers = (text: string, day = '1'): readonly Beaker[] =>
  text
    .split(', ')
    .filter((part) => part !== '')
    .map((part) => {
      const [ratio = '', word = '', lasted] = part.split(' ');
      const outcome = word === 'held' || word === 'failed' ? word : 'watching';
      return {
        ratio: Number(ratio),
        outcome,
        day,
        ...(lasted === undefined ? {} : { lasted: Number(lasted) }),
      };
    });

export const found = (all: readonly Beaker[], asked = priors): BreakPoint =>
  breakPoint({ beakers: all, priors: asked, marginFraction: 0.1 });

/** Ladders of any kind, at least one held and one failed. */
export const anyLadder: fc.Arbitrary<readonly Beaker[]> = fc
  .array(
    fc.record({
      ratio: fc.double({ min: 0.15, max: 1.8, noNaN: true }),
      outcome: fc.constantFrom('held' as const, 'failed' as const, 'watching' as const),
      lasted: fc.double({ min: 0, max: 0.99, noNaN: true }),
      day: fc.constantFrom('mon', 'tue', 'wed'),
    }),
    { minLength: 0, maxLength: 12 },
  )
  .map((more) => [...beakers('0.2 held, 0.9 failed'), ...more]);
