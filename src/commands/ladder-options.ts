/** What a ladder varies, where its rungs go and what is kept, as typed. */

import { type Making, makingSpans } from '../calc/ladder/priors.ts';
import { trimmedNumber } from '../calc/number-text.ts';
import type { Amount } from '../calc/quantity.ts';
import type { Kept } from '../calc/rungs/ratio-masses.ts';
import {
  listParts,
  parseRungAmounts,
  parseRungNumber,
  parseRungRatio,
  rangeEnds,
} from '../calc/rungs/read-rungs.ts';
import { equalFactors, equalSteps, firstRungs } from '../calc/rungs/spaced.ts';
import { inUnit } from '../calc/unit.ts';
import type { RungValue } from '../ledger/ladder-vary.ts';
import { isSameName } from '../ledger/stage-name.ts';
import { isOilPerEmulsifier, readVaried, type Varied } from '../ledger/varied.ts';
import { type Fault, fail, type Parsed, ProblemError, parsed, refused } from '../problem.ts';
import { nearestNames, normaliseName } from '../reference/name.ts';
import { type Call, optionValue } from './command.ts';

export interface VariedTyped {
  readonly varied: Varied;
  /** Typed the other way up: emulsifier per oil. */
  readonly isTurned: boolean;
}

/** Oil per emulsifier, where nothing is said. */
export function variedTyped(call: Call): VariedTyped {
  const text = (optionValue(call, 'vary') ?? 'oil per emulsifier').trim();
  const [varied, second] = readVaried(text);
  if (!varied) return fail('nothing-varied', '--vary is empty', 'write --vary "oil per emulsifier"');
  if (second) {
    const hint = `make a ladder of one of them for each value of the other: --vary "${varied.text}"`;
    return fail('two-varied', `"${text}" are two things, and a ladder varies one`, hint);
  }
  return { varied, isTurned: /^emulsifier\s+per\s+oil$/iu.test(normaliseName(text)) };
}

/** Values going up, and why they stand where they do. */
export interface RungsTyped {
  readonly values: readonly RungValue[];
  readonly why: string;
}

/** Rungs that are wanted where nobody says how many. */
export const usualRungs = 6;
const mostRungs = 40;

export interface RungsAsked extends VariedTyped {
  readonly call: Call;
  /** How it is made: by its steps, unless `--making` says otherwise. */
  readonly making: Making;
}

/** The rungs of `--rungs`, of `--range`, or those that a beginning takes; refused with the option that is wrong. */
export function rungsTyped(asked: RungsAsked): RungsTyped {
  const { call } = asked;
  const [list, range] = [optionValue(call, 'rungs'), optionValue(call, 'range')];
  const count = countTyped(call);
  if (list !== undefined && range !== undefined)
    fail('usage', '--rungs and --range are both given', 'give the list or the two ends');
  if (list !== undefined && count !== undefined)
    fail('usage', '--count goes with --range', 'leave it out: the list says how many');
  if (list !== undefined) return listed(list, asked);
  if (range !== undefined) return between(range, count ?? usualRungs, asked);
  return beginning(count ?? usualRungs, asked);
}

function countTyped(call: Call): number | undefined {
  const typed = optionValue(call, 'count');
  if (typed === undefined) return undefined;
  const count = Number(typed);
  if (!/^\d+$/u.test(typed.trim()) || count < 2 || count > mostRungs)
    fail('usage', `--count ${typed} is no number of rungs`, `write 2 to ${mostRungs}`);
  return count;
}

function listed(text: string, asked: RungsAsked): RungsTyped {
  const parts = orFail('--rungs', listParts(text));
  const values = orFail('--rungs', valuesOf(parts, asked));
  if (values.length < 2)
    fail('one-rung', '--rungs has one rung', 'give two or more; neckring new --from copies a single trial');
  if (values.length > mostRungs)
    fail('usage', `--rungs has ${values.length} rungs`, `give ${mostRungs} at most`);
  return { values: sorted(values), why: 'as typed' };
}

function between(text: string, count: number, asked: RungsAsked): RungsTyped {
  const ends = orFail('--range', rangeEnds(text));
  const [one = 0, other = 0] = sorted(orFail('--range', valuesOf(ends, asked)));
  const [low, high] = [figureOf(one), figureOf(other)];
  if (low === high) fail('one-rung', `--range ${text} begins where it ends`, 'give two different ends');
  const byFactor = asked.varied.kind === 'ratio' || (typeof one !== 'number' && low > 0 && high > low * 10);
  const steps = byFactor ? equalFactors({ low, high, count }) : equalSteps({ low, high, count });
  const values = steps.map((figure, at) =>
    at === 0 ? one : at === count - 1 ? other : typeof one === 'number' ? figure : amountOf(one, figure),
  );
  const each = (high / low) ** (1 / (count - 1));
  const why = byFactor
    ? `${count} rungs in equal steps of the logarithm, each ${trimmedNumber(each, 3)} times the one before`
    : `${count} rungs in equal steps`;
  return { values, why };
}

