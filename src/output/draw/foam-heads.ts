/** Heads of foam over the dose of antifoam: every pour a dot, each dose its mean and how far its pours went apart. */

import { type Html, html } from '../html.ts';
import { linearScale, linearTicks, type Scale } from './scale.ts';
import { chartWidth, drawing, type Frame, fixed, line, words } from './svg.ts';

export interface FoamHeads extends Frame {
  readonly pours: readonly { readonly dose: number; readonly millimetres: number }[];
  readonly steps: readonly {
    readonly dose: number;
    readonly mean: number;
    readonly low: number;
    readonly high: number;
  }[];
  readonly unit: string;
  readonly axis: string;
}

const left = 44;
const right = chartWidth - 14;
const top = 24;
const bottom = 214;

export function foamHeads(chart: FoamHeads): Html {
  const mostDose = Math.max(...chart.steps.map(({ dose }) => dose), 0) || 1;
  const mostHead = Math.max(...chart.steps.map(({ high }) => high), 0) || 1;
  const x = linearScale({ low: 0, high: mostDose, from: left + 16, to: right - 16 });
  const y = linearScale({ low: 0, high: mostHead * 1.05, from: bottom, to: top });
  return drawing({
    ...chart,
    width: chartWidth,
    height: bottom + 46,
    body: [
      ...axes(chart, { x, y, mostDose, mostHead }),
      ...chart.pours.map(
        (pour) =>
          html`<circle class="pour" cx="${fixed(x(pour.dose))}" cy="${fixed(y(pour.millimetres))}" r="3"/>`,
      ),
      ...chart.steps.map(({ dose, mean, low, high }) => {
        const [at, middle] = [x(dose), y(mean)];
        return html`<path class="whisker" d="M${fixed(at)} ${fixed(y(low))}V${fixed(y(high))}"/><path class="mean" d="M${fixed(at - 9)} ${fixed(middle)}h18"/>`;
      }),
    ],
  });
}

interface Layout {
  readonly x: Scale;
  readonly y: Scale;
  readonly mostDose: number;
  readonly mostHead: number;
}

function axes({ axis, unit }: FoamHeads, { x, y, mostDose, mostHead }: Layout): readonly Html[] {
  return [
    ...linearTicks(0, mostHead * 1.05, 5).flatMap((value) => [
      line({ from: [left, y(value)], to: [right, y(value)], look: value === 0 ? 'shelf' : 'grid' }),
      words({ at: [left - 6, y(value) + 4], text: String(value), anchor: 'end' }),
    ]),
    ...linearTicks(0, mostDose).flatMap((value) => [
      line({ from: [x(value), bottom], to: [x(value), bottom + 5], look: 'tick' }),
      words({ at: [x(value), bottom + 18], text: String(value), anchor: 'middle' }),
    ]),
    words({ at: [0, 12], text: 'head, mm', look: 'strong' }),
    words({
      at: [(left + right) / 2, bottom + 36],
      text: unit === '' ? axis : `${axis}, ${unit}`,
      anchor: 'middle',
      look: 'strong',
    }),
  ];
}
