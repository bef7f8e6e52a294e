/** Times as people type them: ISO 8601 with an offset, or without one in the bench's time zone. */

import { type Parsed, parsed, refused } from '../problem.ts';
import { clockKnows, clockOffset } from './zone-clock.ts';

/** Where the offset of a time zone is asked; made once a ledger. */
export interface TimeZone {
  readonly name: string;
  /** Minutes east of Greenwich at an instant. */
  readonly offsetMinutes: (epochMilliseconds: number) => number;
}

export interface ReadTime {
  readonly epochMilliseconds: number;
  /** True where only a date was typed. */
  readonly isDay: boolean;
}

const minute = 60_000;
const day = 24 * 60 * minute;

/** A time zone by its IANA name; undefined where there is none of that name. */
export function openTimeZone(name: string): TimeZone | undefined {
  const isClocked = clockKnows(name);
  if (!isClocked && !isTimeZone(name)) return undefined;
  let format: Intl.DateTimeFormat | undefined;
  const exact = new Map<number, number>();
  const offsetMinutes = (epochMilliseconds: number): number => {
    const known = exact.get(epochMilliseconds);
    if (known !== undefined) return known;
    let offset: number;
    if (isClocked && exact.size < fewOffsets) offset = clockOffset(name, epochMilliseconds);
    else {
      format ??= new Intl.DateTimeFormat('en-US', {
        timeZone: name,
        timeZoneName: 'longOffset',
        year: 'numeric',
      });
      offset = readOffset(format.format(epochMilliseconds));
    }
    exact.set(epochMilliseconds, offset);
    return offset;
  };
  return { name, offsetMinutes };
}

/** So many are asked of the clock before `Intl` is loaded. */
const fewOffsets = 24;

/** Whether a name is that of a time zone. */
export function isTimeZone(name: string): boolean {
  if (!/^[A-Za-z]/u.test(name)) return false;
  if (clockKnows(name)) return true;
  try {
    return new Intl.DateTimeFormat('en-US', { timeZone: name }).resolvedOptions().timeZone !== '';
  } catch {
    return false;
  }
}

/** `3/2/2026, GMT+01:00` */
function readOffset(text: string): number {
  const [, sign = '+', hours = '0', minutes = '0', seconds = '0'] =
    /GMT(?:([+-])(\d\d):(\d\d)(?::(\d\d))?)?$/u.exec(text) ?? [];
  const size = Number(hours) * 60 + Number(minutes) + Number(seconds) / 60;
  return sign === '-' ? -size : size;
}

const shape =
  /^(\d{4})-(\d{2})-(\d{2})(?:[T ](\d{2}):(\d{2})(?::(\d{2})(?:\.(\d{1,9}))?)?(?: ?([Zz]|[+-]\d{2}:?\d{2}))?)?$/u;

/**
 * A time or a date.
 *
 * Input     `2026-03-02T10:15+00:00`, `2026-03-02T10:15Z`, `2026-03-02 10:15` (in the time zone), `2026-03-02`; the
 *           zone of the bench
 * Output    milliseconds since 1970; a date is the first instant of its day in the zone, or in UTC without one
 * Refuses   other forms, days and hours that no calendar has, a time without an offset where there is no zone, a time
 *           that the zone skips; a time that the zone has twice is the first
 * Example   readTime('2026-03-02T10:15+00:00', undefined) -> 1772446500000
 */
export function readTime(text: string, zone: TimeZone | undefined): Parsed<ReadTime> {
  const match = shape.exec(text);
  if (!match) return notATime(text);
  const hour = match[4];
  const offset = match[8];
  const midnight = Date.UTC(Number(match[1]), Number(match[2]) - 1, Number(match[3]));
  const real = new Date(midnight);
  if (real.getUTCDate() !== Number(match[3]) || real.getUTCMonth() !== Number(match[2]) - 1)
    return refused('bad-time', `there is no day ${text.slice(0, 10)}`, 'write a day that the calendar has');
  if (hour === undefined) {
    const start = zone ? localInstant(midnight, zone) : midnight;
    return parsed({ epochMilliseconds: start ?? midnight, isDay: true });
  }
  if (Number(hour) > 23 || Number(match[5]) > 59 || Number(match[6] ?? 0) > 59)
    return refused('bad-time', `"${text}" has no such hour`, 'write an hour from 00:00 to 23:59');
  const ofDay = (Number(hour) * 60 + Number(match[5])) * minute + Number(match[6] ?? 0) * 1000;
  const local = midnight + ofDay + (match[7] === undefined ? 0 : Math.floor(Number(`0.${match[7]}`) * 1000));
  if (offset !== undefined) return withOffset(text, local, offset);
  return inZone(text, local, zone);
}

function withOffset(text: string, local: number, offset: string): Parsed<ReadTime> {
  if (/z/iu.test(offset)) return parsed({ epochMilliseconds: local, isDay: false });
  const hours = Number(offset.slice(1, 3));
  const minutes = Number(offset.slice(-2));
  if (hours > 14 || minutes > 59)
    return refused('bad-time', `"${text}" has no such offset`, 'write an offset from -12:00 to +14:00');
  const size = (hours * 60 + minutes) * minute;
  return parsed({ epochMilliseconds: offset.startsWith('-') ? local + size : local - size, isDay: false });
}

function inZone(text: string, local: number, zone: TimeZone | undefined): Parsed<ReadTime> {
  if (!zone) {
    const hint = `write ${text}+00:00, or give the bench its time zone ("time zone: Europe/Lisbon" in bench.yaml)`;
    return refused('no-offset', `"${text}" has no offset and the bench has no time zone`, hint);
  }
  const instant = localInstant(local, zone);
  if (instant !== undefined) return parsed({ epochMilliseconds: instant, isDay: false });
  const message = `there was no ${text.slice(11, 16)} on ${text.slice(0, 10)} in ${zone.name}: the clocks went forward`;
  return refused('skipped-time', message, 'write the time that the clock showed');
}

/** The first instant at which a clock in the zone shows this; undefined where it skips it. */
function localInstant(local: number, zone: TimeZone): number | undefined {
  const midnight = Math.floor(local / day) * day;
  const before = zone.offsetMinutes(midnight - day);
  const after = zone.offsetMinutes(midnight + 2 * day);
  if (before === after) return local - before * minute;
  const instants = [local - Math.max(before, after) * minute, local - Math.min(before, after) * minute];
  return instants.find((instant) => instant + zone.offsetMinutes(instant) * minute === local);
}

function notATime(text: string): Parsed<never> {
  const hint = 'write 2026-03-02T10:15+00:00 (year, month, day, time, offset)';
  const [, year = '', month = '', date = '', rest = ''] =
    /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})(.*)$/u.exec(text) ?? [];
  if (year === '') return refused('bad-time', `"${text}" is not a time`, hint);
  const time = /(\d{1,2}):(\d{2})/u.exec(rest);
  const clock = time ? `T${(time[1] ?? '').padStart(2, '0')}:${time[2]}` : '';
  const mend = `${year}-${month.padStart(2, '0')}-${date.padStart(2, '0')}${clock}`;
  return refused('bad-time', `"${text}" is not written like a time`, `write ${mend}`);
}
