/** What the estimate of a series is made of: priors, formulas, the beakers as they were counted, sources. */

import type { Citation, WorkingLine } from '../calc/answer.ts';
import type { BreakPoint } from '../calc/ladder/break-point.ts';
import { makingSpans } from '../calc/ladder/priors.ts';
import { numberText, trimmedNumber } from '../calc/number-text.ts';
import type { SeriesRungs } from '../ledger/rungs.ts';
import type { Page } from '../output/view.ts';
import type { Explanation } from './command.ts';
import { figureText } from './series-words.ts';

const percent = (fraction: number): string => `${trimmedNumber(fraction * 100, 2)} %`;

/** Of a series with an edge; of heads over a dose see `series-foam`. */
export function seriesExplanation(series: SeriesRungs, estimate: BreakPoint | undefined): Explanation {
  if (!estimate) return { working: [], sources: [] };
  return {
    working: workingLines(series, estimate),
    sources: explainSources(series),
    more: [
      { kind: 'heading', text: 'Believed before the first beaker' },
      { kind: 'notes', mark: ' -', notes: priorNotes(series, estimate) },
      { kind: 'heading', text: 'Beakers as they were counted' },
      beakerTable(series),
    ],
  };
}

function priorNotes({ scales, making }: SeriesRungs, estimate: BreakPoint): readonly string[] {
  const [scale] = scales;
  const { lowRatio, highRatio, edge, scatter, dayShift, oddChance } = estimate.posterior.priors;
  const ends = [lowRatio, highRatio]
    .map((value) => (estimate.failing === 'above' ? value : 1 / value))
    .sort((one, other) => one - other)
    .map((value) => figureText(scale, value));
  const why = scale?.isOilRatio ? makingSpans[making].why : 'half the lowest to twice the highest tried';
  return [
    `the break lies anywhere from ${ends.join(' to ')} with equal chance on the logarithm, and less and less so beyond (a bell of width ${edge}): ${why}; widened where beakers went further`,
    `single beakers scatter by about ${percent(scatter.middle)} in the logarithm, known to a factor of ${numberText(Math.exp(scatter.spread), 2)}; from ${percent(scatter.lowest)} to ${percent(scatter.highest)} are tried`,
    `beakers made on one day share a shift of about ${percent(dayShift)}`,
    `one beaker in ${trimmedNumber(1 / oddChance, 2)} is odd: it shows the opposite of what its amount would give`,
  ];
}

function workingLines({ scales, beakers }: SeriesRungs, estimate: BreakPoint): readonly WorkingLine[] {
  const [scale] = scales;
  const value = (one: number | null): string => (one === null ? 'none' : figureText(scale, one));
  const { scatter, posterior } = estimate;
  const { oddChance, dayShift } = posterior.priors;
  const line = (equation: string, numbers: string): WorkingLine => ({ equation, numbers });
  return [
    line(
      'P(fails) = odd + (1 - 2 odd) Phi((ln amount - ln break - shift of the day) / scatter)',
      `odd ${trimmedNumber(oddChance, 3)}, shift of a day about ${percent(dayShift)}, over ${beakers.length} beakers`,
    ),
    line(
      'still watched or ended early: 1 - (share of the watch that it lasted) P(fails)',
      `${beakers.filter(({ outcome }) => outcome === 'watching').length} beakers of this kind`,
    ),
    line(
      'chances of all beakers multiplied, the shift of each day averaged out',
      `on a grid of ${posterior.locations.length} breaks by ${posterior.scatters.length} scatters; nothing is drawn at random`,
    ),
    line(
      'break point = the middle of what is left; interval = its middle 90 %',
      `${value(estimate.breakPoint)}; ${value(estimate.breakLow)} to ${value(estimate.breakHigh)}`,
    ),
    ...(scatter
      ? [
          line(
            'scatter of single beakers, with its middle 90 %',
            `${percent(scatter.middle)}; ${percent(scatter.low)} to ${percent(scatter.high)}`,
          ),
        ]
      : []),
    line(
      "work at = the nearer to the safe side of what holds with 95 % chance on a new day, and the break less the bench's margin",
      `${value(estimate.holdsNinetyFive)} holds with 95 %; work at ${value(estimate.workingPoint)}`,
    ),
  ];
}

function beakerTable({ rungs, scales }: SeriesRungs): Page[number] {
  const [scale] = scales;
  return {
    kind: 'table',
    columns: [
      { head: 'trial', align: 'right' },
      { head: scale?.isOilRatio ? 'ratio' : (scale?.text ?? ''), align: 'point' },
      { head: 'counted as', align: 'left' },
      { head: 'made on', align: 'left' },
    ],
    rows: rungs.map(({ trial, values, beaker }) => [
      String(trial.number),
      figureText(scale, values[0] ?? 0),
      beaker ? countedAs(beaker) : 'not counted',
      beaker?.day ?? '',
    ]),
  };
}

const countedAs = ({ outcome, lasted }: NonNullable<SeriesRungs['beakers'][number]>): string =>
  outcome === 'watching' ? `lasted ${percent(lasted ?? 0)} of the watch` : outcome;

export function explainSources({ scales }: SeriesRungs): readonly Citation[] {
  return [
    {
      for: 'scatter as a bell on the logarithm of the amount',
      source: 'Finney 1971, Probit Analysis, chapter 4',
      fromMemory: true,
    },
    {
      for: scales[0]?.isOilRatio ? 'where the break can lie' : 'how wide the break is looked for',
      source: 'common practice, no source',
      fromMemory: false,
    },
    {
      for: 'scatter, shift of a day, odd beakers',
      source: 'common practice, no source; tried on simulated benches in tests/bench',
      fromMemory: false,
    },
  ];
}
