import { type Parsed, parsed, refused } from '../../problem.ts';
import {
  type AcidSubstance,
  acidSubstanceAliases,
  acidSubstanceByName,
} from '../../reference/solution/acid-systems.ts';
import { neutralAliases, neutralSubstances } from '../../reference/solution/volumes.ts';
import { molarMass } from './molar-mass.ts';

/** A name as it is compared: folded, single spaces. */
export function plainName(name: string): string {
  return name.normalize('NFC').trim().replaceAll(/\s+/g, ' ').toLowerCase();
}

export type NeutralName = keyof typeof neutralSubstances;

function isNeutralName(name: string): name is NeutralName {
  return Object.hasOwn(neutralSubstances, name);
}

/** The canonical name of an acid, salt or base, or nothing. */
export function acidSubstanceName(name: string): string | undefined {
  const plain = plainName(name);
  const canonical = Object.hasOwn(acidSubstanceAliases, plain) ? acidSubstanceAliases[plain] : plain;
  return canonical !== undefined && Object.hasOwn(acidSubstanceByName, canonical) ? canonical : undefined;
}

/** The canonical name of a sugar or another substance that leaves the pH alone, or nothing. */
export function neutralName(name: string): NeutralName | undefined {
  const plain = plainName(name);
  const canonical = Object.hasOwn(neutralAliases, plain) ? neutralAliases[plain] : plain;
  return canonical !== undefined && isNeutralName(canonical) ? canonical : undefined;
}

/**
 * What a name gives to the water.
 *
 * Input     a plain trade name, such as `citric acid monohydrate` or `potassium sorbate`
 * Output    formula, acids, ions
 * Refuses   a name without acid data
 * Example   acidSubstance('potassium sorbate') -> { formula: 'KC6H7O2', acids: { sorbic: 1 }, ions: { potassium: 1 } }
 */
export function acidSubstance(name: string): Parsed<AcidSubstance> {
  const canonical = acidSubstanceName(name);
  const found = canonical === undefined ? undefined : acidSubstanceByName[canonical];
  if (found) return parsed(found);
  return refused(
    'no-acid-data',
    `there is no acid data for "${name}"`,
    'name an acid, a salt or a base that is known, such as citric acid, trisodium citrate dihydrate or potassium sorbate, or leave it out',
  );
}

/** Grams of a substance as it is bought that hold one mole of its formula, or nothing where the name is unknown. */
export function gramsPerMole(name: string): number | undefined {
  const canonical = acidSubstanceName(name);
  const acid = canonical === undefined ? undefined : acidSubstanceByName[canonical];
  if (acid) return molarMass(acid.formula) / (acid.strength ?? 1);
  const neutral = neutralName(name);
  return neutral === undefined ? undefined : molarMass(neutralSubstances[neutral].formula);
}
