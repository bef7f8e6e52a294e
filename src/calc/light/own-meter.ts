import { usualWavelength } from '../../reference/light.ts';
import { answered } from '../answered.ts';
import type { ClarityGiven } from '../calculators/clarity.ts';
import { type Calibration, calibrate, uncalibrated } from './calibration.ts';
import { turbidity } from './turbidity.ts';
import type { Emulsion } from './work-clarity.ts';

/** The person's meter, from readings on droplets of a known size; the published factor of two without any. */
export function meterOf(
  given: ClarityGiven,
  { dispersion, medium, oil }: Emulsion,
  spread: number,
): Calibration {
  if (given.reading.length === 0) return uncalibrated;
  const readings = given.reading.map((one) => {
    if (one.modelled !== undefined) return { modelled: one.modelled, measured: one.turbidity.inner };
    const gramsPerMillilitre =
      one.dose?.dimension === 'share' ? one.dose.inner * medium.density : one.dose?.inner;
    const volumeFraction =
      gramsPerMillilitre === undefined ? dispersion.volumeFraction : gramsPerMillilitre / oil.density;
    const droplets = { diameterNanometres: one.droplet.inner * 1e9, spread };
    const green = { ...dispersion, volumeFraction, wavelengthNanometres: usualWavelength.value };
    return { modelled: answered(turbidity(green, droplets)).ntu, measured: one.turbidity.inner };
  });
  return answered(calibrate(readings));
}
