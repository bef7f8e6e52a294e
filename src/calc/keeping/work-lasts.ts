/** The answer of `lasts`. */

import { fail } from '../../problem.ts';
import { acidOnlyUpTo } from '../../reference/kinetics.ts';
import { answered } from '../answered.ts';
import type { PlainFound, Worked } from '../calculator.ts';
import type { LastsGiven } from '../calculators/lasts.ts';
import { numberText, trimmedNumber } from '../number-text.ts';
import type { Working } from '../working.ts';
import type { OtherConditions } from './conditions-field.ts';
import { sayLastsCautions } from './lasts-cautions.ts';
import { type Law, lawOf } from './law.ts';
import { type Conditions, halfLifeDays, type Rate } from './rate.ts';

export { lastsOfTrial } from './lasts-of-trial.ts';

const secondsInDay = 86_400;
const usualKelvin = 298.15;
const usualLoss = 0.1;
const ICE_POINT_KELVIN = 273.15;

export function workLasts(given: LastsGiven, working: Working): Worked {
  const { substance } = given;
  if (!substance)
    return fail(
      'missing',
      'nothing is named that could be lost',
      'name it, such as lasts "ethyl butyrate" --ph 3',
    );
  const law = lawOf(substance, given, working);
  const here = conditionsOf(given, law);
  const rate = answered(law.rateAt(here));
  sayWorking(working, { law, here, rate });
  sayLastsCautions(working, { law, here, given });
  if (law.kind === 'polysorbate') return polysorbate(given, substance.name, rate, here);
  const against = given.against && compared(given.against, { law, here, rate });
  const ratio = against ? `: ${leadOf(against.ratio, given.against?.written ?? '')}` : '.';
  return {
    lead: `At ${conditionWords(law, here)}${ratio}`,
    found: {
      substance: substance.name,
      ...life(rate, lossOf(given)),
      ...leftOf(given, { law, here, rate }),
      ...(against?.found ?? {}),
      ...(law.activation === undefined ? {} : { activation: law.activation }),
      ...(given.stage.length > 0 ? { stages: stageRows(given, { law, here, rate }) } : {}),
    },
  };
}

interface Setting {
  readonly law: Law;
  readonly here: Conditions;
  readonly rate: Rate;
}

function conditionsOf(given: LastsGiven, law: Law): Conditions {
  if (given.ph === undefined && law.knowsPh)
    return fail('missing', '--ph is needed', 'give the pH of the drink or syrup, such as --ph 3.1');
  return {
    ph: given.ph ?? 7,
    temperatureKelvin: given.temperature?.inner ?? usualKelvin,
    sugarShare: given.sugar?.inner,
  };
}

function lossOf({ loss }: LastsGiven): number {
  const share = loss?.inner ?? usualLoss;
  if (share > 0 && share < 1) return share;
  return fail(
    'outside-range',
    `"${loss?.written}" is no part of it`,
    'give --loss between 0 and 100 %, such as 10 %',
  );
}

function life({ perSecond, factor }: Rate, loss: number): PlainFound {
  const half = halfLifeDays(perSecond);
  const toLoss = -Math.log(1 - loss) / perSecond / secondsInDay;
  return {
    halfLifeDays: half,
    halfLifeLow: half / factor,
    halfLifeHigh: half * factor,
    lossShare: loss,
    daysToLoss: toLoss,
    daysToLossLow: toLoss / factor,
    daysToLossHigh: toLoss * factor,
  };
}

/** What is left after a time, or after a plan of storage leg by leg. */
function leftOf(given: LastsGiven, { law, here, rate }: Setting): PlainFound {
  const legs = given.plan.flat();
  if (legs.length > 0 && given.after)
    return fail('given-twice', 'both --after and --plan are given', 'give one of them');
  if (legs.length === 0) return given.after ? remaining(rate.perSecond * given.after.inner, rate.factor) : {};
  let lost = 0;
  let factor = 1;
  const rows = legs.map(({ seconds, temperatureKelvin, written }) => {
    const one = answered(law.rateAt({ ...here, temperatureKelvin }));
    lost += one.perSecond * seconds;
    factor = Math.max(factor, one.factor);
    return { leg: written, lost: -Math.expm1(-one.perSecond * seconds), remaining: Math.exp(-lost) };
  });
  return { ...remaining(lost, factor), legs: rows };
}

const remaining = (exponent: number, factor: number): PlainFound => ({
  remaining: Math.exp(-exponent),
  remainingLow: Math.exp(-exponent * factor),
  remainingHigh: Math.exp(-exponent / factor),
});

