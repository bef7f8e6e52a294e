/** What the bands are about: how much of it a substance counts for, and in which unit. */

import { citricAcidEquivalents, citricAcidMolarMass } from '../../reference/citric-acid.ts';
import type { Figure } from '../../reference/ingredient.ts';
import {
  activeInAntifoamEmulsion,
  type BandName,
  quinineBase,
  type UsualBand,
  usualBands,
} from '../../reference/usual-bands.ts';
import { type Held, isLike } from './item-substances.ts';

export interface DrinkFigure {
  readonly name: Exclude<BandName, 'co2'>;
  readonly band: UsualBand;
  /** g that count, of the g that are there. */
  readonly gramsOf: (held: Held) => number;
}

const byRole =
  (role: Held['role']) =>
  (held: Held): number =>
    held.role === role ? held.massGrams : 0;

const byName =
  (name: string) =>
  ({ entry, massGrams }: Held): number =>
    isLike(entry, name) ? massGrams : 0;

/** g of anhydrous citric acid that titrates alike; the mass itself where the record has no figures. */
function asCitric({ entry, role, massGrams }: Held): number {
  if (role !== 'acid') return 0;
  const { 'molar mass': molarMass, 'acid equivalents': equivalents } = entry.record.figures;
  return massGrams * equivalentsOf(molarMass, equivalents);
}

const equivalentsOf = (molarMass: Figure | undefined, equivalents: Figure | undefined): number =>
  molarMass && equivalents
    ? ((equivalents.value / molarMass.value) * citricAcidMolarMass.value) / citricAcidEquivalents.value
    : 1;

const activeAntifoam = ({ entry, role, massGrams }: Held): number => {
  if (role !== 'antifoam') return 0;
  return massGrams * (isLike(entry, 'antifoam emulsion') ? activeInAntifoamEmulsion.value : 1);
};

const asQuinine = ({ entry, massGrams }: Held): number => {
  const known = Object.entries(quinineBase).find(([name]) => isLike(entry, name));
  return massGrams * (known?.[1] ?? 0);
};

const figure = (name: DrinkFigure['name'], gramsOf: DrinkFigure['gramsOf']): DrinkFigure => ({
  name,
  band: usualBands[name],
  gramsOf,
});

export const drinkFigures: readonly DrinkFigure[] = [
  figure('flavour-oil', byRole('oil')),
  figure('acid', asCitric),
  figure('sugar', byRole('sugar')),
  figure('propylene-glycol', byName('propylene glycol')),
  figure('antifoam', activeAntifoam),
  figure('caffeine', byName('caffeine')),
  figure('quinine', asQuinine),
];

/** The figure in the unit of its band, of so many grams in a stage. */
export function inBandUnit(
  grams: number,
  unit: UsualBand['unit'],
  stage: { readonly massGrams: number; readonly volumeMillilitres: number },
): number {
  if (unit === 'mg/kg') return (grams / stage.massGrams) * 1e6;
  const gramsPerLitre = (grams / stage.volumeMillilitres) * 1000;
  return unit === 'mg/L' ? gramsPerLitre * 1000 : gramsPerLitre;
}
