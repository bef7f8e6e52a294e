/** The options that hold for every trial of a round. */

import type { Io } from '../io.ts';
import type { Fault, Problem } from '../problem.ts';
import type { Call } from './command.ts';
import { type Manner, problemOf } from './look-entry.ts';
import { readLookTime, thisMinute } from './look-time.ts';
import type { Here } from './open-ledger.ts';

interface TypedManner {
  readonly manner: Manner;
  readonly problems: readonly Problem[];
}

/** Where the time can't be read, this minute stands in. */
export function mannerOf(call: Call, here: Here, io: Io): TypedManner {
  const problems: Problem[] = [];
  const texts = ['sample', 'viewed', 'by', 'note', 'at'].flatMap((option) => {
    const [text, second] = call.values[option] ?? [];
    if (text === undefined) return [];
    if (second !== undefined || text.trim() === '')
      problems.push(problemOf(second === undefined ? emptyOption(option) : twice(option, text, second)));
    return [[option, text.trim()] as const];
  });
  const { sample, viewed, by, note, at: typedAt } = Object.fromEntries(texts);
  const at = readLookTime(typedAt, here, io);
  if (!at.ok) problems.push(problemOf({ ...at.fault, message: `--at: ${at.fault.message}` }));
  return { manner: { at: at.ok ? at.value : thisMinute(here, io), sample, viewed, by, note }, problems };
}

const emptyOption = (option: string): Fault => ({
  code: 'empty',
  message: `--${option}: nothing stands there`,
  hint: 'say something, or leave the option out',
});

const twice = (option: string, text: string, second: string): Fault => ({
  code: 'given-twice',
  message: `--${option}: "${text}" and "${second}" are both given`,
  hint: 'give it once',
});
