/** What could hurt whoever makes it: said on the card. */

import type { Caution } from '../calc/answer.ts';
import { additiveCautions } from '../calc/drink/additive-cautions.ts';
import { drinkCautions } from '../calc/drink/drink-cautions.ts';
import { figureCautions } from '../calc/drink/figure-cautions.ts';
import { finishedDrink } from '../calc/drink/finished-drink.ts';
import { handlingCautions } from '../calc/slip-guard/handling.ts';
import { plainCaution } from '../calc/slip-guard/placed-caution.ts';
import { adviceCaution } from '../ledger/advice.ts';
import { isWarmed, processAdvice } from '../ledger/check-process.ts';
import { withdrawnAdvice } from '../ledger/check-withdrawn.ts';
import { drinkConditions, waterTraces } from '../ledger/drink-conditions.ts';
import { additivesOf } from './drink-additives.ts';
import type { Gathered } from './give-gather.ts';
import type { Here } from './open-ledger.ts';
import { sourceWords } from './worded-sources.ts';

export async function recipeCautions(gathered: Gathered, here: Here): Promise<readonly Caution[]> {
  const { sources: bibliography } = await import('../reference/kept-sources.ts');
  const { sources, along, design } = gathered;
  const made = [
    ...along.map(({ card, stages, mixture }) => ({ of: { stages, number: card.number }, mixture })),
    { of: design.card, mixture: gathered.mixture },
  ];
  const atWork = made.flatMap(({ of, mixture }) => [
    ...handlingCautions(mixture, (stage) => isWarmed(of, stage)).map(plainCaution),
    ...[...processAdvice(of, sources), ...withdrawnAdvice(of, sources)].map(adviceCaution),
  ]);
  const worded = [...inTheDrink(gathered, here), ...atWork].map((one) => ({
    ...one,
    text: gathered.proseOf(one.text),
    source: sourceWords(one.source, bibliography),
  }));
  return worded.filter((one, at) => worded.findIndex(({ text }) => text === one.text) === at);
}

function inTheDrink({ mixture, design }: Gathered, here: Here): readonly Caution[] {
  if (!mixture.drink) return [];
  const drink = finishedDrink(mixture, drinkConditions({ bench: here.bench, card: design.card }));
  if (!drink.ok) return additiveCautions(mixture);
  return [
    ...figureCautions(additivesOf(drink.value.stage, here.bench.limits).beside),
    ...additiveCautions(mixture),
    ...drinkCautions(drink.value, waterTraces(here.bench)),
  ];
}
