/** Salts that form from ions of different items: potassium with tartrate, the calcium of the water with citrate. */

import { saltSolubility } from '../../reference/solubility.ts';
import type { IonName } from '../../reference/solution/ions.ts';
import { type Equilibrium, solveEquilibrium } from '../solution/equilibrium.ts';
import { molarMass } from '../solution/molar-mass.ts';
import type { Component } from '../solution/prepare.ts';
import { acidSubstance, gramsPerMole } from '../solution/substance.ts';
import { solubilityAt } from './solubility-at.ts';
import type { DrinkConditions, StageFigures } from './stage-figures.ts';

export interface SparingSalt {
  readonly salt: string;
  /** How many times as much stands in solution as does over its crystals; it falls out above 1. */
  readonly times: number;
  readonly known: 'at' | 'at most' | 'at least';
  readonly celsius: number;
  readonly source: string;
  readonly fromMemory: boolean;
}

type SaltName = keyof typeof saltSolubility;

interface Ions {
  readonly metal: IonName;
  readonly metals: number;
  readonly metalCharge: number;
  readonly acid: 'tartaric' | 'citric';
  /** Protons given off in the ion that crystallises, which is its charge too. */
  readonly charge: number;
  readonly anions: number;
}

const ionsOf: Readonly<Record<SaltName, Ions>> = {
  'potassium hydrogen tartrate': {
    metal: 'potassium',
    metals: 1,
    metalCharge: 1,
    acid: 'tartaric',
    charge: 1,
    anions: 1,
  },
  'calcium citrate tetrahydrate': {
    metal: 'calcium',
    metals: 3,
    metalCharge: 2,
    acid: 'citric',
    charge: 3,
    anions: 2,
  },
};

/**
 * Formula   (ion product / that of the saturated solution of the salt)^(1/ions), activities by the same model
 * Input     figures of a stage; temperature and water of the bench
 * Output    for each salt whose ions are both there, how many times its saturation
 * Source    solubilities from memory; no ion pairs on either side
 */
export function sparingSalts(figures: StageFigures, conditions: DrinkConditions): readonly SparingSalt[] {
  const { acidity } = figures;
  if (!acidity.ok) return [];
  const celsius = Number((conditions.temperatureKelvin - 273.15).toFixed(9));
  return saltNames.flatMap((salt) => {
    const metal = metalMolality(figures, ionsOf[salt].metal, conditions);
    const here = logProduct(acidity.value, metal, ionsOf[salt]);
    const table = saltSolubility[salt];
    const { gramsPerLitre, ...holds } = solubilityAt(table, celsius);
    const saturated = saturatedProduct(salt, gramsPerLitre, conditions.temperatureKelvin);
    if (here === undefined || saturated === undefined) return [];
    const { metals, anions } = ionsOf[salt];
    const times = Math.exp((here - saturated) / (metals + anions));
    return [{ ...holds, salt: saltWords[salt], times, source: table.source }];
  });
}

const saltNames: readonly SaltName[] = ['potassium hydrogen tartrate', 'calcium citrate tetrahydrate'];
const saltWords: Readonly<Record<SaltName, string>> = {
  'potassium hydrogen tartrate': 'potassium hydrogen tartrate',
  'calcium citrate tetrahydrate': 'calcium citrate',
};

function saturatedProduct(
  salt: SaltName,
  gramsPerLitre: number,
  temperatureKelvin: number,
): number | undefined {
  const molesPerKilogramWater = gramsPerLitre / (gramsPerMole(salt) ?? 1);
  const alone = solveEquilibrium({
    components: [{ substance: salt, molesPerKilogramWater }],
    temperatureKelvin,
  });
  return alone.ok
    ? logProduct(alone.value, molesPerKilogramWater * ionsOf[salt].metals, ionsOf[salt])
    : undefined;
}

function logProduct(state: Equilibrium, metal: number, ions: Ions): number | undefined {
  const acid = state.acids.find((one) => one.acid === ions.acid);
  const anion = acid?.molalities[ions.charge] ?? 0;
  if (!(metal > 0 && anion > 0)) return undefined;
  const active = (molality: number, charge: number): number =>
    Math.log(molality * (state.activityCoefficients[charge] ?? 1));
  return ions.metals * active(metal, ions.metalCharge) + ions.anions * active(anion, ions.charge);
}

/** mol/kg of water; all hardness is taken as calcium, and where it is not known the alkalinity stands for it. */
function metalMolality({ solution }: StageFigures, metal: IonName, { water }: DrinkConditions): number {
  if (!solution.ok) return 0;
  const { components, alkalineMoles, benchWaterLitres, waterGrams } = solution.value;
  const own = components.slice(0, alkalineMoles > 0 ? -1 : undefined);
  const weighed = own.reduce((sum, one) => sum + ionsIn(one, metal), 0);
  const hardness = water.hardnessMilligramsPerLitre;
  const hard =
    hardness === undefined ? alkalineMoles : (hardness / 1000 / molarMass('CaCO3')) * benchWaterLitres;
  return weighed + (metal === 'calcium' ? (hard * 1000) / waterGrams : 0);
}

function ionsIn({ substance, molesPerKilogramWater }: Component, metal: IonName): number {
  const found = acidSubstance(substance);
  return found.ok ? (found.value.ions[metal] ?? 0) * molesPerKilogramWater : 0;
}
