/** When each sample needs its next look: by the bench's schedule, the end of the watch and the long watch. */

import type { BenchCard, MadeCard, SampleCard, SeriesCard } from './cards.ts';
import { outcomeOf, type SampleOutcome, watchRules } from './outcome.ts';
import { endOf, lastLookOf, madeEpoch } from './sample-record.ts';

const millisecondsInSecond = 1000;
/** A look in the morning counts for the day that it begins, as in the strip of looks. */
const earliestSeconds = 8 * 3600;

export interface LookDue {
  readonly sample: SampleCard;
  readonly outcome: SampleOutcome;
  readonly isDue: boolean;
  /** How long after the make this look is planned; of several that were missed, the newest. */
  readonly afterSeconds: number;
  /** When that is, in milliseconds since 1970. */
  readonly atEpoch: number;
  /** When the first look that was missed was planned; as `atEpoch` where none was. */
  readonly sinceEpoch: number;
}

export interface ScheduleOf {
  readonly card: MadeCard;
  readonly bench: BenchCard;
  /** The series that the trial belongs to, whose watch and settling time go before the bench's. */
  readonly series?: SeriesCard | undefined;
  /** Milliseconds since 1970. */
  readonly now: number;
}

/**
 * The next look of every sample that is still looked at.
 *
 * Formula   looks are planned at the sample's own `looks` or the bench's, at the end of the watch and at the long
 *           watch, counted from the make; one is due from 8 h (at most a third of its time) before it, until a look
 *           was recorded since then
 * Input     the card of a trial or batch, the bench, its series, the time now in ms since 1970
 * Output    one entry a sample, in the order of the file; none for a sample that failed or ended, that has no time of
 *           making, or whose schedule is over
 */
export function looksDue({ card, bench, series, now }: ScheduleOf): readonly LookDue[] {
  return card.samples.flatMap((sample): readonly LookDue[] => {
    const made = madeEpoch(card, sample);
    if (made === undefined || endOf(card, sample)) return [];
    const rules = watchRules({ sample, bench, series });
    const outcome = outcomeOf({ card, sample, rules });
    if (outcome.outcome === 'failed') return [];
    const last = lastLookOf(card, sample, now)?.at.epochMilliseconds ?? Number.NEGATIVE_INFINITY;
    const open = plannedSeconds(sample, bench, rules.watchSeconds).flatMap((seconds) => {
      const mustReachEnd = seconds === rules.watchSeconds && outcome.outcome === 'watching';
      return openLook({ made, seconds, last, mustReachEnd });
    });
    const come = open.filter(({ opensEpoch }) => opensEpoch <= now);
    const next = come.at(-1) ?? open[0];
    if (!next) return [];
    const { afterSeconds, atEpoch } = next;
    const sinceEpoch = (come[0] ?? next).atEpoch;
    return [{ sample, outcome, isDue: come.length > 0, afterSeconds, atEpoch, sinceEpoch }];
  });
}

interface PlannedLook {
  readonly made: number;
  readonly seconds: number;
  /** The time of the last look. */
  readonly last: number;
  /** A look shortly before does not do: the watch must be over. */
  readonly mustReachEnd: boolean;
}

/** A planned look that no look was recorded for; none where one was. */
function openLook({ made, seconds, last, mustReachEnd }: PlannedLook) {
  const atEpoch = made + seconds * millisecondsInSecond;
  const early = atEpoch - Math.min(earliestSeconds, seconds / 3) * millisecondsInSecond;
  if (last < early) return [{ afterSeconds: seconds, atEpoch, opensEpoch: early }];
  return mustReachEnd && last < atEpoch ? [{ afterSeconds: seconds, atEpoch, opensEpoch: atEpoch }] : [];
}

/** Each once, going up. */
function plannedSeconds(sample: SampleCard, bench: BenchCard, watchSeconds: number): readonly number[] {
  const looks = (sample.looks ?? bench.looks).map(({ inner }) => inner);
  const long = bench.longWatch.map(({ inner }) => inner);
  return [...new Set([...looks, watchSeconds, ...long])].sort((left, right) => left - right);
}
