/**
 * Offsets of time zones by the clock of this process, set to the zone for as long as it takes to ask. Loading what
 * `Intl` needs for its first answer takes longer than a small command; from a few answers on `Intl` is quicker.
 */

/** Minutes east of Greenwich by the clock, the zone being set while it is asked. */
export function clockOffset(zone: string, epochMilliseconds: number): number {
  const before = process.env['TZ'];
  try {
    process.env['TZ'] = zone;
    return 0 - new Date(epochMilliseconds).getTimezoneOffset();
  } finally {
    if (before === undefined) delete process.env['TZ'];
    else process.env['TZ'] = before;
  }
}

const area = /^[A-Z][A-Za-z_]+\/[A-Za-z0-9_+/-]+$/u;
const winter = Date.UTC(2026, 0, 15);
const summer = Date.UTC(2026, 6, 15);

let followed: boolean | undefined;

/** Whether the clock of this process follows the zone that is set: in threads it does not. */
const isFollowed = (): boolean => {
  followed ??= clockOffset('Etc/GMT+7', winter) === -420 && clockOffset('Etc/GMT-9', winter) === 540;
  return followed;
};

/**
 * Whether the clock surely knows a zone. A name that it does not know gives it no offset, so of those that are at
 * Greenwich all year this is not known.
 */
export const clockKnows = (zone: string): boolean =>
  area.test(zone) && isFollowed() && (clockOffset(zone, winter) !== 0 || clockOffset(zone, summer) !== 0);
