/** Times as a person types them after `--at`, and times as the tool writes them. */

import { type Parsed, parsed, refused } from '../problem.ts';
import { readTime, type TimeZone } from './times.ts';

export interface Now {
  readonly epochMilliseconds: number;
  readonly zone: TimeZone | undefined;
}

export interface TypedTime {
  readonly epochMilliseconds: number;
  /** As it is written into a file: with its offset. */
  readonly written: string;
}

const minute = 60_000;
const dayMinutes = 24 * 60;

/**
 * Input     `09:10` (today), `yesterday 18:00`, `today 9:10`, `2026-03-02 10:15`, or a full time; the moment and zone
 * Output    the instant, and how the ledger writes it
 * Refuses   a day without a time, other forms, a time that the zone skips
 */
export function readTypedTime(text: string, now: Now): Parsed<TypedTime> {
  const relative = /^(?:(today|yesterday)\s+)?(\d{1,2}):(\d{2})$/i.exec(text.trim());
  const full = relative ? onDay(relative, now) : text.trim();
  const time = readTime(full, now.zone ?? localZone);
  if (!time.ok) {
    return relative
      ? time
      : refused(time.fault.code, time.fault.message, 'type 09:10, "yesterday 18:00" or 2026-03-02T10:15');
  }
  if (time.value.isDay)
    return refused('bad-time', `"${text}" is a day without a time`, `type "${text} 09:10"`);
  return parsed({
    epochMilliseconds: time.value.epochMilliseconds,
    written: writtenTime(time.value.epochMilliseconds, now.zone),
  });
}

function onDay([, word, hour = '', minutes = '']: RegExpExecArray, now: Now): string {
  const back = word?.toLowerCase() === 'yesterday' ? dayMinutes * minute : 0;
  const local = writtenTime(now.epochMilliseconds - back, now.zone);
  return `${local.slice(0, 10)}T${hour.padStart(2, '0')}:${minutes}`;
}

/** The zone of this computer, where the bench names none. */
const localZone: TimeZone = {
  name: 'the zone of this computer',
  offsetMinutes: (epochMilliseconds) => -new Date(epochMilliseconds).getTimezoneOffset(),
};

/**
 * A moment as the ledger writes it: to the minute, or with seconds, always with its offset.
 *
 * Example   writtenTime(1772446500000, undefined) in UTC -> 2026-03-02T10:15+00:00
 */
export function writtenTime(
  epochMilliseconds: number,
  zone: TimeZone | undefined,
  withSeconds = false,
): string {
  const offset = Math.round((zone ?? localZone).offsetMinutes(epochMilliseconds));
  const local = new Date(epochMilliseconds + offset * minute).toISOString();
  const size = Math.abs(offset);
  const pair = (value: number): string => String(Math.floor(value)).padStart(2, '0');
  const sign = offset < 0 ? '-' : '+';
  return `${local.slice(0, withSeconds ? 19 : 16)}${sign}${pair(size / 60)}:${pair(size % 60)}`;
}
