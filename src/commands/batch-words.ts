/** Days and masses as the batch commands say them. */

import type { TimeZone } from '../ledger/times.ts';
import { writtenTime } from '../ledger/typed-time.ts';

/** `2026-06-07` */
export const day = (epochMilliseconds: number, zone: TimeZone | undefined): string =>
  writtenTime(epochMilliseconds, zone).slice(0, 10);
