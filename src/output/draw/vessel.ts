/** A beaker as it looks: its tone for how turbid it is, and what floats, lies or hangs in it as a shape. */

import { type Html, html } from '../html.ts';
import { fixed } from './svg.ts';

/** How dark each look is drawn, from 0 to 5; a look that is a shape has no tone of its own. */
const tones: Readonly<Record<string, number>> = {
  clear: 0,
  bluish: 1,
  hazy: 2,
  cloudy: 3,
  gel: 4,
  broken: 5,
};

/** The darkest of the looks. */
export const toneOf = (looks: readonly string[]): number =>
  Math.max(0, ...looks.map((look) => tones[look] ?? 0));

const specks: readonly (readonly [number, number])[] = [
  [13, 22],
  [27, 19],
  [20, 29],
  [31, 31],
  [12, 35],
  [25, 37],
];

const speckMarks = specks.map(([x, y]) => html`<circle cx="${x}" cy="${y}" r="1.7"/>`);

const rows = (ys: readonly number[], dashes: string): Html =>
  html`<path class="grain" stroke-dasharray="${dashes}" d="${ys.map((y) => `M8 ${y}H36`).join('')}"/>`;

/** What is drawn into the liquid, so that a look is known without its tone. */
const shapes: Readonly<Record<string, Html>> = {
  bluish: html`<path class="beam" d="M8 33L36 19"/>`,
  hazy: rows([21, 29, 37], '2 5'),
  cloudy: rows([18, 23, 28, 33, 38], '4 2'),
  specks: html`<g class="matter">${speckMarks}</g>`,
  ring: html`<path class="matter" d="M7 11.5Q22 8.5 37 11.5V16Q22 19 7 16Z"/>`,
  sediment: html`<path class="matter" d="M8 42Q12 37 17 39.5Q24 34.5 30 38.5Q34 37.5 36 42L33.5 43.5H10.5Z"/>`,
  gel: html`<path class="grain" d="M8 23q3.5-5 7 0t7 0t7 0t7 0M8 33q3.5-5 7 0t7 0t7 0t7 0"/>`,
  broken: html`<path class="layer" d="M7 13H37V23L32 26L27 22L21 27L15 23L7 26Z"/>`,
};

const glass = 'M4.5 3.5L7 6.5V40a4 4 0 0 0 4 4H33a4 4 0 0 0 4-4V3.5';
const liquid = 'M7 13H37V40a4 4 0 0 1-4 4H11a4 4 0 0 1-4-4Z';

/** For a cell whose words stand beside it: nothing for those who hear the page. */
export function vessel(looks: readonly string[], isEnded = false): Html {
  const tone = toneOf(looks);
  const inside = looks.flatMap((look) => shapes[look] ?? []);
  const filled =
    looks.length > 0
      ? html`<g class="tone${tone}"><path class="liquid" d="${liquid}"/>${inside}</g>`
      : html``;
  return html`<svg class="vessel" viewBox="0 0 42 47" aria-hidden="true" focusable="false">${filled}<path class="glass" d="${glass}"/>${isEnded ? html`<path class="struck" d="M5 44L39 6"/>` : html``}</svg>`;
}

export type BeakerState = 'held' | 'failed' | 'watching' | 'ended';

/** A beaker as a mark on a chart, 11 wide and 14 high, standing on its place: full, crossed out, or half full. */
export function beakerMark(state: BeakerState, x: number, y: number): Html {
  const walls = 'M-4.5-11V-1.5a1.5 1.5 0 0 0 1.5 1.5H3a1.5 1.5 0 0 0 1.5-1.5V-11';
  const within: Readonly<Record<BeakerState, Html>> = {
    held: html`<path class="full" d="M-4.5-8.5H4.5V-1.5a1.5 1.5 0 0 1-1.5 1.5H-3a1.5 1.5 0 0 1-1.5-1.5Z"/>`,
    failed: html`<path class="crossed" d="M-3-8L3-2M3-8L-3-2"/>`,
    watching: html`<path class="full" d="M-4.5-4.5H4.5V-1.5a1.5 1.5 0 0 1-1.5 1.5H-3a1.5 1.5 0 0 1-1.5-1.5Z"/>`,
    ended: html`<path class="crossed" d="M-3-5H3"/>`,
  };
  return html`<g class="mark ${state}" transform="translate(${fixed(x)} ${fixed(y)}) scale(1.25)"><path class="back" d="${walls}"/>${within[state]}<path class="walls" d="${walls}"/></g>`;
}

/** The same where beakers stand close: a dot, a cross, a circle or a dash, its middle at the place. */
export function smallMark(state: BeakerState, x: number, y: number): Html {
  const within: Readonly<Record<BeakerState, Html>> = {
    held: html`<circle class="full" r="3.4"/>`,
    failed: html`<path class="crossed" d="M-3-3L3 3M3-3L-3 3"/>`,
    watching: html`<circle class="walls" r="3.2"/>`,
    ended: html`<path class="crossed" d="M-3 0H3"/>`,
  };
  return html`<g class="mark ${state}" transform="translate(${fixed(x)} ${fixed(y)})">${within[state]}</g>`;
}

export const stateWords: Readonly<Record<BeakerState, string>> = {
  held: 'held',
  failed: 'failed',
  watching: 'still watched',
  ended: 'ended early',
};

/** What the marks mean, in a row from the left. */
export function markLegend(
  states: readonly BeakerState[],
  y: number,
  from = 0,
  isSmall = false,
): readonly Html[] {
  let x = from;
  return states.map((state) => {
    const place = x;
    x += 24 + stateWords[state].length * 6.6 + 14;
    return html`<g>${isSmall ? smallMark(state, place + 7, y - 5) : beakerMark(state, place + 7, y)}<text x="${fixed(place + 19)}" y="${fixed(y - 1)}">${stateWords[state]}</text></g>`;
  });
}
