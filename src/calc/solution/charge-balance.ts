import type { ActivityCoefficients } from './activity.ts';
import type { PreparedSolution } from './prepare.ts';

const LN10 = Math.LN10;

/** 10^x: one exponential, no power. */
const power10 = (exponent: number): number => Math.exp(LN10 * exponent);

export interface ChargeBalance {
  /** Positive less negative charge, mol/kg; falls as the pH rises. */
  readonly charge: number;
  /** d charge / d pH. */
  readonly slope: number;
  /** mol/kg, of what is there at this pH. */
  readonly ionicStrength: number;
}

/**
 * The charge of a solution at a pH, with its activity coefficients held.
 *
 * Formula   q = sum z m(ions) + h - oh - sum over acids of total n, n the mean number of protons given off;
 *           share of the species that gave off j: proportional to 10^(j pH - pK1 - .. - pKj) g0/gj
 * Input     the prepared solution, ph, log10 of the activity coefficients by charge
 * Output    charge, its slope with pH, ionic strength 1/2 sum z^2 m
 * Source    mass action and charge balance
 */
export function chargeAt(
  solution: PreparedSolution,
  ph: number,
  logActivity: ActivityCoefficients,
): ChargeBalance {
  const single = logActivity[1] ?? 0;
  const hydrogen = power10(-ph - single);
  const hydroxide = power10(ph - solution.pkw - single);
  let charge = solution.strongCharge + hydrogen - hydroxide;
  let slope = -hydrogen - hydroxide;
  let squares = solution.strongSquares + hydrogen + hydroxide;
  for (const { total, pks } of solution.acids) {
    const { mean, meanSquare } = protonsGiven(pks, ph, logActivity);
    charge -= total * mean;
    slope -= total * (meanSquare - mean * mean);
    squares += total * meanSquare;
  }
  if (solution.carbonDioxideActivity > 0) {
    const [first = 0, second = 0] = solution.carbonicPks;
    const bicarbonate = solution.carbonDioxideActivity * power10(ph - first - single);
    const carbonate =
      solution.carbonDioxideActivity * power10(2 * ph - first - second - (logActivity[2] ?? 0));
    charge -= bicarbonate + 2 * carbonate;
    slope -= bicarbonate + 4 * carbonate;
    squares += bicarbonate + 4 * carbonate;
  }
  return { charge, slope: slope * LN10, ionicStrength: squares / 2 };
}

/** Mean and mean square of the protons that a molecule of the acid has given off. */
function protonsGiven(
  pks: readonly number[],
  ph: number,
  logActivity: ActivityCoefficients,
): { readonly mean: number; readonly meanSquare: number } {
  let all = 1;
  let first = 0;
  let second = 0;
  let exponent = logActivity[0] ?? 0;
  for (let given = 1; given <= pks.length; given += 1) {
    exponent += ph - (pks[given - 1] ?? 0);
    const weight = power10(exponent - (logActivity[given] ?? 0));
    all += weight;
    first += given * weight;
    second += given * given * weight;
  }
  return { mean: first / all, meanSquare: second / all };
}

/** The shares of an acid's species, from the one with all protons to the bare ion. They add up to 1. */
export function speciesShares(
  pks: readonly number[],
  ph: number,
  logActivity: ActivityCoefficients,
): readonly number[] {
  let exponent = logActivity[0] ?? 0;
  const weights = [1];
  pks.forEach((pk, index) => {
    exponent += ph - pk;
    weights.push(power10(exponent - (logActivity[index + 1] ?? 0)));
  });
  const all = weights.reduce((sum, weight) => sum + weight, 0);
  return weights.map((weight) => weight / all);
}
