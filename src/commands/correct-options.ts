/** What was read of a tank, and what it shall show, as typed. */

import type { Measured } from '../calc/correction/measured-tank.ts';
import type { Readings } from '../calc/drink/measured.ts';
import { parseNumber } from '../calc/number.ts';
import { fail } from '../problem.ts';
import { optionQuantity } from './batch-options.ts';
import { type Call, optionValue } from './command.ts';

/** What was typed: Brix, acid, pH. */
export function typedReadings(call: Call): Measured {
  const brix = numberOption(call, 'brix');
  const acid = acidOption(call, 'acid');
  const ph = numberOption(call, 'ph');
  return readingsOf({ brix, acid, ph });
}

export function numberOption(call: Call, name: string): number | undefined {
  const typed = optionValue(call, name);
  if (typed === undefined) return undefined;
  const read = parseNumber(typed);
  return read.ok ? read.value : fail(read.fault.code, `--${name}: ${read.fault.message}`, read.fault.hint);
}

/** g/L; a bare number counts so. */
export function acidOption(call: Call, name: string): number | undefined {
  const typed = optionValue(call, name);
  if (typed === undefined) return undefined;
  const bare = parseNumber(typed);
  return bare.ok ? bare.value : optionQuantity(name, typed, ['mass per volume']).inner * 1000;
}

export const readingsOf = ({ brix, acid, ph }: Measured): Readings => ({
  ...(brix === undefined ? {} : { brix }),
  ...(acid === undefined ? {} : { acid }),
  ...(ph === undefined ? {} : { ph }),
});
