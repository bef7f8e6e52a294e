/** When each sample needs its next look: by the bench's schedule, the end of the watch and the long watch. */

import type { BenchCard, MadeCard, SampleCard } from './cards.ts';
import { outcomeOf, type SampleOutcome, type SeriesRules, watchRules } from './outcome.ts';
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
  readonly series?: SeriesRules | undefined;
  /** Milliseconds since 1970. */
  readonly now: number;
}

export interface OpenLook {
  /** How long after the make this look is planned. */
  readonly afterSeconds: number;
  /** When that is, in milliseconds since 1970. */
  readonly atEpoch: number;
  /** From when on a look counts for it. */
  readonly opensEpoch: number;
}

/** A sample that is still looked at. */
export interface SampleLooks {
  readonly sample: SampleCard;
  readonly outcome: SampleOutcome;
  readonly watchSeconds: number;
  /** Planned looks that no look was recorded for, those that were missed and those to come, in the order of time. */
  readonly open: readonly OpenLook[];
}

/** The last instant of the year 9999: what lies beyond is a slip of the pen, and no calendar has it. */
const lastEpoch = Date.UTC(10_000, 0) - 1;

/**
 * Every look that is still to be made.
 *
 * Formula   looks are planned at the sample's own `looks` or the bench's, at the end of the watch and at the long
 *           watch, counted from the make; one is due from 8 h (at most a third of its time) before it, until a look
 *           was recorded since then
 * Input     the card of a trial or batch, the bench, its series, the time now in ms since 1970
 * Output    one entry a sample, in the order of the file; none for a sample that failed or ended, or that has no time
 *           of making
 */
export function looksOpen({ card, bench, series, now }: ScheduleOf): readonly SampleLooks[] {
  return card.samples.flatMap((sample): readonly SampleLooks[] => {
    const made = madeEpoch(card, sample);
    if (made === undefined || endOf(card, sample)) return [];
    const rules = watchRules({ sample, bench, series });
    const { watchSeconds } = rules;
    const outcome = outcomeOf({ card, sample, rules });
    if (outcome.outcome === 'failed') return [];
    const last = lastLookOf(card, sample, now)?.at.epochMilliseconds ?? Number.NEGATIVE_INFINITY;
    const open = plannedSeconds(sample, bench, watchSeconds).flatMap((seconds) => {
      const mustReachEnd = seconds === watchSeconds && outcome.outcome === 'watching';
      return openLook({ made, seconds, last, mustReachEnd });
    });
    return [{ sample, outcome, watchSeconds, open: open.filter(({ atEpoch }) => atEpoch <= lastEpoch) }];
  });
}

/**
 * The next look of every sample that is still looked at.
 *
 * Input     as `looksOpen`
 * Output    one entry a sample, in the order of the file; none for a sample whose schedule is over
 */
export const looksDue = (of: ScheduleOf): readonly LookDue[] =>
  looksOpen(of).flatMap(({ sample, outcome, open }) => {
    const next = nextOf(open, of.now);
    return next ? [{ sample, outcome, ...next }] : [];
  });

/** Of several looks that were missed the newest; where none was, the first to come. */
export function nextOf(
  open: readonly OpenLook[],
  now: number,
): Omit<LookDue, 'sample' | 'outcome'> | undefined {
  const come = open.filter(({ opensEpoch }) => opensEpoch <= now);
  const next = come.at(-1) ?? open[0];
  if (!next) return undefined;
  const { afterSeconds, atEpoch } = next;
  return { isDue: come.length > 0, afterSeconds, atEpoch, sinceEpoch: (come[0] ?? next).atEpoch };
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
function openLook({ made, seconds, last, mustReachEnd }: PlannedLook): readonly OpenLook[] {
  const atEpoch = made + seconds * millisecondsInSecond;
  const early = atEpoch - Math.min(earliestSeconds, seconds / 3) * millisecondsInSecond;
  if (last < early) return [{ afterSeconds: seconds, atEpoch, opensEpoch: early }];
  return mustReachEnd && last < atEpoch ? [{ afterSeconds: seconds, atEpoch, opensEpoch: atEpoch }] : [];
}

/** Each once, going up. A watch that is over before the first look of the sample's own schedule ends with that look. */
function plannedSeconds(sample: SampleCard, bench: BenchCard, watchSeconds: number): readonly number[] {
  if (sample.looks || sample.watch || sample.stress) return secondsOf(sample, bench, watchSeconds);
  const usual = usualSeconds.get(bench) ?? new Map<number, readonly number[]>();
  const known = usual.get(watchSeconds) ?? secondsOf(sample, bench, watchSeconds);
  usualSeconds.set(bench, usual.set(watchSeconds, known));
  return known;
}

/** The plan of samples that have none of their own, by the length of the watch. */
const usualSeconds = new WeakMap<BenchCard, Map<number, readonly number[]>>();

function secondsOf(sample: SampleCard, bench: BenchCard, watchSeconds: number): readonly number[] {
  const looks = (sample.looks ?? bench.looks).map(({ inner }) => inner);
  const isOwn = sample.looks !== undefined && sample.watch === undefined && looks.length > 0;
  const watch = isOwn && watchSeconds < Math.min(...looks) ? [] : [watchSeconds];
  // A sample under stress is done with when its cycles are.
  const long = sample.stress ? [] : bench.longWatch.map(({ inner }) => inner);
  return [...new Set([...looks, ...watch, ...long])].sort((left, right) => left - right);
}
