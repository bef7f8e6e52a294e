/** The search for the best chain: every handy stock in every vessel, step by step, and only what can still win. */

import type { ChainBench, ChainSource, ChainVessel, ChainWanted } from './chain.ts';
import { asStated, stepVariance } from './uncertainty.ts';
import {
  isFineEnough,
  isWholeDivisions,
  leastMass,
  type OneWeighing,
  toDivision,
  weighingOf,
} from './weighing.ts';

/** A stock on the way. */
export interface Stock {
  readonly take: OneWeighing;
  readonly solvent: OneWeighing;
  readonly strength: number;
  readonly vessel: ChainVessel | undefined;
}

export interface Route {
  readonly source: ChainSource;
  readonly stocks: readonly Stock[];
  /** Rounded to the division of its balance. */
  readonly addition: OneWeighing;
  readonly rest: OneWeighing;
  readonly variance: number;
  readonly wasteGrams: number;
}

/** More stocks on the way than anybody wants to make. */
export const mostStocks = 6;

/** Where the bench lists none. Common practice, no source. */
export const usualVessel: ChainVessel = { millilitres: 100 };

const digits = [1, 2, 5] as const;

/** What a stock can be, whatever it is made from. */
export interface StockShape {
  readonly dilution: number;
  readonly take: OneWeighing;
  readonly solvent: OneWeighing;
  readonly totalGrams: number;
  readonly vessel: ChainVessel | undefined;
  readonly variance: number;
}

/** The dilutions that people make, and the largest that the bench allows. */
export function handyDilutions(largest: number): readonly number[] {
  const round = [2, 5, 10, 20, 50, 100, 200, 500, 1000].filter((one) => one <= largest * (1 + 1e-9));
  return round.includes(largest) || largest <= 1 || largest > 1000 ? round : [...round, largest];
}

/** 1, 2 or 5 times a power of ten, from the least mass that any balance weighs up to the most that a vessel holds. */
function handyMasses(least: number, most: number): readonly number[] {
  const masses: number[] = [];
  for (let power = Math.floor(Math.log10(least)); 10 ** power <= most; power++)
    for (const digit of digits) masses.push(Number(`${digit}e${power}`));
  return masses.filter((mass) => mass >= least * (1 - 1e-9) && mass <= most);
}

/** Every stock that the bench can make. */
export function stockShapes(bench: ChainBench, solventDensity = 1): readonly StockShape[] {
  const vessels = bench.vessels.length > 0 ? bench.vessels : [usualVessel];
  const least = Math.min(...bench.scales.map((scale) => leastMass(scale, bench.weighing)));
  const most = Math.max(...vessels.map(({ millilitres }) => millilitres * solventDensity));
  return handyMasses(least, most).flatMap((takeGrams) =>
    handyDilutions(bench.largestDilution).flatMap((dilution) => {
      const totalGrams = Number((takeGrams * dilution).toPrecision(12));
      const fitting = vessels.filter((one) => one.millilitres * solventDensity >= totalGrams * (1 - 1e-9));
      const made = fitting.flatMap(
        (vessel) => shapeIn({ bench, vessel, takeGrams, dilution, totalGrams }) ?? [],
      );
      return made
        .sort((one, other) => one.variance - other.variance || roomOf(one) - roomOf(other))
        .slice(0, 1);
    }),
  );
}

const roomOf = ({ vessel }: StockShape): number => vessel?.millilitres ?? 0;

interface Making {
  readonly bench: ChainBench;
  readonly vessel: ChainVessel;
  readonly takeGrams: number;
  readonly dilution: number;
  readonly totalGrams: number;
}

function shapeIn({ bench, vessel, takeGrams, dilution, totalGrams }: Making): StockShape | undefined {
  const { scales, weighing } = bench;
  const tare = vessel.massGrams ?? 0;
  const solventGrams = Number((totalGrams - takeGrams).toPrecision(12));
  const take = weighingOf(scales, { massGrams: takeGrams, besideGrams: tare });
  const solvent = weighingOf(scales, { massGrams: solventGrams, besideGrams: tare + takeGrams });
  if (!take || !solvent || take.portions > 1 || solvent.portions > 1) return undefined;
  if (!isFineEnough(take, weighing) || !isFineEnough(solvent, weighing)) return undefined;
  if (!isWholeDivisions(takeGrams, take.divisionGrams)) return undefined;
  if (!isWholeDivisions(solventGrams, solvent.divisionGrams)) return undefined;
  const isUsual = vessel === usualVessel;
  const variance = varianceOf(take, solvent);
  return { dilution, take, solvent, totalGrams, vessel: isUsual ? undefined : vessel, variance };
}

export const varianceOf = (take: OneWeighing, solvent: OneWeighing): number =>
  stepVariance({
    takeGrams: take.massGrams,
    takeUncertaintyGrams: take.standardUncertaintyGrams,
    solventGrams: solvent.massGrams,
    solventUncertaintyGrams: solvent.standardUncertaintyGrams,
  });

