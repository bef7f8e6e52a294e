/** The tank of a batch or a trial: what should be in it, what was read of it, and the one slip that explains a difference. */

import type { Book } from '../calc/book.ts';
import {
  type TankItem,
  type TankReadings,
  tankItems,
  tankReadings,
  tankStage,
} from '../calc/correction/tank.ts';
import { compareReadings, type Readings, slipThatExplains } from '../calc/drink/measured.ts';
import type { DrinkConditions } from '../calc/drink/stage-figures.ts';
import type { Mixture, ResolvedStage } from '../calc/mixture/picture.ts';
import type { MadeCard, StageCard } from '../ledger/cards.ts';
import { problemAt } from '../ledger/places.ts';
import { makeSources, resolveStages } from '../ledger/resolve.ts';
import { openTrialsUsedBy } from '../ledger/single-trial.ts';
import { isSameName } from '../ledger/stage-name.ts';
import { fail, type Problem, ProblemError } from '../problem.ts';
import type { ItemSlip, MeasuredDrink } from './drink-measured.ts';
import type { OpenedMade } from './open-batch.ts';
import type { Here } from './open-ledger.ts';

export interface MadeMixture {
  /** As weighed where weighed. */
  readonly mixture: Mixture;
  /** By the plan alone. */
  readonly planned: Mixture;
  readonly warnings: readonly Problem[];
}

/** What a batch or trial came to, and what it should have. */
export async function mixtureOfMade(here: Here, made: OpenedMade, book: Book): Promise<MadeMixture> {
  const { card } = made;
  const used = await openTrialsUsedBy(here, card);
  const solved = (stages: readonly StageCard[]) => {
    // Not remembered between the two: both are stages of the same file.
    const sources = makeSources({ book, bench: here.bench, trialOf: (number) => used.get(number)?.card });
    const number = card.kind === 'trial' ? card.number : undefined;
    return resolveStages({ stages, made: card.made, number }, sources);
  };
  const real = solved(card.stages);
  const problems = real.found.map(({ finding, span }) => problemAt(made.document.source, finding, span));
  const plan = solved(card.stages.map(unweighed));
  if (!real.mixture || !plan.mixture) throw new ProblemError(problems);
  return { mixture: real.mixture, planned: plan.mixture, warnings: problems };
}

const unweighed = (stage: StageCard): StageCard => ({
  ...stage,
  items: stage.items.map((item) => ({ ...item, weighed: undefined })),
});

export function stageNamed(mixture: Mixture, typed: string): ResolvedStage {
  const names = mixture.stages.map(({ name }) => name);
  return (
    mixture.stages.find(({ name }) => isSameName(name, typed)) ??
    fail('unknown-stage', `there is no stage "${typed}"`, `its stages are ${names.join(', ')}`)
  );
}

/** The newest reading of each kind of any sample of a stage. */
export function readingsOfStage(card: MadeCard, stage: string): Readings {
  const [first] = card.samples;
  const seen = card.observations
    .filter(({ sample }) => {
      const of = sample ? card.samples.find(({ name }) => isSameName(name, sample.text)) : first;
      return of !== undefined && isSameName(of.of, stage);
    })
    .sort((left, right) => left.at.epochMilliseconds - right.at.epochMilliseconds);
  const ph = seen.findLast((one) => one.ph !== undefined)?.ph;
  const acid = seen.findLast((one) => one.acid)?.acid;
  const brix = seen.findLast((one) => one.brix !== undefined)?.brix;
  const density = seen.findLast((one) => one.density)?.density;
  return {
    ...(ph === undefined ? {} : { ph }),
    ...(acid ? { acid: acid.inner * 1000 } : {}),
    ...(brix === undefined ? {} : { brix }),
    ...(density ? { density: density.inner } : {}),
  };
}

interface Comparing {
  readonly stage: ResolvedStage;
  readonly mixture: Mixture;
  readonly readings: Readings;
  readonly conditions: DrinkConditions;
}

/** Undefined where nothing was read, or the stage can't be reckoned. */
export function comparedTank({ stage, mixture, readings, conditions }: Comparing): MeasuredDrink | undefined {
  if (Object.keys(readings).length === 0) return undefined;
  const items = tankItems(stage, mixture);
  const shown = (tried: readonly TankItem[]): Readings | undefined => {
    const made = tankReadings(tankStage(stage.name, tried, conditions.temperatureKelvin), conditions);
    return made && readingsShown(made);
  };
  const expected = shown(items);
  if (!expected) return undefined;
  const compared = compareReadings(readings, expected);
  if (compared.every(({ agrees }) => agrees)) return { compared, slips: [] };
  const slips = items.flatMap(({ name, massGrams }, at): readonly ItemSlip[] => {
    const slip = slipThatExplains(compared, (factor) =>
      shown(
        items.map((item, place) => (place === at ? { ...item, massGrams: item.massGrams * factor } : item)),
      ),
    );
    return slip ? [{ stage: 0, item: at, name, isMakeUp: false, factor: slip.factor, massGrams }] : [];
  });
  const size = ({ factor }: ItemSlip): number => Math.abs(Math.log(factor));
  return { compared, slips: slips.sort((left, right) => size(left) - size(right)) };
}

const readingsShown = ({ brix, acid, ph, densityGramsPerMillilitre }: TankReadings): Readings => ({
  brix,
  acid,
  density: densityGramsPerMillilitre,
  ...(ph === undefined ? {} : { ph }),
});
