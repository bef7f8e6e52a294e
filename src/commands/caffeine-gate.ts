/** A drink with so much caffeine a serving that somebody must say yes to it first. */

import type { CaffeineGate } from '../calc/slip-guard/caffeine.ts';
import type { Io } from '../io.ts';
import { fail } from '../problem.ts';
import type { Call } from './command.ts';

/** Asks on a terminal; elsewhere refuses without `--yes`. Nothing may have been written before. */
export async function askAboutCaffeine(call: Call, io: Io, gate: CaffeineGate | undefined): Promise<void> {
  if (!gate || call.flags.has('yes')) return;
  const { text } = gate.caution;
  const answer =
    io.canAsk && !call.flags.has('json') ? await io.ask(`${text}\nIs this meant? yes or no: `) : undefined;
  if (/^\s*y(?:es)?\s*$/iu.test(answer ?? '')) return;
  fail('caffeine-serving', text, 'check the amount and its unit; where it is meant, add --yes');
}
