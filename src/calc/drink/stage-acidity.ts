import { type Parsed, parsed } from '../../problem.ts';
import { gasMolarVolume } from '../../reference/solution/carbon-dioxide.ts';
import { type Equilibrium, solveEquilibrium } from '../solution/equilibrium.ts';
import { molarMass } from '../solution/molar-mass.ts';
import { acidFromEquivalents, titratableEquivalents } from '../solution/titration.ts';
import type { StageSolution } from './stage-solution.ts';

/** The end point of the titration, as it is named with the acidity. */
export const titratedToPh = 8.2;

export interface StageAcidity extends Equilibrium {
  /** g/L as anhydrous citric acid, of a sample without CO2. */
  readonly titratableAsCitric: number;
  /** g/L of citric acid that the alkalinity of the bench's water takes. */
  readonly eatenAsCitric: number;
}

/**
 * How acid a stage is.
 *
 * Formula   charge balance on the water that is there; titratable acidity = base up to pH 8.2
 * Input     the solution; temperatureKelvin; volumes of CO2 in it
 * Output    the equilibrium; titratable acidity and what the alkalinity eats, g/L as citric acid
 * Refuses   as `solveEquilibrium` and `titratableEquivalents` do
 * Source    as named there
 */
export function stageAcidity(given: {
  readonly solution: StageSolution;
  readonly temperatureKelvin: number;
  readonly carbonDioxideVolumes?: number | undefined;
}): Parsed<StageAcidity> {
  const { solution, temperatureKelvin, carbonDioxideVolumes = 0 } = given;
  const { components, litres, waterGrams } = solution;
  const kilogramsPerLitre = waterGrams / 1000 / litres;
  const gas = {
    substance: 'carbon dioxide',
    molesPerKilogramWater: carbonDioxideVolumes / gasMolarVolume.value / kilogramsPerLitre,
  };
  const equilibrium = solveEquilibrium({
    components: carbonDioxideVolumes > 0 ? [...components, gas] : components,
    temperatureKelvin,
  });
  if (!equilibrium.ok) return equilibrium;
  const base = titratableEquivalents({ components, temperatureKelvin, endPoint: titratedToPh });
  if (!base.ok) return base;
  const titratable = acidFromEquivalents({ equivalentsPerLitre: base.value * kilogramsPerLitre });
  if (!titratable.ok) return titratable;
  return parsed({
    ...equilibrium.value,
    titratableAsCitric: titratable.value,
    eatenAsCitric: eaten(solution),
  });
}

/** Two bicarbonates to a calcium, three protons to a citric acid. */
const eaten = ({ alkalineMoles, litres }: StageSolution): number =>
  ((alkalineMoles * 2) / 3 / litres) * molarMass('C6H8O7');
