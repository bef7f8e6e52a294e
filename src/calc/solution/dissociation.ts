import type { DissociationStep } from '../../reference/solution/acid-constants.ts';
import { gasConstant } from '../../reference/solution/activity-model.ts';

const REFERENCE_KELVIN = 298.15;

/**
 * pK of one dissociation at a temperature. What was not found of enthalpy or heat capacity counts as none.
 *
 * Formula   ln K(T) = ln K(o) - (H / R)(1/T - 1/o) + (C / R)(o/T - 1 + ln(T/o)), o = 298.15 K
 * Input     the step (pk at 25 C, enthalpy in kJ/mol, heatCapacity in J/(mol K)), temperatureKelvin 273.15 to 350
 * Output    pK, infinite dilution, molality scale
 * Source    Goldberg, Kishore and Lennen 2002, equation for K(T)
 * Example   pkAt({ step: { pk: 3.128, enthalpy: 4.07, heatCapacity: -131, source: '' }, temperatureKelvin: 278.15 }) -> 3.196154
 */
export function pkAt({
  step,
  temperatureKelvin,
}: {
  readonly step: DissociationStep;
  readonly temperatureKelvin: number;
}): number {
  const enthalpy = (step.enthalpy ?? 0) * 1000;
  const heatCapacity = step.heatCapacity ?? 0;
  const ratio = REFERENCE_KELVIN / temperatureKelvin;
  const change =
    (-enthalpy / gasConstant) * (1 / temperatureKelvin - 1 / REFERENCE_KELVIN) +
    (heatCapacity / gasConstant) * (ratio - 1 - Math.log(ratio));
  return step.pk - change / Math.LN10;
}

/** True where the source gives both enthalpy and heat capacity of every step. */
export function temperatureKnown(steps: readonly DissociationStep[]): boolean {
  return steps.every((step) => step.enthalpy !== null && step.heatCapacity !== null);
}
