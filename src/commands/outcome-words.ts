/** What became of a sample, in words: always the looks between which it came about, never a point. */

import type { MadeCard, ObservationCard, SampleCard } from '../ledger/cards.ts';
import { dayOf } from '../ledger/look-strip.ts';
import type { SampleOutcome } from '../ledger/outcome.ts';
import { visible } from '../output/visible.ts';

export interface OutcomeOf {
  readonly card: MadeCard;
  readonly sample: SampleCard;
  readonly outcome: SampleOutcome;
}

/** `day 4`; the date where nobody wrote when it was made. */
function dayWords({ card, sample }: OutcomeOf, one: ObservationCard): string {
  const day = dayOf(card, sample, one.at.epochMilliseconds);
  return day === undefined ? one.at.written.slice(0, 10) : `day ${day}`;
}

/**
 * Example   failed between day 4 and day 7
 * Example   held the watch, failed between day 30 and day 90
 * Example   watching, passed to day 2
 */
export function outcomeWords(of: OutcomeOf): string {
  const { outcome, heldTheWatch, lastPass, firstFail, recovery, ended } = of.outcome;
  if (outcome === 'failed' && firstFail) {
    const until = dayWords(of, firstFail);
    const when = lastPass ? failedBetween(dayWords(of, lastPass), until) : `failed by ${until}`;
    const again = recovery ? `, passed again on ${dayWords(of, recovery)}` : '';
    return `${heldTheWatch ? 'held the watch, ' : ''}${when}${again}`;
  }
  const seen = lastPass ? `passed to ${dayWords(of, lastPass)}` : 'no look that passed yet';
  const end = outcome !== 'failed' && ended?.ended ? ` (${visible(ended.ended)})` : '';
  return `${outcome}${outcome === 'held' ? '' : end}, ${seen}`;
}

const failedBetween = (after: string, until: string): string =>
  after === until ? `failed on ${until}` : `failed between ${after} and ${until}`;

/** `failed d4-d7`, for a narrow column. */
export function shortOutcome(of: OutcomeOf): string {
  const { outcome, heldTheWatch, lastPass, firstFail } = of.outcome;
  if (outcome !== 'failed' || !firstFail) return outcome;
  const short = (one: ObservationCard): string => dayWords(of, one).replace(/^day /, 'd');
  const until = short(firstFail);
  if (!lastPass) return `failed by ${until}`;
  const from = short(lastPass);
  return `${heldTheWatch ? 'held, ' : ''}failed ${from === until ? until : `${from}-${until}`}`;
}

const leaf = (value: number | null, unit: string) => ({ value, unit });

/** As JSON: the interval (last passing look, first failing look] in days since the make; an open end is null. */
export function outcomeJson(of: OutcomeOf): Readonly<Record<string, unknown>> {
  const { card, sample, outcome } = of;
  const dayLeaf = (one: ObservationCard | undefined) =>
    leaf((one && dayOf(card, sample, one.at.epochMilliseconds)) ?? null, 'd');
  return {
    sample: sample.name,
    outcome: outcome.outcome,
    heldTheWatch: outcome.heldTheWatch,
    lastPass: dayLeaf(outcome.lastPass),
    firstFail: dayLeaf(outcome.firstFail),
    recovered: outcome.recovery !== undefined,
    recovery: dayLeaf(outcome.recovery),
    ended: outcome.ended?.ended ?? '',
  };
}
