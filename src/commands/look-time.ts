/** The time of a look: what `--at` says, or this minute. */

import type { Io } from '../io.ts';
import { readTime } from '../ledger/times.ts';
import { readTypedTime, type TypedTime, writtenTime } from '../ledger/typed-time.ts';
import { type Parsed, ProblemError, parsed, refused } from '../problem.ts';
import { type Call, optionValue } from './command.ts';
import { optionProblem } from './observation-facts.ts';
import type { Here } from './open-ledger.ts';

/** A minute of grace for clocks that differ. */
const grace = 60_000;
const minute = 60_000;

export function thisMinute(here: Here, io: Io): TypedTime {
  const epochMilliseconds = Math.floor(io.now() / minute) * minute;
  return { epochMilliseconds, written: writtenTime(epochMilliseconds, here.settings.zone) };
}

export function readLookTime(typed: string | undefined, here: Here, io: Io): Parsed<TypedTime> {
  const { zone } = here.settings;
  const now = io.now();
  if (typed === undefined) return parsed(thisMinute(here, io));
  const at = readTypedTime(typed, { epochMilliseconds: now, zone });
  return at.ok && at.value.epochMilliseconds > now + grace
    ? refused('in-the-future', `${at.value.written} has not come yet`, 'type the time of the look')
    : at;
}

const dayAlone = /^\d{4}-\d{2}-\d{2}$/u;

/** When a trial was made, as it is written: what `--made` says, a day alone too, or this minute. */
export function madeTyped(call: Call, here: Here, io: Io): string {
  const typed = optionValue(call, 'made')?.trim();
  const made = readMade(typed, here, io);
  if (!made.ok) throw new ProblemError([optionProblem('made', made.fault)]);
  return made.value;
}

function readMade(typed: string | undefined, here: Here, io: Io): Parsed<string> {
  const { zone } = here.settings;
  const day = typed !== undefined && dayAlone.test(typed) ? readTime(typed, zone) : undefined;
  const time = day ?? readLookTime(typed, here, io);
  if (!time.ok && time.fault.code === 'in-the-future')
    return refused(time.fault.code, time.fault.message, madeHint);
  if (!time.ok) return time;
  if ('written' in time.value) return parsed(time.value.written);
  const isToCome = (typed ?? '') > writtenTime(io.now(), zone).slice(0, 'yyyy-mm-dd'.length);
  return isToCome ? refused('in-the-future', `${typed} has not come yet`, madeHint) : parsed(typed ?? '');
}

const madeHint = 'type the time at which it was made';
