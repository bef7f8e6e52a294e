/** Each aim as a span, and where the drink lies in it or beside it. */

import { type Html, html } from '../html.ts';
import { linearScale } from './scale.ts';
import { chartWidth, drawing, type Frame, fixed, line, shortened, words } from './svg.ts';

export interface AimSpan {
  readonly name: string;
  readonly value: number;
  /** A side that is open is absent. */
  readonly low?: number | undefined;
  readonly high?: number | undefined;
  readonly text: string;
  readonly isMet: boolean;
}

export interface AimsChart extends Frame {
  readonly aims: readonly AimSpan[];
}

const from = 112;
const to = 300;
const rowHeight = 30;
/** The aim takes the middle of the track; what lies further out stands at its end. */
const margin = 0.3;

/**
 * Where a value stands on a track on which the aim takes the middle.
 *
 * Output    0 to 1, the aim from 0.3 to 0.7; with one side open its bound stands at 0.3 or 0.7; held to 0.03 and 0.97
 * Example   placeOnTrack({ value: 3, low: 2, high: 4 }) -> 0.5
 */
export function placeOnTrack({ value, low, high }: Pick<AimSpan, 'value' | 'low' | 'high'>): number {
  const held = (place: number): number => Math.max(0.03, Math.min(0.97, place));
  if (low !== undefined && high !== undefined)
    return held(linearScale({ low, high, from: margin, to: 1 - margin })(value));
  const bound = low ?? high ?? value;
  const share = (value - bound) / (Math.abs(bound) || 1);
  return held((low === undefined ? 1 - margin : margin) + share);
}

export function aimsChart(chart: AimsChart): Html {
  const x = linearScale({ low: 0, high: 1, from, to });
  return drawing({
    ...chart,
    width: chartWidth,
    height: chart.aims.length * rowHeight + 6,
    body: chart.aims.map((aim, at) => {
      const y = at * rowHeight + 18;
      const [first, last] = [aim.low === undefined ? 0 : margin, aim.high === undefined ? 1 : 1 - margin];
      const place = x(placeOnTrack(aim));
      return html`<g>${words({ at: [from - 10, y + 4], text: shortened(aim.name, 15), anchor: 'end' })}${line({ from: [from, y], to: [to, y], look: 'grid' })}<rect class="aim" x="${fixed(x(first))}" y="${fixed(y - 8)}" width="${fixed(x(last) - x(first))}" height="16" rx="3"/>${pointer(aim.isMet, place, y)}${words({ at: [to + 10, y + 4], text: shortened(aim.text, 14), look: aim.isMet ? '' : 'strong' })}</g>`;
    }),
  });
}

/** Met: a full drop. Missed: a cross, so that it does not hang on colour. */
const pointer = (isMet: boolean, x: number, y: number): Html =>
  isMet
    ? html`<circle class="drop" cx="${fixed(x)}" cy="${fixed(y)}" r="5.5"/>`
    : html`<path class="missed" d="M${fixed(x - 6)} ${fixed(y - 6)}l12 12m0-12l-12 12"/>`;
