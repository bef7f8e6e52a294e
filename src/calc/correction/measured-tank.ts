/** What a tank really holds, from what was measured of it. */

import { type Parsed, parsed, refused } from '../../problem.ts';
import type { Role } from '../../reference/ingredient.ts';
import { isWater } from '../density/blend.ts';
import type { DrinkConditions } from '../drink/stage-figures.ts';
import { type TankItem, type TankReadings, tankReadings, tankStage } from './tank.ts';

/** The readings that were taken. */
export interface Measured {
  readonly brix?: number | undefined;
  /** g/L as citric. */
  readonly acid?: number | undefined;
  /** Moves the buffer salt: give it only where it is further off than a meter is. */
  readonly ph?: number | undefined;
}

export interface MeasuringInput {
  readonly stage: string;
  /** What should be in it, g. */
  readonly items: readonly TankItem[];
  /** What is in it altogether, g. */
  readonly massGrams: number;
  readonly measured: Measured;
  readonly conditions: DrinkConditions;
}

/** g of a role in a g of the item. */
export function shareOf(item: TankItem, isIt: (role: Role) => boolean): number {
  const { source } = item;
  if (source.kind === 'ingredient') {
    const overridden = item.role !== source.entry.record.role;
    if (overridden) return isIt(item.role) ? 1 : 0;
    return source.entry.composition
      .filter(({ substance }) => isIt(substance.record.role))
      .reduce((sum, { massFraction }) => sum + massFraction, 0);
  }
  const stage = source.kind === 'other trial' ? source.stage : undefined;
  return (stage?.substances ?? [])
    .filter(({ role }) => isIt(role))
    .reduce((sum, { massFraction }) => sum + massFraction, 0);
}

/** The place of the item that brings most of a role; -1 where none does. */
export function mostOf(items: readonly TankItem[], role: Role): number {
  let best = -1;
  let most = 0;
  for (const [place, item] of items.entries()) {
    const isRole = role === 'water' && item.source.kind === 'ingredient' ? isWater(item.source.entry) : true;
    const brought = isRole ? item.massGrams * shareOf(item, (one) => one === role) : 0;
    if (brought > most) [best, most] = [place, brought];
  }
  return best;
}

const ROUNDS = 40;
const CLOSE = 1e-11;
/** How far from what should be in it an item may be before the readings are taken for wrong. */
const LEAST = 1e-9;
/** The density of sugar in water ends there (ICUMSA). */
const MOST_BRIX = 85;

/**
 * The items of a tank as they must be for its readings: the sugar, the acid, for a pH the salt, and the water are moved,
 * the rest is as it was written down.
 *
 * Formula   Newton on the masses of sugar, acid and salt, water taking up the rest of the mass
 * Input     items as they should be; mass of the tank; Brix, acid g/L, pH
 * Output    items as they are, g
 * Refuses   a reading of something that the tank has nothing of; readings that no such tank can show
 * Source    conservation of mass, and the readings' own sources
 */
export function measuredTank(input: MeasuringInput): Parsed<readonly TankItem[]> {
  const moved = movedItems(input);
  const fault = faultOf(input, moved);
  if (fault) return fault;
  const tank = tankTried(input, moved);
  let masses = moved.map(({ at }) => input.items[at]?.massGrams ?? 0);
  for (let round = 0; round < ROUNDS; round++) {
    const step = newtonStep(masses, tank.missesAt, input.massGrams);
    if (!step) break;
    masses = step.next;
    if (step.size < CLOSE * input.massGrams) break;
  }
  const found = tank.withMasses(masses);
  const isCovered = (input.measured.brix ?? 0) <= MOST_BRIX;
  if (found && isCovered && tank.missesAt(masses)?.every((miss) => Math.abs(miss) < 1e-6))
    return parsed(found);
  const said = moved.map(({ reading }) => `${reading} ${input.measured[reading]}`).join(' and ');
  return refused(
    'no-such-tank',
    `no tank of ${input.stage} can show ${said}`,
    'check the readings, their units, and the mass in the tank',
  );
}

/** An item that is moved until its reading is met. */
interface Moved {
  readonly at: number;
  readonly reading: 'brix' | 'acid' | 'ph';
  readonly what: 'sugar' | 'acid' | 'salt';
}

