/** What must be said with the figures of a drink. */

import type { Caution } from '../answer.ts';
import { fallsOut } from './falls-out.ts';
import type { FinishedDrink } from './finished-drink.ts';
import { keepingCautions } from './keeping-cautions.ts';
import { type WaterTraces, waterCautions } from './water-cautions.ts';

/** What crystallises first, then the water, then what the figures don't say of pressure, keeping and teeth. */
export function drinkCautions(drink: FinishedDrink, traces: WaterTraces): readonly Caution[] {
  return [
    ...fallsOut(drink.stages, drink.conditions),
    ...waterCautions(drink, traces),
    ...unknownAcids(drink),
    ...acidSyrups(drink),
    ...beyondModel(drink),
    ...((drink.conditions.carbonDioxideVolumes ?? 0) > 0 ? carbonated : []),
    ...keepingCautions(drink),
  ];
}

const carbonated: readonly Caution[] = [
  {
    code: 'sugar-holds-less',
    text: 'The pressure is that of water: a sugared drink presses up to 8 % harder at the same volumes.',
    source: 'weiss-1974',
  },
  {
    code: 'pressure',
    text: 'Bottles burst: use those made for the pressure, warm days counted, and a regulator with a relief valve. CO2 collects in small rooms: air them.',
    source: 'common practice, no source',
  },
];

function unknownAcids({ solution }: FinishedDrink): readonly Caution[] {
  if (solution.unknown.length === 0) return [];
  const names = solution.unknown.join(', ');
  const text = `There is no acid data for ${names}: left out of pH and acid. Measure both.`;
  return [{ code: 'no-acid-data', text, source: 'common practice, no source' }];
}

/** The same acid in less water. */
function acidSyrups({ stages, acidity }: FinishedDrink): readonly Caution[] {
  const lowest = stages
    .filter(({ stage, hasAcids }) => stage.name !== 'drink' && hasAcids && stage.shareInDrink > 0)
    .flatMap(({ stage, acidity: own }) => (own.ok ? [{ name: stage.name, ph: own.value.ph }] : []))
    .sort((left, right) => left.ph - right.ph)[0];
  if (!lowest || !acidity || lowest.ph > acidity.ph - LOWER) return [];
  const text = `The ${lowest.name} stands at pH ${lowest.ph.toFixed(2)}: harder on esters and ester emulsifiers than the drink. Keep it cold or use it soon, or acidify last.`;
  return [{ code: 'acid-syrup', text, source: 'calculated from acid constants; hydrolysis goes with H+' }];
}

const LOWER = 0.2;

function beyondModel({ acidity }: FinishedDrink): readonly Caution[] {
  if (!acidity || acidity.withinActivityModel) return [];
  const text = 'So much salt is in it that the activity model is carried past its source: measure the pH.';
  return [{ code: 'strong-solution', text, source: 'davies-1962' }];
}
