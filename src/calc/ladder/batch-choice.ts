import type { PlanningCells } from './planning-cells.ts';

/** Outcomes of the beakers chosen so far that are kept apart; the least likely beyond these are left out. */
const MOST_BRANCHES = 24;

/** Weights of the cells given one outcome of the beakers chosen so far (they sum to that outcome's chance). */
type Branch = Float64Array;

const sumOf = (branch: Branch): number => branch.reduce((total, weight) => total + weight, 0);

/** What is still unknown after one more beaker, over all branches: chance times variance. */
function varianceLeft(branches: readonly Branch[], fails: Float64Array, locations: Float64Array): number {
  let left = 0;
  for (const branch of branches) {
    let [f0, f1, f2, h0, h1, h2] = [0, 0, 0, 0, 0, 0];
    for (let at = 0; at < branch.length; at += 1) {
      const weight = branch[at] ?? 0;
      const failed = weight * (fails[at] ?? 0);
      const held = weight - failed;
      const place = locations[at] ?? 0;
      f0 += failed;
      f1 += failed * place;
      f2 += failed * place * place;
      h0 += held;
      h1 += held * place;
      h2 += held * place * place;
    }
    if (f0 > 0) left += f2 - (f1 * f1) / f0;
    if (h0 > 0) left += h2 - (h1 * h1) / h0;
  }
  return left;
}

function split(branches: readonly Branch[], fails: Float64Array): readonly Branch[] {
  const both = branches.flatMap((branch) => [
    branch.map((weight, at) => weight * (fails[at] ?? 0)),
    branch.map((weight, at) => weight * (1 - (fails[at] ?? 0))),
  ]);
  if (both.length <= MOST_BRANCHES) return both;
  return both
    .map((branch) => ({ branch, chance: sumOf(branch) }))
    .sort((one, other) => other.chance - one.chance)
    .slice(0, MOST_BRANCHES)
    .map(({ branch }) => branch);
}

export interface BatchChoice {
  /** Logarithms of the ratios, going up. */
  readonly logRatios: readonly number[];
  /** Variance of the break's logarithm now, and what is expected to be left of it after these beakers. */
  readonly varianceNow: number;
  readonly varianceAfter: number;
}

/**
 * The beakers that together are expected to leave least unknown of the break.
 *
 * Formula   one after the other, each the candidate that minimises the expected posterior variance of the break
 *           jointly with those chosen before and those still watched, all on one new making day
 * Input     cells of the posterior; how many beakers
 * Output    logarithms of the ratios; variance before and expected after
 */
export function chooseBatch(cells: PlanningCells, beakers: number): BatchChoice {
  const none = new Float64Array(cells.weights.length);
  const varianceNow = varianceLeft([cells.weights], none, cells.locations) / sumOf(cells.weights);
  let branches: readonly Branch[] = cells.pending.reduce<readonly Branch[]>(split, [cells.weights]);
  const chosen: number[] = [];
  let varianceAfter = varianceNow;
  for (let made = 0; made < beakers; made += 1) {
    let [best, least] = [0, Number.POSITIVE_INFINITY];
    for (let at = 0; at < cells.fails.length; at += 1) {
      const left = varianceLeft(branches, cells.fails[at] ?? none, cells.locations);
      if (left < least) [best, least] = [at, left];
    }
    const kept = branches.reduce((total, branch) => total + sumOf(branch), 0);
    varianceAfter = least / kept;
    chosen.push(cells.candidates[best] ?? 0);
    branches = split(branches, cells.fails[best] ?? none);
  }
  return { logRatios: chosen.sort((a, b) => a - b), varianceNow, varianceAfter };
}
