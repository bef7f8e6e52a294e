/** The figures of a batch in words, for the screen and the sheet alike. */

import type { Cost } from '../calc/cost.ts';
import { numberText, trimmedNumber } from '../calc/number-text.ts';
import type { BatchPlan, PlannedStage } from '../calc/scaling/batch-plan.ts';
import type { Filling } from '../calc/scaling/fill.ts';
import { exactDecimals, type WeighedItem } from '../calc/scaling/rounded-stage.ts';
import type { BatchStock } from '../calc/scaling/small-items.ts';
import { vesselWords } from '../calc/scaling/sub-batches.ts';
import { designWords } from './open-formula.ts';
import { leftOut, leftOutWords } from './scale-left-out.ts';
import type { BatchReport } from './scale-report.ts';

export const gramsText = (grams: number, divisionGrams: number): string =>
  `${grams.toFixed(exactDecimals(divisionGrams))} g`;

export const volumeText = (millilitres: number): string =>
  millilitres >= 1000 ? `${numberText(millilitres / 1000, 4)} L` : `${numberText(millilitres, 4)} mL`;

export const sizeText = (millilitres: number): string =>
  millilitres >= 1000 ? `${trimmedNumber(millilitres / 1000, 5)} L` : `${trimmedNumber(millilitres, 5)} mL`;

/** Of one sub-batch, in the digits of its items. */
export const totalText = ({ totalGrams, subBatches, decimals }: PlannedStage): string =>
  `${(totalGrams / subBatches).toFixed(decimals)} g`;

export const totalOfAll = ({ totalGrams, decimals }: PlannedStage): string =>
  `${totalGrams.toFixed(decimals)} g`;

export const stageVolume = ({ totalGrams, subBatches, scaled }: PlannedStage): string =>
  `about ${volumeText(totalGrams / subBatches / scaled.resolved.densityGramsPerMillilitre)}`;

export const stageWhere = ({ vessel, isInBottle }: PlannedStage): string => {
  if (isInBottle) return 'in the bottle';
  return vessel ? `in ${vessel.name === undefined ? '' : 'the '}${vesselWords(vessel)}` : '';
};

/** What is to be known of an item beside its mass. */
export function itemNotes({ about, takesRounding, choice, weighGrams }: WeighedItem): readonly string[] {
  return [
    ...(about.isDrops ? [`${about.typed} in the design, weighed here`] : []),
    ...(takesRounding && about.makesUp ? ['makes up; takes the rounding'] : []),
    ...(takesRounding && !about.makesUp ? ['takes the rounding'] : []),
    ...(choice.isTooSmall && !choice.isAssumed && weighGrams > 0
      ? [`read to ${percent(choice.relativeError)} only`]
      : []),
    ...(about.note === undefined ? [] : [about.note]),
  ];
}

export const percent = (fraction: number, digits = 2): string =>
  Math.abs(fraction) < 5e-7 ? '0 %' : `${trimmedNumber(fraction * 100, digits)} %`;

/** `+0.12 %` */
export const signedPercent = (fraction: number): string =>
  Math.abs(fraction) < 5e-6 ? '0 %' : `${fraction > 0 ? '+' : ''}${percent(fraction)}`;

export const deviationWords = ({ deviation }: BatchPlan): string | undefined =>
  deviation &&
  (Math.abs(deviation.relative) < 5e-6
    ? 'Rounding changes nothing in the finished drink by more than 0.0005 %.'
    : `Rounding changes the finished drink most in ${deviation.substance}: ${signedPercent(deviation.relative)}.`);

/** Sentences that must be read before the work begins. */
export function remarksOf(report: BatchReport): readonly string[] {
  const { plan, request, made, pilot, here } = report;
  const scaledStages = plan.stages;
  const left = leftOut(made, plan);
  const many = scaledStages.filter(({ subBatches, isInBottle }) => subBatches > 1 && !isInBottle);
  return [
    ...(pilot ? [pilot.text] : []),
    ...(left ? [leftOutWords(left)] : []),
    ...(isAsWeighed(report) ? [`Amounts are those that were weighed in ${titleOf(report)}.`] : []),
    ...(request.loss > 0
      ? [`Every stage is made larger by what stays in its vessel, ${percent(request.loss, 4)}.`]
      : []),
    ...(made.stronger && request.strength !== undefined ? [strengthWords(report)] : []),
    ...many.map(
      (stage) =>
        `${stage.scaled.stage.name} is made ${stage.subBatches} times, ${totalText(stage)} each${stage.vessel ? `: the largest vessel is the ${vesselWords(stage.vessel)}` : ''}.`,
    ),
    ...scaledStages
      .filter((stage) => isLarger(stage, request.loss))
      .map(
        ({ scaled }) =>
          `${scaled.stage.name} is made larger than the ${numberText(scaled.neededGrams, 3)} g that are needed, so that the balances can weigh its items; keep or discard the rest.`,
      ),
    ...plan.tooSmall.map(
      ({ stage, item }) =>
        `${item} in ${stage} is less than any balance here weighs within ${here.bench.weighing.written}, and nothing else in ${stage} could carry it: make more at once, or a stock of it.`,
    ),
  ];
}

const isAsWeighed = ({ made: { design } }: BatchReport): boolean =>
  design.card.kind === 'trial' &&
  design.card.stages.some(({ items }) => items.some(({ weighed }) => weighed !== undefined));

