/** What follows from a recipe, figure by figure, so that two can be laid beside each other. */

import type { FigureName } from '../../reference/ingredient.ts';
import { alcoholByVolume } from '../drink/alcohol.ts';
import type { FinishedDrink } from '../drink/finished-drink.ts';
import type { NamedItem } from '../item-fields.ts';
import { meetingStage } from '../mixture/meeting-stage.ts';
import type { Mixture } from '../mixture/picture.ts';

export interface Property {
  readonly key: string;
  readonly label: string;
  readonly unit: string;
  readonly value: number | undefined;
  /** Significant figures that it is worth. */
  readonly digits: number;
}

/**
 * The figures of a mixture and of its finished drink.
 *
 * Input     a resolved mixture; its finished drink, where there is one that could be reckoned
 * Output    one entry a figure, in a fixed order; `value` undefined where it does not exist
 */
export function propertiesOf(mixture: Mixture, drink: FinishedDrink | undefined): readonly Property[] {
  return [...emulsionProperties(mixture), ...drinkProperties(drink), ...oilProperties(mixture)];
}

function emulsionProperties(mixture: Mixture): readonly Property[] {
  const meeting = meetingStage(mixture);
  const ratio = meeting && meeting.oilGrams / meeting.emulsifierGrams;
  return [
    property('requiredHlb', 'required HLB', '', meeting && blended(meeting.oils, 'required hlb'), 4),
    property('blendedHlb', 'blended HLB', '', meeting && blended(meeting.emulsifiers, 'hlb'), 4),
    property('oilPerEmulsifier', 'oil to a part of emulsifier', '', ratio, 4),
    property('emulsifierPerOil', 'emulsifier to a part of oil', '', ratio && 1 / ratio, 4),
  ];
}

function drinkProperties(drink: FinishedDrink | undefined): readonly Property[] {
  const alcohol = drink && alcoholByVolume(drink.stage) * 100;
  return [
    property('ph', 'pH', '', drink?.acidity?.ph, 3),
    property('acid', 'acid, as citric', 'g/L', drink?.acidity?.titratableAsCitric, 3),
    property('brix', 'Brix', '', drink?.brix, 4),
    property('density', 'density', 'g/mL', drink?.densityGramsPerMillilitre, 5),
    property('waterActivity', 'water activity', '', drink?.waterActivity, 4),
    property('sweetness', 'as sweet as sucrose at', 'g/100 mL', drink?.sweetness.low, 3),
    property('energy', 'energy', 'kJ/100 mL', drink?.nutrition.kilojoules, 3),
    property('sodium', 'sodium', 'mg/100 mL', drink?.nutrition.sodiumMilligrams, 3),
    property('alcohol', 'alcohol', '% v/v', alcohol === 0 ? undefined : alcohol, 2),
    property('carbonation', 'CO2', 'vol', drink?.conditions.carbonDioxideVolumes, 3),
  ];
}

function oilProperties({ drink }: Mixture): readonly Property[] {
  const of = (role: 'oil' | 'emulsifier'): number | undefined => {
    const all = drink?.substances.filter((one) => one.role === role) ?? [];
    return all.length === 0 ? undefined : all.reduce((sum, one) => sum + one.gramsPerLitre * 1000, 0);
  };
  return [
    property('oil', 'oil in the drink', 'mg/L', of('oil'), 3),
    property('emulsifier', 'emulsifier in the drink', 'mg/L', of('emulsifier'), 3),
  ];
}

const property = (
  key: string,
  label: string,
  unit: string,
  value: number | undefined,
  digits: number,
): Property => ({ key, label, unit, value, digits });

/** By mass; undefined where one of them has no such figure, or is a polymer. */
function blended(items: readonly NamedItem[], name: FigureName): number | undefined {
  let [mass, sum] = [0, 0];
  for (const { entry, quantity } of items) {
    const figure = entry?.record.figures[name]?.value;
    if (figure === undefined || (name === 'hlb' && entry?.record.polymer)) return undefined;
    mass += quantity?.inner ?? 0;
    sum += (quantity?.inner ?? 0) * figure;
  }
  return mass > 0 ? sum / mass : undefined;
}