/** A part of a chain: what there is to take from now. */
interface Label {
  readonly source: ChainSource;
  readonly stocks: readonly Stock[];
  readonly strength: number;
  readonly thereGrams: number;
  readonly variance: number;
  readonly wasteGrams: number;
}

const asLabel = (source: ChainSource): Label => ({
  source,
  stocks: [],
  strength: source.strength,
  thereGrams: source.leftGrams ?? Number.POSITIVE_INFINITY,
  variance: (source.relativeUncertainty ?? 0) ** 2,
  wasteGrams: 0,
});

/** The best chain of all, `undefined` where the bench can make none. */
export function bestRoute(wanted: ChainWanted): Route | undefined {
  const shapes = stockShapes(wanted.bench, wanted.solventDensity);
  let labels: readonly Label[] = wanted.sources
    .filter(({ strength }) => strength > wanted.target)
    .map(asLabel);
  for (let stocks = 0; stocks <= mostStocks && labels.length > 0; stocks++) {
    const routes = labels.flatMap((label) => addedInto(wanted, label) ?? []);
    if (routes.length > 0) return routes.reduce((best, one) => (isBetter(one, best) ? one : best));
    labels = worthwhile(labels.flatMap((label) => stepsFrom(wanted, label, shapes)));
  }
  return undefined;
}

/** Less uncertain as it is stated, then less wasteful, then less uncertain at all. */
export function isBetter(one: Route, other: Route): boolean {
  const stated = (route: Route): number => asStated(Math.sqrt(route.variance));
  if (stated(one) !== stated(other)) return stated(one) < stated(other);
  if (Math.abs(one.wasteGrams - other.wasteGrams) > 1e-9) return one.wasteGrams < other.wasteGrams;
  return one.variance < other.variance;
}

/** The addition into the batch, where a balance weighs it. */
export function addedInto({ target, finalMassGrams, bench }: ChainWanted, label: Label): Route | undefined {
  const exact = (target * finalMassGrams) / label.strength;
  if (exact >= finalMassGrams) return undefined;
  const fine = weighingOf(bench.scales, { massGrams: exact });
  if (!fine || fine.portions > 1 || !isFineEnough(fine, bench.weighing)) return undefined;
  const addition = { ...fine, massGrams: toDivision(exact, fine.divisionGrams) };
  if (addition.massGrams > label.thereGrams * (1 + 1e-9)) return undefined;
  const rest = weighingOf(bench.scales, { massGrams: finalMassGrams - addition.massGrams });
  if (!rest) return undefined;
  const left = label.stocks.length > 0 ? label.thereGrams - addition.massGrams : 0;
  return {
    source: label.source,
    stocks: label.stocks,
    addition,
    rest,
    variance: label.variance + varianceOf(addition, rest),
    wasteGrams: label.wasteGrams + left,
  };
}

/** One stock more. */
export function stepsFrom(
  wanted: ChainWanted,
  label: Label,
  shapes: readonly StockShape[],
): readonly Label[] {
  const possible = shapes.filter(
    ({ take, dilution }) =>
      take.massGrams <= label.thereGrams * (1 + 1e-9) && label.strength / dilution > wanted.target,
  );
  const isNeat = label.source.isNeat === true && label.stocks.length === 0;
  return (isNeat ? leastTakes(wanted, label, possible) : possible).map((shape) => after(label, shape));
}

/** Of a neat compound only the least handy mass that is enough. */
function leastTakes(
  { target, finalMassGrams }: ChainWanted,
  { strength }: Label,
  shapes: readonly StockShape[],
): readonly StockShape[] {
  const needed = (target * finalMassGrams) / strength;
  const enough = shapes.map(({ take }) => take.massGrams).filter((mass) => mass >= needed * (1 - 1e-9));
  const least = Math.min(...enough);
  return shapes.filter(({ take }) => take.massGrams === least);
}

function after(label: Label, { take, solvent, dilution, totalGrams, vessel, variance }: StockShape): Label {
  const strength = Number((label.strength / dilution).toPrecision(12));
  const left = label.stocks.length > 0 ? label.thereGrams - take.massGrams : 0;
  return {
    source: label.source,
    stocks: [...label.stocks, { take, solvent, strength, vessel }],
    strength,
    thereGrams: totalGrams,
    variance: label.variance + variance,
    wasteGrams: label.wasteGrams + left,
  };
}

/** Of those that leave the same to take from, only such as no other beats in both variance and waste. */
function worthwhile(labels: readonly Label[]): readonly Label[] {
  const groups = new Map<string, Label[]>();
  for (const label of labels) {
    const key = `${label.strength} ${label.thereGrams}`;
    const group = groups.get(key);
    if (group) group.push(label);
    else groups.set(key, [label]);
  }
  return [...groups.values()].flatMap((group) => {
    const sorted = group.toSorted(
      (one, other) => one.variance - other.variance || one.wasteGrams - other.wasteGrams,
    );
    let leastWaste = Number.POSITIVE_INFINITY;
    return sorted.filter(({ wasteGrams }) => {
      const isWorthIt = wasteGrams < leastWaste - 1e-12;
      if (isWorthIt) leastWaste = wasteGrams;
      return isWorthIt;
    });
  });
}
