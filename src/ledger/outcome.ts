/** What became of a sample: derived from its looks, never typed. */

import type { BenchCard, Look, MadeCard, SampleCard, SeriesCard } from './cards.ts';
import { endOf, madeEpoch, observationsOf } from './sample-record.ts';

export interface WatchRules {
  /** Looks that pass. */
  readonly passes: readonly Look[];
  /** Before this only ring and broken count. */
  readonly settleSeconds: number;
  readonly watchSeconds: number;
}

export interface SampleOutcome {
  readonly outcome: 'held' | 'failed' | 'watching' | 'ended';
}

interface RulesFor {
  readonly sample: SampleCard;
  readonly bench: BenchCard;
  readonly series?: SeriesCard | undefined;
}

/** The sample's own watch goes before that of its series, and that before the bench's. */
export const watchRules = ({ sample, bench, series }: RulesFor): WatchRules => ({
  passes: series?.passes ?? ['clear'],
  settleSeconds: (series?.settle ?? bench.settle).inner,
  watchSeconds: (sample.watch ?? series?.watch ?? bench.watch).inner,
});

interface OutcomeFrom {
  readonly card: MadeCard;
  readonly sample: SampleCard;
  readonly rules: WatchRules;
}

const countsAtOnce: readonly Look[] = ['ring', 'broken'];
/** A look in the morning counts for the day that it begins, as in the strip of looks. */
const earliestSeconds = 8 * 3600;

/**
 * Formula   failed at the first look that does not pass (before settling only ring and broken count); held when it
 *           passed at a look on the last day of the watch or later; ended where looking stopped before; else watching
 */
export function outcomeOf({ card, sample, rules }: OutcomeFrom): SampleOutcome {
  const made = madeEpoch(card, sample);
  const looks = observationsOf(card, sample).filter((one) => one.looks.length > 0);
  const secondsOf = (epochMilliseconds: number): number =>
    made === undefined ? Number.NaN : (epochMilliseconds - made) / 1000;
  const fails = looks.some(({ looks: words, at }) => {
    const isSettling = secondsOf(at.epochMilliseconds) < rules.settleSeconds;
    return words.some((word) => !rules.passes.includes(word) && (!isSettling || countsAtOnce.includes(word)));
  });
  if (fails) return { outcome: 'failed' };
  const end = rules.watchSeconds - Math.min(earliestSeconds, rules.watchSeconds / 3);
  if (looks.some(({ at }) => secondsOf(at.epochMilliseconds) >= end)) return { outcome: 'held' };
  return { outcome: endOf(card, sample) ? 'ended' : 'watching' };
}
