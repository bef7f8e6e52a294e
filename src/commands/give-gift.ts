/** The gathered recipe as the text of one YAML file. */

import { trimmedNumber } from '../calc/number-text.ts';
import { comesToFacts, giftText } from '../ledger/give/gift-text.ts';
import { givenAlong, givenFormula, givenTrial } from '../ledger/give/given-facts.ts';
import { givenIngredient } from '../ledger/give/given-ingredient.ts';
import type { Extra } from '../ledger/give/giving.ts';
import { type Gathered, givingOf, gramsForDrops } from './give-gather.ts';
import type { Here } from './open-ledger.ts';

export function giftOf(gathered: Gathered, here: Here, wanted: ReadonlySet<Extra>): string {
  const { design, mixture, along, ingredients, nameOf } = gathered;
  const giving = givingOf(gathered, here, wanted);
  const { card, document } = design;
  const main = { ...giving, amountOf: gramsForDrops(card.stages, mixture) };
  const others = along.map((one) =>
    givenAlong(one.root, one.card.number, {
      ...giving,
      amountOf: gramsForDrops(one.stages, one.mixture),
      hasStage: (stage) => one.stages.some(({ name }) => name === stage),
    }),
  );
  const isTrial = card.kind === 'trial';
  return giftText({
    what: isTrial ? `trial ${card.number}` : `formula ${card.name}`,
    temperature: `${trimmedNumber(here.bench.temperature.inner - 273.15, 6)} C`,
    ingredients: ingredients.map((one) => [
      gathered.names.get(one.name) ?? one.name,
      { map: givenIngredient(one.node, giving) },
    ]),
    trials: isTrial ? [...others, givenTrial(document.root, card.number, main)] : others,
    formulas: isTrial ? [] : [givenFormula(document.root, card.name, main)],
    comesTo: [
      ...along.map(
        ({ card: { number }, mixture: comes }) => [`trial ${number}`, comesToFacts(comes, nameOf)] as const,
      ),
      [isTrial ? `trial ${card.number}` : `formula ${card.name}`, comesToFacts(mixture, nameOf)],
    ],
  });
}
