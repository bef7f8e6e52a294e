/** The figures of a drink as lines: what it is, how much, and how far to trust it. */

import { alcoholByVolume } from '../calc/drink/alcohol.ts';
import type { FinishedDrink } from '../calc/drink/finished-drink.ts';
import { numberText, trimmedNumber } from '../calc/number-text.ts';
import { carbonationAtVolumes } from '../calc/solution/carbonation.ts';
import { gramsPerMole } from '../calc/solution/substance.ts';

export type FigureLine = readonly [label: string, value: string, note: string];

/** Notes are short: three columns stand in 80. */
export function figureLines(drink: FinishedDrink): readonly FigureLine[] {
  return [
    ...acidLines(drink),
    ...preservedLines(drink),
    ...sugarLines(drink),
    ...otherLines(drink),
    panelLine(drink),
  ];
}

function acidLines({ acidity }: FinishedDrink): readonly FigureLine[] {
  if (!acidity) return [['pH', '-', 'nothing weighed in moves it']];
  const { ph, titratableAsCitric, eatenAsCitric } = acidity;
  const eaten = eatenAsCitric > 0 ? `; the water takes ${numberText(eatenAsCitric, 2)}` : '';
  return [
    ['pH', ph.toFixed(2), 'allow 0.2 in a real drink'],
    ['acid', `${numberText(titratableAsCitric, 3)} g/L`, `as citric, to pH 8.2${eaten}`],
  ];
}

function sugarLines(drink: FinishedDrink): readonly FigureLine[] {
  const { brix, refractometerBrix, brixAcidRatio, sweetness, nutrition } = drink;
  const shown =
    refractometerBrix === undefined ? '' : `; a refractometer shows ${refractometerBrix.toFixed(1)}`;
  const lines: FigureLine[] = [
    ['sugar', `${brix.toFixed(2)} Brix`, `${numberText(nutrition.sugarGrams * 10, 3)} g/L${shown}`],
  ];
  if (brixAcidRatio !== undefined)
    lines.push(['Brix-acid ratio', numberText(brixAcidRatio, 3), 'Brix over % of acid by mass']);
  if (sweetness.parts.length > 0) {
    const span = sweetness.high - sweetness.low;
    const value =
      span < 0.05 ? sweetness.low.toFixed(1) : `${sweetness.low.toFixed(1)} to ${sweetness.high.toFixed(1)}`;
    const note = `g of sucrose in 100 mL${sweetness.parts.length > 1 ? '; blends do not add' : ''}`;
    lines.push(['as sweet as', value, note]);
  }
  return lines;
}

function otherLines(drink: FinishedDrink): readonly FigureLine[] {
  const { densityGramsPerMillilitre, stage, waterActivity, viscosityMillipascalSeconds } = drink;
  const lines: FigureLine[] = [
    [
      'density',
      `${numberText(densityGramsPerMillilitre, 5)} g/mL`,
      stage.densityFrom.measured ? 'measured' : 'reckoned from what is in it',
    ],
  ];
  if (waterActivity !== undefined)
    lines.push(['water activity', waterActivity.toFixed(3), 'says nothing of pH and preservative']);
  if (viscosityMillipascalSeconds !== undefined)
    lines.push(['viscosity', `${numberText(viscosityMillipascalSeconds, 2)} mPa s`, 'of its sugar in water']);
  return [...lines, ...alcoholLines(drink), ...carbonationLines(drink)];
}

function alcoholLines({ stage }: FinishedDrink): readonly FigureLine[] {
  const share = alcoholByVolume(stage);
  if (share <= 0) return [];
  const shrinks = share > SHRINKS_FROM ? '; it shrinks in water, so somewhat more' : '';
  return [['alcohol', `${numberText(share * 100, 2)} % v/v`, `by the density of ethanol at 20 C${shrinks}`]];
}

/** From about 5 % v/v the volume that alcohol and water lose on mixing shows in the second digit. */
const SHRINKS_FROM = 0.05;

function carbonationLines({ conditions, measuredCarbonation }: FinishedDrink): readonly FigureLine[] {
  const { carbonDioxideVolumes: volumes, temperatureKelvin } = conditions;
  if (volumes === undefined || volumes <= 0) return [];
  const at = carbonationAtVolumes({ volumes, temperatureKelvin });
  const celsius = trimmedNumber(temperatureKelvin - 273.15, 4);
  const bar = at.ok ? numberText(at.value.gaugePressurePascal / 1e5, 2) : '';
  const pressure = at.ok ? `, ${bar} bar gauge at ${celsius} C within 8 %` : '';
  return [
    [
      'CO2',
      `${trimmedNumber(volumes, 3)} vol`,
      `${measuredCarbonation ? 'measured' : 'aimed at'}${pressure}`,
    ],
  ];
}

/** Of a preservative only the acid with its proton acts. */
function preservedLines({ acidity, solution }: FinishedDrink): readonly FigureLine[] {
  const kilogramsPerLitre = solution.waterGrams / 1000 / solution.litres;
  return (acidity?.acids ?? [])
    .filter(({ acid }) => acid === 'benzoic' || acid === 'sorbic')
    .map(({ acid, molality, undissociated }) => {
      const milligrams = molality * kilogramsPerLitre * (gramsPerMole(`${acid} acid`) ?? 0) * 1000;
      const acts = numberText(milligrams * undissociated, 3);
      return [
        `${acid} acid`,
        `${numberText(milligrams, 3)} mg/L`,
        `${numberText(undissociated * 100, 2)} % undissociated at this pH: ${acts} mg/L acts`,
      ];
    });
}

/** Energy and sodium in one line. */
function panelLine({ nutrition, conditions, solution }: FinishedDrink): FigureLine {
  const { kilojoules, kilocalories, sodiumMilligrams } = nutrition;
  const isKnown = conditions.water.sodiumMilligramsPerLitre !== undefined;
  const water = solution.benchWaterLitres > 0 ? `, ${isKnown ? 'with' : 'but for'} the water` : '';
  return [
    'in 100 mL',
    `${numberText(kilojoules, 3)} kJ`,
    `${numberText(kilocalories, 3)} kcal; sodium ${numberText(sodiumMilligrams, 3)} mg${water}`,
  ];
}

/** Per 100 mL. */
export function nutritionLines({ nutrition, conditions }: FinishedDrink): readonly FigureLine[] {
  const { kilojoules, kilocalories, sodiumMilligrams, sugarGrams } = nutrition;
  const hasWaterSodium = conditions.water.sodiumMilligramsPerLitre !== undefined;
  return [
    [
      'energy',
      `${numberText(kilojoules, 3)} kJ`,
      `${numberText(kilocalories, 3)} kcal; per 100 mL, as are the next two`,
    ],
    ['sugar', `${numberText(sugarGrams, 3)} g`, 'mono- and disaccharides'],
    [
      'sodium',
      `${numberText(sodiumMilligrams, 3)} mg`,
      hasWaterSodium ? 'with that of the bench water' : 'without that of the bench water',
    ],
  ];
}
