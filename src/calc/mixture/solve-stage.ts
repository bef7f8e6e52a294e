/** One stage, linear in its mass, its volume and the water in it. */

import type { Blend } from '../density/blend.ts';
import { emptyBlend, mixBlends } from '../density/blend.ts';
import { addedSpecificVolume, type DensityModel, specificVolume } from '../density/estimate.ts';
import { sum } from '../sum.ts';
import {
  type BlendSource,
  type DrinkState,
  type EquationItem,
  isMakeUp,
  isOnlyRelative,
  type SolvedStage,
  type StageEquations,
} from './equations.ts';
import { solveLinear } from './linear.ts';
import type { Term } from './term.ts';

export interface StageSetting {
  readonly stage: StageEquations;
  readonly earlier: readonly SolvedStage[];
  readonly model: DensityModel;
  /** mL/g, as the last pass left it. */
  readonly lastVolume: number;
  /** mL/g by which the last estimate of the volume differed from plain adding. */
  readonly correction: number;
  /** g of this stage in a g of the finished drink; 0 while unknown. */
  readonly carried: number;
  readonly drink: DrinkState | undefined;
}

/** The mass of an item is `fixed + perMass M + perVolume V + perWater W`, or unknown where it makes up. */
interface Line {
  readonly fixed: number;
  readonly perMass: number;
  readonly perVolume: number;
  readonly perWater: number;
  readonly makesUp: boolean;
  readonly blend: Blend;
  /** mL/g that it adds, and g/g of water that it brings. */
  readonly volume: number;
  readonly water: number;
}

/**
 * The masses of a stage.
 *
 * Formula   M = sum m_i; V = sum v_i m_i + k M, or M / rho where measured; W = sum w_i m_i;
 *           m_i = a_i + f_i M + c_i V + g_i W; a make-up item is unknown, and then M or V is what it makes up to
 * Input     the stage as equations; earlier stages solved; k from the last pass
 * Output    g of each item, the stage's mass in g, its specific volume in mL/g
 */
export function solveStage(setting: StageSetting): SolvedStage {
  const { stage, model } = setting;
  const lines = stage.items.map((item) => lineOf(item, setting));
  const totals = solveLinear(equationsOf(lines, setting));
  if (!totals) return unsolvable(stage, lines);
  const [mass = 0, volume = 0, water = 0, makeUp = 0] = totals;
  const grams = lines.map((line) =>
    line.makesUp
      ? makeUp
      : line.fixed + line.perMass * mass + line.perVolume * volume + line.perWater * water,
  );
  const blend = mixBlends(lines.map((line, index) => ({ blend: line.blend, grams: grams[index] ?? 0 })));
  const perGram =
    stage.measuredDensity === undefined ? specificVolume(blend, model) : 1 / stage.measuredDensity;
  const scaled = isOnlyRelative(stage) ? scaledToTotal(grams, { stage, perGram }) : grams;
  const massGrams = sum(scaled);
  return {
    grams: scaled,
    massGrams,
    specificVolume: perGram,
    blend,
    relativeShare: relativeShare(lines, { perGram, waterShare: blend.waterShare }),
    solvable: Number.isFinite(massGrams),
  };
}

const unsolvable = (stage: StageEquations, lines: readonly Line[]): SolvedStage => ({
  grams: stage.items.map(() => 0),
  massGrams: 0,
  specificVolume: 1,
  blend: emptyBlend,
  relativeShare: relativeShare(lines, { perGram: 1, waterShare: 0 }),
  solvable: false,
});

/** What shares and concentrations alone take of a gram of the stage. */
const relativeShare = (
  lines: readonly Line[],
  { perGram, waterShare }: { readonly perGram: number; readonly waterShare: number },
): number => sum(lines.map((line) => line.perMass + line.perVolume * perGram + line.perWater * waterShare));

/** Shares alone are published to a digit or two: what they come to is spread over what the stage makes. */
function scaledToTotal(
  grams: readonly number[],
  { stage, perGram }: { readonly stage: StageEquations; readonly perGram: number },
): readonly number[] {
  const total = sum(grams);
  if (!stage.makes || total === 0) return grams;
  const wanted = stage.makes.kind === 'mass' ? stage.makes.amount : stage.makes.amount / perGram;
  return grams.map((one) => (one / total) * wanted);
}

