/** Microbes, fermentation in a closed bottle, teeth: said with every drink that they touch. */

import { acidFood, againstYeast, erosion, fermentable } from '../../reference/drink-keeping.ts';
import type { Caution } from '../answer.ts';
import { isLike } from '../slip-guard/item-substances.ts';
import type { FinishedDrink } from './finished-drink.ts';

export function keepingCautions(drink: FinishedDrink): readonly Caution[] {
  return [...microbes(drink), ...fermentation(drink), ...teeth(drink)];
}

/** A pH alone is never evidence. */
function microbes({ acidity, waterActivity }: FinishedDrink): readonly Caution[] {
  if (!acidity) return [];
  const isLowAcid = acidity.ph > acidFood.ph && (waterActivity ?? 1) > acidFood.waterActivity;
  const text = isLowAcid
    ? `Above pH ${acidFood.ph} with water activity above ${acidFood.waterActivity}, bacteria that make poison can grow in a closed bottle: a process worked out by a qualified person is needed.`
    : 'A juice has buffers of its own: measure the pH. None proves that a drink keeps: that takes a validated process.';
  return [
    isLowAcid
      ? { code: 'low-acid', text, source: acidFood.source }
      : { code: 'ph-accuracy', text, source: 'common practice, no source' },
  ];
}

function fermentation({ stage, nutrition }: FinishedDrink): readonly Caution[] {
  const sugar = nutrition.sugarGrams * 10;
  const isPreserved = stage.substances.some(
    ({ entry, massGrams }) => massGrams > 0 && againstYeast.some((name) => isLike(entry, name)),
  );
  if (sugar < fermentable.gramsPerLitre || isPreserved) return [];
  const text =
    'Sugar and no preservative: unless it is heated in the bottle, or kept cold and drunk soon, yeast can ferment it and burst a closed bottle.';
  return [{ code: 'fermentation', text, source: fermentable.source }];
}

function teeth({ acidity }: FinishedDrink): readonly Caution[] {
  if (!acidity || acidity.ph >= erosion.minimalFrom) return [];
  const zone =
    acidity.ph < erosion.extremeBelow
      ? `below pH ${erosion.extremeBelow} extremely erosive`
      : `of pH ${erosion.extremeBelow} to ${erosion.minimalFrom} erosive`;
  const text = `Acid and teeth: a survey calls drinks ${zone}; citrate takes up calcium too.`;
  return [{ code: 'acid-and-teeth', text, source: erosion.source }];
}
