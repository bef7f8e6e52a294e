import { type Parsed, parsed } from '../../problem.ts';
import { type AcidName, acidSystems } from '../../reference/solution/acid-constants.ts';
import { daviesModel } from '../../reference/solution/activity-model.ts';
import { speciesShares } from './charge-balance.ts';
import { temperatureKnown } from './dissociation.ts';
import { type PreparedSolution, prepareSolution, type SolutionGiven } from './prepare.ts';
import { type SolvedPh, solvePh } from './solve-ph.ts';

/** An acid in the solution, with what has become of its molecules. */
export interface AcidState {
  readonly acid: AcidName;
  /** All of it, mol per kg of water. */
  readonly molality: number;
  /** The same by protons given off: [0] with all of them, [1] one given off, and so on. */
  readonly molalities: readonly number[];
  /** Share with all its protons; what works against microbes in benzoic and sorbic acid. */
  readonly undissociated: number;
}

export interface Equilibrium {
  /** -log10 of the activity of H+, as a meter reads it. */
  readonly ph: number;
  /** mol/kg. */
  readonly ionicStrength: number;
  /** H+ itself, mol/kg. */
  readonly hydrogenMolality: number;
  readonly acids: readonly AcidState[];
  /** Activity coefficients for charges 0 to 4. */
  readonly activityCoefficients: readonly number[];
  /** False above 0.5 mol/kg, where the activity model is carried past its source. */
  readonly withinActivityModel: boolean;
  /** Acids whose change with temperature was not found and is taken as none. */
  readonly temperatureUnknown: readonly AcidName[];
  /** Acids for whose change with temperature a figure is from memory. */
  readonly fromMemory: readonly AcidName[];
}

/**
 * The equilibrium of weak acids, their salts and strong ions in water.
 *
 * Formula   charge balance; mass action with pK(T) and Davies activities; pH = -log10(m(H+) g1)
 * Input     components in mol per kg of the water that is there, temperatureKelvin 273.15 to 350,
 *           partialPressureCarbonDioxidePascal where CO2 stands over it
 * Output    ph, ionicStrength (mol/kg), what each acid has become, activity coefficients, marks
 * Refuses   a substance without acid data, a negative amount, a temperature outside, an ionic strength above 1.5
 * Source    Goldberg and others 2002 and others named with the constants; Davies 1962; Marshall and Franck 1981
 * Accuracy  0.020 of the pH standards from 0 to 50 C; 0.10 of the citrate-phosphate table from 2.2 to 4.2 (0.19
 *           above), 0.07 of citrate, 0.03 of phosphate, 0.05 of acetate buffers; 0.06 of malic acid to 10 %; 0.02 of
 *           carbonated water. No ion pairs: calcium with citrate makes a solution above pH 4 up to 0.05 more acid
 *           than this says. Sugar counts only as the room it takes. In real drinks and juices allow 0.2.
 * Example   solveEquilibrium({ components: [{ substance: 'potassium dihydrogen citrate', molesPerKilogramWater: 0.05 }], temperatureKelvin: 298.15 }) -> { ph: 3.765286, ionicStrength: 0.057194, .. }
 */
export function solveEquilibrium(given: SolutionGiven): Parsed<Equilibrium> {
  const prepared = prepareSolution(given);
  if (!prepared.ok) return prepared;
  const solved = solvePh(prepared.value);
  if (!solved.ok) return solved;
  return parsed(describe(prepared.value, solved.value));
}

function describe(solution: PreparedSolution, solved: SolvedPh): Equilibrium {
  const { ph, ionicStrength, logActivity } = solved;
  const names = solution.acids.map(({ acid }) => acid);
  const fromMemory = (acid: AcidName): boolean => acidSystems[acid].some((step) => 'fromMemory' in step);
  return {
    ph,
    ionicStrength,
    hydrogenMolality: 10 ** (-ph - (logActivity[1] ?? 0)),
    acids: [
      ...solution.acids.map(({ acid, total, pks }) =>
        acidState(acid, total, speciesShares(pks, ph, logActivity)),
      ),
      ...gasState(solution, solved),
    ],
    activityCoefficients: logActivity.map((log) => 10 ** log),
    withinActivityModel: ionicStrength <= daviesModel.trustedIonicStrength,
    temperatureUnknown: names.filter((acid) => !temperatureKnown(acidSystems[acid])),
    fromMemory: names.filter(fromMemory),
  };
}

function acidState(acid: AcidName, molality: number, shares: readonly number[]): AcidState {
  return {
    acid,
    molality,
    molalities: shares.map((share) => share * molality),
    undissociated: shares[0] ?? 0,
  };
}

/** Carbonic acid where the gas over the solution fixes it. */
function gasState(solution: PreparedSolution, { ph, logActivity }: SolvedPh): readonly AcidState[] {
  if (solution.carbonDioxideActivity === 0) return [];
  const shares = speciesShares(solution.carbonicPks, ph, logActivity);
  const dissolved = solution.carbonDioxideActivity / 10 ** (logActivity[0] ?? 0);
  return [acidState('carbonic', dissolved / (shares[0] ?? 1), shares)];
}
