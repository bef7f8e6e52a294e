import type { Portion } from './dissolve.ts';
import { molarMass } from './molar-mass.ts';

/** Moles of bicarbonate for a mole of the calcium carbonate in which alkalinity is given. */
const BICARBONATES = 2;

/**
 * The alkalinity of the bench's water as what it is: calcium bicarbonate. Which metal goes with it does not move
 * the pH.
 *
 * Formula   mol/L Ca(HCO3)2 = mg/L as CaCO3 / 1000 / M(CaCO3)
 * Input     alkalinity in mg/L as CaCO3; waterShare of the drink that is this water, 0 to 1
 * Output    a portion for `dissolve` and `drinkAcidity`
 * Source    definition of alkalinity
 * Example   alkalinityPortion({ milligramsPerLitreAsCalciumCarbonate: 120, waterShare: 1 }) -> { substance: 'calcium bicarbonate', amount: { unit: 'mol/L', value: 0.0012 } }
 */
export function alkalinityPortion(given: {
  readonly milligramsPerLitreAsCalciumCarbonate: number;
  readonly waterShare: number;
}): Portion {
  const moles = given.milligramsPerLitreAsCalciumCarbonate / 1000 / molarMass('CaCO3');
  return {
    substance: 'calcium bicarbonate',
    amount: { unit: 'mol/L', value: moles * given.waterShare },
  };
}

/**
 * How much acid the alkalinity eats: acid that is weighed in and not found again by titration.
 *
 * Formula   g/L = 2 mol/L CaCO3 times M(citric acid) / 3
 * Input     alkalinity in mg/L as CaCO3; waterShare 0 to 1
 * Output    g/L as anhydrous citric acid
 * Source    arithmetic
 * Example   acidEaten({ milligramsPerLitreAsCalciumCarbonate: 120, waterShare: 1 }) -> 0.1536
 */
export function acidEaten(given: {
  readonly milligramsPerLitreAsCalciumCarbonate: number;
  readonly waterShare: number;
}): number {
  const { amount } = alkalinityPortion(given);
  return (BICARBONATES * amount.value * molarMass('C6H8O7')) / 3;
}
