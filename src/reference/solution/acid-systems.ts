/**
 * What each acid and salt gives to the water: molecules of an acid (with all its protons, some of them replaced by
 * the ions) and ions. A bare base gives its metal alone: the charge balance finds the hydroxide. Hydrates carry their water in the formula.
 */
import type { AcidName } from './acid-constants.ts';
import { acidSubstances } from './acid-substances.ts';
import type { IonName } from './ions.ts';
import { saltSubstances } from './salt-substances.ts';
import { standardAliases, standardSubstances } from './standard-substances.ts';

export interface AcidSubstance {
  readonly formula: string;
  readonly acids: Readonly<Partial<Record<AcidName, number>>>;
  readonly ions: Readonly<Partial<Record<IonName, number>>>;
  /** The share by mass of a commercial liquid that is the formula; the rest is water. */
  readonly strength?: number;
  /** Known for the pH standards alone; nothing to drink. */
  readonly standardOnly?: true;
}

export type AcidSubstances = Readonly<Record<string, AcidSubstance>>;

export const acidSubstanceByName: AcidSubstances = {
  ...acidSubstances,
  ...saltSubstances,
  ...standardSubstances,
};

/** Other words for the same thing, as the trade uses them. A bare `sodium citrate` is the dihydrate. */
export const acidSubstanceAliases: Readonly<Record<string, string>> = {
  'citric acid anhydrous': 'citric acid',
  'anhydrous citric acid': 'citric acid',
  'sodium citrate': 'trisodium citrate dihydrate',
  'sodium citrate dihydrate': 'trisodium citrate dihydrate',
  'trisodium citrate anhydrous': 'trisodium citrate',
  'anhydrous trisodium citrate': 'trisodium citrate',
  'potassium citrate': 'tripotassium citrate monohydrate',
  'tripotassium citrate anhydrous': 'tripotassium citrate',
  'monosodium citrate': 'sodium dihydrogen citrate',
  'monopotassium citrate': 'potassium dihydrogen citrate',
  'dl-malic acid': 'malic acid',
  'l-malic acid': 'malic acid',
  'l-tartaric acid': 'tartaric acid',
  'l-(+)-tartaric acid': 'tartaric acid',
  'l(+)-tartaric acid': 'tartaric acid',
  'l-lactic acid': 'lactic acid',
  'dl-lactic acid': 'lactic acid',
  'l-ascorbic acid': 'ascorbic acid',
  'vitamin c': 'ascorbic acid',
  'orthophosphoric acid': 'phosphoric acid',
  'cream of tartar': 'potassium hydrogen tartrate',
  'potassium bitartrate': 'potassium hydrogen tartrate',
  'monosodium phosphate': 'sodium dihydrogen phosphate',
  'disodium phosphate': 'disodium hydrogen phosphate',
  'monopotassium phosphate': 'potassium dihydrogen phosphate',
  'dipotassium phosphate': 'dipotassium hydrogen phosphate',
  'monocalcium phosphate': 'calcium dihydrogen phosphate',
  'sodium hydrogen carbonate': 'sodium bicarbonate',
  'baking soda': 'sodium bicarbonate',
  'bicarbonate of soda': 'sodium bicarbonate',
  'potassium hydrogen carbonate': 'potassium bicarbonate',
  'calcium hydrogen carbonate': 'calcium bicarbonate',
  'sodium carbonate anhydrous': 'sodium carbonate',
  co2: 'carbon dioxide',
  salt: 'sodium chloride',
  'table salt': 'sodium chloride',
  ...standardAliases,
};
