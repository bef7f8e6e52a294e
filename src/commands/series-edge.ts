/** The break of a series on the page: bracket, estimate, the ratio to work at, what it rests on, the plot. */

import type { BreakPoint } from '../calc/ladder/break-point.ts';
import { numberText } from '../calc/number-text.ts';
import type { BenchCard } from '../ledger/cards.ts';
import type { Rung, SeriesRungs } from '../ledger/rungs.ts';
import { plotLines, roundTicks } from '../output/plot.ts';
import type { Page } from '../output/view.ts';
import { visible } from '../output/visible.ts';
import { counted, figureText, ratioCell, valueWords } from './series-words.ts';

export interface EdgeOf {
  readonly series: SeriesRungs;
  readonly estimate: BreakPoint;
  readonly bench: BenchCard;
  readonly width: number;
}

export function edgeBlocks(of: EdgeOf): Page {
  const pairs = [...bracketPairs(of), ...breakPairs(of), ...workingPairs(of)];
  return [
    { kind: 'heading', text: 'The break' },
    ...(pairs.length > 0 ? [{ kind: 'pairs', pairs, areSentences: true } as const] : []),
    { kind: 'lines', lines: plot(of) },
  ];
}

type Pair = readonly [string, string];

/** Turned over and back a value may have lost its last digit. */
const isAt = (value: number, other: number | null): boolean =>
  other !== null && Math.abs(value - other) <= 1e-9 * Math.abs(value);

/** The trial of a rung whose beaker came out so at this value. */
const trialAt = ({ rungs }: SeriesRungs, value: number, outcome: 'held' | 'failed'): string => {
  const found = rungs.filter(({ beaker }) => beaker?.outcome === outcome && isAt(beaker.ratio, value));
  return found.length === 0 ? '' : ` (${found.map(({ trial }) => trial.number).join(', ')})`;
};

function bracketPairs({ series, estimate }: EdgeOf): readonly Pair[] {
  const [scale] = series.scales;
  const { lastHeld, firstFailed, crossed } = estimate.bracket;
  const beyond = estimate.failing === 'above' ? 'above' : 'below';
  return [
    ...(lastHeld === null
      ? []
      : [['last held', `${valueWords(scale, lastHeld)}${trialAt(series, lastHeld, 'held')}`] as const]),
    ...(firstFailed === null
      ? []
      : [
          [
            'first failed',
            `${valueWords(scale, firstFailed)}${trialAt(series, firstFailed, 'failed')}`,
          ] as const,
        ]),
    ...(crossed > 0
      ? [
          [
            'out of order',
            `${counted(crossed, 'beaker')} held ${beyond} one that failed; the estimate allows for it`,
          ] as const,
        ]
      : []),
  ];
}

function breakPairs({ series, estimate }: EdgeOf): readonly Pair[] {
  const [scale] = series.scales;
  const { breakPoint, breakLow, breakHigh } = estimate;
  const low = breakLow === null ? 'open' : figureText(scale, breakLow);
  const high = breakHigh === null ? 'open' : figureText(scale, breakHigh);
  const parts =
    scale?.isOilRatio && breakLow !== null && breakHigh !== null
      ? ` (${ratioCell(breakLow)} to ${ratioCell(breakHigh)})`
      : '';
  return [
    ...(breakPoint === null ? [] : [['break point', valueWords(scale, breakPoint)] as const]),
    ...(breakLow === null && breakHigh === null
      ? []
      : [['90 % interval', `${low} to ${high}${parts}`] as const]),
  ];
}

function workingPairs(of: EdgeOf): readonly Pair[] {
  const { series, estimate, bench } = of;
  const [scale] = series.scales;
  const { workingPoint, holdsNinetyFive, breakPoint, bracket } = estimate;
  if (workingPoint === null) return [];
  const why =
    breakPoint === null && isAt(workingPoint, bracket.lastHeld)
      ? 'the last that held'
      : workingPoint === holdsNinetyFive
        ? 'back a little: holds with 95 % chance'
        : `back a little: the break less ${bench.margin.written}`;
  return [
    ['work at', `${valueWords(scale, workingPoint)} (${why})`],
    ['it rests on', `${restsOn(of)}. That is no shelf life`],
  ];
}

