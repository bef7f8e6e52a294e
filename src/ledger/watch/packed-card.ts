/** What looking asks of a trial, as a short list that can be kept and made a card again. */

import type { Quantity } from '../../calc/quantity.ts';
import type { StressWord } from '../../reference/stress-cycles.ts';
import {
  type Look,
  looks,
  type Moment,
  type ObservationCard,
  type SampleCard,
  type StageCard,
  type TrialCard,
} from '../cards.ts';
import { asciiOf } from './kept-text.ts';

type PackedMoment = readonly [written: string, epochMilliseconds: number, isDay: 0 | 1];

interface PackedSample {
  readonly n: string;
  readonly o: string;
  readonly i?: 1;
  readonly in?: string;
  readonly c?: string;
  readonly at?: Quantity;
  readonly v?: string;
  readonly k?: number;
  readonly l?: readonly Quantity[];
  readonly w?: Quantity;
  readonly x?: StressWord;
}

type PackedObservation = readonly [
  at: PackedMoment,
  looks: readonly number[],
  sample: string | 0,
  ended: string | 0,
];

interface PackedTrial {
  readonly t: number;
  readonly title?: string;
  readonly made?: PackedMoment;
  readonly series?: string;
  readonly sound?: 1;
  readonly stages: readonly (readonly [name: string, made: PackedMoment | 0])[];
  readonly samples: readonly PackedSample[];
  readonly seen: readonly PackedObservation[];
}

const nowhere = { start: 0, end: 0 } as const;

const packMoment = ({ written, epochMilliseconds, isDay }: Moment): PackedMoment => [
  written,
  epochMilliseconds,
  isDay ? 1 : 0,
];

const openMoment = ([written, epochMilliseconds, isDay]: PackedMoment): Moment => ({
  written,
  epochMilliseconds,
  isDay: isDay === 1,
  ...nowhere,
});

function packSample(sample: SampleCard): PackedSample {
  const { name, of, isImplied, in: vessel, cover, at, viewed, count, looks: own, watch, stress } = sample;
  return {
    n: name,
    o: of,
    ...(isImplied ? { i: 1 } : {}),
    ...(vessel === undefined ? {} : { in: vessel }),
    ...(cover === undefined ? {} : { c: cover }),
    ...(at === undefined ? {} : { at }),
    ...(viewed === undefined ? {} : { v: viewed }),
    ...(count === undefined ? {} : { k: count }),
    ...(own === undefined ? {} : { l: own }),
    ...(watch === undefined ? {} : { w: watch }),
    ...(stress === undefined ? {} : { x: stress }),
  };
}

const openSample = (packed: PackedSample): SampleCard => ({
  name: packed.n,
  nameSpan: nowhere,
  isImplied: packed.i === 1,
  of: packed.o,
  ofSpan: nowhere,
  in: packed.in,
  cover: packed.c,
  at: packed.at,
  viewed: packed.v,
  count: packed.k,
  looks: packed.l,
  watch: packed.w,
  stress: packed.x,
});

const packObservation = ({ at, looks: words, sample, ended }: ObservationCard): PackedObservation => [
  packMoment(at),
  words.map((word) => looks.indexOf(word)),
  sample?.text ?? 0,
  ended ?? 0,
];

const openObservation = ([at, words, sample, ended]: PackedObservation): ObservationCard => ({
  at: openMoment(at),
  looks: words.flatMap((word): readonly Look[] => looks.slice(word, word + 1)),
  sample: sample === 0 ? undefined : { text: sample, ...nowhere },
  ended: ended === 0 ? undefined : ended,
  taste: [],
  headSpan: nowhere,
  ...nowhere,
});

/** Observations that say nothing of how a sample looks are left out. */
const packTrial = (card: TrialCard): PackedTrial => ({
  t: card.number,
  ...(card.title === undefined ? {} : { title: card.title }),
  ...(card.made ? { made: packMoment(card.made) } : {}),
  ...(card.series ? { series: card.series.text } : {}),
  ...(card.isSound ? { sound: 1 } : {}),
  stages: card.stages.map(({ name, made }) => [name, made ? packMoment(made) : 0]),
  samples: card.samples.map(packSample),
  seen: card.observations
    .filter((one) => one.looks.length > 0 || one.ended !== undefined)
    .map(packObservation),
});

/** The same as ASCII without a tab. */
export const packedText = (card: TrialCard): string => asciiOf(JSON.stringify(packTrial(card)));

/** The trial with what looking asks of it: its items, readings, results and places are not there. */
export function openPacked(file: string, text: string): TrialCard {
  const packed: PackedTrial = JSON.parse(text);
  let stages: readonly StageCard[] | undefined;
  let samples: readonly SampleCard[] | undefined;
  let observations: readonly ObservationCard[] | undefined;
  return {
    kind: 'trial',
    file,
    number: packed.t,
    numberSpan: nowhere,
    isSound: packed.sound === 1,
    title: packed.title,
    made: packed.made && openMoment(packed.made),
    series: packed.series === undefined ? undefined : { text: packed.series, ...nowhere },
    // Made when they are asked for: of thousands of trials most commands look into few.
    get stages() {
      stages ??= packed.stages.map(openStage);
      return stages;
    },
    get samples() {
      samples ??= packed.samples.map(openSample);
      return samples;
    },
    get observations() {
      observations ??= packed.seen.map(openObservation);
      return observations;
    },
    results: [],
    get root(): never {
      throw new Error(`${file} was not read, only what is kept of it`);
    },
  };
}

const openStage = ([name, made]: PackedTrial['stages'][number]): StageCard => ({
  name,
  nameSpan: nowhere,
  items: [],
  process: [],
  made: made === 0 ? undefined : openMoment(made),
});
