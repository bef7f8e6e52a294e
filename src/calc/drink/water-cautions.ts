/** What the bench's own water does to a drink. */

import { softDrinkWater } from '../../reference/drink-water.ts';
import type { Caution } from '../answer.ts';
import { numberText, trimmedNumber } from '../number-text.ts';
import type { FinishedDrink } from './finished-drink.ts';

/** mg/L in the bench's water. */
export interface WaterTraces {
  readonly chlorineMilligramsPerLitre?: number | undefined;
  readonly ironMilligramsPerLitre?: number | undefined;
}

/** Alkalinity, hardness, chlorine and iron, each where it is worth a word; none where no bench water is in the drink. */
export function waterCautions(drink: FinishedDrink, traces: WaterTraces): readonly Caution[] {
  if (drink.solution.benchWaterLitres <= 0) return [];
  const { chlorineMilligramsPerLitre: chlorine = 0, ironMilligramsPerLitre: iron = 0 } = traces;
  const hardness = drink.conditions.water.hardnessMilligramsPerLitre ?? 0;
  const cautions: Caution[] = [];
  const say = (code: string, text: string, source: string): void =>
    void cautions.push({ code, text, source });
  const eaten = drink.acidity?.eatenAsCitric ?? 0;
  if (eaten > 0)
    say(
      'alkalinity',
      `The alkalinity of the water takes ${numberText(eaten, 2)} g/L of the acid, as citric; deionised water takes none.`,
      'arithmetic',
    );
  if (hardness > softDrinkWater.hardness.value)
    say(
      'hard-water',
      `Hardness ${trimmedNumber(hardness, 3)} mg/L as CaCO3, where the trade aims at ${softDrinkWater.hardness.value}: look for a haze of calcium citrate or phosphate.`,
      softDrinkWater.hardness.source,
    );
  if (chlorine > 0)
    say(
      'chlorine',
      `The water carries ${trimmedNumber(chlorine, 3)} mg/L of chlorine: it taints with phenols and takes thiols and esters. Carbon filtration removes it.`,
      softDrinkWater.chlorine.source,
    );
  if (iron > softDrinkWater.iron.value)
    say(
      'iron',
      `The water carries ${trimmedNumber(iron, 3)} mg/L of iron, where the trade aims at ${softDrinkWater.iron.value}: it speeds the loss of aroma and colour.`,
      softDrinkWater.iron.source,
    );
  return cautions;
}
