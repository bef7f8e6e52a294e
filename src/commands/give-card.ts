/** The gathered recipe as a card to be read. */

import type { Caution } from '../calc/answer.ts';
import { numberText } from '../calc/number-text.ts';
import type { IngredientCard, StageCard } from '../ledger/cards.ts';
import { givenIngredient } from '../ledger/give/given-ingredient.ts';
import type { Extra } from '../ledger/give/giving.ts';
import { closingCaution } from '../output/answer-page.ts';
import { leafText, partsText } from '../output/leaf-text.ts';
import { type CardList, type CardStage, type RecipeCard, recipeCardMarkdown } from '../output/recipe-card.ts';
import { type GivenStage, topOf } from './give-batch.ts';
import { type Gathered, givingOf } from './give-gather.ts';
import { recipeSources } from './give-sources.ts';
import type { Here } from './open-ledger.ts';
import { perLitre, stepText } from './show-stages.ts';

export interface CardOf {
  readonly gathered: Gathered;
  readonly here: Here;
  readonly wanted: ReadonlySet<Extra>;
  /** As typed after `--batch`. */
  readonly batch: string | undefined;
  readonly stages: readonly GivenStage[];
  readonly cautions: readonly Caution[];
}

export async function cardMarkdown(of: CardOf): Promise<string> {
  const { gathered, wanted, batch, stages, cautions } = of;
  const { card } = gathered.design;
  const { proseOf } = gathered;
  const told = [card.title, card.why, card.kind === 'trial' ? card.concluded : undefined, card.note];
  const by = wanted.has('names') && card.kind === 'trial' && card.by !== undefined ? [`By ${card.by}.`] : [];
  const remarks = told.flatMap((text) => (text === undefined ? [] : [proseOf(text)]));
  const sheet: RecipeCard = {
    title: card.kind === 'trial' ? `Trial ${card.number}` : capital(card.name),
    remarks: [...remarks, ...by],
    batch: batchText(gathered, stages, batch),
    stages: stages.map((stage) => stageOf(stage, of)),
    lists: [aimList(of), ingredientList(of), drinkList(gathered), lookList(of)],
    cautions: cautions.map(({ text, source }) => `${text} [${source}]`),
    sources: await recipeSources(gathered),
    closing: closingCaution,
  };
  return recipeCardMarkdown(sheet);
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

function batchText({ mixture }: Gathered, stages: readonly GivenStage[], batch: string | undefined): string {
  const top = topOf(mixture);
  const made = stages.find(({ stage }) => stage === top);
  if (!top || !made) return '';
  const amount = makesText(made);
  return batch === undefined
    ? `Masses are for what is typed: ${amount} of ${top.name}.`
    : `Masses are for ${batch.trim()} of ${top.name} (${amount}), nothing left over and nothing lost.`;
}

function makesText({ stage, factor }: GivenStage): string {
  const millilitres = stage.volumeMillilitres * factor;
  const volume =
    millilitres >= 1000 ? `${numberText(millilitres / 1000, 4)} L` : `${numberText(millilitres, 4)} mL`;
  return `${leafText({ value: stage.massGrams * factor, unit: 'g' })}, ${stage.densityFrom.measured ? '' : 'about '}${volume}`;
}

function stageOf(given: GivenStage, { gathered, wanted }: CardOf): CardStage {
  const { stage, factor, trial } = given;
  const { proseOf, nameOf, names } = gathered;
  const card = cardOf(given, gathered);
  const own = new Set((card?.stages ?? []).map(({ name }) => name));
  const found = card?.stages.find(({ name }) => name === stage.name);
  const itemName = (name: string): string => (own.has(name) ? name : (names.get(name) ?? nameOf(name)));
  return {
    name: trial === undefined ? stage.name : `${stage.name} of ${trial}`,
    makes: makesText(given),
    notes: found?.note === undefined ? [] : [proseOf(found.note)],
    items: stage.items.map((item, at) => [
      [itemName(item.name), ...itemWords(found, at, wanted)].join(', '),
      typedAmount(found, at),
      leafText({ value: item.massGrams * factor, unit: 'g' }),
      partsText(stage.massGrams > 0 ? item.massGrams / stage.massGrams : 0),
    ]),
    steps: (found?.process ?? []).map((step) =>
      proseOf(stepText(wanted.has('names') ? step : { ...step, by: undefined })),
    ),
  };
}

const cardOf = ({ trial }: GivenStage, { design, along }: Gathered) =>
  trial === undefined ? design.card : along.find(({ card }) => card.number === trial)?.card;

function itemWords(stage: StageCard | undefined, at: number, wanted: ReadonlySet<Extra>): readonly string[] {
  const { lot, note } = stage?.items[at] ?? {};
  return [
    ...(lot !== undefined && wanted.has('lots') ? [`lot ${lot}`] : []),
    ...(note !== undefined && wanted.has('notes') ? [note] : []),
  ];
}

function typedAmount(stage: StageCard | undefined, at: number): string {
  const item = stage?.items[at];
  return item?.weighed
    ? `${item.amount.written}, weighed ${item.weighed.written}`
    : (item?.amount.written ?? '');
}

function aimList({ gathered }: CardOf): CardList {
  const { card } = gathered.design;
  const aims = card.kind === 'formula' ? card.aims : [];
  return {
    heading: 'Aims',
    head: ['of', 'aim'],
    rows: aims.map(({ name, written }) => [gathered.names.get(name) ?? name, written]),
  };
}

/** The person's own ingredients: a reader elsewhere has no other way to know what they are. */
function ingredientList({ gathered, here, wanted }: CardOf): CardList {
  const giving = givingOf(gathered, here, wanted);
  const factsOf = (card: IngredientCard): string =>
    givenIngredient(card.node, giving)
      .flatMap(([key, value]) => {
        if (typeof value === 'string') return [`${key} ${value}`];
        return 'map' in value
          ? value.map.map(([part, share]) =>
              share === 'rest' ? `the rest ${part}` : `${part} ${String(share)}`,
            )
          : [];
      })
      .join('; ');
  return {
    heading: 'Ingredients of their own',
    head: ['name', 'what it is'],
    rows: gathered.ingredients.map((card) => [gathered.names.get(card.name) ?? card.name, factsOf(card)]),
  };
}

function drinkList({ mixture, nameOf, names }: Gathered): CardList {
  const shown = (mixture.drink?.substances ?? []).filter(
    ({ role, massGrams }) => role !== 'water' && massGrams > 0,
  );
  return {
    heading: 'In the finished drink, as dosed',
    head: ['substance', 'by mass', 'per litre'],
    rows: [...shown]
      .sort((one, other) => other.massGrams - one.massGrams)
      .map((one) => [
        names.get(one.name) ?? nameOf(one.name),
        partsText(one.massFraction),
        perLitre(one.gramsPerLitre),
      ]),
  };
}

/** What was seen of a trial, where that is asked for. */
function lookList({ gathered, wanted }: CardOf): CardList {
  const { card } = gathered.design;
  const seen = card.kind === 'trial' && wanted.has('looks') ? card.observations : [];
  return {
    heading: 'What was seen',
    head: ['at', 'sample', 'seen'],
    rows: seen.map((one) => [
      one.at.written,
      one.sample?.text ?? (card.kind === 'trial' ? (card.samples[0]?.name ?? '') : ''),
      [one.looks.join(', '), one.note ?? ''].filter((text) => text !== '').join('; '),
    ]),
  };
}
