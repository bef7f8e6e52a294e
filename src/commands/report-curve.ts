/** The chance to hold as a chart, with the beakers and the ratio to work at. */

import type { BreakPoint } from '../calc/ladder/break-point.ts';
import { trimmedNumber } from '../calc/number-text.ts';
import type { SeriesRungs } from '../ledger/rungs.ts';
import type { CurveBeaker, HoldCurve } from '../output/draw/hold-curve.ts';
import { roundTicks } from '../output/plot.ts';
import type { Part, Table } from '../output/report/model.ts';
import { rungName, stateOf } from './report-board.ts';
import { numbersText } from './report-words.ts';
import { partTicks } from './series-edge.ts';
import { figureText, ratioCell } from './series-words.ts';

/** How far the chart goes beyond the outermost beakers. */
const beyond = 1.2;

export function curveParts(series: SeriesRungs, estimate: BreakPoint): readonly Part[] {
  const shown = series.rungs.flatMap((rung) => (rung.beaker ? [{ rung, beaker: rung.beaker }] : []));
  if (shown.length === 0) return [];
  const beakers = shown.map(
    ({ rung, beaker }): CurveBeaker => ({
      value: beaker.ratio,
      state: stateOf(rung),
      label: String(rung.trial.number),
    }),
  );
  return [
    {
      kind: 'chart',
      chart: { draws: 'hold', of: curveOf(series, estimate, beakers) },
      table: tableOf(series, estimate),
    },
  ];
}

const percent = (chance: number): string =>
  chance > 0.995 ? 'over 99 %' : chance < 0.005 ? 'under 1 %' : `${trimmedNumber(chance * 100, 2)} %`;

function curveOf(series: SeriesRungs, estimate: BreakPoint, beakers: readonly CurveBeaker[]): HoldCurve {
  const [scale] = series.scales;
  const { breakLow, breakHigh, breakPoint, workingPoint } = estimate;
  const values = beakers.map(({ value }) => value);
  const marked = [breakLow, breakHigh, breakPoint, workingPoint].filter((one) => one !== null);
  const low = Math.min(...values, ...marked) / beyond;
  const high = Math.max(...values, ...marked) * beyond;
  const isRatio = scale?.isOilRatio === true;
  const text = (value: number): string => (isRatio ? ratioCell(value) : figureText(scale, value));
  const of = (state: string): string =>
    numbersText(beakers.filter((one) => one.state === state).map(({ label }) => Number(label)));
  const marks = [
    ...(breakPoint === null ? [] : [`The break lies at about ${text(breakPoint)}.`]),
    ...(workingPoint === null ? [] : [`The ratio to work at is ${text(workingPoint)}.`]),
  ];
  return {
    id: 'chance-drawing',
    title: 'Chance that a new beaker holds',
    about: [`Held: ${of('held')}. Failed: ${of('failed')}. Still watched: ${of('watching')}.`, ...marks].join(
      ' ',
    ),
    low,
    high,
    chanceAt: estimate.chanceToHold,
    beakers,
    ticks: isRatio
      ? partTicks(low, high)
      : roundTicks(low, high).map((value) => ({ value, text: text(value) })),
    axis: isRatio ? 'oil : emulsifier, by mass' : (scale?.text ?? ''),
    working:
      workingPoint === null ? undefined : { value: workingPoint, text: `work at ${text(workingPoint)}` },
    breaks: breakPoint === null ? undefined : { value: breakPoint, text: `break ${text(breakPoint)}` },
    interval: [breakLow, breakHigh],
  };
}

function tableOf(series: SeriesRungs, estimate: BreakPoint): Table {
  return {
    caption: 'the beakers, and the chance that another one like it holds',
    columns: [
      { head: series.scales[0]?.isOilRatio ? 'ratio' : (series.scales[0]?.text ?? ''), align: 'right' },
      { head: 'trial', align: 'right' },
      { head: 'came to', align: 'left' },
      { head: 'chance', align: 'right' },
    ],
    rows: series.rungs.map((rung) => [
      rungName(rung, series),
      String(rung.trial.number),
      rung.judged?.outcome.outcome ?? 'no sample',
      rung.beaker ? percent(estimate.chanceToHold(rung.beaker.ratio)) : '-',
    ]),
  };
}
