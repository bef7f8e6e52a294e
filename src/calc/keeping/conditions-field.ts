/** Conditions in words: `ph 2.7, 22 C`, with a name before them for a stage, and legs of storage. */

import { type Parsed, parsed, refused } from '../../problem.ts';
import { type Field, fieldOfOne, several } from '../fields.ts';
import { parseNumber } from '../number.ts';
import { parseQuantity } from '../parse-quantity.ts';

/** What differs from the conditions of the answer. */
export interface OtherConditions {
  readonly ph?: number;
  readonly temperatureKelvin?: number;
  readonly sugarShare?: number;
  readonly written: string;
}

export interface NamedConditions extends OtherConditions {
  readonly name: string;
}

/**
 * Input     `ph 2.7`, a temperature, `40 % sugar`, with commas, in any order
 * Refuses   anything else; one of them twice; nothing
 * Example   parseConditions('ph 2.7, 22 C')
 */
export function parseConditions(text: string): Parsed<OtherConditions> {
  const found: { ph?: number; temperatureKelvin?: number; sugarShare?: number } = {};
  for (const part of text.split(/,|;/u).map((one) => one.trim())) {
    const one = conditionOf(part);
    if (!one.ok) return one;
    const [key, value] = one.value;
    if (found[key] !== undefined)
      return refused('given-twice', `"${text}" says it twice`, 'give one pH and one temperature');
    found[key] = value;
  }
  return parsed({ ...found, written: text.trim() });
}

function conditionOf(part: string): Parsed<readonly ['ph' | 'temperatureKelvin' | 'sugarShare', number]> {
  const [, ph] = /^ph\s*[:=]?\s*(.+)$/iu.exec(part) ?? [];
  if (ph !== undefined) {
    const value = parseNumber(ph);
    return value.ok ? parsed(['ph', value.value]) : value;
  }
  const [, sugar] = /^(.+?)\s+(?:sugar|sucrose)$/iu.exec(part) ?? [];
  const quantity = parseQuantity(sugar ?? part, sugar === undefined ? ['temperature'] : ['share']);
  if (quantity.ok)
    return parsed([sugar === undefined ? 'temperatureKelvin' : 'sugarShare', quantity.value.inner]);
  return refused(
    'not-conditions',
    `"${part}" is neither a pH nor a temperature`,
    'write such as "ph 2.7, 22 C", with commas between',
  );
}

export const conditionsField = ({ help }: { readonly help: string }): Field<OtherConditions | undefined> =>
  fieldOfOne<OtherConditions>(
    { help, placeholder: 'CONDITIONS', isAmount: false },
    parseConditions,
    ({ written }) => written,
    basisOf,
  );

export const stagesField = ({ help }: { readonly help: string }): Field<readonly NamedConditions[]> =>
  several<NamedConditions>(
    { help, placeholder: 'STAGE', isAmount: false },
    (text) => {
      const [, name, rest] = /^([^:]+):(.+)$/u.exec(text) ?? [];
      if (name === undefined || rest === undefined)
        return refused(
          'no-name',
          `"${text}" has no name before its conditions`,
          'write "syrup: ph 1.9, 22 C"',
        );
      const conditions = parseConditions(rest);
      return conditions.ok ? parsed({ ...conditions.value, name: name.trim() }) : conditions;
    },
    (stages) => stages.map(({ name, written }) => `${name}: ${written}`),
    (stage) => `${stage.name}: ${basisOf(stage)}`,
  );

const basisOf = ({ ph, temperatureKelvin, sugarShare }: OtherConditions): string =>
  [ph, temperatureKelvin, sugarShare].map((one) => one?.toPrecision(10) ?? '').join(' ');

/** So long at a temperature. */
export interface StorageLeg {
  readonly seconds: number;
  readonly temperatureKelvin: number;
  readonly written: string;
}

/**
 * Input     `4 wk at 22 C`, several with commas
 * Example   parseLegs('4 wk at 22 C, 26 wk at 4 C')
 */
export function parseLegs(text: string): Parsed<readonly StorageLeg[]> {
  const legs: StorageLeg[] = [];
  for (const part of text.split(/,|;|\bthen\b/u).map((one) => one.trim())) {
    const [, time = '', warmth = ''] = /^(.+?)\s+at\s+(.+)$/iu.exec(part) ?? [];
    const [seconds, temperature] = [parseQuantity(time, ['time']), parseQuantity(warmth, ['temperature'])];
    if (!seconds.ok || !temperature.ok)
      return refused(
        'not-a-plan',
        `"${part}" is no time at a temperature`,
        'write "4 wk at 22 C, 26 wk at 4 C"; times in d or wk',
      );
    legs.push({ seconds: seconds.value.inner, temperatureKelvin: temperature.value.inner, written: part });
  }
  return parsed(legs);
}

export const planField = ({ help }: { readonly help: string }): Field<readonly (readonly StorageLeg[])[]> =>
  several<readonly StorageLeg[]>(
    { help, placeholder: 'PLAN', isAmount: false },
    parseLegs,
    (plans) => plans.flat().map(({ written }) => written),
    (legs) => legs.map(({ seconds, temperatureKelvin }) => `${seconds} ${temperatureKelvin}`).join(' '),
  );
