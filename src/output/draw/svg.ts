/** The frame of every drawing: its size, and what it says to those who don't see it. */

import { type Html, html } from '../html.ts';

export interface Frame {
  /** One word, of a document only once. */
  readonly id: string;
  readonly title: string;
  /** The same in a sentence or two. */
  readonly about: string;
}

interface Drawn extends Frame {
  readonly width: number;
  readonly height: number;
  readonly body: readonly Html[];
}

/** All charts are drawn this wide, so that their texts are of one size on the page. */
export const chartWidth = 400;

export const drawing = ({ id, title, about, width, height, body }: Drawn): Html =>
  html`<svg class="drawing" viewBox="0 0 ${fixed(width)} ${fixed(height)}" role="img" aria-labelledby="${id}-title ${id}-about"><title id="${id}-title">${title}</title><desc id="${id}-about">${about}</desc>
${body}
</svg>`;

/** A coordinate with at most one digit after the point. */
export function fixed(value: number): string {
  if (!Number.isFinite(value)) throw new Error(`a place that is not finite reached a drawing: ${value}`);
  const text = value.toFixed(1).replace(/\.0$/u, '');
  return text === '-0' ? '0' : text;
}

export type Point = readonly [x: number, y: number];

/** `M1 2L3 4` */
export const pathThrough = (points: readonly Point[]): string =>
  points.map(([x, y], at) => `${at === 0 ? 'M' : 'L'}${fixed(x)} ${fixed(y)}`).join('');

interface Line {
  readonly from: Point;
  readonly to: Point;
  readonly look: string;
}

export const line = ({ from, to, look }: Line): Html =>
  html`<path class="${look}" d="${pathThrough([from, to])}"/>`;

interface Words {
  readonly at: Point;
  readonly text: string;
  readonly anchor?: 'start' | 'middle' | 'end';
  readonly look?: string;
}

export const words = ({ at: [x, y], text, anchor = 'start', look = '' }: Words): Html =>
  html`<text${look === '' ? html`` : html` class="${look}"`} x="${fixed(x)}" y="${fixed(y)}" text-anchor="${anchor}">${text}</text>`;

/** About how wide a text is at 13 units; letters differ, so it errs on the wide side. */
export const textWidth = (text: string): number => text.length * 6.8;

/** A place for the middle of a text so that it stays on the drawing. */
export const keptInside = (x: number, text: string, width: number): number =>
  Math.max(textWidth(text) / 2, Math.min(width - textWidth(text) / 2, x));

/** Drawings have room for so many letters; the table beside them has the whole. */
export const shortened = (text: string, letters: number): string =>
  [...text].length <= letters
    ? text
    : `${[...text]
        .slice(0, letters - 1)
        .join('')
        .trimEnd()}…`;