/** Conditions that differ from those here in what they say. */
const withOther = (here: Conditions, other: OtherConditions): Conditions => ({
  ph: other.ph ?? here.ph,
  temperatureKelvin: other.temperatureKelvin ?? here.temperatureKelvin,
  sugarShare: other.sugarShare ?? here.sugarShare,
});

function compared(other: OtherConditions, { law, here, rate }: Setting) {
  if (!law.knowsPh && other.ph !== undefined)
    return fail(
      'no-constants',
      'your own figures hold at the pH at which they were measured',
      'compare temperatures only, or measure at the other pH too',
    );
  const there = withOther(here, other);
  const ratio = rate.perSecond / answered(law.rateAt(there)).perSecond;
  const [low, high] = law.ratioBand(there.temperatureKelvin, here.temperatureKelvin);
  return { ratio, found: { rateRatio: ratio, rateRatioLow: ratio * low, rateRatioHigh: ratio * high } };
}

const leadOf = (ratio: number, written: string): string =>
  ratio < 1
    ? `${numberText(1 / ratio, 2)} times slower than at ${written}.`
    : `${numberText(ratio, 2)} times as fast as at ${written}.`;

function stageRows(given: LastsGiven, { law, here, rate }: Setting) {
  return given.stage.map((stage) => {
    const there = withOther(here, stage);
    const one = law.rateAt(there);
    const seconds = given.after?.inner;
    return {
      stage: stage.name,
      ph: law.knowsPh ? there.ph : null,
      temperature: there.temperatureKelvin - ICE_POINT_KELVIN,
      halfLifeDays: one.ok ? halfLifeDays(one.value.perSecond) : null,
      remaining: one.ok && seconds !== undefined ? Math.exp(-one.value.perSecond * seconds) : null,
      rateRatio: one.ok ? one.value.perSecond / rate.perSecond : null,
      note: one.ok ? '' : there.ph > acidOnlyUpTo ? 'too little acid' : one.fault.message,
    };
  });
}

/** Never a figure: months to years, with the ends of the class estimate. */
function polysorbate(
  { against, after, plan, loss }: LastsGiven,
  name: string,
  { perSecond, factor }: Rate,
  { ph }: Conditions,
): Worked {
  const half = halfLifeDays(perSecond);
  const isAcid = ph <= 3;
  const isAskedMore = against || after || plan.length > 0 || loss;
  const more = isAskedMore ? 'No comparison, rest or loss of it is told: only this. ' : '';
  return {
    lead: `Months to years at room temperature, faster below pH 3. ${more}${isAcid ? 'Half is lost, by an estimate from its kind of molecule that may be four times off either way:' : 'Above pH 3 only the soonest can be told, half lost:'}`,
    found: {
      substance: name,
      halfLifeDays: null,
      halfLifeLow: half / factor,
      halfLifeHigh: isAcid ? half * factor : null,
    },
  };
}

/** `pH 3.1, 4 C`, with the sugar where it counts. */
function conditionWords(law: Law, { ph, temperatureKelvin, sugarShare }: Conditions): string {
  const celsius = `${trimmedNumber(temperatureKelvin - ICE_POINT_KELVIN, 3)} C`;
  if (!law.knowsPh) return celsius;
  const sugar =
    law.kind === 'sucrose' && sugarShare !== undefined
      ? `, ${trimmedNumber(sugarShare * 100, 2)} % of sugar`
      : '';
  return `pH ${trimmedNumber(ph, 3)}, ${celsius}${sugar}`;
}

function sayWorking(working: Working, { law, here, rate }: Setting): void {
  const where = conditionWords(law, here);
  const equations: Readonly<Record<Law['kind'], string>> = {
    ester: 'k = (kA x 10^-pH + kN + kB x 10^(pH - 14)) x exp[-(E/R)(1/T - 1/298.15)]',
    sucrose: 'log10 k (1/min) = 16.91 + log10(water per litre, kg) - 5670/T - pH',
    polysorbate: 'k = kA x 10^-pH, as the class of esters; never shown as one figure',
    own: 'k = -ln(left)/time, straight in 1/T',
  };
  working.line(equations[law.kind], `${where}: ${numberText(rate.perSecond * secondsInDay, 4)} a day`);
  if (law.kind !== 'polysorbate')
    working.line(
      'half-life = ln 2 / k',
      `${numberText(halfLifeDays(rate.perSecond), 4)} d, ${trimmedNumber(rate.factor)} times either way`,
    );
}
