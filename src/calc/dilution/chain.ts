/** The chain of dilutions that a bench can really make, from the shelf to so much of a trace in a batch. */

import { type Parsed, parsed, refused } from '../../problem.ts';
import { massWords, partsWords } from '../parts-words.ts';
import type { Scale } from '../weighing/balance.ts';
import { whatWouldDo } from './advice.ts';
import { bestRoute, type Route } from './search.ts';
import { leastMass } from './weighing.ts';

/** What stands on the shelf: the neat compound, or a stock of it. */
export interface ChainSource {
  readonly name: string;
  /** Mass fraction of the compound, above 0 up to 1. */
  readonly strength: number;
  /** What is left of it; no end where it is not known. */
  readonly leftGrams?: number | undefined;
  /** Neat: handled once and small, so the least handy mass of it is taken. */
  readonly isNeat?: boolean | undefined;
  /** Relative standard uncertainty of the strength itself; 0 where nothing is known of it. */
  readonly relativeUncertainty?: number | undefined;
}

/** What a stock may be made in. */
export interface ChainVessel {
  readonly name?: string | undefined;
  readonly millilitres: number;
  readonly massGrams?: number | undefined;
}

export interface ChainBench {
  readonly scales: readonly Scale[];
  /** The relative error accepted for a weighing: half a division over the mass. */
  readonly weighing: number;
  /** 100 for 1:100. The addition into the batch is not bound by it. */
  readonly largestDilution: number;
  /** Empty: bottles of 100 mL are taken to be there. */
  readonly vessels: readonly ChainVessel[];
}

export interface ChainWanted {
  /** The compound, for the names of the stocks on the way. */
  readonly of: string;
  readonly sources: readonly ChainSource[];
  /** Mass fraction in the batch. */
  readonly target: number;
  /** g of batch, the addition counted in. */
  readonly finalMassGrams: number;
  readonly bench: ChainBench;
  /** g/mL of what the stocks are made in; 1 where left out. */
  readonly solventDensity?: number | undefined;
}

export interface ChainStep {
  readonly take: string;
  readonly takeMassGrams: number;
  /** In the last step: the rest of the batch. */
  readonly solventMassGrams: number;
  /** Mass fraction after the step. */
  readonly strength: number;
  readonly takeDivisionGrams: number;
  readonly solventDivisionGrams: number;
  readonly solventPortions: number;
  /** Absent in the last step. */
  readonly vessel?: ChainVessel | undefined;
}

export interface Chain {
  readonly source: ChainSource;
  /** The stocks on the way, then the addition into the batch. */
  readonly steps: readonly ChainStep[];
  readonly finalStrength: number;
  /** Combined relative standard uncertainty of the weighings (coverage factor 1). */
  readonly relativeUncertainty: number;
  /** g of stocks made and not used. */
  readonly wasteGrams: number;
}

/**
 * The best chain: the fewest steps, then the least combined uncertainty as it is stated (two digits), then the least
 * waste. Stocks have handy masses (1, 2 or 5 times a power of ten of what is taken) and handy dilutions.
 *
 * Formula   w' = w a/(a + s) a step; combined uncertainty by JCGM 100:2008, equation 10
 * Input     sources on the shelf; target as a mass fraction; finalMassGrams; the bench
 * Output    steps, last the addition; final strength after rounding to the division; relative uncertainty; waste in g
 * Refuses   a target that no source is stronger than; a batch of nothing; a bench that can't weigh it, with what
 *           balance, vessel or intermediate would do
 * Source    JCGM 100:2008; "handled once and small, at most about 1:100 a step": common practice, no source
 * Example   neat to 0.5 ppb in 20 kg on 0.01 g up to 600 g -> 4 steps
 */
export function planChain(wanted: ChainWanted): Parsed<Chain> {
  const fault = plainFault(wanted);
  if (fault) return fault;
  const route = bestRoute(wanted);
  return route ? parsed(chainOf(wanted, route)) : noChain(wanted);
}

function plainFault({ of, sources, target, finalMassGrams, bench }: ChainWanted): Parsed<never> | undefined {
  if (!(target > 0))
    return refused('not-positive', `no ${of} is wanted`, 'give a target above zero, such as 0.5 ppb');
  if (!(finalMassGrams > 0))
    return refused('not-positive', 'the batch is nothing', 'give how much it is, such as 20 kg');
  if (sources.length === 0)
    return refused('no-source', `there is no ${of} on the shelf`, 'name what it starts from');
  const strongest = Math.max(...sources.map(({ strength }) => strength));
  if (strongest <= target)
    return refused(
      'target-too-strong',
      `${partsWords(target)} is no weaker than what there is (${partsWords(strongest)})`,
      'check the units: ppm is a thousand times ppb',
    );
  if (bench.scales.length > 0) return undefined;
  return refused(
    'no-balance',
    'the bench has no balance',
    'list balances in bench.yaml, or give --balance "0.01 g up to 600 g"',
  );
}

function noChain(wanted: ChainWanted): Parsed<never> {
  const { bench, of, target, finalMassGrams } = wanted;
  const finest = bench.scales.toSorted((one, other) => one.divisionGrams - other.divisionGrams)[0];
  const least = finest ? leastMass(finest, bench.weighing) : 0;
  const percent = Number((bench.weighing * 100).toPrecision(3));
  return refused(
    'no-chain',
    `no balance here can bring ${partsWords(target)} of ${of} into ${massWords(finalMassGrams)}: the finest weighs ${Number(least.toPrecision(3))} g and up within ${percent} %`,
    whatWouldDo(wanted),
  );
}

function chainOf({ of, finalMassGrams }: ChainWanted, route: Route): Chain {
  const { source, stocks, addition } = route;
  const names = [source.name, ...stocks.map(({ strength }) => `${partsWords(strength)} ${of}`)];
  const last = stocks.at(-1)?.strength ?? source.strength;
  const finalStrength = Number(((last * addition.massGrams) / finalMassGrams).toPrecision(14));
  const steps: ChainStep[] = stocks.map((stock, at) => ({
    take: names[at] ?? of,
    takeMassGrams: stock.take.massGrams,
    solventMassGrams: stock.solvent.massGrams,
    strength: stock.strength,
    takeDivisionGrams: stock.take.divisionGrams,
    solventDivisionGrams: stock.solvent.divisionGrams,
    solventPortions: stock.solvent.portions,
    ...(stock.vessel ? { vessel: stock.vessel } : {}),
  }));
  return {
    source,
    steps: [
      ...steps,
      {
        take: names.at(-1) ?? of,
        takeMassGrams: addition.massGrams,
        solventMassGrams: finalMassGrams - addition.massGrams,
        strength: finalStrength,
        takeDivisionGrams: addition.divisionGrams,
        solventDivisionGrams: route.rest.divisionGrams,
        solventPortions: route.rest.portions,
      },
    ],
    finalStrength,
    relativeUncertainty: Math.sqrt(route.variance),
    wasteGrams: route.wasteGrams,
  };
}
