import type { Beaker } from './beaker.ts';
import type { LadderPriors } from './priors.ts';

/** On which side of the break beakers fail: above it for oil per emulsifier, below it for an emulsifier. */
export type FailingSide = 'above' | 'below';

/** Beakers as the posterior wants them, failing above: where they fail below, everything is turned over. */
export const turnedBeakers = (beakers: readonly Beaker[], failing: FailingSide): readonly Beaker[] =>
  failing === 'above' ? beakers : beakers.map((beaker) => ({ ...beaker, ratio: 1 / beaker.ratio }));

export const turnedPriors = (priors: LadderPriors, failing: FailingSide): LadderPriors =>
  failing === 'above'
    ? priors
    : { ...priors, lowRatio: 1 / priors.highRatio, highRatio: 1 / priors.lowRatio };

/**
 * On which side the beakers seem to fail.
 *
 * Formula   below, where the failed stand lower than the held in the mean of the logarithm; above, where they stand
 *           higher; what is usual, where there are not both
 * Input     beakers; the side that is usual, above unless told
 * Output    above or below
 * Example   likelyFailingSide([{ ratio: 1, outcome: 'failed', day: '1' }, { ratio: 2, outcome: 'held', day: '1' }]) -> below
 */
export function likelyFailingSide(beakers: readonly Beaker[], usual: FailingSide = 'above'): FailingSide {
  const meanOf = (outcome: Beaker['outcome']): number => {
    const logs = beakers.filter((beaker) => beaker.outcome === outcome).map(({ ratio }) => Math.log(ratio));
    return logs.reduce((sum, log) => sum + log, 0) / logs.length;
  };
  const apart = meanOf('failed') - meanOf('held');
  if (Number.isNaN(apart) || apart === 0) return usual;
  return apart < 0 ? 'below' : 'above';
}
