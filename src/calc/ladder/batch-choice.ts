import type { PlanningCells } from './planning-cells.ts';

/** Outcomes of the beakers chosen so far that are kept apart; the least likely beyond these are left out. */
const MOST_BRANCHES = 24;

/** Sums over the cells: chance, chance times place, chance times the square of the place. */
interface Moments {
  readonly chance: number;
  readonly first: number;
  readonly second: number;
}

/** Weights of the cells given one outcome of the beakers chosen so far. */
interface Branch {
  readonly weights: Float64Array;
  readonly moments: Moments;
}

/** Moments of the weights times a factor of each cell. */
function momentsOf(weights: Float64Array, factors: Float64Array, places: Float64Array): Moments {
  let [chance, first, second] = [0, 0, 0];
  for (let at = 0; at < weights.length; at += 1) {
    const weight = (weights[at] ?? 0) * (factors[at] ?? 0);
    const moment = weight * (places[at] ?? 0);
    chance += weight;
    first += moment;
    second += moment * (places[at] ?? 0);
  }
  return { chance, first, second };
}

/** Chance times variance. */
const unknownLeft = ({ chance, first, second }: Moments): number =>
  chance > 0 ? Math.max(0, second - (first * first) / chance) : 0;

const without = (all: Moments, part: Moments): Moments => ({
  chance: all.chance - part.chance,
  first: all.first - part.first,
  second: all.second - part.second,
});

/** What is still unknown after one more beaker, over all branches. */
function leftAfter(branches: readonly Branch[], fails: Float64Array, places: Float64Array): number {
  let left = 0;
  for (const { weights, moments } of branches) {
    const failed = momentsOf(weights, fails, places);
    left += unknownLeft(failed) + unknownLeft(without(moments, failed));
  }
  return left;
}

function split(branches: readonly Branch[], fails: Float64Array, places: Float64Array): readonly Branch[] {
  const both = branches.flatMap(({ weights, moments }) => {
    const failed = weights.map((weight, at) => weight * (fails[at] ?? 0));
    const held = weights.map((weight, at) => weight - (failed[at] ?? 0));
    const failedMoments = momentsOf(weights, fails, places);
    return [
      { weights: failed, moments: failedMoments },
      { weights: held, moments: without(moments, failedMoments) },
    ];
  });
  if (both.length <= MOST_BRANCHES) return both;
  return both.sort((one, other) => other.moments.chance - one.moments.chance).slice(0, MOST_BRANCHES);
}

/** All cells in one branch. Places are taken from the mean, so that no digits are lost in the squares. */
function wholeOf({ weights, locations }: PlanningCells): {
  readonly whole: Branch;
  readonly places: Float64Array;
} {
  const ones = new Float64Array(weights.length).fill(1);
  const { chance, first } = momentsOf(weights, ones, locations);
  const places = locations.map((location) => location - first / chance);
  return { whole: { weights, moments: momentsOf(weights, ones, places) }, places };
}

export interface BatchChoice {
  /** Logarithms of the ratios, going up. */
  readonly logRatios: readonly number[];
  /** Variance of the break's logarithm that is expected to be left after these beakers. */
  readonly varianceAfter: number;
}

/**
 * The beakers that together are expected to leave least unknown of the break.
 *
 * Formula   one after the other, each the candidate that minimises the expected posterior variance of the break
 *           jointly with those chosen before and those still watched, all on one new making day
 * Input     cells of the posterior; how many beakers
 * Output    logarithms of the ratios; the variance expected after them
 */
export function chooseBatch(cells: PlanningCells, beakers: number): BatchChoice {
  const { whole, places } = wholeOf(cells);
  const after = (branches: readonly Branch[], fails: Float64Array): readonly Branch[] =>
    split(branches, fails, places);
  let branches = cells.pending.reduce(after, [whole]);
  const chosen: number[] = [];
  for (let made = 0; made < beakers; made += 1) {
    const lefts = cells.fails.map((fails) => leftAfter(branches, fails, places));
    const best = lefts.indexOf(Math.min(...lefts));
    chosen.push(cells.candidates[best] ?? 0);
    branches = after(branches, cells.fails[best] ?? new Float64Array());
  }
  const [left, kept] = [
    branches.reduce((sum, { moments }) => sum + unknownLeft(moments), 0),
    branches.reduce((sum, { moments }) => sum + moments.chance, 0),
  ];
  return { logRatios: chosen.sort((a, b) => a - b), varianceAfter: left / kept };
}