/** `7 d, 21 C, orange oil lot 2231, steps of trial 13` */
export function restsOn({ series, estimate, bench }: Omit<EdgeOf, 'width'>): string {
  const { rungs } = series;
  const held = rungs.findLast(
    ({ beaker }) => beaker?.outcome === 'held' && isAt(beaker.ratio, estimate.bracket.lastHeld),
  );
  const shown = held ?? rungs.find(({ judged }) => judged);
  const sample = shown?.judged?.sample;
  const watch = (sample?.watch ?? series.series.watch ?? bench.watch).written;
  const oils = shown?.facts.find(({ what }) => what === 'oil')?.text ?? '';
  return visible(
    [
      watch,
      temperatureOf(rungs) ?? sample?.at?.written ?? bench.temperature.written,
      oils,
      shown ? `steps of trial ${shown.trial.number}` : '',
    ]
      .filter((text) => text !== '')
      .join(', '),
  );
}

const zeroCelsius = 273.15;

/** As it was read at the looks, where it was. */
function temperatureOf(rungs: readonly Rung[]): string | undefined {
  const read = rungs.flatMap(({ trial, judged }) =>
    judged?.sample.at
      ? []
      : trial.observations.flatMap(({ temperature, sample }) =>
          temperature && (!sample || sample.text === judged?.sample.name)
            ? [temperature.inner - zeroCelsius]
            : [],
        ),
  );
  if (read.length === 0) return undefined;
  const [low, high] = [Math.min(...read), Math.max(...read)].map((value) => numberText(value, 2));
  return low === high ? `${low} C` : `${low} to ${high} C`;
}

const mostPlotWidth = 78;
/** How far the plot goes beyond the outermost beakers. */
const beyond = 1.25;

function plot({ series, estimate, width }: EdgeOf): readonly string[] {
  const { beakers, scales } = series;
  const values = beakers.map(({ ratio }) => ratio);
  const interval = [estimate.breakLow, estimate.breakHigh].filter((one) => one !== null);
  const low = Math.min(...values, ...interval) / beyond;
  const high = Math.max(...values, ...interval) * beyond;
  const of = (outcome: string): readonly number[] =>
    beakers.filter((one) => one.outcome === outcome).map(({ ratio }) => ratio);
  const rows = [
    { label: 'held', mark: 'o', values: of('held') },
    { label: 'failed', mark: 'x', values: of('failed') },
    { label: 'watched', mark: '?', values: of('watching') },
  ].filter((row) => row.values.length > 0);
  const [scale] = scales;
  const ticks = scale?.isOilRatio
    ? partTicks(low, high)
    : roundTicks(low, high).map((value) => ({ value, text: figureText(scale, value) }));
  return [
    `chance that a new beaker holds, by ${scale?.isOilRatio ? 'oil : emulsifier' : visible(scale?.text ?? '')}`,
    ...plotLines({
      low,
      high,
      chanceAt: estimate.chanceToHold,
      rows,
      ticks,
      width: Math.min(width, mostPlotWidth),
    }),
  ];
}

const partRatios = [1 / 10, 1 / 8, 1 / 6, 1 / 5, 1 / 4, 1 / 3, 1 / 2.5, 1 / 2, 1 / 1.5, 1, 1.5, 2, 3, 4, 5];

/** The ratios that people say. */
export function partTicks(low: number, high: number) {
  const found = partRatios.filter((value) => value >= low && value <= high);
  const values = found.length >= 2 ? found : roundTicks(low, high);
  return values.map((value) => ({ value, text: ratioCell(value) }));
}
