/** Every caution about a batch: what stands neat, what is warmed, what falls out, pressure and gas. */

import type { Caution } from '../calc/answer.ts';
import { additiveCautions } from '../calc/drink/additive-cautions.ts';
import { drinkCautions } from '../calc/drink/drink-cautions.ts';
import { fallsOut } from '../calc/drink/falls-out.ts';
import { finishedDrink } from '../calc/drink/finished-drink.ts';
import { stageFigures } from '../calc/drink/stage-figures.ts';
import type { BatchPlan } from '../calc/scaling/batch-plan.ts';
import type { Filling } from '../calc/scaling/fill.ts';
import { handlingCautions } from '../calc/slip-guard/handling.ts';
import { plainCaution } from '../calc/slip-guard/placed-caution.ts';
import { adviceCaution } from '../ledger/advice.ts';
import { isWarmed, processAdvice } from '../ledger/check-process.ts';
import { slipAdvice } from '../ledger/check-slips.ts';
import { waterTraces } from '../ledger/drink-conditions.ts';
import { isSameName } from '../ledger/stage-name.ts';
import type { Here } from './open-ledger.ts';
import type { BatchDesign } from './scale-design.ts';
import { usedCautions } from './used-cautions.ts';
import { sourceWords } from './worded-sources.ts';

export async function batchCautions(
  here: Here,
  made: BatchDesign,
  { plan, filling }: { readonly plan: BatchPlan; readonly filling: Filling | undefined },
): Promise<readonly Caution[]> {
  const { sources: bibliography } = await import('../reference/kept-sources.ts');
  const { mixture, conditions, sources, stages } = made;
  const { card } = made.design;
  const drink = mixture.drink ? finishedDrink(mixture, conditions) : undefined;
  const figures = drink?.ok
    ? drink.value.stages
    : mixture.stages.map((stage) => stageFigures(stage, conditions));
  const hasAcids = (name: string): boolean =>
    figures.find(({ stage }) => isSameName(stage.name, name))?.hasAcids ?? false;
  const isForDrink =
    filling !== undefined ||
    plan.exact.some(({ stage }) => isSameName(stage.name, 'drink') || hasAcids(stage.name));
  const isWarm = (name: string): boolean => {
    const stage = stages.find((one) => one.name === name);
    const found = stage && made.cardOf(stage);
    return found !== undefined && isWarmed({ stages: [found] }, found.name);
  };
  const used = await usedCautions(here, card, sources);
  const isMade = ({ stage, trial }: (typeof used)[number]['used']): boolean =>
    plan.exact.some((one) => isSameName(one.stage.name, `${stage.name} of ${trial.number}`));
  const cautions = [
    ...used.filter((one) => isMade(one.used)).map(({ caution }) => caution),
    ...(drink?.ok && isForDrink
      ? drinkCautions(drink.value, waterTraces(here.bench))
      : fallsOut(figures, conditions)),
    ...additiveCautions(mixture),
    ...otherWater(made),
    ...handlingCautions(mixture, isWarm).map(plainCaution),
    ...[...processAdvice(card, sources), ...slipAdvice(card, sources)].map(adviceCaution),
    ...(filling?.gas ? [gasAtWork] : []),
  ];
  const told = filling?.gas ? cautions.filter(({ code }) => code !== 'pressure') : cautions;
  const worded = told.map((one) => ({ ...one, source: sourceWords(one.source, bibliography) }));
  return worded.filter((one, at) => worded.findIndex(({ text }) => text === one.text) === at);
}

const gasAtWork: Caution = {
  code: 'gas-at-work',
  text: 'Filling under pressure: regulator and relief valve, eyes covered, bottles made for it and not reused past their mark. CO2 is heavier than air and gathers in cellars and small rooms: air them, and leave when it stings.',
  source: 'common practice, no source',
};

function otherWater({ stronger }: BatchDesign): readonly Caution[] {
  if (!stronger?.isOtherWater) return [];
  const text = `The ${stronger.syrup} gives up a water of another kind than the drink takes: its alkalinity moves the pH a little.`;
  return [{ code: 'other-water', text, source: 'conservation of mass' }];
}
