/** The finished drink as JSON: every key with its one unit. */

import type { JudgedAim } from '../calc/drink/aims.ts';
import { alcoholByVolume } from '../calc/drink/alcohol.ts';
import type { FinishedDrink } from '../calc/drink/finished-drink.ts';
import type { LabelLine } from '../calc/drink/label.ts';
import type { StageFigures } from '../calc/drink/stage-figures.ts';
import type { ResolvedStage } from '../calc/mixture/picture.ts';
import { molarMass } from '../calc/solution/molar-mass.ts';
import { gramsPerMole } from '../calc/solution/substance.ts';
import { type AimReport, moverWords } from '../ledger/check-aims.ts';

const leaf = (value: number | undefined, unit: string): object => ({ value: value ?? null, unit });

export interface DrinkParts {
  readonly drink: FinishedDrink;
  readonly aims: readonly AimReport[];
  readonly label: readonly LabelLine[];
}

export function drinkJson({ drink, aims, label }: DrinkParts): Readonly<Record<string, unknown>> {
  const { acidity, nutrition, sweetness, conditions } = drink;
  return {
    ph: leaf(acidity?.ph, ''),
    titratableAsCitric: leaf(acidity?.titratableAsCitric, 'g/L'),
    ionicStrength: leaf(acidity?.ionicStrength, 'mol/kg'),
    acidEatenByWater: leaf(acidity?.eatenAsCitric, 'g/L'),
    brix: leaf(drink.brix, ''),
    refractometerBrix: leaf(drink.refractometerBrix, ''),
    brixAcidRatio: leaf(drink.brixAcidRatio, ''),
    density: leaf(drink.densityGramsPerMillilitre, 'g/mL'),
    volume: leaf(drink.litres, 'L'),
    mass: leaf(drink.stage.massGrams, 'g'),
    waterActivity: leaf(drink.waterActivity, ''),
    viscosity: leaf(drink.viscosityMillipascalSeconds, 'mPa s'),
    carbonation: leaf(conditions.carbonDioxideVolumes, 'vol'),
    sweetness: {
      low: leaf(sweetness.low, 'g/100 mL'),
      high: leaf(sweetness.high, 'g/100 mL'),
      parts: sweetness.parts.map((part) => ({
        substance: part.substance,
        low: leaf(part.low, 'g/100 mL'),
        high: leaf(part.high, 'g/100 mL'),
        by: part.by,
      })),
      unknown: sweetness.unknown,
    },
    energy: leaf(nutrition.kilojoules, 'kJ/100 mL'),
    energyKilocalories: leaf(nutrition.kilocalories, 'kcal/100 mL'),
    sugar: leaf(nutrition.sugarGrams, 'g/100 mL'),
    sodium: leaf(nutrition.sodiumMilligrams, 'mg/100 mL'),
    acids: acidsJson(drink),
    alcohol: leaf(alcoholByVolume(drink.stage) * 100, '% v/v'),
    substances: substancesJson(drink.stage),
    aims: aims.map(aimJson),
    stages: drink.stages.map(stageJson),
    label: label.map(({ ingredient, eNumber, massFraction }) => ({
      ingredient,
      eNumber: eNumber ?? '',
      massFraction: leaf(massFraction, ''),
    })),
  };
}

const substancesJson = ({ substances }: ResolvedStage): readonly object[] =>
  substances
    .filter(({ massGrams }) => massGrams > 0)
    .map((one) => ({
      substance: one.name,
      role: one.role,
      massFraction: leaf(one.massFraction, ''),
      gramsPerLitre: leaf(one.gramsPerLitre, 'g/L'),
    }));

/** Each acid with the share that has all its protons, salts counted as their acid. */
function acidsJson({ acidity, solution }: FinishedDrink): readonly object[] {
  const kilogramsPerLitre = solution.waterGrams / 1000 / solution.litres;
  return (acidity?.acids ?? []).map(({ acid, molality, undissociated }) => {
    const molar = acid === 'carbonic' ? molarMass('CO2') : gramsPerMole(`${acid} acid`);
    return {
      acid: acid === 'carbonic' ? 'carbon dioxide' : `${acid} acid`,
      gramsPerLitre: leaf(molar && molality * kilogramsPerLitre * molar, 'g/L'),
      undissociated: leaf(undissociated, ''),
    };
  });
}

export function aimJson(report: AimReport): object {
  const { judged, card, mover } = report;
  return {
    aim: judged.name,
    written: card.written,
    state: judged.state,
    met: judged.state === 'met',
    value: leaf(judged.value, judged.unit),
    low: leaf(judged.low, judged.unit),
    high: leaf(judged.high, judged.unit),
    by: leaf(judged.by, judged.unit),
    ...whyJson(judged),
    ...(mover
      ? {
          movedBy: mover.name,
          changePerPercent: leaf(mover.change, judged.unit),
          hint: moverWords(report) ?? '',
        }
      : {}),
  };
}

const whyJson = ({ why }: JudgedAim): object => (why === undefined ? {} : { why });

function stageJson({ stage, brix, acidity, hasAcids, waterActivity, leftOut }: StageFigures): object {
  return {
    stage: stage.name,
    mass: leaf(stage.massGrams, 'g'),
    volume: leaf(stage.volumeMillilitres / 1000, 'L'),
    density: leaf(stage.densityGramsPerMillilitre, 'g/mL'),
    brix: leaf(brix, ''),
    ph: leaf(hasAcids && acidity.ok ? acidity.value.ph : undefined, ''),
    waterActivity: leaf(waterActivity.ok ? waterActivity.value.waterActivity : undefined, ''),
    leftOut,
    shareInDrink: leaf(stage.shareInDrink, ''),
    substances: substancesJson(stage),
  };
}
