/** The recipe of a stock that a batch weighs in: as little as is needed and can still be weighed. */

import type { Chain } from '../dilution/chain.ts';
import { type WeighingBench, weighingFor } from './weighing-choice.ts';

export interface StockStep {
  readonly take: string;
  readonly takeGrams: number;
  readonly takeDivisionGrams: number;
  readonly solventGrams: number;
  readonly solventDivisionGrams: number;
  /** g of the item in a g after the step. */
  readonly strength: number;
}

/** What is made of a stock beyond what is weighed in. */
const spare = 1.1;

interface RecipeFor {
  readonly of: string;
  readonly neededGrams: number;
  readonly bench: WeighingBench;
}

/** The steps of the chain, as large as is needed; a single step no larger than that, where it can still be weighed. */
export function recipeFor(
  steps: Chain['steps'],
  { of, neededGrams, bench }: RecipeFor,
): readonly StockStep[] {
  const last = steps.at(-1);
  const stockGrams = last ? last.takeMassGrams + last.solventMassGrams : 1;
  const times = Math.max(1, Math.ceil((neededGrams / stockGrams) * (1 - 1e-12)));
  const [only] = steps;
  const small = steps.length === 1 && only ? smallStep(only, { neededGrams, bench }) : undefined;
  if (small) return [{ take: of, ...small }];
  return steps.map((step, at) => ({
    take: at === 0 ? of : 'the stock before',
    takeGrams: step.takeMassGrams * times,
    takeDivisionGrams: step.takeDivisionGrams,
    solventGrams: step.solventMassGrams * times,
    solventDivisionGrams: step.solventDivisionGrams,
    strength: step.strength,
  }));
}

/** The least handy take, twice what can just be weighed, of which there is enough. */
function smallStep(
  { strength, takeMassGrams }: Chain['steps'][number],
  { neededGrams, bench }: Omit<RecipeFor, 'of'>,
): Omit<StockStep, 'take'> | undefined {
  for (let decade = 1e-6; decade <= takeMassGrams; decade *= 10)
    for (const digit of [1, 2, 5]) {
      const take = Number((digit * decade).toPrecision(3));
      if (take >= takeMassGrams || take / strength < neededGrams * spare) continue;
      const solvent = take / strength - take;
      const [one, other] = [take, solvent].map((grams) => weighingFor(grams, grams, bench));
      if (!one || !other || one.relativeError > bench.weighing / 2 || other.isTooSmall) continue;
      const isWhole = [take / one.scale.divisionGrams, solvent / other.scale.divisionGrams].every(
        (steps) => Math.abs(steps - Math.round(steps)) < 1e-6,
      );
      if (one.portions > 1 || !isWhole) continue;
      return {
        takeGrams: take,
        takeDivisionGrams: one.scale.divisionGrams,
        solventGrams: solvent,
        solventDivisionGrams: other.scale.divisionGrams,
        strength,
      };
    }
  return undefined;
}
