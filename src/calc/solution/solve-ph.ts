import { type Parsed, parsed, refused } from '../../problem.ts';
import { daviesModel } from '../../reference/solution/activity-model.ts';
import { type ActivityCoefficients, logActivities } from './activity.ts';
import { chargeAt } from './charge-balance.ts';
import type { PreparedSolution } from './prepare.ts';

const LOWEST_PH = -2;
const HIGHEST_PH = 16;
const PH_CLOSE = 1e-11;
const STRENGTH_CLOSE = 1e-11;
const PH_STEPS = 100;
const STRENGTH_STEPS = 200;
/** From here on the ionic strength is moved half way only, in case it swings. */
const DAMPED_FROM = 40;

export interface SolvedPh {
  readonly ph: number;
  readonly ionicStrength: number;
  readonly logActivity: ActivityCoefficients;
}

/**
 * The pH at which the charges add up to nothing, with activity coefficients at its own ionic strength.
 *
 * Formula   Newton's step on the charge in pH, kept in a bracket that is halved where the step leaves it; around it
 *           the ionic strength is put in again until it stays
 * Input     the prepared solution
 * Output    ph (-log10 of the activity of H+), ionicStrength mol/kg, log10 of the activity coefficients
 * Refuses   an ionic strength above 1.5 mol/kg
 */
export function solvePh(solution: PreparedSolution): Parsed<SolvedPh> {
  const highest = daviesModel.highestIonicStrength;
  let ionicStrength = solution.strongSquares / 2;
  let ph = 4;
  for (let step = 0; step < STRENGTH_STEPS && ionicStrength <= 2 * highest; step += 1) {
    const logActivity = logActivities({ ionicStrength, debyeHueckelA: solution.debyeHueckelA });
    ph = phAt(solution, logActivity, ph);
    const next = chargeAt(solution, ph, logActivity).ionicStrength;
    if (Math.abs(next - ionicStrength) <= STRENGTH_CLOSE) {
      return next <= highest ? parsed({ ph, ionicStrength: next, logActivity }) : tooStrong(next);
    }
    ionicStrength = step < DAMPED_FROM ? next : (next + ionicStrength) / 2;
  }
  return tooStrong(ionicStrength);
}

function tooStrong(ionicStrength: number): Parsed<never> {
  return refused(
    'too-concentrated',
    `the ionic strength is ${Number(ionicStrength.toPrecision(3))} mol/kg; the activity model is used up to ${daviesModel.highestIonicStrength} mol/kg`,
    'ask for a weaker solution, such as the drink instead of the stock',
  );
}

/** The pH for given activity coefficients. */
export function phAt(solution: PreparedSolution, logActivity: ActivityCoefficients, start: number): number {
  let [low, high, ph] = [LOWEST_PH, HIGHEST_PH, start];
  for (let step = 0; step < PH_STEPS; step += 1) {
    const { charge, slope } = chargeAt(solution, ph, logActivity);
    if (charge > 0) low = ph;
    else high = ph;
    let next = ph - charge / slope;
    if (!(next > low && next < high)) next = (low + high) / 2;
    if (Math.abs(next - ph) < PH_CLOSE) return next;
    ph = next;
  }
  return ph;
}
