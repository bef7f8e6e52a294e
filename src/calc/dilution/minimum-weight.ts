/** The pharmacopoeial sense of a weighing, beside the bench's own. */

import { minimumWeightRule } from '../../reference/weighing.ts';

/**
 * The smallest net mass that meets the repeatability rule of the pharmacopoeia.
 *
 * Formula   m_min = 2 s / 0.001; s of at least ten weighings, and not less than 0.41 d
 * Input     standard deviation s in g, or the division d in g alone
 * Output    g
 * Source    USP <41> 2019
 * Example   s 0.00015 g -> 0.300 g
 */
export function minimumWeight(given: {
  readonly deviationGrams?: number;
  readonly divisionGrams?: number;
}): number {
  const { factor, rule, leastDivisions } = minimumWeightRule;
  const floor = leastDivisions * (given.divisionGrams ?? 0);
  return (factor * Math.max(given.deviationGrams ?? 0, floor)) / rule;
}
