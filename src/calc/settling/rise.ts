/** How fast droplets rise or sink, and whether their own motion keeps them mixed. */

import { type Parsed, parsed, refused } from '../../problem.ts';
import { boltzmann, hindered, standardGravity } from '../../reference/settling.ts';

export interface RisingDroplet {
  readonly diameterMetres: number;
  /** kg/m3, of the medium less that of the oil: positive rises. */
  readonly densityDifference: number;
  readonly viscosityPascalSeconds: number;
  readonly temperatureKelvin: number;
  /** Volume share of all droplets; 0 for one alone. */
  readonly volumeFraction: number;
}

export interface Rise {
  /** m/s, upwards positive. */
  readonly velocity: number;
  /** m2/s. */
  readonly diffusivity: number;
  /** m; undefined where nothing pulls. */
  readonly scaleHeight: number | undefined;
  readonly peclet: number;
}

const MOST_MOVING = 0.1;

/**
 * Rise of a droplet in a liquid at rest.
 *
 * Formula   v = 2 g r^2 drho / (9 eta) x (1 - phi)^4.65; D = k T / (6 pi eta r); height l = k T / (4/3 pi r^3 |drho| g); Pe = |v| r / D
 * Input     diameter m, density difference kg/m3, viscosity Pa s, temperature K, volume share of droplets
 * Output    velocity m/s, diffusivity m2/s, scale height m, Peclet number
 * Refuses   no size; a share above 0.3; droplets so large that the flow round them is no creeping flow (Re > 0.1)
 * Source    Stokes; Richardson and Zaki 1954; Perrin
 * Example   riseOf({ 2 um, 90 kg/m3, 1 mPa s }) -> 16.95 mm/day
 */
export function riseOf(of: RisingDroplet): Parsed<Rise> {
  const { diameterMetres, densityDifference, viscosityPascalSeconds, temperatureKelvin, volumeFraction } = of;
  if (!(volumeFraction >= 0 && volumeFraction <= hindered.highest))
    return refused(
      'outside-range',
      `at ${Number((volumeFraction * 100).toPrecision(3))} % of oil by volume droplets hinder each other more than is known`,
      `ask for at most ${hindered.highest * 100} %`,
    );
  const radius = diameterMetres / 2;
  const alone = (2 * standardGravity * radius ** 2 * densityDifference) / (9 * viscosityPascalSeconds);
  const reynolds = (1000 * Math.abs(alone) * diameterMetres) / viscosityPascalSeconds;
  if (reynolds > MOST_MOVING)
    return refused(
      'outside-range',
      `droplets of ${Number((diameterMetres * 1e6).toPrecision(3))} um rise too fast for Stokes' law: they are up in seconds`,
      'give the size of the droplets of an emulsion, below about 0.1 mm',
    );
  const velocity = alone * hinderedFactor(volumeFraction);
  const diffusivity = (boltzmann * temperatureKelvin) / (6 * Math.PI * viscosityPascalSeconds * radius);
  const pull = (4 / 3) * Math.PI * radius ** 3 * Math.abs(densityDifference) * standardGravity;
  return parsed({
    velocity,
    diffusivity,
    scaleHeight: pull > 0 ? (boltzmann * temperatureKelvin) / pull : undefined,
    peclet: (Math.abs(velocity) * radius) / diffusivity,
  });
}

/** Example   hinderedFactor(0.05) -> 0.7878 */
export const hinderedFactor = (volumeFraction: number): number => (1 - volumeFraction) ** hindered.value;

/**
 * The smallest droplet that rises a height within a time: what a ring says of the droplets.
 *
 * Formula   d = sqrt(18 eta v / (drho g)), v = height / time
 * Output    m; undefined where oil and medium weigh alike
 */
export function diameterToRise(of: {
  readonly heightMetres: number;
  readonly seconds: number;
  readonly densityDifference: number;
  readonly viscosityPascalSeconds: number;
}): number | undefined {
  const { heightMetres, seconds, densityDifference, viscosityPascalSeconds } = of;
  if (densityDifference === 0 || seconds <= 0) return undefined;
  return Math.sqrt(
    (18 * viscosityPascalSeconds * heightMetres) / (seconds * Math.abs(densityDifference) * standardGravity),
  );
}
