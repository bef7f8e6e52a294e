/** A series with an optimum, and a series that varies two things, as charts with their tables. */

import type { HeldWindow } from '../calc/window.ts';
import type { Scale } from '../ledger/rung-scale.ts';
import type { Rung, SeriesRungs } from '../ledger/rungs.ts';
import type { WindowChart } from '../output/draw/held-window.ts';
import { linearTicks } from '../output/draw/scale.ts';
import type { Part, Table } from '../output/report/model.ts';
import { visible } from '../output/visible.ts';
import { rungName, stateOf } from './report-board.ts';
import { partTicks } from './series-edge.ts';
import { gridBlocks, seriesWindow, stepOf, steps } from './series-window.ts';
import { figureText, ratioCell } from './series-words.ts';

/** How far a chart goes beyond the outermost beakers, as a share of what lies between them. */
const beyond = 0.12;

export function windowChartParts(series: SeriesRungs): readonly Part[] {
  const shown = series.rungs.filter(({ values }) => values[0] !== undefined);
  if (shown.length === 0) return [];
  return [{ kind: 'chart', chart: { draws: 'window', of: chartOf(series, shown) }, table: tableOf(series) }];
}

function chartOf(series: SeriesRungs, shown: readonly Rung[]): WindowChart {
  const [scale] = series.scales;
  const values = shown.map((rung) => rung.values[0] ?? 0);
  const isLog = scale?.isOilRatio === true && values.every((value) => value > 0);
  const { low, high } = edgesOf(values, isLog);
  const window = seriesWindow(series);
  const ticks = isLog
    ? partTicks(low, high)
    : linearTicks(low, high).map((value) => ({ value, text: String(value) }));
  return {
    id: 'window-drawing',
    title: 'What held, and what failed on both sides',
    about: windowWords(scale, window),
    low,
    high,
    isLog,
    beakers: shown.map((rung) => ({
      value: rung.values[0] ?? 0,
      state: stateOf(rung),
      label: String(rung.trial.number),
    })),
    ticks,
    axis: axisText(scale),
    held: heldOf(scale, window),
    failedBelow: window.failedBelow ?? undefined,
    failedAbove: window.failedAbove ?? undefined,
  };
}

function edgesOf(values: readonly number[], isLog: boolean) {
  const [least, most] = [Math.min(...values), Math.max(...values)];
  if (isLog) return { low: least / 1.2, high: most * 1.2 };
  const room = (most - least || Math.abs(most) || 1) * beyond;
  return { low: least - room, high: most + room };
}

const pointText = (scale: Scale | undefined, value: number): string =>
  scale?.isOilRatio && value > 0 ? ratioCell(value) : figureText(scale, value);

const axisText = (scale: Scale | undefined): string =>
  scale?.isOilRatio
    ? 'oil : emulsifier, by mass'
    : `${visible(scale?.text ?? '')}${scale?.unit ? `, ${scale.unit}` : ''}`;

function heldOf(scale: Scale | undefined, { lowestHeld, highestHeld }: HeldWindow): WindowChart['held'] {
  if (lowestHeld === null || highestHeld === null) return undefined;
  const [from, to] = [pointText(scale, lowestHeld), pointText(scale, highestHeld)];
  return {
    from: lowestHeld,
    to: highestHeld,
    text: from === to ? `held at ${from}` : `held ${from} to ${to}`,
  };
}

function windowWords(scale: Scale | undefined, window: HeldWindow): string {
  const { failedBelow, failedAbove } = window;
  const held = heldOf(scale, window);
  const side = (name: string, failed: number | null): string =>
    failed === null ? `Nothing failed ${name} it yet.` : `Failed ${name} it at ${pointText(scale, failed)}.`;
  if (!held) return 'Nothing held yet; the table has the beakers.';
  return `It ${held.text}. ${side('below', failedBelow)} ${side('above', failedAbove)}`;
}

function tableOf(series: SeriesRungs): Table {
  return {
    caption: 'the beakers, and what became of them',
    columns: [
      { head: visible(series.scales[0]?.text ?? ''), align: 'right' },
      { head: 'trial', align: 'right' },
      { head: 'came to', align: 'left' },
    ],
    rows: series.rungs.map((rung) => [
      rungName(rung, series),
      String(rung.trial.number),
      rung.judged?.outcome.outcome ?? 'no sample',
    ]),
  };
}

/** Two things varied: the first upwards, the second to the right. */
export function gridChartParts(series: SeriesRungs): readonly Part[] {
  const [first, second] = series.scales;
  const table = gridBlocks(series).find((block) => block.kind === 'grid');
  if (!first || !second || table?.kind !== 'grid') return [];
  const ups = steps(series.rungs.map(({ values }) => values[0] ?? 0));
  const acrosses = steps(series.rungs.map(({ values }) => values[1] ?? 0));
  return [
    {
      kind: 'chart',
      chart: {
        draws: 'grid',
        of: {
          id: 'grid-drawing',
          title: 'What held where the two meet',
          about: `${visible(first.text)} upwards, ${visible(second.text)} to the right; the table has the beakers.`,
          up: ups.map((value) => shortPoint(first, value)),
          across: acrosses.map((value) => shortPoint(second, value)),
          upName: axisText(first),
          acrossName: axisText(second),
          beakers: series.rungs.map((rung) => ({
            up: ups.indexOf(stepOf(rung.values[0] ?? 0, ups)),
            across: acrosses.indexOf(stepOf(rung.values[1] ?? 0, acrosses)),
            state: stateOf(rung),
            label: String(rung.trial.number),
          })),
        },
      },
      table: {
        caption: `${visible(first.text)} downwards, ${visible(second.text)} across; in brackets the trial`,
        columns: table.columns.map(({ head, align }) => ({
          head,
          align: align === 'left' ? 'left' : 'right',
        })),
        rows: table.rows.map(([, ...cells], at) => [pointText(first, ups[at] ?? 0), ...cells]),
      },
    },
  ];
}

/** The unit stands beside the axis. */
const shortPoint = (scale: Scale, value: number): string =>
  scale.isOilRatio && value > 0 ? ratioCell(value) : String(Number(value.toPrecision(3)));
