/** What is to be written of one trial, made from its file as it is now. */

import type { Look, SampleCard } from '../ledger/cards.ts';
import type { Fact } from '../ledger/fact-text.ts';
import { endOf, lastLookOf } from '../ledger/sample-record.ts';
import type { TypedTime } from '../ledger/typed-time.ts';
import type { Fault, Problem } from '../problem.ts';
import type { Seen } from './look-line.ts';
import { beforeMadeProblem, chooseSample, endProblem, sampleFacts, sampleText } from './look-sample.ts';
import type { OpenedTrial } from './open-ledger.ts';

/** What a person said of a trial. */
export interface Said {
  /** Its number or its file. */
  readonly trial: string;
  readonly sample?: string | undefined;
  readonly seen?: Seen | undefined;
  /** Why looking stops. */
  readonly ended?: string | undefined;
  readonly note?: string | undefined;
}

/** What holds for everything said in one go. */
export interface Manner {
  readonly at: TypedTime;
  readonly sample?: string | undefined;
  readonly viewed?: string | undefined;
  readonly by?: string | undefined;
  readonly note?: string | undefined;
}

export interface Entry {
  readonly trial: OpenedTrial;
  readonly sample: SampleCard;
  /** As it is shown: `clear, ring`, `ended (spilled)`. */
  readonly words: string;
  readonly looks: readonly Look[];
  readonly atEpoch: number;
  readonly facts: readonly Fact[];
  /** Refuses it, unless it is there already. */
  readonly refusal: Problem | undefined;
}

export interface Entries {
  readonly entries: readonly Entry[];
  readonly problems: readonly Problem[];
}

/** One entry for the sample that is meant; of `same`, one for each sample that is still looked at. */
export function entriesOf(trial: OpenedTrial, said: Said, manner: Manner): Entries {
  const { card } = trial;
  const typed = said.sample ?? manner.sample;
  if (said.seen === 'same' && typed === undefined && card.samples.length > 1) {
    const open = card.samples.filter((sample) => {
      const end = endOf(card, sample);
      return !end || manner.at.epochMilliseconds < end.at.epochMilliseconds;
    });
    return joined(
      (open.length > 0 ? open : card.samples).map((sample) => entryOf({ trial, sample, said, manner })),
    );
  }
  const sample = chooseSample(card, typed);
  if (!sample.ok) return { entries: [], problems: [problemOf(sample.fault)] };
  return entryOf({ trial, sample: sample.value, said, manner });
}

interface Meant {
  readonly trial: OpenedTrial;
  readonly sample: SampleCard;
  readonly said: Said;
  readonly manner: Manner;
}

function entryOf({ trial, sample, said, manner }: Meant): Entries {
  const { card } = trial;
  const { at } = manner;
  const looks =
    said.seen === 'same' ? lastLookOf(card, sample, at.epochMilliseconds)?.looks : (said.seen ?? []);
  if (!looks) return { entries: [], problems: [noLookProblem(trial, sample)] };
  const note = said.note ?? manner.note;
  const given: readonly (readonly [string, string | undefined])[] = [
    ['look', looks.length > 0 ? looks.join(', ') : undefined],
    ['viewed', manner.viewed],
    ['by', manner.by],
    ['note', note],
    ['ended', said.ended],
  ];
  const facts = given.flatMap(([key, value]): readonly Fact[] => (value === undefined ? [] : [[key, value]]));
  const refusal = beforeMadeProblem(card, sample, at) ?? endProblem(trial, sample, at.epochMilliseconds);
  const words = [...looks, ...(said.ended === undefined ? [] : [`ended (${said.ended})`])].join(', ');
  return {
    entries: [
      {
        trial,
        sample,
        words,
        looks,
        atEpoch: at.epochMilliseconds,
        facts: [['at', at.written], ...sampleFacts(card, sample), ...facts],
        refusal,
      },
    ],
    problems: [],
  };
}

const joined = (all: readonly Entries[]): Entries => ({
  entries: all.flatMap(({ entries }) => entries),
  problems: all.flatMap(({ problems }) => problems),
});

const noLookProblem = ({ card }: OpenedTrial, sample: SampleCard): Problem => ({
  code: 'no-look-yet',
  severity: 'error',
  message: `there is no look of ${sampleText(card, sample)} to repeat`,
  hint: `say what was seen: neckring look ${card.number} clear`,
});

export const problemOf = ({ code, message, hint }: Fault): Problem => ({
  code,
  severity: 'error',
  message,
  hint,
});