const movedItems = ({ items, measured }: MeasuringInput): readonly Moved[] => [
  ...(measured.brix === undefined
    ? []
    : [{ at: mostOf(items, 'sugar'), reading: 'brix', what: 'sugar' } as const]),
  ...(measured.acid === undefined
    ? []
    : [{ at: mostOf(items, 'acid'), reading: 'acid', what: 'acid' } as const]),
  ...(measured.ph === undefined ? [] : [{ at: mostOf(items, 'salt'), reading: 'ph', what: 'salt' } as const]),
];

function faultOf({ items, stage }: MeasuringInput, moved: readonly Moved[]): Parsed<never> | undefined {
  const hint = 'name the stage that the tank holds, such as --stage syrup';
  const absent = moved.find(({ at }) => at < 0);
  if (mostOf(items, 'water') < 0) return refused('no-water', `there is no water in ${stage}`, hint);
  if (!absent) return undefined;
  const { what, reading } = absent;
  return refused('nothing-of-it', `there is no ${what} in ${stage}, so its ${reading} can't be mended`, hint);
}

/** The tank at masses that are tried: water takes up the rest of the mass. */
function tankTried(input: MeasuringInput, moved: readonly Moved[]) {
  const { items, massGrams, measured } = input;
  const waterAt = mostOf(items, 'water');
  const isMoved = new Set([waterAt, ...moved.map(({ at }) => at)]);
  const others = items.reduce((sum, item, place) => (isMoved.has(place) ? sum : sum + item.massGrams), 0);
  const withMasses = (tried: readonly number[]): readonly TankItem[] | undefined => {
    const water = massGrams - others - tried.reduce((sum, mass) => sum + mass, 0);
    if (water <= 0 || tried.some((mass) => mass < 0)) return undefined;
    return items.map((item, place) => {
      const at = moved.findIndex((one) => one.at === place);
      if (at >= 0) return { ...item, massGrams: tried[at] ?? 0 };
      return place === waterAt ? { ...item, massGrams: water } : item;
    });
  };
  const missesAt = (tried: readonly number[]): readonly number[] | undefined => {
    const made = withMasses(tried);
    const shown = made && shownBy(input, made);
    return shown && moved.map(({ reading }) => (shown[reading] ?? Number.NaN) - (measured[reading] ?? 0));
  };
  return { withMasses, missesAt };
}

const shownBy = (
  { stage, conditions }: MeasuringInput,
  items: readonly TankItem[],
): TankReadings | undefined =>
  tankReadings(tankStage(stage, items, conditions.temperatureKelvin), conditions);

type Misses = (tried: readonly number[]) => readonly number[] | undefined;

/** One step of Newton in one, two or three masses, halved until it stays where it can be reckoned. */
function newtonStep(masses: readonly number[], missesAt: Misses, massGrams: number) {
  const here = missesAt(masses);
  if (!here) return undefined;
  const h = 1e-6 * massGrams;
  const columns = masses.map((_, at) =>
    missesAt(masses.map((mass, place) => (place === at ? mass + h : mass))),
  );
  if (columns.some((column) => column === undefined)) return undefined;
  const slope = (row: number, column: number): number =>
    ((columns[column]?.[row] ?? 0) - (here[row] ?? 0)) / h;
  const steps = solved(here, slope);
  if (!steps) return undefined;
  for (let part = 1; part > 1e-4; part /= 2) {
    const next = masses.map((mass, at) => Math.max(LEAST * massGrams, mass - part * (steps[at] ?? 0)));
    if (missesAt(next)) {
      const size = Math.max(...next.map((mass, at) => Math.abs(mass - (masses[at] ?? 0))));
      return { next, size };
    }
  }
  return undefined;
}

/** By elimination, the largest first; undefined where the readings do not tell the masses apart. */
function solved(
  right: readonly number[],
  slope: (row: number, column: number) => number,
): readonly number[] | undefined {
  const rows = right.map((value, row) => [...right.map((_, column) => slope(row, column)), value]);
  for (let at = 0; at < rows.length; at++) {
    const rest = rows.slice(at).toSorted((one, other) => Math.abs(other[at] ?? 0) - Math.abs(one[at] ?? 0));
    rows.splice(at, rest.length, ...rest);
    const pivot = rows[at];
    const head = pivot?.[at] ?? 0;
    if (!pivot || head === 0) return undefined;
    for (const [place, row] of rows.entries()) {
      if (place === at) continue;
      const share = (row[at] ?? 0) / head;
      rows[place] = row.map((value, column) => value - share * (pivot[column] ?? 0));
    }
  }
  return rows.map((row, at) => (row.at(-1) ?? 0) / (row[at] ?? 1));
}
