/** A series as JSON. */

import type { BreakPoint } from '../calc/ladder/break-point.ts';
import type { HeldWindow } from '../calc/window.ts';
import { looksByDay } from '../ledger/look-strip.ts';
import type { Rung, SampleFate, SeriesRungs, Standing } from '../ledger/rungs.ts';
import { outcomeJson } from './outcome-words.ts';
import { decidedChance } from './series-decision.ts';
import type { SeriesCounts } from './series-notes.ts';

const leaf = (value: number | null | undefined, unit: string) => ({ value: value ?? null, unit });

export interface SeriesFound {
  readonly series: SeriesRungs;
  readonly counts: SeriesCounts;
  readonly estimate: BreakPoint | undefined;
  readonly window: HeldWindow | undefined;
  readonly restsOn: string;
}

export function seriesFound(of: SeriesFound): Readonly<Record<string, unknown>> {
  const { series, counts, estimate, window, restsOn } = of;
  const { series: card } = series;
  const unit = series.scales[0]?.unit ?? '';
  return {
    breakPoint: leaf(estimate?.breakPoint, unit),
    breakLow: leaf(estimate?.breakLow, unit),
    breakHigh: leaf(estimate?.breakHigh, unit),
    workingPoint: leaf(estimate?.workingPoint, unit),
    beakers: leaf(counts.beakers, ''),
    held: leaf(counts.held, ''),
    failed: leaf(counts.failed, ''),
    watching: leaf(counts.watching, ''),
    ended: leaf(counts.ended, ''),
    question: card.question ?? '',
    varies: series.scales.map(({ text, unit: of }) => ({ varies: text, unit: of })),
    shape: series.shape,
    making: series.making,
    madeAlike: series.differences.length === 0,
    differences: series.differences.map((one) => ({
      trial: leaf(one.trial, ''),
      what: one.what,
      is: one.text,
      others: one.others,
    })),
    side: estimate?.side ?? '',
    lastHeld: leaf(estimate?.bracket.lastHeld, unit),
    firstFailed: leaf(estimate?.bracket.firstFailed, unit),
    ...(window ? { window: windowJson(window, unit) } : {}),
    scatter: leaf(estimate?.scatter?.middle, ''),
    restsOn,
    rungs: series.rungs.map((rung) => rungJson(rung, series)),
    control: standingJson(series.control),
    blank: standingJson(series.blank),
    leftOut: series.leftOut,
    decided: {
      text: card.decided?.text ?? '',
      date: card.decided?.date?.written ?? '',
      ratio: card.decided?.ratio ?? '',
      why: card.decided?.why ?? '',
      chanceToHold: leaf(decidedChance(series, estimate), ''),
    },
  };
}

const windowJson = (window: HeldWindow, unit: string) => ({
  lowestHeld: leaf(window.lowestHeld, unit),
  highestHeld: leaf(window.highestHeld, unit),
  failedBelow: leaf(window.failedBelow, unit),
  failedAbove: leaf(window.failedAbove, unit),
  failedInside: window.failedInside.map((value) => leaf(value, unit)),
});

function rungJson(rung: Rung, { scales }: SeriesRungs) {
  return {
    trial: leaf(rung.trial.number, ''),
    values: rung.values.map((value, at) => leaf(value, scales[at]?.unit ?? '')),
    made: rung.day,
    control: rung.isControl,
    outcome: rung.judged?.outcome.outcome ?? '',
    lasted: leaf(rung.beaker?.lasted, ''),
    samples: fatesOf(rung).map((fate) => fateJson(rung, fate)),
  };
}

const fatesOf = ({ judged, others }: Standing): readonly SampleFate[] =>
  judged ? [judged, ...others] : others;

const fateJson = ({ trial, judged }: Standing, fate: SampleFate) => ({
  ...outcomeJson({ card: trial, sample: fate.sample, outcome: fate.outcome }),
  judged: fate === judged,
  looks: looksByDay(trial, fate.sample).map(({ day, words }) => ({ day: leaf(day, 'd'), look: words })),
});

const standingJson = (standing: Standing | undefined) =>
  standing
    ? {
        trial: leaf(standing.trial.number, ''),
        samples: fatesOf(standing).map((fate) => fateJson(standing, fate)),
      }
    : null;