/** Rungs where nothing is known yet. */
function beginning(count: number, { varied, making, call }: RungsAsked): RungsTyped {
  if (!isOilPerEmulsifier(varied)) {
    const example =
      varied.kind === 'amount' ? '"2 g, 4 g, 6 g"' : varied.kind === 'ratio' ? '"1:4, 1:2"' : '"10, 12, 14"';
    return fail(
      'no-rungs',
      `nothing says where the rungs of ${varied.text} go`,
      `write --rungs ${example}, or --range with two ends`,
    );
  }
  const { lowRatio, highRatio, why } = makingSpans[making];
  const from = optionValue(call, 'making') === undefined ? 'by its steps' : 'by --making';
  return {
    values: firstRungs({ low: lowRatio, high: highRatio, count }),
    why: `${why}; this one is ${making} ${from}. The ${count} rungs divide that span evenly (common practice, no source)`,
  };
}

function valuesOf(parts: readonly string[], { varied, isTurned }: RungsAsked): Parsed<readonly RungValue[]> {
  if (varied.kind === 'amount') return parseRungAmounts(parts);
  const values: number[] = [];
  for (const part of parts) {
    const value = varied.kind === 'ratio' ? parseRungRatio(part, isTurned) : parseRungNumber(part);
    if (!value.ok) return value;
    values.push(value.value);
  }
  return parsed(values);
}

export const figureOf = (value: RungValue): number =>
  typeof value === 'number' ? value : value.quantity.inner;

const sorted = (values: readonly RungValue[]): readonly RungValue[] =>
  [...values].sort((one, other) => figureOf(one) - figureOf(other));

/** An amount of the same kind, to three digits. */
export function amountOf(like: Amount, inner: number): Amount {
  const { unit } = like.quantity;
  const value = Number(inUnit(inner, unit).toPrecision(3));
  const factor =
    like.quantity.value === 0 ? inner / inUnit(inner, unit) : like.quantity.inner / like.quantity.value;
  const words = `${trimmedNumber(value, 12)} ${unit}`;
  const quantity = { ...like.quantity, value, inner: value * factor, written: words };
  return { ...like, quantity, written: like.inDrink ? `${words} in drink` : words };
}

/** One value, as `--control` gives it. */
export function oneValue(option: string, text: string, asked: RungsAsked): RungValue {
  const [value = 0] = orFail(option, valuesOf([text], asked));
  return value;
}

export function orFail<T>(option: string, value: Parsed<T>): T {
  if (value.ok) return value.value;
  const { code, message, hint }: Fault = value.fault;
  throw new ProblemError([{ code, severity: 'error', message: `${option}: ${message}`, hint }]);
}

/** How it is made, where the person says so. */
export function makingTyped(call: Call): Making | undefined {
  const typed = optionValue(call, 'making')?.trim().toLowerCase();
  if (typed === undefined) return undefined;
  if (typed === 'stirred' || typed === 'homogenised') return typed;
  return fail('usage', `--making ${typed} is not known`, 'write stirred or homogenised');
}

/**
 * What keeps its mass.
 * Input     the words of `--same`; what is varied; the names of the items
 * Refuses   both sides of a ratio; a name that is not in the stage, nor one of the words
 */
export function keptOf(same: readonly string[], varied: Varied, names: readonly string[]): Parsed<Kept> {
  const words = same.map((text) => text.trim());
  const sides = varied.kind === 'ratio' ? [varied.over, varied.under] : [];
  const known = [...sides, 'batch', 'oil', 'emulsifier', ...names];
  const unknown = words.find((word) => !known.some((name) => isSameName(name, word)));
  if (unknown !== undefined) {
    const [near] = nearestNames(unknown, known, 1);
    return refused(
      'unknown-kept',
      `"${unknown}" is nothing that could be kept`,
      near === undefined ? `write ${sides.join(', ') || 'batch'} or batch` : `did you mean ${near}?`,
    );
  }
  if (varied.kind !== 'ratio') return parsed('under');
  const has = (name: string): boolean => words.some((word) => isSameName(word, name));
  if (has(varied.over) && has(varied.under)) {
    const message = `${varied.over} and ${varied.under} are both kept, so nothing is left to vary`;
    return refused('all-kept', message, 'keep one of them');
  }
  if (has(varied.over)) return parsed('over');
  return parsed(has('batch') && !has(varied.under) ? 'both' : 'under');
}
