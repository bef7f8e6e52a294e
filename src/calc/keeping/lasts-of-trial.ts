/** What a trial asks of `lasts`: each substance with constants, at the pH of every stage. */

import { esterConstants } from '../../reference/kinetics.ts';
import { lookUp } from '../../reference/look-up.ts';
import type { NothingAsked, Taken, TrialPicture } from '../calculator.ts';
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
): readonly Taken<LastsFields>[] | NothingAsked<LastsFields> {
  const { drink, stages } = picture.mixture;
  const stage = drink ?? stages.findLast(hasWater);
  if (!stage) return { why: 'it holds no water' };
  const temperature = picture.temperature ?? kelvins(usualKelvin);
  const ph = phOf(stage, picture, temperature.inner);
  const given = {
    ...(ph === undefined ? {} : { ph }),
    temperature,
    sugar: share(sugarFraction(stage)),
    stage: drink ? besideEachOther(drink, picture, temperature.inner) : [],
  };
  const beside = { stage: stage.name, given };
  if (!drink) return { why: 'it has no stage named drink', beside };
  if (ph === undefined) return { why: 'nothing in the drink moves its pH', beside };
  const known = drink.substances.filter(
    ({ entry, massGrams }) => massGrams > 0 && hasConstants(lostSubstance(entry).names),
  );
  const named = [...new Map(known.map(({ entry }) => [entry.name, lostSubstance(entry)])).values()];
  if (named.length === 0) return [beside];
  return named.map((substance) => ({ stage: drink.name, given: { ...given, substance } }));
}

/** The drink and each other stage of sugar or acid in water; none where it stands alone. */
function besideEachOther(
  drink: ResolvedStage,
  picture: TrialPicture,
  temperatureKelvin: number,
): readonly NamedConditions[] {
  const others = picture.mixture.stages.filter(
    (stage) => stage !== drink && hasWater(stage) && isSyrup(stage),
  );
  if (others.length === 0) return [];
  return [drink, ...others].map((stage) => {
    const ph = phOf(stage, picture, temperatureKelvin) ?? neutral;
    return { name: stage.name, ph, sugarShare: sugarFraction(stage), written: `ph ${ph.toFixed(2)}` };
  });
}

const hasConstants = (names: readonly string[]): boolean =>
  names.some(
    (name) =>
      lookUp(esterConstants, name) !== undefined || name === 'sucrose' || /^polysorbate \d+$/.test(name),
  );

const hasWater = ({ substances }: ResolvedStage): boolean =>
  substances.some(({ role, massFraction }) => role === 'water' && massFraction > 0.05);

const isSyrup = ({ substances }: ResolvedStage): boolean =>
  substances.some(({ role, massGrams }) => (role === 'sugar' || role === 'acid') && massGrams > 0);

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
