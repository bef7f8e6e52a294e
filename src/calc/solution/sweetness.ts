import { type Parsed, parsed, refused } from '../../problem.ts';
import {
  type SweetnessFactor,
  sweetenerAliases,
  sweetnessCurves,
  sweetnessFactors,
} from '../../reference/solution/sweetness.ts';
import { plainName } from './substance.ts';

export interface Sweetness {
  /** As sweet as so many g of sucrose in 100 mL; low and high where the sources differ. */
  readonly sucrosePercent: number;
  readonly low: number;
  readonly high: number;
  /** By a published curve that weakens with level, or by one factor. */
  readonly by: 'curve' | 'factor';
  /** The sweetness for which the factor is given, where the source says it. */
  readonly levelPercent?: number;
  readonly source: string;
}

const MILLIGRAMS_PER_LITRE_OF_A_PERCENT = 10_000;

type CurveName = keyof typeof sweetnessCurves;

const isCurve = (name: string): name is CurveName => Object.hasOwn(sweetnessCurves, name);

/**
 * How sweet an amount of one sweetener is in water. Blends don't add: some are sweeter together, none can be summed
 * from single figures with any honesty beyond a rough guide.
 *
 * Formula   R = Rm C/(K + C) for aspartame and saccharin; otherwise C times one factor
 * Input     sweetener by name, milligramsPerLitre
 * Output    % sucrose (g in 100 mL) with the range of the sources, and how it was found
 * Refuses   a sweetener without a figure; a negative amount
 * Source    DuBois and others 1991 for the form and Rm; factors as named with each
 * Accuracy  10 % for aspartame from 4 to 10 %; a factor away from its level can be wrong by a third
 * Example   sweetnessOf({ sweetener: 'aspartame', milligramsPerLitre: 400 }) -> { sucrosePercent: 6.926407, by: 'curve', .. }
 */
export function sweetnessOf(given: {
  readonly sweetener: string;
  readonly milligramsPerLitre: number;
}): Parsed<Sweetness> {
  const amount = given.milligramsPerLitre;
  const plain = plainName(given.sweetener);
  const name = (Object.hasOwn(sweetenerAliases, plain) ? sweetenerAliases[plain] : undefined) ?? plain;
  if (!(amount >= 0)) {
    return refused(
      'not-an-amount',
      `${amount} mg/L of ${given.sweetener} is not an amount`,
      'give an amount from 0 upwards',
    );
  }
  if (isCurve(name)) return parsed(byCurve(name, amount));
  const factor = Object.hasOwn(sweetnessFactors, name) ? sweetnessFactors[name] : undefined;
  if (factor) return parsed(byFactor(factor, amount));
  return refused(
    'no-sweetness',
    `there is no sweetness for "${given.sweetener}"`,
    `name one of ${[...Object.keys(sweetnessCurves), ...Object.keys(sweetnessFactors)].join(', ')}`,
  );
}

function byCurve(name: CurveName, amount: number): Sweetness {
  const { highest, half, lowHalf, highHalf, source } = sweetnessCurves[name];
  const response = (at: number): number => (highest * amount) / (at + amount);
  return {
    sucrosePercent: response(half),
    low: response(highHalf),
    high: response(lowHalf),
    by: 'curve',
    source,
  };
}

function byFactor(found: SweetnessFactor, amount: number): Sweetness {
  const { factor, low = factor, high = factor, levelPercent, source } = found;
  const percent = amount / MILLIGRAMS_PER_LITRE_OF_A_PERCENT;
  return {
    sucrosePercent: factor * percent,
    low: low * percent,
    high: high * percent,
    by: 'factor',
    ...(levelPercent === undefined ? {} : { levelPercent }),
    source,
  };
}
