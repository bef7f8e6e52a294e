/** What was seen of a sample, day by day. */

import type { MadeCard, ObservationCard, SampleCard } from './cards.ts';
import { madeEpoch, observationsOf } from './sample-record.ts';

const dayMilliseconds = 86_400_000;

export interface DayLook {
  /** Whole days since it was made; undefined where that is not known. */
  readonly day: number | undefined;
  readonly words: string;
}

/** The day of a look, counted from the make; a look in the morning counts for the day that it begins. */
export function dayOf(card: MadeCard, sample: SampleCard, epochMilliseconds: number): number | undefined {
  const made = madeEpoch(card, sample);
  return made === undefined ? undefined : Math.floor((epochMilliseconds - made) / dayMilliseconds + 1 / 3);
}

export const looksByDay = (card: MadeCard, sample: SampleCard): readonly DayLook[] =>
  observationsOf(card, sample)
    .filter(isLook)
    .map((one) => dayLook(card, sample, one));

/** The newest of them. */
export function newestLook(card: MadeCard, sample: SampleCard): DayLook | undefined {
  const newest = observationsOf(card, sample).findLast(isLook);
  return newest && dayLook(card, sample, newest);
}

const isLook = ({ looks, ended }: ObservationCard): boolean => looks.length > 0 || ended !== undefined;

const dayLook = (card: MadeCard, sample: SampleCard, { at, looks, ended }: ObservationCard): DayLook => ({
  day: dayOf(card, sample, at.epochMilliseconds),
  words: [...looks, ...(ended === undefined ? [] : [`ended (${ended})`])].join(', '),
});

/** `d1 clear, d2 clear, d4 bluish` with equal neighbours drawn together: `d1-d2 clear  d4 bluish`. */
export function stripText(looks: readonly DayLook[]): string {
  const runs: { from: string; to: string; words: string }[] = [];
  for (const { day, words } of looks) {
    const name = day === undefined ? '' : `d${day}`;
    const last = runs.at(-1);
    if (last?.words === words) last.to = name;
    else runs.push({ from: name, to: name, words });
  }
  return runs
    .map(({ from, to, words }) => `${from === to ? from : `${from}-${to}`} ${words}`.trim())
    .join('  ');
}
