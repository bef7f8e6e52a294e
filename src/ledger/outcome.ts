/** What became of a sample: derived from its looks, never typed. */

import type { Quantity } from '../calc/quantity.ts';
import type { BenchCard, Look, MadeCard, ObservationCard, SampleCard } from './cards.ts';
import { endOf, madeEpoch, observationsOf } from './sample-record.ts';

export interface WatchRules {
  /** Looks that pass. */
  readonly passes: readonly Look[];
  /** Before this only ring and broken count. */
  readonly settleSeconds: number;
  readonly watchSeconds: number;
}

/** The observations that an outcome rests on are looks of the sample itself, so an interval never has an end of ours. */
export interface SampleOutcome {
  readonly outcome: 'held' | 'failed' | 'watching' | 'ended';
  /** True where it passed at the end of the watch, also where it failed later. */
  readonly heldTheWatch: boolean;
  /** The last look that passed; of a sample that failed, the last before that. */
  readonly lastPass: ObservationCard | undefined;
  /** The first look that did not pass: it failed after `lastPass`, at the latest here. */
  readonly firstFail: ObservationCard | undefined;
  /** The first look that passed again after it failed. */
  readonly recovery: ObservationCard | undefined;
  /** Why looking stopped, where it did. */
  readonly ended: ObservationCard | undefined;
}

/** What a series says of looking at its samples. */
export interface SeriesRules {
  readonly passes: readonly Look[];
  readonly settle?: Pick<Quantity, 'inner'> | undefined;
  readonly watch?: Pick<Quantity, 'inner'> | undefined;
}

interface RulesFor {
  readonly sample: SampleCard;
  readonly bench: BenchCard;
  readonly series?: SeriesRules | undefined;
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

/** The age from which a passing look counts for the end of the watch. */
export const watchEndSeconds = ({ watchSeconds }: WatchRules): number =>
  watchSeconds - Math.min(earliestSeconds, watchSeconds / 3);

/** How old the sample was; undefined where its time of making is not known. */
export function ageSeconds(card: MadeCard, sample: SampleCard, one: ObservationCard): number | undefined {
  const made = madeEpoch(card, sample);
  return made === undefined ? undefined : (one.at.epochMilliseconds - made) / 1000;
}

/**
 * Formula   failed at the first look that does not pass (before settling only ring and broken count); held when it
 *           passed at a look on the last day of the watch or later; ended where looking stopped before; else watching
 * Output    the outcome, with the looks between which it came about
 */
export function outcomeOf({ card, sample, rules }: OutcomeFrom): SampleOutcome {
  const looks = observationsOf(card, sample).filter((one) => one.looks.length > 0);
  const ageOf = (one: ObservationCard): number => ageSeconds(card, sample, one) ?? Number.NaN;
  const isPass = (one: ObservationCard): boolean => one.looks.every((word) => rules.passes.includes(word));
  const isFail = (one: ObservationCard): boolean => {
    const isSettling = ageOf(one) < rules.settleSeconds;
    return one.looks.some(
      (word) => !rules.passes.includes(word) && (!isSettling || countsAtOnce.includes(word)),
    );
  };
  const failAt = looks.findIndex(isFail);
  const before = failAt === -1 ? looks : looks.slice(0, failAt);
  const lastPass = before.findLast(isPass);
  const heldTheWatch = lastPass !== undefined && ageOf(lastPass) >= watchEndSeconds(rules);
  const ended = endOf(card, sample);
  return {
    outcome: failAt !== -1 ? 'failed' : heldTheWatch ? 'held' : ended ? 'ended' : 'watching',
    heldTheWatch,
    lastPass,
    firstFail: looks[failAt],
    recovery: failAt === -1 ? undefined : looks.slice(failAt + 1).find(isPass),
    ended,
  };
}

/**
 * The share of the watch that a sample is known to have lasted.
 *
 * Formula   age at the last look that passed / watch, 0 to 1
 */
export function lastedShare({ card, sample, rules }: OutcomeFrom, { lastPass }: SampleOutcome): number {
  const age = lastPass && ageSeconds(card, sample, lastPass);
  if (age === undefined || rules.watchSeconds <= 0) return 0;
  return Math.min(1, Math.max(0, age / rules.watchSeconds));
}
