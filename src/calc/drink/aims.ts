/** Whether a drink meets what was aimed at. */

import { aimTolerances } from '../../reference/aim-tolerances.ts';
import { lookUp } from '../../reference/look-up.ts';
import { numberText, trimmedNumber } from '../number-text.ts';
import type { Bound, Range } from '../range.ts';
import { type AimValue, aimValue } from './aim-value.ts';
import type { FinishedDrink } from './finished-drink.ts';

export interface Aim {
  readonly name: string;
  readonly range?: Range | undefined;
}

export interface JudgedAim {
  readonly name: string;
  readonly state: 'met' | 'missed' | 'to measure' | 'given';
  /** In the unit of the aim; absent where it can't be reckoned. */
  readonly value?: number;
  readonly low?: number;
  readonly high?: number;
  readonly unit: string;
  /** Below 0: under the aim; above 0: over it. */
  readonly by?: number;
  /** Why it can't be reckoned. */
  readonly why?: string;
  /** The tolerance that was taken for a bare figure. */
  readonly tolerance?: string;
}

/** Not judged: they say how the drink is served. */
const given: readonly string[] = ['serving', 'temperature'];

/**
 * An aim beside the drink.
 *
 * Formula   met where low <= value <= high; a bare figure gets the default tolerance of its kind on both sides
 * Input     the aim; the finished drink
 * Output    state, value and sides in the unit of the aim, how far it is missed
 * Source    default tolerances: common practice, no source
 * Example   acid 4.3 to 4.7 g/L where the drink has 4.05 g/L -> missed by -0.25 g/L
 */
export function judgeAim(aim: Aim, drink: FinishedDrink): JudgedAim {
  const { name, range } = aim;
  const bound = range?.exact ?? range?.low ?? range?.high;
  if (!range || !bound) return { name, state: 'to measure', unit: '', why: 'it is for the eye' };
  const unit = bound.unit;
  if (given.includes(name)) return { name, state: 'given', unit };
  const found = aimValue(name, bound, drink);
  const sides = sidesOf(name, range);
  if ('why' in found) return { name, state: 'to measure', unit, why: found.why, ...sides };
  return { name, unit, ...sides, ...judged(found, bound, sides) };
}

interface Sides {
  readonly low?: number;
  readonly high?: number;
  readonly tolerance?: string;
}

/** Both in the unit of the aim as typed. */
function sidesOf(name: string, { exact, low, high }: Range): Sides {
  if (!exact) {
    const unit = (low ?? high)?.unit ?? '';
    const of = (bound: Bound | undefined): number | undefined =>
      bound && (bound.unit === unit ? bound.value : bound.inner / (innerPerUnit(low ?? high) || 1));
    const [least, most] = [of(low), of(high)];
    return { ...(least === undefined ? {} : { low: least }), ...(most === undefined ? {} : { high: most }) };
  }
  const tolerance = toleranceOf(name);
  const width =
    'relative' in tolerance ? exact.value * tolerance.relative : tolerance.absolute / innerPerUnit(exact);
  return { low: exact.value - width, high: exact.value + width, tolerance: tolerance.words };
}

function toleranceOf(
  name: string,
):
  | { readonly relative: number; readonly words: string }
  | { readonly absolute: number; readonly words: string } {
  return name !== 'substance' && isTolerance(name) ? aimTolerances[name] : aimTolerances.substance;
}

const isTolerance = (name: string): name is keyof typeof aimTolerances => Object.hasOwn(aimTolerances, name);

/** Inner units in one unit of the figure as typed; 1 for a bare number. */
export const innerPerUnit = (bound: Bound | undefined): number =>
  bound && bound.dimension !== 'number' && bound.value !== 0 ? bound.inner / bound.value : 1;

/** Rounding of a typed figure is no miss. */
const CLOSE = 1e-9;

function judged(
  { inner }: AimValue,
  bound: Bound,
  { low = Number.NEGATIVE_INFINITY, high = Number.POSITIVE_INFINITY }: Sides,
): Pick<JudgedAim, 'state' | 'value' | 'by'> {
  const value = inner / innerPerUnit(bound);
  const allowed = CLOSE * Math.max(1, Math.abs(value));
  if (value < low - allowed) return { state: 'missed', value, by: value - low };
  if (value > high + allowed) return { state: 'missed', value, by: value - high };
  return { state: 'met', value };
}

/** `4.05 g/L`, with as many digits as its kind is worth. */
export function aimFigure(aim: Pick<JudgedAim, 'name' | 'unit'>, value: number): string {
  const text = aim.name === 'ph' ? value.toFixed(2) : numberText(value, aim.name === 'density' ? 5 : 3);
  return aim.unit === '' ? text : `${text} ${aim.unit}`;
}

/** `acid comes to 4.05 g/L, 0.25 g/L under the aim` */
export function missedWords(aim: JudgedAim): string {
  const value = aim.value ?? 0;
  const by = aim.by ?? 0;
  const amount = `${trimmedNumber(Math.abs(by), 2)}${aim.unit === '' ? '' : ` ${aim.unit}`}`;
  return `${aimWords(aim.name)} comes to ${aimFigure(aim, value)}, ${amount} ${by < 0 ? 'under' : 'over'} the aim`;
}

export const aimWords = (name: string): string =>
  lookUp({ ph: 'pH', brix: 'Brix', co2: 'CO2', 'brix acid ratio': 'Brix-acid ratio' }, name) ?? name;

/** `4.3 to 4.7 g/L`, `at least 2.9` */
export function aimRangeText({ low, high, unit }: JudgedAim): string {
  const text = (value: number): string => trimmedNumber(value, 4);
  const after = unit === '' ? '' : ` ${unit}`;
  if (low !== undefined && high !== undefined) return `${text(low)} to ${text(high)}${after}`;
  if (low !== undefined) return `at least ${text(low)}${after}`;
  return high === undefined ? '' : `at most ${text(high)}${after}`;
}
