import { describe, expect, it } from 'vitest';
import { isTimeZone, openTimeZone } from '../../../src/ledger/times.ts';
import { clockKnows, clockOffset } from '../../../src/ledger/zone-clock.ts';

const zones = Intl.supportedValuesOf('timeZone');
const hour = 3_600_000;

/** By `Intl` alone, as ECMA-402 words an offset. */
function offsetByIntl(zone: string): (epochMilliseconds: number) => number {
  const format = new Intl.DateTimeFormat('en-US', {
    timeZone: zone,
    timeZoneName: 'longOffset',
    year: 'numeric',
  });
  return (epochMilliseconds) => {
    const [, sign = '+', hours = '0', minutes = '0'] =
      /GMT(?:([+-])(\d\d):(\d\d))?$/u.exec(format.format(epochMilliseconds)) ?? [];
    return (sign === '-' ? -1 : 1) * (Number(hours) * 60 + Number(minutes));
  };
}

describe('offsets by the clock of the process', () => {
  it('law: for every zone that the clock knows they are those of Intl (ECMA-402), from 1980 to 2040', () => {
    const known = zones.filter(clockKnows);
    expect(known.length).toBeGreaterThan(350);
    for (const zone of known) {
      const byIntl = offsetByIntl(zone);
      for (let year = 1980; year < 2040; year += 7) {
        const at = Date.UTC(year, (year * 5) % 12, 11, 7, 30);
        expect([zone, at, clockOffset(zone, at)]).toEqual([zone, at, byIntl(at)]);
      }
    }
  });

  it('law: hour by hour over both changes of a year the two agree, whichever is asked first', () => {
    for (const zone of ['Europe/Lisbon', 'America/New_York', 'Australia/Lord_Howe', 'Asia/Kathmandu']) {
      const opened = openTimeZone(zone);
      const byIntl = offsetByIntl(zone);
      for (let at = Date.UTC(2026, 2, 28); at < Date.UTC(2026, 10, 3); at += 13 * hour)
        expect(opened?.offsetMinutes(at)).toBe(byIntl(at));
      for (let at = Date.UTC(2026, 2, 29); at < Date.UTC(2026, 2, 29, 6); at += hour / 2)
        expect(clockOffset(zone, at)).toBe(byIntl(at));
    }
  });

  it('does not know what is no zone, and leaves the clock as it was', () => {
    const before = [process.env['TZ'], new Date(0).getTimezoneOffset()];
    for (const name of ['Foo/Bar', 'europe/lisbon', 'GMT+5', 'UTC', '', '../etc'])
      expect(clockKnows(name)).toBe(false);
    expect([isTimeZone('Foo/Bar'), isTimeZone('UTC'), isTimeZone('Europe/Lisbon')]).toEqual([
      false,
      true,
      true,
    ]);
    expect([process.env['TZ'], new Date(0).getTimezoneOffset()]).toEqual(before);
  });
});
