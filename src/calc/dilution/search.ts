/** The search for the best chain: every handy stock in every vessel, step by step, and only what can still win. */

import type { ChainSource, ChainVessel, ChainWanted } from './chain.ts';
import { type StockShape, stockShapes, varianceOf } from './stock-shapes.ts';
import { asStated } from './uncertainty.ts';
import { isFineEnough, leastMass, type OneWeighing, toDivision, weighingOf } from './weighing.ts';

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
  const sources = wanted.sources.filter(({ strength }) => strength > wanted.target).map(asLabel);
  const reach = reachOf(wanted, shapes);
  for (let most = 0; most <= mostStocks; most++) {
    const routes = routesWith(wanted, { shapes, sources, reach, most });
    if (routes.length > 0) return routes.reduce((best, one) => (isBetter(one, best) ? one : best));
  }
  return undefined;
}

/** Whether a part of a chain can still end in an addition that is weighed, with so many stocks more. */
type Reach = (strength: number, more: number) => boolean;

/**
 * What is added grows with each stock, at most by the largest dilution; it must come to the least mass that is weighed,
 * and never above what the largest stock is. Whatever this leaves out could not be weighed in the end.
 */
function reachOf({ target, finalMassGrams, bench }: ChainWanted, shapes: readonly StockShape[]): Reach {
  const least = Math.min(...bench.scales.map((scale) => leastMass(scale, bench.weighing)));
  const most = Math.max(...shapes.map(({ totalGrams }) => totalGrams));
  const dilution = Math.max(...shapes.map((shape) => shape.dilution));
  return (strength, more) => {
    const added = (target * finalMassGrams) / strength;
    return added * dilution ** more >= least * (1 - 1e-6) && (more === 0 || added <= most);
  };
}

interface Searching {
  readonly shapes: readonly StockShape[];
  readonly sources: readonly Label[];
  readonly reach: Reach;
  readonly most: number;
}

/** Every chain worth a look that has exactly so many stocks on the way. */
function routesWith(wanted: ChainWanted, { shapes, sources, reach, most }: Searching): readonly Route[] {
  let labels = sources.filter(({ strength }) => reach(strength, most));
  for (let more = most - 1; more >= 0 && labels.length > 0; more--)
    labels = worthwhile(
      labels.flatMap((label) => stepsFrom(wanted, label, shapes, (strength) => reach(strength, more))),
    );
  return labels.flatMap((label) => addedInto(wanted, label) ?? []);
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
  isWorth: (strength: number) => boolean = () => true,
): readonly Label[] {
  const possible = shapes.filter(
    ({ take, dilution }) =>
      take.massGrams <= label.thereGrams * (1 + 1e-9) && label.strength / dilution > wanted.target,
  );
  const isNeat = label.source.isNeat === true && label.stocks.length === 0;
  return (isNeat ? leastTakes(wanted, label, possible) : possible)
    .filter(({ dilution }) => isWorth(label.strength / dilution))
    .map((shape) => after(label, shape));
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
function worthwhile(labels: readonly Label[]): Label[] {
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
