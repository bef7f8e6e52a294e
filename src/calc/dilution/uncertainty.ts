/** How sure the strength of a dilution is. */

/** What is weighed in one step. */
export interface WeighedStep {
  readonly takeGrams: number;
  readonly takeUncertaintyGrams: number;
  readonly solventGrams: number;
  readonly solventUncertaintyGrams: number;
}

/**
 * The relative variance that one step adds to the strength.
 *
 * Formula   w' = w a/(a + s);  (u(w')/w')^2 = (u(w)/w)^2 + (s/(a + s))^2 ((u(a)/a)^2 + (u(s)/s)^2)
 * Input     masses in g and their standard uncertainties in g
 * Output    relative variance, without a unit
 * Source    JCGM 100:2008, equation 10 (uncorrelated inputs)
 * Example   0.5 g +- 0.0041 g in 49.5 g +- 0.0041 g -> 6.5e-5
 */
export function stepVariance(step: WeighedStep): number {
  const { takeGrams, takeUncertaintyGrams, solventGrams, solventUncertaintyGrams } = step;
  const share = solventGrams / (takeGrams + solventGrams);
  const take = takeUncertaintyGrams / takeGrams;
  const solvent = solventGrams > 0 ? solventUncertaintyGrams / solventGrams : 0;
  return share * share * (take * take + solvent * solvent);
}

/** As it is stated: to two significant digits. JCGM 100:2008, 7.2.6. */
export const asStated = (uncertainty: number): number => Number(uncertainty.toPrecision(2));
