/** What held and what failed along one thing that is varied, with the window between the failures. */

import { type Html, html } from '../html.ts';
import { linearScale, logScale, type Scale } from './scale.ts';
import { isRoomy, sparse, stackedRows } from './stacked.ts';
import { chartWidth, drawing, type Frame, fixed, keptInside, line, textWidth, words } from './svg.ts';
import { type BeakerState, beakerMark, markLegend } from './vessel.ts';

export interface WindowBeaker {
  readonly value: number;
  readonly state: BeakerState;
  readonly label: string;
}

interface Tick {
  readonly value: number;
  readonly text: string;
}

export interface WindowChart extends Frame {
  readonly low: number;
  readonly high: number;
  /** On the logarithm: ratios. */
  readonly isLog: boolean;
  readonly beakers: readonly WindowBeaker[];
  readonly ticks: readonly Tick[];
  readonly axis: string;
  /** The outermost that held; undefined where nothing held. */
  readonly held?: { readonly from: number; readonly to: number; readonly text: string } | undefined;
  /** The nearest that failed beside it; undefined where that side is open. */
  readonly failedBelow?: number | undefined;
  readonly failedAbove?: number | undefined;
}

const left = 16;
const right = chartWidth - 16;
const rowHeight = 18;
const mostRows = 5;
const head = 26;

interface Layout {
  readonly chart: WindowChart;
  readonly x: Scale;
  readonly shelf: number;
  readonly ends: number;
}

interface Side {
  readonly beakers: readonly (WindowBeaker & { readonly x: number })[];
  readonly rows: readonly number[];
  readonly hasLabels: boolean;
  readonly height: number;
}

export function heldWindowChart(chart: WindowChart): Html {
  const { low, high } = chart;
  const x = (chart.isLog ? logScale : linearScale)({ low, high, from: left + 14, to: right - 14 });
  const above = sideOf(chart, x, ({ state }) => state !== 'failed');
  const below = sideOf(chart, x, ({ state }) => state === 'failed');
  const shelf = head + 16 + above.height;
  const layout = { chart, x, shelf, ends: shelf + 12 + below.height };
  return drawing({
    ...chart,
    width: chartWidth,
    height: layout.ends + 70,
    body: [
      ...spans(layout),
      line({ from: [left, shelf], to: [right, shelf], look: 'shelf' }),
      ...standing(above, (row) => shelf - 2 - row * rowHeight, -19),
      ...standing(below, (row) => shelf + 22 + row * rowHeight, 13),
      ...axis(layout),
    ],
  });
}

function sideOf({ beakers }: WindowChart, x: Scale, isOn: (one: WindowBeaker) => boolean): Side {
  const shown = beakers.filter(isOn).map((one) => ({ ...one, x: x(one.value) }));
  const places = shown.map((one) => one.x);
  const rows = stackedRows(places, 14, mostRows);
  const hasLabels = shown.length > 0 && isRoomy(places, 22);
  const height = shown.length === 0 ? 8 : (Math.max(...rows) + 1) * rowHeight + (hasLabels ? 14 : 0);
  return { beakers: shown, rows, hasLabels, height };
}

const standing = (
  { beakers, rows, hasLabels }: Side,
  yOf: (row: number) => number,
  labelAt: number,
): readonly Html[] =>
  beakers.map(
    ({ x, state, label }, at) =>
      html`${beakerMark(state, x, yOf(rows[at] ?? 0))}${hasLabels ? words({ at: [x, yOf(0) + labelAt], text: label, anchor: 'middle', look: 'small' }) : html``}`,
  );

/** Full between the outermost that held; pale on to the failures beside it, or to the end where none failed yet. */
function spans({ chart, x, shelf, ends }: Layout): readonly Html[] {
  const { held, failedBelow, failedAbove } = chart;
  if (!held) return [];
  const [from, to] = [x(held.from) - 8, x(held.to) + 8];
  const band = (look: string, start: number, end: number): Html =>
    html`<rect class="${look}" x="${fixed(start)}" y="${fixed(head)}" width="${fixed(Math.max(0, end - start))}" height="${fixed(ends - head)}"/>`;
  const edges = [failedBelow, failedAbove].flatMap((one) =>
    one === undefined ? [] : [line({ from: [x(one), head], to: [x(one), shelf], look: 'break' })],
  );
  return [
    band('span pale', failedBelow === undefined ? left : x(failedBelow), from),
    band('span pale', to, failedAbove === undefined ? right : x(failedAbove)),
    band('span', from, to),
    ...edges,
    words({
      at: [keptInside((from + to) / 2, held.text, chartWidth), 14],
      text: held.text,
      anchor: 'middle',
      look: 'working-words',
    }),
    line({ from: [from, head], to: [to, head], look: 'working' }),
  ];
}

function axis({ chart, x, ends }: Layout): readonly Html[] {
  const ticks = sparse(
    chart.ticks,
    ({ value }) => x(value),
    ({ text }) => textWidth(text),
  );
  const states = (['held', 'failed', 'watching', 'ended'] as const).filter((state) =>
    chart.beakers.some((one) => one.state === state),
  );
  return [
    line({ from: [left, ends], to: [right, ends], look: 'grid' }),
    ...ticks.map(({ value }) => line({ from: [x(value), ends], to: [x(value), ends + 5], look: 'tick' })),
    ...ticks.map(({ value, text }) =>
      words({ at: [keptInside(x(value), text, chartWidth), ends + 18], text, anchor: 'middle' }),
    ),
    words({ at: [(left + right) / 2, ends + 37], text: chart.axis, anchor: 'middle', look: 'strong' }),
    ...markLegend(states, ends + 64, left),
  ];
}
