import { aroundUseLevel, type UsualBand } from '../../reference/usual-bands.ts';
import type { Caution } from '../answer.ts';
import { meetingStage } from '../mixture/meeting-stage.ts';
import type { Mixture, ResolvedStage } from '../mixture/picture.ts';
import { withLocator } from '../working.ts';
import { bandQuestion, emulsifierQuestion, traceText } from './band-question.ts';
import { drinkFigures, inBandUnit } from './drink-figures.ts';
import { type Held, itemSubstances } from './item-substances.ts';
import type { PlacedCaution, Spot } from './placed-caution.ts';

/**
 * Questions about a mixture: figures of the finished drink more than three times outside their usual bands, and
 * emulsifier per oil outside its own.
 *
 * Formula   see `bandQuestion`; a potent compound's band is its use level, a tenth of the lowest to ten times the highest
 * Input     a resolved mixture
 * Output    cautions whose codes begin with `slip-`, each at the item that brings most of it
 * Example   5 g of flavour oil in a litre -> slip-flavour-oil
 */
export function bandSlips(mixture: Mixture): readonly PlacedCaution[] {
  const { drink } = mixture;
  return [
    ...emulsifierSlips(mixture),
    ...(drink ? [...figureSlips(drink, mixture), ...potentSlips(drink, mixture)] : []),
  ];
}

function figureSlips(drink: ResolvedStage, mixture: Mixture): readonly PlacedCaution[] {
  return drinkFigures.flatMap(({ name, band, gramsOf }) => {
    const grams = drink.substances.reduce((sum, one) => sum + gramsOf(one), 0);
    const question = bandQuestion({ name, band, value: inBandUnit(grams, band.unit, drink) });
    return question
      ? [placed(question, mostOf(drink, mixture, gramsOf), 'check the amount and its unit')]
      : [];
  });
}

function potentSlips(drink: ResolvedStage, mixture: Mixture): readonly PlacedCaution[] {
  return drink.substances.flatMap(({ entry, massFraction }) => {
    const use = entry.record.potent ? entry.record.figures['use level'] : undefined;
    if (!use) return [];
    const band: UsualBand = {
      label: entry.name,
      low: (use.low ?? use.value) / aroundUseLevel.value,
      high: (use.high ?? use.value) * aroundUseLevel.value,
      unit: 'mg/kg',
      source: withLocator(use.source, use.fromMemory ? 'from memory' : undefined),
    };
    const question = bandQuestion({ name: 'potent-aroma', band, value: massFraction * 1e6 });
    if (!question) return [];
    const text = `${traceText(massFraction)} of ${entry.name} as dosed, where ${traceText((band.low ?? 0) * 1e-6)} to ${traceText(band.high * 1e-6)} is usual: is this meant?`;
    const isIt = (held: Held): number => (held.entry.name === entry.name ? held.massGrams : 0);
    const hint = 'check the strength of the stock and its unit: ppm is a thousand times ppb';
    return [placed({ ...question, text }, mostOf(drink, mixture, isIt), hint)];
  });
}

function emulsifierSlips(mixture: Mixture): readonly PlacedCaution[] {
  const meeting = meetingStage(mixture);
  if (!meeting) return [];
  const question = emulsifierQuestion(meeting.emulsifierGrams / meeting.oilGrams);
  if (!question) return [];
  const here = mixture.stages.find(({ name }) => name === meeting.name);
  const at = here
    ? mostOf(here, mixture, (held) => (held.role === 'oil' ? held.massGrams : 0))
    : itemNamed(mixture, meeting.name);
  return [placed(question, at, 'check both amounts and their units')];
}

const placed = (question: Caution, at: Spot | undefined, hint: string): PlacedCaution => ({
  ...question,
  hint,
  ...(at ? { at } : {}),
});

/** The item of a stage that brings most of something. */
function mostOf(stage: ResolvedStage, mixture: Mixture, gramsOf: (held: Held) => number): Spot {
  const brought = stage.items.map((item) =>
    itemSubstances(item, mixture).reduce((sum, held) => sum + gramsOf(held), 0),
  );
  return { stage: stage.name, item: brought.indexOf(Math.max(...brought)) };
}

function itemNamed(mixture: Mixture, name: string): Spot | undefined {
  for (const stage of mixture.stages) {
    const item = stage.items.findIndex((one) => one.name === name);
    if (item >= 0) return { stage: stage.name, item };
  }
  return undefined;
}
