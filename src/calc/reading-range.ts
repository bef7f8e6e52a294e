/** Readings that no instrument shows of a drink: a slip of the decimal point, or the figure of another reading. */

import type { Fault } from '../problem.ts';
import { trimmedNumber } from './number-text.ts';

interface Range {
  readonly called: string;
  readonly low: number;
  readonly high: number;
  /** Whether the ends themselves can be. */
  readonly withEnds: boolean;
}

/** g of sugar in 100 g can't be above 100; strong acids and alkalis end near pH -1 and 15. Common practice, no source. */
const ranges: Readonly<Record<string, Range>> = {
  brix: { called: 'Brix', low: -5, high: 100, withEnds: true },
  ph: { called: 'pH', low: -1, high: 15, withEnds: false },
};

/**
 * What is wrong with a reading that can't be; undefined where it can, and of what has no range here.
 *
 * Input     `brix` (g per 100 g) or `ph`, and the value
 * Output    a fault with the value and a mend
 * Example   impossibleReading('brix', 182) -> impossible-reading
 */
export function impossibleReading(name: string, value: number): Fault | undefined {
  const range = ranges[name];
  if (!range || isWithin(range, value)) return undefined;
  const { called, low, high } = range;
  return {
    code: 'impossible-reading',
    message: `${called} ${trimmedNumber(value, 12)} can't be, it lies between ${low} and ${high}`,
    hint: `check the decimal point${mend(range, value)}, and that it is a reading of ${called}`,
  };
}

const isWithin = ({ low, high, withEnds }: Range, value: number): boolean =>
  withEnds ? value >= low && value <= high : value > low && value < high;

/** The same digits with the point where it can be. */
function mend(range: Range, value: number): string {
  if (value <= 0) return '';
  let meant = value;
  while (!isWithin(range, meant)) meant /= 10;
  return ` (${trimmedNumber(meant, 12)}?)`;
}
