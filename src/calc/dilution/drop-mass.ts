/** The mass of a drop from counted drops on a balance. */

import { type Parsed, parsed, refused } from '../../problem.ts';
import { parseNumber } from '../number.ts';
import { parseQuantity } from '../parse-quantity.ts';
import { studentWithin } from '../statistics/student.ts';

/** `0.612 g / 20` */
export interface DropWeighing {
  readonly grams: number;
  readonly drops: number;
}

/**
 * Counted drops and what they weigh.
 *
 * Input     `0.612 g / 20`, `0.612 g of 20 drops`
 * Output    g and how many drops
 * Refuses   no mass, no whole number of drops above 0
 * Example   parseDropWeighing('0.612 g / 20') -> 0.612 g, 20
 */
export function parseDropWeighing(text: string): Parsed<DropWeighing> {
  const [, mass = '', count = ''] =
    /^(.+?)\s*(?:\/|\b(?:of|for|by)\b)\s*(\S+?)(?:\s+drops?)?$/iu.exec(text.trim()) ?? [];
  if (mass === '')
    return refused('no-count', `"${text}" does not say how many drops`, 'write "0.612 g / 20"');
  const grams = parseQuantity(mass, ['mass']);
  if (!grams.ok) return grams;
  const drops = parseNumber(count);
  if (!drops.ok) return drops;
  if (grams.value.inner <= 0)
    return refused('not-positive', `"${text}" weighs nothing`, 'write "0.612 g / 20"');
  if (Number.isInteger(drops.value) && drops.value > 0)
    return parsed({ grams: grams.value.inner, drops: drops.value });
  return refused('not-whole', `"${count}" is no number of drops`, 'count whole drops: "0.612 g / 20"');
}

export interface DropMass {
  /** g of one drop. */
  readonly dropGrams: number;
  /** Standard deviation of one drop in g; undefined from a single weighing. */
  readonly spreadGrams: number | undefined;
  /** 95 % confidence interval of the mass of a drop, g. */
  readonly interval: readonly [low: number, high: number] | undefined;
  readonly student: number | undefined;
  readonly weighings: number;
  readonly drops: number;
}

export const dropConfidence = 0.95;

/**
 * The mass of a drop, its spread and its confidence interval.
 *
 * Formula   m = sum of masses / sum of drops;  s^2 = sum n_i (m_i/n_i - m)^2 / (k - 1);
 *           interval m +- t s / sqrt(sum n_i), t of Student with k - 1 degrees of freedom
 * Input     k weighings, g and how many drops
 * Output    g of a drop, standard deviation of one drop, 95 % interval of m; without the last two from one weighing
 * Source    Student 1908; equal counts give the interval of a mean in JCGM 100:2008, 4.2.3 and G.3.2
 * Example   0.612 g / 20, 0.604 g / 20, 0.608 g / 20 -> 0.0304 g +- 0.0005 g
 */
export function dropMassOf(weighings: readonly DropWeighing[]): DropMass {
  const drops = weighings.reduce((sum, one) => sum + one.drops, 0);
  const dropGrams = weighings.reduce((sum, one) => sum + one.grams, 0) / drops;
  const freedom = weighings.length - 1;
  if (freedom < 1)
    return {
      dropGrams,
      spreadGrams: undefined,
      interval: undefined,
      student: undefined,
      weighings: 1,
      drops,
    };
  const squares = weighings.reduce(
    (sum, one) => sum + one.drops * (one.grams / one.drops - dropGrams) ** 2,
    0,
  );
  const spreadGrams = Math.sqrt(squares / freedom);
  const student = studentWithin(dropConfidence, freedom);
  const half = (student * spreadGrams) / Math.sqrt(drops);
  return {
    dropGrams,
    spreadGrams,
    interval: [dropGrams - half, dropGrams + half],
    student,
    weighings: weighings.length,
    drops,
  };
}