function lineOf({ term, source }: EquationItem, setting: StageSetting): Line {
  const { kind, inDrink } = term;
  const factor = factorOf(term, setting);
  const blend = blendFrom(source, setting);
  return {
    fixed: kind === 'fixed' ? factor : 0,
    perMass: inDrink ? shareForDrink(term, setting) : kind === 'per mass' || kind === 'parts' ? factor : 0,
    perVolume: kind === 'per volume' && !inDrink ? factor : 0,
    perWater: kind === 'per water' && !inDrink ? factor : 0,
    makesUp: isMakeUp(term),
    blend,
    volume: addedSpecificVolume(blend, setting.model),
    water: blend.waterShare,
  };
}

const blendFrom = (source: BlendSource, { earlier }: StageSetting): Blend =>
  'blend' in source ? source.blend : (earlier[source.stage]?.blend ?? emptyBlend);

function factorOf(term: Term, { earlier }: StageSetting): number {
  if (term.densityOfStage === undefined) return term.factor;
  return term.factor / (earlier[term.densityOfStage]?.specificVolume ?? 1);
}

/** What the drink must hold of the item, g/g, over what the drink holds of this stage: the item's share here. */
function shareForDrink(term: Term, setting: StageSetting): number {
  const { drink, carried } = setting;
  if (!drink || carried <= 0) return 0;
  const factor = factorOf(term, setting);
  if (term.kind === 'per volume') return (factor * drink.specificVolume) / carried;
  if (term.kind === 'per water') return (factor * drink.waterShare) / carried;
  return factor / carried;
}

/** Rows over M, V, W and, where one item makes up, its mass; the right side stands last. */
function equationsOf(lines: readonly Line[], setting: StageSetting): number[][] {
  const makeUp = lines.some((line) => line.makesUp);
  const rows = [
    massRow(weighted(lines, 'mass'), setting),
    volumeRow(weighted(lines, 'volume'), setting),
    minusUnknown(weighted(lines, 'water'), 2),
  ];
  if (makeUp) rows.push(makeUpRow(setting.stage));
  else for (const row of rows) row.splice(3, 1);
  return rows;
}

/** The sum of all items as a row: their masses, the volumes they add, or the water they bring. */
function weighted(lines: readonly Line[], of: 'mass' | 'volume' | 'water'): readonly number[] {
  let [perMass, perVolume, perWater, makeUp, fixed] = [0, 0, 0, 0, 0];
  for (const line of lines) {
    const by = of === 'mass' ? 1 : line[of];
    perMass += by * line.perMass;
    perVolume += by * line.perVolume;
    perWater += by * line.perWater;
    fixed += by * line.fixed;
    if (line.makesUp) makeUp = by;
  }
  return [perMass, perVolume, perWater, makeUp, fixed];
}

/** From `x = row` to `x - row = right side`. */
function minusUnknown(row: readonly number[], unknown: number): number[] {
  return row.map((value, index) => (index === 4 ? value : (index === unknown ? 1 : 0) - value));
}

function massRow(row: readonly number[], { stage, lastVolume }: StageSetting): number[] {
  const { makes } = stage;
  if (!makes || !isOnlyRelative(stage)) return minusUnknown(row, 0);
  return [1, 0, 0, 0, makes.kind === 'mass' ? makes.amount : makes.amount / lastVolume];
}

function volumeRow(row: readonly number[], { stage, correction, lastVolume }: StageSetting): number[] {
  if (stage.measuredDensity !== undefined) return [-1 / stage.measuredDensity, 1, 0, 0, 0];
  if (stage.makes && isOnlyRelative(stage)) return [-lastVolume, 1, 0, 0, 0];
  const [perMass = 0, ...others] = row;
  return minusUnknown([perMass + correction, ...others], 1);
}

function makeUpRow(stage: StageEquations): number[] {
  const term = stage.items.find((item) => isMakeUp(item.term))?.term;
  return term?.kind === 'make-up volume' ? [0, 1, 0, 0, term.factor] : [1, 0, 0, 0, term?.factor ?? 0];
}
