import { type Parsed, parsed, refused } from '../../problem.ts';
import { gasConstant } from '../../reference/solution/activity-model.ts';
import { gasMolarVolume } from '../../reference/solution/carbon-dioxide.ts';
import { waterDensity } from '../density/water-density.ts';
import { ATMOSPHERE_PASCAL, carbonDioxideMolality, molality, secondVirialAt } from './carbon-dioxide.ts';
import { carbonationAtVolumes } from './carbonation.ts';
import { findRoot } from './root.ts';
import { waterVapourPascal } from './vapour-pressure.ts';

const HIGHEST_PASCAL = 2.9e6;
const CUBIC_CENTIMETRES = 1e6;

export interface BottleGiven {
  /** Volumes of CO2 in the liquid when the bottle is closed, at rest with its headspace. */
  readonly volumes: number;
  readonly closedKelvin: number;
  readonly warmedKelvin: number;
  /** Share of the whole bottle that is gas when it is closed, above 0. */
  readonly headspaceFraction: number;
  /** Pressure of air shut in with the gas; none where it is left out. */
  readonly airPascal?: number;
}

export interface BottlePressure {
  readonly gaugePressurePascal: number;
  /** Volumes of CO2 left in the liquid. */
  readonly volumes: number;
  readonly headspaceFraction: number;
}

/**
 * The pressure in a closed bottle that is warmed. The CO2 in liquid and gas stays what it was; the liquid swells
 * into the headspace; the glass does not give.
 *
 * Formula   rho V m(T, p) + p v/(R T z) the same before and after, z = 1 + B p/(R T); plus water vapour and air
 * Input     volumes at closing, closedKelvin, warmedKelvin 273.15 to 333.15, headspaceFraction, airPascal
 * Output    gauge pressure Pa, volumes left in the liquid, headspaceFraction when warm
 * Refuses   no headspace, or one that the swelling liquid fills; more than 30 bar; what the equations do not cover
 * Source    as `carbonDioxideMolality`; the conservation of CO2
 * Accuracy  4 % for water; a sugared drink presses up to 8 % harder at the same volumes. It is no strength of a bottle
 * Example   bottlePressure({ volumes: 3.5, closedKelvin: 277.15, warmedKelvin: 313.15, headspaceFraction: 0.05 }) -> { gaugePressurePascal: 564136.7, .. }
 */
export function bottlePressure(given: BottleGiven): Parsed<BottlePressure> {
  const { headspaceFraction, closedKelvin, warmedKelvin, airPascal = 0 } = given;
  const cold = waterDensity({ temperatureKelvin: closedKelvin });
  if (!cold.ok) return cold;
  const warm = waterDensity({ temperatureKelvin: warmedKelvin });
  if (!warm.ok) return warm;
  const liquid = 1 - headspaceFraction;
  const swollen = (liquid * cold.value) / warm.value;
  const gas = 1 - swollen;
  if (!(headspaceFraction > 0 && headspaceFraction < 1 && gas > 0)) {
    return refused(
      'no-headspace',
      `a headspace of ${headspaceFraction * 100} % leaves no room for the liquid to swell; a full bottle bursts`,
      'leave a headspace of some per cent',
    );
  }
  const start = carbonationAtVolumes({ volumes: given.volumes, temperatureKelvin: closedKelvin });
  if (!start.ok) return start;
  const kilograms = liquid * cold.value;
  const held = (kelvin: number, room: number, pressure: number): number =>
    kilograms * dissolved(kelvin, pressure) + room * gasMoles(kelvin, pressure);
  const total = held(closedKelvin, headspaceFraction, start.value.partialPressurePascal);
  const inRange = carbonDioxideMolality({ temperatureKelvin: warmedKelvin, partialPressurePascal: 0 });
  if (!inRange.ok) return inRange;
  const excess = (pressure: number): number => held(warmedKelvin, gas, pressure) - total;
  if (excess(HIGHEST_PASCAL) < 0) {
    return refused(
      'outside-range',
      'the bottle would stand at more than 29 bar',
      'give less CO2 or more headspace',
    );
  }
  const partial = findRoot({ low: 0, high: HIGHEST_PASCAL, valueAt: excess });
  const air = airPascal * (headspaceFraction / gas) * (warmedKelvin / closedKelvin);
  return parsed({
    gaugePressurePascal: partial + air + waterVapourPascal(warmedKelvin) - ATMOSPHERE_PASCAL,
    volumes: dissolved(warmedKelvin, partial) * warm.value * gasMolarVolume.value,
    headspaceFraction: gas,
  });
}

/** mol per kg of water under CO2 of that pressure and the water's own vapour. */
function dissolved(temperatureKelvin: number, partialPressurePascal: number): number {
  const totalPressurePascal = partialPressurePascal + waterVapourPascal(temperatureKelvin);
  return molality({ temperatureKelvin, partialPressurePascal, totalPressurePascal });
}

/** mol of CO2 in a litre of gas. */
function gasMoles(kelvin: number, pressure: number): number {
  const thermal = gasConstant * kelvin;
  const compressibility = 1 + ((secondVirialAt(kelvin) / CUBIC_CENTIMETRES) * pressure) / thermal;
  return pressure / (thermal * compressibility) / 1000;
}
