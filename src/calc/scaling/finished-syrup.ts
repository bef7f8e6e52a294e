/** For bottles that are filled with syrup and carbonated water: everything but that water, as one stage. */

import { isWater } from '../density/blend.ts';
import { type BatchItem, type BatchStage, massOf, withMass } from './batch-stages.ts';

export interface FinishedSyrup {
  readonly stages: readonly BatchStage[];
  /** What goes into the bottle before the water. */
  readonly dose: string;
  /** The item of the drink that comes in carbonated, by its name. */
  readonly water: string;
}

const called = 'finished syrup';

/**
 * The drink as a dose and its water.
 *
 * Formula   where the drink has more than one item beside its water, they become a stage of their own
 * Input     stages of masses, the last of them a drink with water
 * Output    the stages; undefined where the drink has no water of its own, or nothing else
 * Example   drink of syrup, stock and water -> finished syrup of syrup and stock; drink of finished syrup and water
 */
export function finishedSyrup(stages: readonly BatchStage[]): FinishedSyrup | undefined {
  const drink = stages.find(({ name }) => name === 'drink');
  const water = drink?.items
    .filter(({ source }) => source.kind === 'ingredient' && isWater(source.entry))
    .toSorted((one, other) => massOf(other) - massOf(one))[0];
  const others = drink?.items.filter((item) => item !== water && massOf(item) > 0) ?? [];
  const [first] = others;
  if (!drink || !water || !first) return undefined;
  if (others.length === 1 && first.source.kind === 'stage')
    return { stages, dose: first.name, water: water.name };
  const name = stages.some((one) => one.name === called) ? `${called} of the drink` : called;
  const dose: BatchItem = {
    ...withMass(
      first,
      others.reduce((sum, item) => sum + massOf(item), 0),
    ),
    name,
    source: { kind: 'stage', stage: name },
    about: { makesUp: false, typed: '', isDrops: false },
  };
  const { role: _, ...plain } = dose;
  const { densityGramsPerMillilitre: measured, ...rest } = drink;
  const bottle: BatchStage = {
    ...rest,
    items: [plain, water],
    ...(measured === undefined ? {} : { densityGramsPerMillilitre: measured }),
  };
  return {
    stages: stages.flatMap((stage) => (stage === drink ? [{ name, items: others }, bottle] : [stage])),
    dose: name,
    water: water.name,
  };
}
