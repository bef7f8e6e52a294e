import { type Parsed, parsed } from '../../problem.ts';
import { atomicWeights } from '../../reference/solution/ions.ts';
import { dissolve, type Litre, type Portion } from './dissolve.ts';
import { type Equilibrium, solveEquilibrium } from './equilibrium.ts';
import { sournessOf } from './sourness.ts';
import { acidSubstance, gramsPerMole } from './substance.ts';
import { acidFromEquivalents, titratableEquivalents } from './titration.ts';

export interface DrinkGiven {
  readonly portions: readonly Portion[];
  readonly temperatureKelvin: number;
  readonly partialPressureCarbonDioxidePascal?: number;
  /** 8.2 where it is left out. */
  readonly endPoint?: number;
  /** The acid in which titratable acidity is given; citric acid where it is left out. */
  readonly asAcid?: string;
}

export interface DrinkAcidity extends Equilibrium {
  readonly litre: Litre;
  /** mol of base per litre up to the end point. */
  readonly equivalentsPerLitre: number;
  /** g/L in the acid asked for. */
  readonly titratable: number;
  /** g/L as anhydrous citric acid. */
  readonly titratableAsCitric: number;
  /** mol/L of acid molecules with a proton to give, and of H+. */
  readonly sourness: number;
  readonly sodiumMilligramsPer100Millilitres: number;
}

/**
 * How acid a drink is: pH, titratable acidity, sourness and sodium, from what a litre holds.
 *
 * Input     portions in mol/kg of water, mol/L, g/L or as mass fraction; temperatureKelvin; partial pressure of CO2
 * Output    the equilibrium with titratable acidity in g/L
 * Refuses   as `dissolve`, `solveEquilibrium` and `titratableEquivalents` do
 * Source    as named there
 * Accuracy  allow 0.2 of pH in real drinks and juices, whose own buffers are never all known
 * Example   drinkAcidity({ portions: [{ substance: 'citric acid', amount: { unit: 'g/L', value: 4.5 } }], temperatureKelvin: 298.15 }) -> { ph: 2.416695, titratableAsCitric: 4.49414, .. }
 */
export function drinkAcidity(given: DrinkGiven): Parsed<DrinkAcidity> {
  const litre = dissolve(given);
  if (!litre.ok) return litre;
  const { components, waterKilograms } = litre.value;
  const solution = { ...given, components };
  const equilibrium = solveEquilibrium(solution);
  if (!equilibrium.ok) return equilibrium;
  const base = titratableEquivalents({ ...solution, endPoint: given.endPoint ?? 8.2 });
  if (!base.ok) return base;
  const equivalentsPerLitre = base.value * waterKilograms;
  const citric = acidFromEquivalents({ equivalentsPerLitre });
  if (!citric.ok) return citric;
  const asked = acidFromEquivalents({ equivalentsPerLitre, acid: given.asAcid ?? 'citric acid' });
  if (!asked.ok) return asked;
  return parsed({
    ...equilibrium.value,
    litre: litre.value,
    equivalentsPerLitre,
    titratable: asked.value,
    titratableAsCitric: citric.value,
    sourness: sournessOf(equilibrium.value) * waterKilograms,
    sodiumMilligramsPer100Millilitres: sodiumMilligrams(litre.value) / 10,
  });
}

/** mg of sodium in a litre. */
function sodiumMilligrams({ grams }: Litre): number {
  let moles = 0;
  for (const { substance, grams: each } of grams) {
    const found = acidSubstance(substance);
    if (found.ok) moles += ((found.value.ions.sodium ?? 0) * each) / (gramsPerMole(substance) ?? 1);
  }
  return moles * (atomicWeights['Na'] ?? 0) * 1000;
}
