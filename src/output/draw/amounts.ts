/** What is in a litre, from tens of grams down to nanograms, on one ladder of decades. */

import { type Html, html } from '../html.ts';
import { decades, logScale } from './scale.ts';
import { chartWidth, drawing, type Frame, fixed, line, shortened, textWidth, words } from './svg.ts';

export interface Amounts extends Frame {
  /** Above 0, the greatest first. */
  readonly amounts: readonly { readonly name: string; readonly gramsPerLitre: number }[];
}

const left = 156;
const right = chartWidth - 16;
const top = 30;
const rowHeight = 20;

/** What each whole thousandth is called. */
const units: Readonly<Record<number, string>> = {
  0: '1 g',
  [-3]: '1 mg',
  [-6]: '1 µg',
  [-9]: '1 ng',
  [-12]: '1 pg',
};

export function amountsChart(chart: Amounts): Html {
  const all = chart.amounts.map(({ gramsPerLitre }) => gramsPerLitre);
  const ticks = decades(Math.min(...all), Math.max(...all));
  const [low = 1, high = 10] = [ticks[0], ticks.at(-1)];
  const x = logScale({ low, high, from: left, to: right });
  const bottom = top + chart.amounts.length * rowHeight;
  return drawing({
    ...chart,
    width: chartWidth,
    height: bottom + 8,
    body: [
      ...ticks.map((value) => line({ from: [x(value), top - 4], to: [x(value), bottom], look: 'grid' })),
      ...ticks.flatMap((value) => unitWords(value, x(value))),
      ...chart.amounts.map(({ name, gramsPerLitre }, at) => {
        const y = top + (at + 0.5) * rowHeight;
        return html`${words({ at: [left - 8, y + 4], text: shortened(name, 19), anchor: 'end' })}<path class="stem" d="M${fixed(left)} ${fixed(y)}H${fixed(x(gramsPerLitre))}"/><circle class="drop" cx="${fixed(x(gramsPerLitre))}" cy="${fixed(y)}" r="4.5"/>`;
      }),
      words({ at: [0, 14], text: 'in a litre', look: 'strong' }),
    ],
  });
}

function unitWords(value: number, x: number): readonly Html[] {
  const text = units[Math.round(Math.log10(value))];
  if (text === undefined) return [];
  const half = textWidth(text) / 2;
  return [words({ at: [Math.min(x, chartWidth - half), 14], text, anchor: 'middle' })];
}
