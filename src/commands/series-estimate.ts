/** The break of a series: its priors by what is varied and how it is made, and what the beakers say. */

import { type BreakPoint, breakPoint } from '../calc/ladder/break-point.ts';
import { type FailingSide, likelyFailingSide } from '../calc/ladder/direction.ts';
import { type LadderPriors, priorsAround, priorsFor } from '../calc/ladder/priors.ts';
import type { BenchCard } from '../ledger/cards.ts';
import type { SeriesRungs } from '../ledger/rungs.ts';

type WithBeakers = Pick<SeriesRungs, 'beakers' | 'scales' | 'making'>;

/** By how it is made for oil per emulsifier; else wide around what was tried. Undefined without a beaker. */
export function seriesPriors({ beakers, scales, making }: WithBeakers): LadderPriors | undefined {
  if (beakers.length === 0) return undefined;
  if (scales[0]?.isOilRatio) return priorsFor(making);
  const tried = beakers.map(({ ratio }) => ratio);
  return priorsAround({ low: Math.min(...tried), high: Math.max(...tried) });
}

/** Too much oil breaks; of anything else the beakers tell, and what is usual while they don't. */
export const failingSide = ({
  beakers,
  scales,
  usualSide,
}: Pick<SeriesRungs, 'beakers' | 'scales' | 'usualSide'>): FailingSide =>
  scales[0]?.isOilRatio ? 'above' : likelyFailingSide(beakers, usualSide);

/** Undefined where there is no edge to look for: nothing or two things varied, a window, no beaker. */
export function seriesBreak(
  rungs: Pick<SeriesRungs, 'beakers' | 'scales' | 'making' | 'shape' | 'usualSide'>,
  bench: BenchCard,
): BreakPoint | undefined {
  if (rungs.scales.length !== 1 || rungs.shape === 'window') return undefined;
  const priors = seriesPriors(rungs);
  const { beakers } = rungs;
  const failing = failingSide(rungs);
  return priors && breakPoint({ beakers, priors, marginFraction: bench.margin.inner, failing });
}
