/** What would crystallise from a stage, and what to do about it. */

import type { Caution } from '../answer.ts';
import { numberText, trimmedNumber } from '../number-text.ts';
import { type Crystal, crystalsIn } from './dissolved-forms.ts';
import { type SparingSalt, sparingSalts } from './sparing-salts.ts';
import type { DrinkConditions, StageFigures } from './stage-figures.ts';

/** From here on it is worth saying what holds and how much is there. */
const NEAR = 0.8;

/**
 * Formula   g/L of the form that crystallises over what dissolves at the temperature; of sparing salts their ions
 * Input     the figures of every stage, the drink among them; temperature and water of the bench
 * Output    cautions `falls-out` and `near-solubility`, stage by stage
 * Source    as named with each solubility
 */
export function fallsOut(stages: readonly StageFigures[], conditions: DrinkConditions): readonly Caution[] {
  const drink = stages.find(({ stage }) => stage.name === 'drink');
  const inDrink = drink ? crystalsIn(drink, conditions.temperatureKelvin) : [];
  return stages.flatMap((figures) => [
    ...crystalsIn(figures, conditions.temperatureKelvin).flatMap((crystal) =>
      crystalCaution(crystal, {
        figures,
        drink,
        there: inDrink.find(({ substance }) => substance === crystal.substance),
      }),
    ),
    ...sparingSalts(figures, conditions).flatMap((salt) => saltCaution(salt, figures)),
  ]);
}

interface Around {
  readonly figures: StageFigures;
  readonly drink: StageFigures | undefined;
  /** The same in the drink. */
  readonly there: Crystal | undefined;
}

function crystalCaution(crystal: Crystal, around: Around): readonly Caution[] {
  const { gramsPerLitre, holds, substance, but } = crystal;
  const share = gramsPerLitre / holds.gramsPerLitre;
  const isKnown = share > 1 ? holds.known !== 'at least' : holds.known !== 'at most';
  if (share <= NEAR) return [];
  const { name } = around.figures.stage;
  const have = `${gramsText(gramsPerLitre)} of ${substance} in the ${name}`;
  const most = `${gramsText(holds.gramsPerLitre)} dissolves at ${trimmedNumber(holds.celsius, 3)} C${but ? ` (${but})` : ''}`;
  const source = sourceOf(crystal.source, holds.fromMemory);
  if (share > 1 && isKnown)
    return [
      {
        code: 'falls-out',
        text: `${have}, where about ${most}: it would crystallise. ${mend(crystal, around)}`,
        source,
      },
    ];
  const text = isKnown
    ? `${have} is near what it holds: about ${most}; when it is colder, less.`
    : `${have}, where about ${most}; at this temperature it is not known. Keep some cold and look for crystals.`;
  return [{ code: 'near-solubility', text, source }];
}

function mend({ substance, gramsPerLitre, holds }: Crystal, { figures, drink, there }: Around): string {
  if (substance === 'sucrose') return 'Take more water: a weaker syrup keeps its sugar.';
  const isDrink = figures === drink;
  if (isDrink || !drink) return 'Take less of it, or one that dissolves better.';
  const fits = there ? there.gramsPerLitre <= there.holds.gramsPerLitre : false;
  const addToDrink = fits ? 'Add it to the drink instead, where it fits' : 'Take less of it';
  const { shareInDrink, volumeMillilitres } = figures.stage;
  if (!(shareInDrink > 0)) return `${addToDrink}.`;
  const parts = drink.stage.volumeMillilitres / (volumeMillilitres * shareInDrink);
  const needed = (parts * holds.gramsPerLitre) / gramsPerLitre - 1;
  return needed > 0.2
    ? `${addToDrink}, or make a larger, weaker ${figures.stage.name}: at a throw of 1+${throwText(needed)} it fits.`
    : `${addToDrink}.`;
}

/** Less over is within what the figures are worth. */
const CLEARLY_OVER = 1.1;

/** Rounded down, so that it does fit. */
const throwText = (parts: number): string => `${Math.floor(parts * 10) / 10}`;

function saltCaution(salt: SparingSalt, { stage }: StageFigures): readonly Caution[] {
  if (salt.times <= CLEARLY_OVER || salt.known === 'at least') return [];
  const hint =
    salt.salt === 'calcium citrate'
      ? 'Use softer or deionised water, or less citrate salt: more acid keeps it dissolved.'
      : 'Use a sodium salt in place of the potassium salt, or another acid.';
  return [
    {
      code: 'falls-out',
      text: `The ${stage.name} holds ${numberText(salt.times, 2)} times what keeps ${salt.salt} dissolved: a haze or crystals within days. ${hint}`,
      source: sourceOf(salt.source, salt.fromMemory),
    },
  ];
}

const gramsText = (gramsPerLitre: number): string =>
  gramsPerLitre < 0.01
    ? `${numberText(gramsPerLitre * 1000, 2)} mg/L`
    : `${numberText(gramsPerLitre, 2)} g/L`;

const sourceOf = (source: string, fromMemory: boolean): string =>
  fromMemory ? `${source}#from memory` : source;
