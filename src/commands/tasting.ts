/** Tastings from the command line: the figures of one that was done, or the sheet for one to come. */

import type { Calculator } from '../calc/calculator.ts';
import { pair } from '../calc/tasting/pair.ts';
import { triangle } from '../calc/tasting/triangle.ts';
import type { Io } from '../io.ts';
import { fail } from '../problem.ts';
import { runCalculator } from './calculate.ts';
import { type Call, type Outcome, optionValue } from './command.ts';
import { runServing } from './serving.ts';

export const runTriangle = (call: Call, io: Io): Promise<Outcome> =>
  runTasting(triangle, 'triangle', call, io);
export const runPair = (call: Call, io: Io): Promise<Outcome> => runTasting(pair, 'pair', call, io);

async function runTasting(
  calculator: Calculator,
  kind: 'triangle' | 'pair',
  call: Call,
  io: Io,
): Promise<Outcome> {
  if (call.values['plan']) return runServing(kind, call, io);
  for (const option of ['sheet', 'key'])
    if (optionValue(call, option) !== undefined)
      fail('usage', `--${option} goes with --plan`, 'add --plan and the number of tastings');
  return runCalculator(calculator, asTyped(call), io);
}

/** A question that is asked by an option alone, as a calculator reads it. */
const asTyped = (call: Call): Call => ({
  ...call,
  values: {
    ...call.values,
    ...Object.fromEntries(
      ['prefer', 'two-sided'].filter((one) => call.flags.has(one)).map((one) => [one, ['yes']]),
    ),
  },
});
