/** What the finished drink is reckoned under: the bench's temperature and water, and the CO2 that is aimed at or measured. */

import type { DrinkConditions } from '../calc/drink/stage-figures.ts';
import type { WaterTraces } from '../calc/drink/water-cautions.ts';
import type { Bound } from '../calc/range.ts';
import { GRAMS_PER_LITRE_OF_A_VOLUME } from '../calc/solution/carbonation.ts';
import { benchDefaults } from './bench-defaults.ts';
import type { BenchCard, FormulaCard, MadeCard, ObservationCard } from './cards.ts';
import { isSameName } from './stage-name.ts';

interface ConditionsFrom {
  readonly bench: BenchCard | undefined;
  readonly card: FormulaCard | MadeCard;
  /** Of a batch: its CO2 is aimed at where it was not measured. */
  readonly formula?: FormulaCard | undefined;
  /** Instead of the bench's. */
  readonly temperatureKelvin?: number | undefined;
}

export function drinkConditions({
  bench,
  card,
  formula,
  temperatureKelvin,
}: ConditionsFrom): DrinkConditions {
  const water = bench?.water;
  const measured = 'observations' in card ? measuredVolumes(card) : undefined;
  const aiming = 'aims' in card ? card : formula;
  const volumes = measured ?? (aiming && aimedVolumes(aiming));
  return {
    temperatureKelvin: temperatureKelvin ?? (bench?.temperature ?? benchDefaults.temperature).inner,
    water: {
      alkalinityMilligramsPerLitre: water?.alkalinity?.inner,
      hardnessMilligramsPerLitre: water?.hardness?.inner,
      sodiumMilligramsPerLitre: milligrams(water?.sodium?.inner),
    },
    carbonDioxideVolumes: volumes,
    isCarbonationMeasured: measured !== undefined,
  };
}

export const waterTraces = (bench: BenchCard | undefined): WaterTraces => ({
  chlorineMilligramsPerLitre: milligrams(bench?.water.chlorine?.inner),
  ironMilligramsPerLitre: milligrams(bench?.water.iron?.inner),
});

/** mg/L of g/mL. */
const milligrams = (inner: number | undefined): number | undefined => inner && inner * 1e6;

/** Observations of samples of the drink, in the order of time; those without a sample belong to the first. */
export function drinkObservations(card: MadeCard): readonly ObservationCard[] {
  const [first] = card.samples;
  return card.observations
    .filter(({ sample }) => {
      const of = sample ? card.samples.find(({ name }) => isSameName(name, sample.text)) : first;
      return of !== undefined && isSameName(of.of, 'drink');
    })
    .sort((left, right) => left.at.epochMilliseconds - right.at.epochMilliseconds);
}

function measuredVolumes(card: MadeCard): number | undefined {
  const last = drinkObservations(card).findLast(({ co2 }) => co2 !== undefined)?.co2;
  return last && volumesOf(last);
}

/** The middle of the aim. */
function aimedVolumes({ aims }: FormulaCard): number | undefined {
  const range = aims.find(({ name }) => name === 'co2')?.range;
  const sides = [range?.exact, range?.low, range?.high].filter((side) => side !== undefined);
  if (sides.length === 0) return undefined;
  return sides.reduce((sum, side) => sum + volumesOf(side), 0) / sides.length;
}

export const volumesOf = ({ dimension, inner }: Pick<Bound, 'dimension' | 'inner'>): number =>
  dimension === 'carbonation' ? inner : (inner * 1000) / GRAMS_PER_LITRE_OF_A_VOLUME;