/** What the bench could say, for the screen alone. */
export function benchRemarks({ plan, here }: BatchReport): readonly string[] {
  const hasVessels = plan.stages.some(({ vessel }) => vessel !== undefined);
  return [
    ...(hasVessels
      ? []
      : ['The bench names no vessels: nothing is split. Add vessels to bench.yaml, or --vessel "50 L".']),
    ...(here.bench.balances.length === 0
      ? ['The bench names no balances: amounts are to 0.01 g. Add balances to bench.yaml.']
      : []),
  ];
}

/** Larger than what is needed and what stays behind. */
const isLarger = ({ scaled, isInBottle }: PlannedStage, loss: number): boolean =>
  !isInBottle && scaled.exactGrams * (1 - loss) > scaled.neededGrams * 1.001;

/** `syrup at 1.2 times the strength, 1 part to 5 of water` */
function strengthWords({ made, request }: BatchReport): string {
  const { drink } = made.mixture;
  const name = made.stronger?.syrup ?? '';
  const syrup = made.mixture.stages.find((stage) => stage.name === name);
  const used = drink?.items.find((item) => item.name === name);
  const times = trimmedNumber(request.strength ?? 1, 4);
  if (!drink || !syrup || !used) return `The ${name} is ${times} times as strong; the drink stays the same.`;
  const part = used.massGrams / syrup.densityGramsPerMillilitre / drink.volumeMillilitres;
  return `The ${name} is ${times} times as strong: a throw of 1+${trimmedNumber(1 / part - 1, 3)}; the drink stays the same.`;
}

export function ratioWords({ ratio }: BatchPlan): string | undefined {
  return (
    ratio &&
    `Reading the balances moves the ratio of oil to emulsifier in ${ratio.stage} by ${percent(ratio.relative)} at worst.`
  );
}

export function fillingHeading(report: BatchReport): string {
  const { request, bottles, filling } = report;
  const size = sizeText(filling?.millilitres ?? 0);
  const kind = request.isKeg ? 'keg' : 'bottle';
  return bottles === undefined || bottles === 1
    ? `each ${kind} of ${size}`
    : `each of ${bottles} ${kind}s of ${size}`;
}

export function gasNotes({ gas }: Filling): readonly string[] {
  if (!gas) return ['No CO2 is aimed at: with --co2 "3.5 vol" it says what the water must bring.'];
  const celsius = trimmedNumber(gas.temperatureKelvin - 273.15, 4);
  const bar = (pascal: number): string => `${numberText(pascal / 1e5, 2)} bar gauge`;
  return [
    `For ${numberText(gas.drinkVolumes, 2)} volumes of CO2 in the drink the water must bring ${numberText(gas.water.volumes, 3)} volumes (${numberText(gas.water.gramsPerLitre, 3)} g/L): ${bar(gas.water.gaugePressurePascal)} at ${celsius} C, within 4 %. Filling loses some: measure the first bottles.`,
    `The drink itself stands at ${bar(gas.drink.gaugePressurePascal)} at ${celsius} C; sugar presses up to 8 % harder.`,
  ];
}

export function costWords(report: BatchReport): readonly string[] {
  const { cost, litres, bottles } = report;
  const totals = cost.totals.map(({ currency, amount }) =>
    [
      `${money(amount)} ${currency}`,
      `${money(amount / litres)} ${currency}/L`,
      ...(bottles
        ? [`${money(amount / bottles)} ${currency} ${report.request.isKeg ? 'a keg' : 'a bottle'}`]
        : []),
    ].join(', '),
  );
  return [...totals, ...unpricedWords(cost)];
}

export const money = (amount: number): string =>
  amount >= 1 ? amount.toFixed(2) : amount === 0 ? '0' : trimmedNumber(amount, 3);

export function unpricedWords({ unpriced, totals }: Cost): readonly string[] {
  if (unpriced.length === 0) return [];
  const names = unpriced.map(({ ingredient }) => ingredient).join(', ');
  return [totals.length === 0 ? `nothing has a price: ${names}` : `not counted, having no price: ${names}`];
}

/** The recipe of a stock, line by line. */
export function stockLines({ steps, solvent, of }: BatchStock): readonly { text: string; balance: string }[] {
  return steps.flatMap((step) => [
    {
      text: `weigh ${gramsText(step.takeGrams, step.takeDivisionGrams)} of ${step.take === of ? of : step.take}`,
      balance: `${trimmedNumber(step.takeDivisionGrams, 4)} g`,
    },
    {
      text: `add ${gramsText(step.solventGrams, step.solventDivisionGrams)} of ${solvent} and mix: 1 in ${trimmedNumber(1 / step.strength, 4)}`,
      balance: `${trimmedNumber(step.solventDivisionGrams, 4)} g`,
    },
  ]);
}

export const madeFor = ({ target, plan }: BatchReport): string =>
  target.stage === undefined && plan.target.stage.name !== 'drink'
    ? `${target.written} ${plan.target.stage.name}`
    : target.written;

export const titleOf = ({ made: { design } }: BatchReport): string =>
  design.card.kind === 'trial' ? `trial ${design.card.number}` : design.card.name;

export const longTitleOf = ({ made }: BatchReport): string => designWords(made.design);
