/** What is typed for a tasting, checked: how many right of how many, the risk, what is to be found. */

import { fail } from '../../problem.ts';
import { numberField, quantityField } from '../fields.ts';
import { trimmedNumber } from '../number-text.ts';
import type { Quantity } from '../quantity.ts';
import { wordField } from './word-field.ts';

/** Common practice, no source: the figures that a tasting is judged by where nobody says others. */
export const usual = { risk: 0.05, share: 0.3, power: 0.9 } as const;

export const mostTyped = 100_000;

export const choiceFields = {
  right: numberField({ help: 'how many were right', placeholder: 'N' }),
  of: numberField({ help: 'of how many tastings', placeholder: 'N' }),
  risk: quantityField({
    help: 'chance of seeing a difference where there is none; 5 % if left out',
    accepts: ['share'],
    placeholder: 'SHARE',
  }),
  find: quantityField({
    help: 'a difference that such a share can tell, to be found; 30 % if left out',
    accepts: ['share'],
    placeholder: 'SHARE',
  }),
  power: quantityField({
    help: 'the chance with which it is to be found; 90 % if left out',
    accepts: ['share'],
    placeholder: 'SHARE',
  }),
  against: wordField({ help: 'what it was tasted against, such as a trial', placeholder: 'TRIAL' }),
};

export interface TypedChoice {
  readonly right: number | undefined;
  readonly of: number | undefined;
  readonly risk: Quantity | undefined;
  readonly find: Quantity | undefined;
  readonly power: Quantity | undefined;
}

export interface ChoiceInputs {
  readonly right: number | undefined;
  readonly tastings: number | undefined;
  readonly risk: number;
  readonly share: number;
  readonly power: number;
}

/** Refuses: parts of a tasting, more right than tasted, right without of; a risk, share or power that can't be. */
export function readChoice(typed: TypedChoice): ChoiceInputs {
  const { right, of, find, power } = typed;
  if (right === undefined && of === undefined && !find && !power)
    return fail('missing', 'nothing is given', 'give --right 9 --of 15, or --find 30% alone');
  if (right !== undefined && of === undefined)
    return fail('missing', `--right ${trimmedNumber(right)} is of how many?`, 'add --of and the tastings');
  if (of !== undefined) wholeNumber('--of', of, 1);
  if (right !== undefined) wholeNumber('--right', right, 0);
  if (right !== undefined && of !== undefined && right > of)
    return fail('out-of-range', `${right} right of ${of} can't be`, 'look whether the two are swapped');
  return {
    right,
    tastings: of,
    risk: shareBetween('--risk', typed.risk, usual.risk, { high: 0.5, such: '5%' }),
    share: shareBetween('--find', find, usual.share, { high: 1, withHigh: true, such: '30%' }),
    power: shareBetween('--power', power, usual.power, { high: 1, such: '90%' }),
  };
}

/** Refuses fractions, what is too small, and more than `mostTyped`. */
export function wholeNumber(option: string, value: number, least: number): number {
  if (!Number.isInteger(value))
    return fail('not-whole', `${option} ${value} is no whole number`, 'count the tastings');
  if (value < least)
    return fail('out-of-range', `${option} ${value} is too few`, `give ${option} ${least} or more`);
  if (value > mostTyped)
    return fail('out-of-range', `${option} ${value} is more than ${mostTyped}`, 'look for a digit too many');
  return value;
}

interface Bounds {
  readonly high: number;
  readonly withHigh?: boolean;
  readonly such: string;
}

function shareBetween(option: string, typed: Quantity | undefined, usually: number, bounds: Bounds): number {
  const value = typed?.inner ?? usually;
  const { high, withHigh = false, such } = bounds;
  if (value > 0 && (value < high || (withHigh && value === high))) return value;
  const side = withHigh ? 'at most' : 'below';
  return fail(
    'out-of-range',
    `${option} ${typed?.written ?? value} can't be`,
    `give a share above 0 and ${side} ${trimmedNumber(high * 100)} %, such as ${option} ${such}`,
  );
}
