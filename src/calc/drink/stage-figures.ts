/** What one stage comes to: sugar, water activity, acidity. */

import type { Parsed } from '../../problem.ts';
import type { ResolvedStage } from '../mixture/picture.ts';
import { type WaterActivity, waterActivity } from '../solution/water-activity.ts';
import { solutionNameOf } from '../solution-portions.ts';
import { type StageAcidity, stageAcidity } from './stage-acidity.ts';
import { type BenchWaterFigures, type StageSolution, stageSolution } from './stage-solution.ts';

export interface DrinkConditions {
  readonly temperatureKelvin: number;
  readonly water: BenchWaterFigures;
  /** In the finished drink. */
  readonly carbonDioxideVolumes?: number | undefined;
  readonly isCarbonationMeasured?: boolean | undefined;
}

export interface StageFigures {
  readonly stage: ResolvedStage;
  /** g of sugar in 100 g. */
  readonly brix: number;
  readonly solution: Parsed<StageSolution>;
  /** Refused where there is no water; acids or not. */
  readonly acidity: Parsed<StageAcidity>;
  /** Whether anything weighed into it moves its pH. */
  readonly hasAcids: boolean;
  readonly waterActivity: Parsed<WaterActivity>;
  /** Dissolved, and left out of the water activity for lack of figures, by name. */
  readonly leftOut: readonly string[];
}

/** The figures of a stage; what a source does not cover stands as its refusal. */
export function stageFigures(stage: ResolvedStage, conditions: DrinkConditions): StageFigures {
  const { temperatureKelvin, water } = conditions;
  const solution = stageSolution({ stage, water, temperatureKelvin });
  const isDrink = stage.name === 'drink';
  const acidity = solution.ok
    ? stageAcidity({
        solution: solution.value,
        temperatureKelvin,
        carbonDioxideVolumes: isDrink ? conditions.carbonDioxideVolumes : undefined,
      })
    : solution;
  const dissolved = stage.substances.filter(({ role, massGrams }) => role !== 'water' && massGrams > 0);
  return {
    stage,
    brix: sugarFraction(stage) * 100,
    solution,
    acidity,
    hasAcids: solution.ok && solution.value.acidsAndSalts.length > 0,
    waterActivity: waterActivity({
      waterGrams: solution.ok ? solution.value.waterGrams : 0,
      substances: dissolved.flatMap(({ entry, massGrams }) => {
        const substance = solutionNameOf(entry);
        return substance === undefined ? [] : [{ substance, grams: massGrams }];
      }),
      temperatureKelvin,
    }),
    leftOut: dissolved
      .filter(({ entry, massFraction }) => solutionNameOf(entry) === undefined && massFraction > 0.01)
      .map(({ name }) => name),
  };
}

/** g of sugar in a g. */
export const sugarFraction = (stage: ResolvedStage): number =>
  stage.substances.filter(({ role }) => role === 'sugar').reduce((sum, one) => sum + one.massFraction, 0);
