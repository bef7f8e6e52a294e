/** The most likely curve of a dose-response set, found as the peak of the posterior that answers the user. */
import type { Beaker } from '../../../src/calc/ladder/beaker.ts';
import { type BreakPosterior, breakPosterior } from '../../../src/calc/ladder/posterior.ts';
import type { LadderPriors } from '../../../src/calc/ladder/priors.ts';
import { failChance, type ToleranceCurve } from '../../../src/calc/statistics/tolerance.ts';

export interface Group {
  /** Decimal logarithm of the level. */
  readonly logLevel: number;
  readonly tried: number;
  readonly answered: number;
}

const beakersOf = (groups: readonly Group[]): readonly Beaker[] =>
  groups.flatMap(({ logLevel, tried, answered }) =>
    Array.from({ length: tried }, (_, at) => ({
      ratio: 10 ** logLevel,
      outcome: at < answered ? ('failed' as const) : ('held' as const),
      day: '1',
    })),
  );

interface Point {
  /** Natural logarithm of the level. */
  readonly place: number;
  readonly scatter: number;
}

interface GridAsked {
  readonly low: number;
  readonly high: number;
  readonly scatter: { readonly lowest: number; readonly highest: number; readonly points: number };
}

/** Nothing believed beforehand: no shift of days, no odd beakers, every place and scatter alike. */
const flat = ({ low, high, scatter }: GridAsked, curve: ToleranceCurve): LadderPriors => ({
  lowRatio: Math.exp(low),
  highRatio: Math.exp(high),
  edge: 1e-12,
  scatter: { ...scatter, middle: 1, spread: 1e9 },
  dayShift: 0,
  oddChance: 0,
  curve,
});

function peakOf({ rows, locations, scatters }: BreakPosterior): Point {
  let best = { row: 0, at: 0, weight: 0 };
  rows.forEach((weights, row) => {
    weights.forEach((weight, at) => {
      if (weight > best.weight) best = { row, at, weight };
    });
  });
  return { place: locations[best.at] ?? 0, scatter: scatters[best.row] ?? 0 };
}

/** Slope and curvatures at a point of the grid from five points each way, in steps. */
function shapeAt({ rows }: BreakPosterior, middle: number) {
  const log = (up: number, along: number): number => Math.log(rows[MIDDLE + up]?.[middle + along] ?? 0);
  const slope = (of: (k: number) => number): number => (8 * (of(1) - of(-1)) - (of(2) - of(-2))) / 12;
  const twice = (of: (k: number) => number): number =>
    (16 * (of(1) + of(-1)) - (of(2) + of(-2)) - 30 * of(0)) / 12;
  return {
    byPlace: slope((k) => log(0, k)),
    byScatter: slope((k) => log(k, 0)),
    placeTwice: twice((k) => log(0, k)),
    scatterTwice: twice((k) => log(k, 0)),
    both: (log(1, 1) - log(1, -1) - log(-1, 1) + log(-1, -1)) / 4,
  };
}

const SCATTER_STEP = 0.004;
/** Row of the scatter so far. */
const MIDDLE = 2;
const STEPS = 900;

interface Refined extends Point {
  /** Covariance of place and ln scatter, from the curvatures. */
  readonly covariance: { readonly place: number; readonly scatter: number; readonly both: number };
}

/** One step of Newton's method on a grid with the point so far in one of its crossings. */
function refined(beakers: readonly Beaker[], curve: ToleranceCurve, { place, scatter }: Point): Refined {
  const logs = beakers.map(({ ratio }) => Math.log(ratio));
  const [least, most] = [Math.min(...logs), Math.max(...logs)];
  const step = (most - least) / STEPS;
  const below = Math.ceil((place - least) / step) + 1;
  const above = Math.ceil((most - place) / step) + 1;
  const reach = Math.exp((MIDDLE + 0.5) * SCATTER_STEP);
  const asked = {
    low: place - below * step,
    high: place + above * step,
    scatter: { lowest: scatter / reach, highest: scatter * reach, points: 2 * MIDDLE + 1 },
  };
  const posterior = breakPosterior(beakers, flat(asked, curve), step * (1 + 1e-9));
  const middle = posterior.locations.findIndex((location) => location > place - step / 2);
  const { byPlace, byScatter, placeTwice, scatterTwice, both } = shapeAt(posterior, middle);
  const determinant = placeTwice * scatterTwice - both ** 2;
  return {
    place: place + (step * (both * byScatter - scatterTwice * byPlace)) / determinant,
    scatter: scatter * Math.exp((SCATTER_STEP * (both * byPlace - placeTwice * byScatter)) / determinant),
    covariance: {
      place: (-scatterTwice / determinant) * step ** 2,
      scatter: (-placeTwice / determinant) * SCATTER_STEP ** 2,
      both: (both / determinant) * step * SCATTER_STEP,
    },
  };
}

export interface MostLikely {
  readonly location: number;
  readonly intercept: number;
  readonly slope: number;
  readonly interceptError: number;
  readonly slopeError: number;
}

/** The peak of the posterior, from a coarse grid on; intercept and slope on decimal logarithms. */
export function mostLikely(groups: readonly Group[], curve: ToleranceCurve): MostLikely {
  const beakers = beakersOf(groups);
  const logs = beakers.map(({ ratio }) => Math.log(ratio));
  const scatter = { lowest: 0.02, highest: 1, points: 60 };
  const coarse = flat({ low: Math.min(...logs), high: Math.max(...logs), scatter }, curve);
  let point: Point = peakOf(breakPosterior(beakers, coarse));
  for (let round = 0; round < 4; round += 1) point = refined(beakers, curve, point);
  const { place, scatter: width, covariance } = refined(beakers, curve, point);
  return { ...line(place, width), ...errors(place, width, covariance) };
}

const line = (place: number, scatter: number) => ({
  location: place / Math.LN10,
  intercept: -place / scatter,
  slope: Math.LN10 / scatter,
});

/** Standard errors of -place/scatter and 1/scatter from the covariance of place and ln scatter. */
function errors(
  place: number,
  scatter: number,
  covariance: { readonly place: number; readonly scatter: number; readonly both: number },
) {
  const [byPlace, byLogScatter] = [-1 / scatter, place / scatter];
  return {
    interceptError: Math.sqrt(
      byPlace ** 2 * covariance.place +
        byLogScatter ** 2 * covariance.scatter +
        2 * byPlace * byLogScatter * covariance.both,
    ),
    slopeError: (Math.LN10 / scatter) * Math.sqrt(covariance.scatter),
  };
}

/** Twice the logarithm by which the data are likelier under their own shares than under a line. */
export function devianceOf(
  groups: readonly Group[],
  curve: ToleranceCurve,
  { intercept, slope }: { readonly intercept: number; readonly slope: number },
): number {
  const log = (count: number, chance: number): number => (count === 0 ? 0 : count * Math.log(chance));
  return groups.reduce((sum, { logLevel, tried, answered }) => {
    const setting = { logLevel: intercept + slope * logLevel, scatter: 1, curve, oddChance: 0 };
    const chance = failChance(setting, 0);
    const silent = tried - answered;
    const own = log(answered, answered / tried) + log(silent, silent / tried);
    return sum + 2 * (own - log(answered, chance) - log(silent, 1 - chance));
  }, 0);
}
