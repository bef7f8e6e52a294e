/** When a sample under stress is looked at: at the end of each cycle. */

import type { Quantity } from '../calc/quantity.ts';
import { type StressWord, stressCycles } from '../reference/stress-cycles.ts';

const secondsInDay = 86_400;

export interface StressSchedule {
  readonly looks: readonly Quantity[];
  readonly watch: Quantity;
}

/**
 * Formula   a look at n x the length of a cycle, the watch over at the last
 * Input     the kind of stress; how many cycles, as many as its protocol has where left out
 */
export function stressSchedule(stress: StressWord, cycles: number | undefined): StressSchedule {
  const { days: length, cycles: usual } = stressCycles[stress];
  const looks = Array.from({ length: cycles ?? usual }, (_, at) => days((at + 1) * length));
  return { looks, watch: looks.at(-1) ?? days(length * usual) };
}

const days = (value: number): Quantity => ({
  value,
  unit: 'd',
  dimension: 'time',
  inner: value * secondsInDay,
  written: `${value} d`,
});
