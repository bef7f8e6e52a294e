/** What was seen of a sample, day by day. */

import type { MadeCard, ObservationCard, SampleCard } from '../ledger/cards.ts';
import { isSameName } from '../ledger/stage-name.ts';

const dayMilliseconds = 86_400_000;

export interface DayLook {
  /** Whole days since it was made; undefined where that is not known. */
  readonly day: number | undefined;
  readonly words: string;
}

/** The observations of a sample in the order of time; those without a sample belong to the first. */
export function observationsOf(card: MadeCard, sample: SampleCard): readonly ObservationCard[] {
  const [first] = card.samples;
  return card.observations
    .filter((one) => (one.sample ? isSameName(one.sample.text, sample.name) : sample === first))
    .sort((left, right) => left.at.epochMilliseconds - right.at.epochMilliseconds);
}

/** When the stage of a sample was made: its own time, else that of the trial. */
export function madeEpoch(card: MadeCard, sample: SampleCard): number | undefined {
  const stage = card.stages.find((one) => isSameName(one.name, sample.of));
  return (stage?.made ?? card.made)?.epochMilliseconds;
}

export function looksByDay(card: MadeCard, sample: SampleCard): readonly DayLook[] {
  const made = madeEpoch(card, sample);
  return observationsOf(card, sample)
    .filter((one) => one.looks.length > 0 || one.ended !== undefined)
    .map((one) => ({
      day:
        made === undefined
          ? undefined
          : Math.floor((one.at.epochMilliseconds - made) / dayMilliseconds + 1 / 3),
      words: [...one.looks, ...(one.ended === undefined ? [] : [`ended (${one.ended})`])].join(', '),
    }));
}

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
