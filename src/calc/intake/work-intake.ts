/** The arithmetic of `intake`, with the words of its rows and cautions. */

import { fail } from '../../problem.ts';
import { limitSourceWords } from '../../reference/limits/limit-sources.ts';
import { type Amount, countedWords } from '../drink/counted-forms.ts';
import type { NamedItem } from '../item-fields.ts';
import { numberText } from '../number-text.ts';
import type { Working } from '../working.ts';
import { type Drinking, type IntakeShare, intakeShares, type NoShare } from './day.ts';
import { aboveWords, noneRow, numberlessRow, shareRow } from './intake-words.ts';
import type { IntakeGiven, IntakeWork } from './loaded-intake.ts';

const usualServing = 330;

export const workIntake: IntakeWork = (given, working) => {
  if (given.items.length === 0)
    fail('missing', 'nothing is given to reckon', 'give "180 mg/L polysorbate 80", or --trial');
  const drinking = drinkingOf(given);
  const amounts = given.items.flatMap((item) => amountOf(item, drinking, working));
  const { shares, numberless } = intakeShares(amounts, drinking);
  for (const one of shares) explain(one, drinking, working);
  for (const { words, counted } of numberless) cite(words, counted, working);
  if ([...shares.map(({ figure }) => figure), ...numberless.map(({ words }) => words)].some(isRemembered))
    working.caution(
      'from-memory',
      '* from memory: no copy of the text could be read; look it up before you rely on it.',
      'said with the figure',
    );
  const counted = [...shares, ...numberless].flatMap((one) => one.counted.members);
  const held = (name: string): boolean => counted.includes(name);
  const without = given.items.filter(
    ({ name, entry }) => !held(name) && !entry?.composition.some(({ substance }) => held(substance.name)),
  );
  return {
    lead: 'A daily intake is a figure for all food of a day, over a life. What follows is arithmetic, not a verdict.',
    found: {
      intakes: [
        ...shares.map((one) => shareRow(one, drinking)),
        ...numberless.map((one) => numberlessRow(one, drinking)),
        ...without.map(({ name }) => noneRow(name, 'none found')),
      ],
      servingVolume: drinking.servingMillilitres,
      servings: drinking.servingsPerDay,
      bodyMass: drinking.bodyKilograms,
    },
  };
};

function drinkingOf({ serving, servings, body }: IntakeGiven): Drinking {
  const drinking = {
    servingMillilitres: serving?.inner ?? usualServing,
    servingsPerDay: servings ?? 1,
    bodyKilograms: body.inner / 1000,
  };
  return drinking.bodyKilograms > 0 && drinking.servingMillilitres > 0
    ? drinking
    : fail(
        'not-positive',
        'a body and a serving weigh or hold more than nothing',
        'give --body 60 kg --serving 330 mL',
      );
}

const isRemembered = ({ read }: Pick<IntakeShare['figure'], 'read'>): boolean => read === 'from memory';

const cite = (
  one: IntakeShare['figure'] | NoShare['words'],
  counted: IntakeShare['counted'],
  working: Working,
): void =>
  working.cite(
    `${one.by} on ${countedWords(counted)}`,
    limitSourceWords(one),
    isRemembered(one),
    'people' in one && one.people ? one.people : 'all food of a day, over a life',
  );

function explain(one: IntakeShare, { servingsPerDay }: Drinking, working: Working): void {
  const { figure, counted, share, figureMilligrams } = one;
  const isOnce = figure.unit === 'mg at once';
  cite(figure, counted, working);
  working.line(
    `${countedWords(counted)}: share = mg ${isOnce ? 'in a serving' : 'a day'} / figure for the body`,
    `${numberText(isOnce ? one.servingMilligrams : one.dayMilligrams, 4)} mg / ${numberText(figureMilligrams, 4)} mg = ${numberText(share * 100, 3)} %`,
  );
  if (share > 1) working.caution('above-intake', aboveWords(one, servingsPerDay), limitSourceWords(figure));
}

/** A share by mass goes for so much a litre of 1 kg; a mass is that of one serving. */
function amountOf(
  { entry, quantity }: NamedItem,
  { servingMillilitres }: Drinking,
  working: Working,
): readonly Amount[] {
  if (!entry) return [];
  const { dimension, inner } = quantity;
  if (dimension === 'share')
    working.caution(
      'by-mass',
      'A share by mass is reckoned with a litre of 1 kg; a sugared drink weighs up to 5 % more.',
      'arithmetic',
    );
  const gramsPerLitre = (dimension === 'mass' ? inner / servingMillilitres : inner) * 1000;
  return entry.composition.map(({ substance, massFraction }) => ({
    entry: substance,
    massFraction: (gramsPerLitre * massFraction) / 1000,
    gramsPerLitre: gramsPerLitre * massFraction,
  }));
}
