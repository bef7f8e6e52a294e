/** The finished drink in figures, and the stages that it is made of. */

import { type Parsed, parsed, refused } from '../../problem.ts';
import type { Mixture, ResolvedStage } from '../mixture/picture.ts';
import { acidCorrectedBrix } from '../solution/refractometer.ts';
import { sucroseViscosityAt } from '../solution/sugar-limits.ts';
import { type Nutrition, nutritionOf } from './nutrition.ts';
import type { StageAcidity } from './stage-acidity.ts';
import { type DrinkConditions, type StageFigures, stageFigures } from './stage-figures.ts';
import type { StageSolution } from './stage-solution.ts';
import { type SweetnessRange, sweetnessRange } from './sweetness-range.ts';

export interface FinishedDrink {
  readonly stage: ResolvedStage;
  /** In the order in which they are made, the drink among them. */
  readonly stages: readonly StageFigures[];
  readonly solution: StageSolution;
  /** Absent where nothing in it moves the pH. */
  readonly acidity: StageAcidity | undefined;
  /** g of sugar in 100 g. */
  readonly brix: number;
  /** What a refractometer shows, the acid taken for part of a sugar. */
  readonly refractometerBrix: number | undefined;
  /** Brix over % of acid as citric, by mass; absent without acid or sugar. */
  readonly brixAcidRatio: number | undefined;
  readonly densityGramsPerMillilitre: number;
  readonly litres: number;
  readonly waterActivity: number | undefined;
  readonly viscosityMillipascalSeconds: number | undefined;
  readonly sweetness: SweetnessRange;
  readonly nutrition: Nutrition;
  readonly conditions: DrinkConditions;
  /** True where the CO2 was measured, and not only aimed at. */
  readonly measuredCarbonation: boolean;
}

/**
 * The finished drink.
 *
 * Formula   as named with each figure
 * Input     a resolved mixture; temperatureKelvin, the bench's water, volumes of CO2
 * Output    figures of the drink and of every stage
 * Refuses   a mixture without a stage named drink; a drink whose acids or temperature a source does not cover
 * Accuracy  pH 0.2 in a real drink; the rest as its own calculation says
 */
export function finishedDrink(mixture: Mixture, conditions: DrinkConditions): Parsed<FinishedDrink> {
  const { drink } = mixture;
  if (!drink) {
    return refused(
      'no-drink',
      'there is no stage named drink',
      'give the stage that is drunk the name drink, or add one that uses the emulsion and the syrup',
    );
  }
  const stages = mixture.stages.map((stage) => stageFigures(stage, conditions));
  const figures = stages.find(({ stage }) => stage === drink) ?? stageFigures(drink, conditions);
  if (!figures.solution.ok) return figures.solution;
  if (!figures.acidity.ok) return figures.acidity;
  const acidity = figures.hasAcids ? figures.acidity.value : undefined;
  const { brix } = figures;
  const density = drink.densityGramsPerMillilitre;
  const acidPercent = (acidity?.titratableAsCitric ?? 0) / density / 10;
  const viscosity = sucroseViscosityAt({
    massFraction: brix / 100,
    temperatureKelvin: conditions.temperatureKelvin,
  });
  return parsed({
    stage: drink,
    stages,
    solution: figures.solution.value,
    acidity,
    brix,
    refractometerBrix: shownBrix(brix, acidPercent),
    brixAcidRatio: brix > 0 && acidPercent > 0 ? brix / acidPercent : undefined,
    densityGramsPerMillilitre: density,
    litres: drink.volumeMillilitres / 1000,
    waterActivity: figures.waterActivity.ok ? figures.waterActivity.value.waterActivity : undefined,
    viscosityMillipascalSeconds: viscosity.ok ? viscosity.value : undefined,
    sweetness: sweetnessRange(drink),
    nutrition: nutritionOf({
      stage: drink,
      benchWaterLitres: figures.solution.value.benchWaterLitres,
      water: conditions.water,
    }),
    conditions,
    measuredCarbonation: conditions.isCarbonationMeasured ?? false,
  });
}

/**
 * Sugar and acid by mass, less the part of the acid that a refractometer does not see: the correction of a reading
 * for its acid adds that part back.
 */
function shownBrix(brix: number, citricPercent: number): number | undefined {
  if (citricPercent < 0) return undefined;
  const corrected = acidCorrectedBrix({ brix: 0, citricPercent });
  return corrected.ok ? brix + citricPercent - corrected.value : undefined;
}
