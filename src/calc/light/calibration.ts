/** The person's own meter beside the model: a factor with the band that its scatter leaves. */

import { type Parsed, parsed, refused } from '../../problem.ts';
import { nephelometer } from '../../reference/light.ts';

export interface MeterReading {
  /** NTU that the model gives for the same droplets. */
  readonly modelled: number;
  readonly measured: number;
}

export interface Calibration {
  /** measured / modelled, the geometric mean. */
  readonly factor: number;
  /** Ends of the next reading as factors of the calibrated one. */
  readonly low: number;
  readonly high: number;
  /** Readings that it rests on; 0 where it is the published factor of two. */
  readonly readings: number;
}

export const uncalibrated: Calibration = {
  factor: 1,
  low: 1 / nephelometer.factor,
  high: nephelometer.factor,
  readings: 0,
};

export const fewestReadings = 3;
/** No meter at a bench is better than this, whatever three readings say; common practice, no source. */
const LEAST_BAND = 1.1;

/** Student's t, two-sided 95 %, for 2 to 10 degrees of freedom; the normal value above is near enough for more. */
const studentT = [4.303, 3.182, 2.776, 2.571, 2.447, 2.365, 2.306, 2.262, 2.228];

/**
 * Formula   ln f = mean of ln(measured/modelled); the next reading within f exp(+-t s sqrt(1 + 1/n)), 95 %
 * Input     three readings or more, NTU
 * Output    the factor and its band
 * Refuses   fewer than three; a reading of nothing
 * Source    Student 1908, prediction interval of a normal sample; t from memory
 * Example   calibrate([{ modelled: 1, measured: 1.5 }, { modelled: 2, measured: 3 }, { modelled: 4, measured: 6 }]) -> factor 1.5
 */
export function calibrate(readings: readonly MeterReading[]): Parsed<Calibration> {
  const sound = readings.filter(({ modelled, measured }) => modelled > 0 && measured > 0);
  if (sound.length < readings.length)
    return refused(
      'not-positive',
      'a reading of nothing tells nothing of the meter',
      'leave it out; give readings above 0 NTU',
    );
  if (sound.length < fewestReadings)
    return refused(
      'too-few',
      `${sound.length === 1 ? 'one reading is' : `${sound.length} readings are`} too few to set a meter by`,
      'give three or more, each of droplets of a known size',
    );
  const logs = sound.map(({ modelled, measured }) => Math.log(measured / modelled));
  const mean = logs.reduce((sum, log) => sum + log, 0) / logs.length;
  const variance = logs.reduce((sum, log) => sum + (log - mean) ** 2, 0) / (logs.length - 1);
  const t = studentT[logs.length - 3] ?? 2.2;
  const half = Math.max(Math.log(LEAST_BAND), t * Math.sqrt(variance * (1 + 1 / logs.length)));
  return parsed({
    factor: Math.exp(mean),
    low: Math.exp(-half),
    high: Math.exp(half),
    readings: logs.length,
  });
}
