/** How the figures of a drink came about: the equations with the numbers in them, and their sources. */

import { energySource } from '../../reference/energy.ts';
import { acidSystems, type DissociationStep } from '../../reference/solution/acid-constants.ts';
import type { Citation, WorkingLine } from '../answer.ts';
import { densityCitations } from '../density/cite-densities.ts';
import { numberText } from '../number-text.ts';
import type { FinishedDrink } from './finished-drink.ts';
import { titratedToPh } from './stage-acidity.ts';

export function drinkWorking(drink: FinishedDrink): readonly WorkingLine[] {
  const { acidity, solution, stage, brix } = drink;
  const density = drink.densityGramsPerMillilitre;
  const line = (equation: string, numbers: string): WorkingLine => ({ equation, numbers });
  return [
    line(
      'volume = mass / density',
      `${numberText(stage.massGrams, 6)} g / ${numberText(density, 6)} g/mL = ${numberText(drink.litres, 6)} L`,
    ),
    line(
      'molality = g / M / kg of water',
      `${numberText(solution.waterGrams / 1000, 6)} kg of water, of it ${numberText(solution.benchWaterLitres, 5)} L of the bench's own`,
    ),
    ...(acidity
      ? [
          line(
            'pH = -log10 of the activity of H+, where all charges add up to nothing',
            `-log10(${acidity.hydrogenMolality.toExponential(4)} mol/kg x ${numberText(acidity.activityCoefficients[1] ?? 1, 4)}) = ${numberText(acidity.ph, 5)}, at ionic strength ${numberText(acidity.ionicStrength, 4)} mol/kg`,
          ),
          line(
            `titratable acidity: base up to pH ${titratedToPh}, as citric acid / 3`,
            `${numberText(acidity.titratableAsCitric, 5)} g/L`,
          ),
        ]
      : []),
    line(
      'Brix = 100 x g of sugar / g',
      `100 x ${numberText((brix / 100) * stage.massGrams, 5)} g / ${numberText(stage.massGrams, 6)} g = ${numberText(brix, 5)}`,
    ),
    ...(drink.brixAcidRatio === undefined || !acidity
      ? []
      : [
          line(
            'Brix-acid ratio = Brix / % acid by mass',
            `${numberText(brix, 4)} / ${numberText(acidity.titratableAsCitric / density / 10, 4)} % = ${numberText(drink.brixAcidRatio, 4)}`,
          ),
        ]),
    ...drink.sweetness.parts.map((part) =>
      line(
        `sweetness of ${part.substance}, by ${part.by === 'curve' ? 'its curve' : 'a factor'}`,
        `${numberText(part.low, 3)} to ${numberText(part.high, 3)} g of sucrose in 100 mL`,
      ),
    ),
  ];
}

export function drinkCitations(drink: FinishedDrink): readonly Citation[] {
  const cited = (purpose: string, source: string, fromMemory = false): Citation => ({
    for: purpose,
    source,
    fromMemory,
  });
  const constants = (drink.acidity?.acids ?? []).flatMap(({ acid }) => {
    const steps: readonly DissociationStep[] = acidSystems[acid];
    return steps.map(({ source, fromMemory }) => cited(`constants of ${acid} acid`, source, fromMemory));
  });
  const all = [
    ...constants,
    ...(drink.acidity ? [cited('activity coefficients', 'davies-1962')] : []),
    cited('density of sugar solutions', 'icumsa-sucrose-density'),
    ...densityCitations(drink.stage.substances.map(({ entry }) => entry)),
    cited('water activity', 'norrish-1966'),
    ...(drink.refractometerBrix === undefined
      ? []
      : [cited('acid on a refractometer', 'stevens-baier-1939', true)]),
    ...(drink.viscosityMillipascalSeconds === undefined ? [] : [cited('viscosity', 'genotelle-1978')]),
    ...drink.sweetness.parts.map(({ substance, source }) => cited(`sweetness of ${substance}`, source)),
    cited('energy factors', energySource),
  ];
  return all.filter(
    (one, at) => all.findIndex((other) => other.for === one.for && other.source === one.source) === at,
  );
}
