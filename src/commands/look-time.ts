/** The time of a look: what `--at` says, or this minute. */

import type { Io } from '../io.ts';
import { readTypedTime, type TypedTime, writtenTime } from '../ledger/typed-time.ts';
import { type Parsed, parsed, refused } from '../problem.ts';
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
