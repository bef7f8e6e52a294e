/** What a trial asks of `lasts`: each substance with constants, at the pH of every stage. */

import { esterConstants } from '../../reference/kinetics.ts';
import type { Taken, TrialPicture } from '../calculator.ts';
import type { LastsFields } from '../calculators/lasts.ts';
import { stageAcidity } from '../drink/stage-acidity.ts';
import { sugarFraction } from '../drink/stage-figures.ts';
import { stageSolution } from '../drink/stage-solution.ts';
import type { ResolvedStage } from '../mixture/picture.ts';
import type { Quantity } from '../quantity.ts';
import { share } from '../typed-quantity.ts';
import type { NamedConditions } from './conditions-field.ts';
import { lostSubstance } from './substance-field.ts';

const usualKelvin = 293.15;
const neutral = 7;

export function lastsOfTrial(
  picture: TrialPicture,
): readonly Taken<LastsFields>[] | { readonly why: string } {
  const { mixture, temperature } = picture;
  const { drink } = mixture;
  if (!drink) return { why: 'it has no stage named drink' };
  const temperatureKelvin = temperature?.inner ?? usualKelvin;
  const ph = phOf(drink, picture, temperatureKelvin);
  if (ph === undefined) return { why: 'nothing in the drink moves its pH' };
  const stages = mixture.stages
    .filter((stage) => stage !== drink)
    .flatMap((stage): readonly NamedConditions[] => {
      const own = hasWater(stage) ? (phOf(stage, picture, temperatureKelvin) ?? neutral) : undefined;
      return own === undefined
        ? []
        : [{ name: stage.name, ph: own, sugarShare: sugarFraction(stage), written: `ph ${own.toFixed(2)}` }];
    });
  const common = {
    ph,
    temperature: temperature ?? kelvins(temperatureKelvin),
    sugar: share(sugarFraction(drink)),
    stage: stages,
  };
  const known = drink.substances.filter(
    ({ entry, massGrams }) => massGrams > 0 && hasConstants(lostSubstance(entry).names),
  );
  const named = [...new Map(known.map(({ entry }) => [entry.name, lostSubstance(entry)])).values()];
  if (named.length === 0) return [{ stage: drink.name, given: common }];
  return named.map((substance) => ({ stage: drink.name, given: { ...common, substance } }));
}

const hasConstants = (names: readonly string[]): boolean =>
  names.some(
    (name) => esterConstants[name] !== undefined || name === 'sucrose' || /^polysorbate \d+$/.test(name),
  );

const hasWater = ({ substances }: ResolvedStage): boolean =>
  substances.some(({ role, massFraction }) => role === 'water' && massFraction > 0.05);

/** Undefined where nothing that was weighed in moves it. */
function phOf(
  stage: ResolvedStage,
  { alkalinity }: TrialPicture,
  temperatureKelvin: number,
): number | undefined {
  const solution = stageSolution({
    stage,
    water: { alkalinityMilligramsPerLitre: alkalinity?.inner },
    temperatureKelvin,
  });
  if (!solution.ok || solution.value.acidsAndSalts.length === 0) return undefined;
  const acidity = stageAcidity({ solution: solution.value, temperatureKelvin });
  return acidity.ok ? acidity.value.ph : undefined;
}

const kelvins = (inner: number): Quantity => ({
  value: inner - 273.15,
  unit: 'C',
  dimension: 'temperature',
  inner,
  written: `${inner - 273.15} C`,
});
