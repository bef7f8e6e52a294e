import { gasConstant, limonene } from '../../reference/settling.ts';

/**
 * Mole fraction of an oil that does not dissolve in water from which droplets stop growing at the cost of each other.
 *
 * Formula   x > (2/3) alpha / d, alpha = 4 gamma V_m / (R T)
 * Input     diameter m, temperatureKelvin; tension and molar volume of limonene under polysorbate
 * Output    mole fraction
 * Source    Kabalnov, Pertzov and Shchukin 1987; Webster and Cates 1998; figures of limonene from memory
 * Accuracy  an order; only the direction is sure
 * Example   inhibitorMoleFraction({ diameterMetres: 100e-9, temperatureKelvin: 298.15 }) -> 0.0087
 */
export function inhibitorMoleFraction(of: {
  readonly diameterMetres: number;
  readonly temperatureKelvin: number;
}): number {
  const alpha = (4 * limonene.tension * limonene.molarVolume) / (gasConstant * of.temperatureKelvin);
  return ((2 / 3) * alpha) / of.diameterMetres;
}
