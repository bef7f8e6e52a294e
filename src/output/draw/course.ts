/** Figures through the versions of a record, a strip each. */

import { type Html, html } from '../html.ts';
import { linearScale } from './scale.ts';
import { chartWidth, drawing, type Frame, fixed, line, type Point, shortened, words } from './svg.ts';

export interface Strip {
  readonly label: string;
  /** One a version, the oldest first; undefined where there is none. */
  readonly values: readonly (number | undefined)[];
  readonly textOf: (value: number) => string;
}

export interface Course extends Frame {
  readonly strips: readonly Strip[];
  /** What stands under the first and the last version. */
  readonly ends: readonly [string, string];
}

const from = 16;
const to = chartWidth - 70;
const stripHeight = 66;

export function courseChart(chart: Course): Html {
  const count = Math.max(2, ...chart.strips.map(({ values }) => values.length));
  const x = linearScale({ low: 0, high: count - 1, from, to });
  const foot = chart.strips.length * stripHeight + 14;
  return drawing({
    ...chart,
    width: chartWidth,
    height: foot + 6,
    body: [
      ...chart.strips.map((strip, at) => stripOf(strip, at * stripHeight, x)),
      words({ at: [0, foot], text: chart.ends[0], look: 'small' }),
      words({ at: [chartWidth, foot], text: chart.ends[1], anchor: 'end', look: 'small' }),
    ],
  });
}

/** A value stays until the next version: steps, no slopes. */
function stripOf({ label, values, textOf }: Strip, top: number, x: (at: number) => number): Html {
  const known = values.flatMap((value, at) => (value === undefined ? [] : [{ value, at }]));
  const all = known.map(({ value }) => value);
  const [low, high] = [Math.min(...all), Math.max(...all)];
  const y = linearScale({ low, high, from: top + 52, to: top + 26 });
  const places = known.map(({ value, at }): Point => [x(at), y(value)]);
  const path = places
    .map(([px, py], at) => (at === 0 ? `M${fixed(px)} ${fixed(py)}` : `H${fixed(px)}V${fixed(py)}`))
    .join('');
  const dots = places.map(
    ([px, py]) => html`<circle class="drop" cx="${fixed(px)}" cy="${fixed(py)}" r="3.5"/>`,
  );
  const last = known.at(-1);
  const value = last
    ? words({ at: [chartWidth, y(last.value) + 4], text: textOf(last.value), anchor: 'end', look: 'strong' })
    : html``;
  return html`<g>${words({ at: [0, top + 14], text: shortened(label, 40) })}${line({ from: [0, top + 60], to: [chartWidth, top + 60], look: 'grid' })}<path class="course" d="${path}"/>${dots}${value}</g>`;
}
