import { type Parsed, parsed, refused } from '../../problem.ts';
import { daviesModel } from '../../reference/solution/activity-model.ts';
import { titrationAcids } from '../../reference/solution/titration.ts';
import { type ActivityCoefficients, logActivities } from './activity.ts';
import { chargeAt } from './charge-balance.ts';
import { molarMass } from './molar-mass.ts';
import { type Component, type PreparedSolution, prepareSolution } from './prepare.ts';
import { plainName } from './substance.ts';

const STRENGTH_STEPS = 200;
const STRENGTH_CLOSE = 1e-11;
const DAMPED_FROM = 40;

export interface TitrationGiven {
  readonly components: readonly Component[];
  readonly temperatureKelvin: number;
  /** 8.1 or 8.2 by custom. */
  readonly endPoint: number;
}

/**
 * Base taken up to a pH: NaOH is added in thought until the solution stands at the end point. CO2 is left out, as
 * a drink is degassed before it is titrated; the water that the base brings is not counted.
 *
 * Formula   charge balance at the end point, solved for the sodium added; less the base that is there already
 * Input     components in mol per kg of water, temperatureKelvin, endPoint 4 to 10
 * Output    mol of base per kg of water; negative for a solution above the end point
 * Refuses   as the equilibrium does; an end point outside
 * Source    titration to pH 8.1 or 8.2 (AOAC and citrus trade)
 * Accuracy  that of the constants: 0.3 % for citric acid
 * Example   titratableEquivalents({ components: [{ substance: 'citric acid', molesPerKilogramWater: 0.02 }], temperatureKelvin: 298.15, endPoint: 8.2 }) -> 0.059917
 */
export function titratableEquivalents(given: TitrationGiven): Parsed<number> {
  if (!(given.endPoint >= 4 && given.endPoint <= 10)) {
    return refused(
      'outside-range',
      `${given.endPoint} is no end point of a titration`,
      'titrate to pH 8.1 or 8.2',
    );
  }
  let taken = titrated(given, 1);
  for (const times of DILUTED)
    if (!taken.ok && taken.fault.code === 'too-concentrated') taken = titrated(given, times);
  return taken;
}

/** A strong sample is titrated diluted, as at the bench. */
const DILUTED = [10, 100] as const;

function titrated(given: TitrationGiven, times: number): Parsed<number> {
  const components = given.components.map((one) => ({
    ...one,
    molesPerKilogramWater: one.molesPerKilogramWater / times,
  }));
  const { temperatureKelvin } = given;
  const prepared = prepareSolution({ components, temperatureKelvin });
  if (!prepared.ok) return prepared;
  const taken = baseTakenUp(withoutCarbonDioxide(prepared.value), given.endPoint);
  return taken.ok ? parsed(taken.value * times) : taken;
}

function withoutCarbonDioxide(solution: PreparedSolution): PreparedSolution {
  return { ...solution, acids: solution.acids.filter(({ acid }) => acid !== 'carbonic') };
}

/** The charge that is missing at the end point is the sodium to be added; it raises the ionic strength too. */
function baseTakenUp(solution: PreparedSolution, endPoint: number): Parsed<number> {
  let ionicStrength = solution.strongSquares / 2;
  for (let step = 0; step < STRENGTH_STEPS; step += 1) {
    const logActivity: ActivityCoefficients = logActivities({
      ionicStrength,
      debyeHueckelA: solution.debyeHueckelA,
    });
    const balance = chargeAt(solution, endPoint, logActivity);
    const next = balance.ionicStrength + Math.max(0, -balance.charge) / 2;
    if (Math.abs(next - ionicStrength) <= STRENGTH_CLOSE) {
      return parsed(-balance.charge);
    }
    ionicStrength = step < DAMPED_FROM ? next : (next + ionicStrength) / 2;
    if (ionicStrength > 4 * daviesModel.highestIonicStrength) break;
  }
  return refused(
    'too-concentrated',
    `the ionic strength at the end point is ${Number(ionicStrength.toPrecision(3))} mol/kg, more than the activity model covers`,
    'titrate a weaker solution, such as the drink instead of the syrup',
  );
}

/**
 * Grams of an acid that take up as much base.
 *
 * Formula   g/L = mol/L of base times M / protons
 * Input     equivalentsPerLitre of base, the acid's name (citric acid where it is left out)
 * Output    g/L
 * Refuses   an acid without a number of protons titrated
 * Source    molar masses over the protons titrated to pH 8.1 or 8.2
 * Example   acidFromEquivalents({ equivalentsPerLitre: 0.0703 }) -> 4.50208
 */
export function acidFromEquivalents(given: {
  readonly equivalentsPerLitre: number;
  readonly acid?: string;
}): Parsed<number> {
  const name = plainName(given.acid ?? 'citric acid');
  const found = Object.hasOwn(titrationAcids, name) ? titrationAcids[name] : undefined;
  if (found) return parsed((given.equivalentsPerLitre * molarMass(found.formula)) / found.protons);
  return refused(
    'no-acid-data',
    `"${given.acid}" is no acid in which titratable acidity is given`,
    `name one of ${Object.keys(titrationAcids).join(', ')}`,
  );
}

/**
 * From the burette to grams of acid per litre.
 *
 * Formula   g/L = base mol/L times mL used / mL sample, times M / protons
 * Input     baseMolesPerLitre, usedMillilitres, sampleMillilitres, acid (citric acid where it is left out)
 * Output    equivalentsPerLitre, gramsPerLitre
 * Refuses   a sample of nothing; an unknown acid
 * Source    arithmetic
 * Example   acidFromTitration({ baseMolesPerLitre: 0.1, usedMillilitres: 7.8, sampleMillilitres: 10 }) -> { equivalentsPerLitre: 0.078, gramsPerLitre: 4.9952 }
 */
export function acidFromTitration(given: {
  readonly baseMolesPerLitre: number;
  readonly usedMillilitres: number;
  readonly sampleMillilitres: number;
  readonly acid?: string;
}): Parsed<{ readonly equivalentsPerLitre: number; readonly gramsPerLitre: number }> {
  if (!(given.sampleMillilitres > 0)) {
    return refused(
      'no-sample',
      `a sample of ${given.sampleMillilitres} mL holds nothing`,
      'give the mL of drink that were titrated, such as 10 mL',
    );
  }
  const equivalentsPerLitre = (given.baseMolesPerLitre * given.usedMillilitres) / given.sampleMillilitres;
  const { acid } = given;
  const grams = acidFromEquivalents({ equivalentsPerLitre, ...(acid === undefined ? {} : { acid }) });
  return grams.ok ? parsed({ equivalentsPerLitre, gramsPerLitre: grams.value }) : grams;
}
