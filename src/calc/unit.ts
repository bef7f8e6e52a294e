/** Units by the words typed for them, and the way to the inner unit and back. */

import { type UnitFactor, unitFactors } from '../reference/unit-factors.ts';
import type { Dimension } from './quantity.ts';

export interface Unit extends UnitFactor {
  readonly dimension: Dimension;
}

export const units: readonly Unit[] = unitFactors;

const bySymbol: ReadonlyMap<string, Unit> = new Map(units.map((unit) => [unit.symbol, unit]));
const bySpelling: ReadonlyMap<string, Unit> = new Map(
  units.flatMap((unit) => spellingsOf(unit).map((spelling): [string, Unit] => [spelling, unit])),
);

function spellingsOf(unit: Unit): readonly string[] {
  const typed = [unit.symbol, ...(unit.spellings ?? [])];
  const small = typed.filter((text) => text.startsWith('US ')).map((text) => `us ${text.slice(3)}`);
  return [...typed, ...small];
}

/** The unit of a canonical symbol; prices such as `EUR/kg` included. */
export function unitNamed(symbol: string): Unit | undefined {
  return bySymbol.get(symbol) ?? priceUnit(symbol);
}

/**
 * The unit that a person means by a text.
 *
 * Input     the text of a unit alone: a symbol or one of the spellings people type, `ml`, `µg/l`, `°C`, `EUR/kg`
 * Output    the unit, or undefined where the text is no unit
 */
export function unitTyped(text: string): Unit | undefined {
  const plain = text.replace(/[µμ]/gu, 'u').replaceAll('³', '3').replaceAll('₃', '3').replace(/\s+/gu, ' ');
  return bySpelling.get(plain) ?? quotientUnit(plain) ?? priceUnit(plain);
}

function quotientUnit(text: string): Unit | undefined {
  const [above = '', below = '', more] = text.split('/');
  if (more !== undefined || below === '') return undefined;
  const [denominator = '', ...words] = below.split(' ');
  const symbol = [`${partSymbol(above)}/${partSymbol(denominator)}`, ...words].join(' ');
  return bySymbol.get(symbol);
}

const partSymbol = (part: string): string => bySpelling.get(part)?.symbol ?? part;

function priceUnit(text: string): Unit | undefined {
  const match = /^([A-Z]{3})\/(.+)$/u.exec(text);
  const [, currency = '', word = ''] = match ?? [];
  const per = bySpelling.get(word);
  if (!match || (per?.dimension !== 'mass' && per?.dimension !== 'volume')) return undefined;
  const dimension = per.dimension === 'mass' ? 'price per mass' : 'price per volume';
  return { symbol: `${currency}/${per.symbol}`, dimension, times: per.per, per: per.times };
}

/** Formula   inner = (value + offset) * times / per */
export function toInner(value: number, unit: Unit): number {
  return ((value + (unit.offset ?? 0)) * unit.times) / unit.per;
}

/**
 * An inner figure in a unit: the way back from `Quantity.inner`.
 *
 * Formula   value = inner * per / times - offset
 * Input     the figure in the inner unit of the dimension; the canonical symbol of a unit
 * Output    the figure in that unit
 * Refuses   a symbol that is no unit (a defect of the caller)
 * Example   inUnit(0.0045, 'g/L') -> 4.5
 */
export function inUnit(inner: number, unitSymbol: string): number {
  const unit = unitNamed(unitSymbol);
  if (!unit) throw new Error(`"${unitSymbol}" is not the symbol of a unit`);
  return (inner * unit.per) / unit.times - (unit.offset ?? 0);
}
