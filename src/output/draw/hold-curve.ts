/** The chance that a new beaker holds, over what is varied, with the beakers that were made. */

import { type Html, html } from '../html.ts';
import { linearScale, logScale, type Scale } from './scale.ts';
import { isRoomy, sparse, stackedRows } from './stacked.ts';
import {
  chartWidth,
  drawing,
  type Frame,
  fixed,
  keptInside,
  line,
  type Point,
  pathThrough,
  textWidth,
  words,
} from './svg.ts';
import { type BeakerState, beakerMark, markLegend } from './vessel.ts';

export interface CurveBeaker {
  /** Above 0. */
  readonly value: number;
  readonly state: BeakerState;
  readonly label: string;
}

interface Flag {
  readonly value: number;
  readonly text: string;
}

export interface HoldCurve extends Frame {
  readonly low: number;
  readonly high: number;
  /** 0 to 1. */
  readonly chanceAt: (value: number) => number;
  readonly beakers: readonly CurveBeaker[];
  readonly ticks: readonly Flag[];
  readonly axis: string;
  readonly working?: Flag | undefined;
  readonly breaks?: Flag | undefined;
  /** The 90 % interval of the break; an open side is null. */
  readonly interval?: readonly [number | null, number | null] | undefined;
}

const left = 44;
const right = chartWidth - 12;
const rise = 150;
const rowHeight = 17;
const mostRows = 4;

interface Layout {
  readonly curve: HoldCurve;
  readonly x: Scale;
  readonly y: Scale;
  readonly top: number;
  readonly bottom: number;
  readonly ends: number;
}

export function holdCurve(curve: HoldCurve): Html {
  const x = logScale({ low: curve.low, high: curve.high, from: left, to: right });
  const above = rowsOf(curve, 'held', x);
  const below = rowsOf(curve, 'failed', x);
  const top = 42 + labelRoom(above) + (Math.max(0, ...above.rows) + 1) * rowHeight;
  const bottom = top + rise;
  const ends = bottom + 6 + labelRoom(below) + (Math.max(0, ...below.rows) + 1) * rowHeight;
  const layout = { curve, x, y: linearScale({ low: 0, high: 1, from: bottom, to: top }), top, bottom, ends };
  return drawing({
    ...curve,
    width: chartWidth,
    height: ends + 68,
    body: [
      ...interval(layout),
      ...grid(layout),
      chances(layout),
      ...flags(layout),
      ...standing(above, (row) => top - 2 - row * rowHeight, -18),
      ...standing(below, (row) => bottom + 18 + row * rowHeight, 12),
      ...onCurve(layout),
      ...axis(layout),
    ],
  });
}

interface Rowed {
  readonly beakers: readonly (CurveBeaker & { readonly x: number })[];
  readonly rows: readonly number[];
  readonly hasLabels: boolean;
}

function rowsOf({ beakers }: HoldCurve, state: BeakerState, x: Scale): Rowed {
  const shown = beakers.filter((one) => one.state === state).map((one) => ({ ...one, x: x(one.value) }));
  const places = shown.map((one) => one.x);
  return { beakers: shown, rows: stackedRows(places, 14, mostRows), hasLabels: isRoomy(places, 20) };
}

const labelRoom = ({ beakers, hasLabels }: Rowed): number => (hasLabels && beakers.length > 0 ? 13 : 0);

const standing = (
  { beakers, rows, hasLabels }: Rowed,
  yOf: (row: number) => number,
  labelAt: number,
): readonly Html[] =>
  beakers.map(
    ({ x, state, label }, at) =>
      html`${beakerMark(state, x, yOf(rows[at] ?? 0))}${hasLabels ? plated([x, yOf(0) + labelAt], label) : html``}`,
  );

/** A label that no line runs through. */
const plated = ([x, y]: Point, text: string): Html => {
  const width = textWidth(text) + 2;
  return html`<rect class="plate" x="${fixed(x - width / 2)}" y="${fixed(y - 11)}" width="${fixed(width)}" height="13"/>${words({ at: [x, y], text, anchor: 'middle', look: 'small' })}`;
};

/** Beakers that are still watched, or ended early, have no side yet: they stand where they are expected. */
const onCurve = ({ curve, x, y }: Layout): readonly Html[] =>
  curve.beakers
    .filter(({ state }) => state === 'watching' || state === 'ended')
    .map(({ value, state, label }) => {
      const at: Point = [x(value), y(curve.chanceAt(value)) + 7];
      return html`${beakerMark(state, ...at)}${words({ at: [at[0] + 10, at[1] - 2], text: label, look: 'small' })}`;
    });

function interval({ curve, x, top, bottom }: Layout): readonly Html[] {
  if (!curve.interval) return [];
  const [low, high] = curve.interval;
  if (low === null && high === null) return [];
  const from = Math.max(left, low === null ? left : x(low));
  const to = Math.min(right, high === null ? right : x(high));
  return [
    html`<rect class="span" x="${fixed(from)}" y="${fixed(top)}" width="${fixed(Math.max(0, to - from))}" height="${fixed(bottom - top)}"/>`,
  ];
}

const grid = ({ y }: Layout): readonly Html[] =>
  [0, 0.25, 0.5, 0.75, 1].map((share) =>
    share === 0 || share === 1
      ? line({ from: [left, y(share)], to: [right, y(share)], look: 'shelf' })
      : line({ from: [left, y(share)], to: [right, y(share)], look: 'grid' }),
  );

const steps = 120;

function chances({ curve, x, y }: Layout): Html {
  const { low, high } = curve;
  const points = Array.from({ length: steps + 1 }, (_, at): Point => {
    const value = low * (high / low) ** (at / steps);
    return [x(value), y(Math.max(0, Math.min(1, curve.chanceAt(value))))];
  });
  return html`<path class="curve" d="${pathThrough(points)}"/>`;
}

function flags({ curve, x, bottom }: Layout): readonly Html[] {
  const { working, breaks } = curve;
  const flag = (one: Flag | undefined, look: string, row: number): readonly Html[] =>
    one === undefined
      ? []
      : [
          line({ from: [x(one.value), row + 4], to: [x(one.value), bottom], look }),
          words({
            at: [keptInside(x(one.value), one.text, chartWidth), row],
            text: one.text,
            anchor: 'middle',
            look: `${look}-words`,
          }),
        ];
  return [...flag(breaks, 'break', 28), ...flag(working, 'working', 12)];
}

function axis({ curve, x, y, ends }: Layout): readonly Html[] {
  const shares = [0, 0.5, 1].map((share) =>
    words({ at: [left - 6, y(share) + 4], text: `${share * 100} %`, anchor: 'end' }),
  );
  const ticks = sparse(
    curve.ticks,
    ({ value }) => x(value),
    ({ text }) => textWidth(text),
  );
  const states = (['held', 'failed', 'watching', 'ended'] as const).filter((state) =>
    curve.beakers.some((one) => one.state === state),
  );
  return [
    ...shares,
    line({ from: [left, ends], to: [right, ends], look: 'grid' }),
    ...ticks.map(({ value }) => line({ from: [x(value), ends], to: [x(value), ends + 5], look: 'tick' })),
    ...ticks.map(({ value, text }) =>
      words({ at: [keptInside(x(value), text, chartWidth), ends + 18], text, anchor: 'middle' }),
    ),
    words({ at: [(left + right) / 2, ends + 37], text: curve.axis, anchor: 'middle', look: 'strong' }),
    ...markLegend(states, ends + 64, left),
  ];
}
