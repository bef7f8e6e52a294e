/** Two things varied at once: a mark for each beaker where its two steps meet. */

import { type Html, html } from '../html.ts';
import { isRoomy, sparse } from './stacked.ts';
import { chartWidth, drawing, type Frame, line, shortened, textWidth, words } from './svg.ts';
import { type BeakerState, beakerMark, markLegend, smallMark } from './vessel.ts';

export interface GridBeaker {
  /** Which step, from 0; across counts from the left, up from below. */
  readonly across: number;
  readonly up: number;
  readonly state: BeakerState;
  readonly label: string;
}

export interface OutcomeGrid extends Frame {
  readonly across: readonly string[];
  readonly up: readonly string[];
  readonly acrossName: string;
  readonly upName: string;
  readonly beakers: readonly GridBeaker[];
}

const top = 30;
const right = chartWidth - 8;
const widest = 96;
const roomy = 44;
/** Room that a mark takes, and a small one. */
const markWidth = 16;
const smallWidth = 9;

export function outcomeGrid(grid: OutcomeGrid): Html {
  const left = 22 + Math.min(110, Math.max(...grid.up.map(textWidth)));
  const wide = Math.min(widest, (right - left) / grid.across.length);
  const most = Math.max(1, ...groupsOf(grid.beakers).map(({ length }) => length));
  const isSmall = wide < most * markWidth + 6;
  const high = isSmall ? Math.max(14, Math.min(24, wide)) : roomy;
  const bottom = top + high * grid.up.length;
  const x = (at: number): number => left + (at + 0.5) * wide;
  const y = (at: number): number => bottom - (at + 0.5) * high;
  const layout = { grid, left, end: left + wide * grid.across.length, bottom, x, y, isSmall };
  const states = (['held', 'failed', 'watching', 'ended'] as const).filter((state) =>
    grid.beakers.some((one) => one.state === state),
  );
  return drawing({
    ...grid,
    width: chartWidth,
    height: bottom + 74,
    body: [
      ...net(layout),
      ...marks(layout),
      words({ at: [0, 14], text: shortened(grid.upName, 50), look: 'strong' }),
      words({ at: [left, bottom + 38], text: shortened(grid.acrossName, 40), look: 'strong' }),
      ...markLegend(states, bottom + 67, left, isSmall),
    ],
  });
}

interface Layout {
  readonly grid: OutcomeGrid;
  readonly left: number;
  readonly end: number;
  readonly bottom: number;
  readonly x: (at: number) => number;
  readonly y: (at: number) => number;
  readonly isSmall: boolean;
}

const keyOf = ({ across, up }: GridBeaker): string => `${across} ${up}`;

/** Beakers of the same two steps together. */
function groupsOf(beakers: readonly GridBeaker[]): readonly (readonly GridBeaker[])[] {
  const found = new Map<string, GridBeaker[]>();
  for (const one of beakers) found.set(keyOf(one), [...(found.get(keyOf(one)) ?? []), one]);
  return [...found.values()];
}

function net({ grid, left, end, bottom, x, y }: Layout): readonly Html[] {
  const across = sparse(
    grid.across.map((text, at) => ({ text, at })),
    ({ at }) => x(at),
    ({ text }) => textWidth(text),
  );
  return [
    ...grid.across.map((_, at) => line({ from: [x(at), top], to: [x(at), bottom], look: 'grid' })),
    ...grid.up.map((_, at) => line({ from: [left, y(at)], to: [end, y(at)], look: 'grid' })),
    line({ from: [left, bottom], to: [end, bottom], look: 'shelf' }),
    line({ from: [left, top], to: [left, bottom], look: 'shelf' }),
    ...across.map(({ text, at }) => words({ at: [x(at), bottom + 18], text, anchor: 'middle' })),
    ...grid.up.map((text, at) =>
      words({ at: [left - 8, y(at) + 4], text: shortened(text, 15), anchor: 'end' }),
    ),
  ];
}

/** Beakers made alike stand beside each other; the numbers stand under them where there is room for every one. */
function marks({ grid, x, y, isSmall }: Layout): readonly Html[] {
  const step = isSmall ? smallWidth : markWidth;
  const groups = groupsOf(grid.beakers);
  return groups.flatMap((group) => {
    const places = group.map(({ across }, at) => x(across) + (at - (group.length - 1) / 2) * step);
    const hasLabels = !isSmall && (group.length === 1 || isRoomy(places, 22));
    return group.map(({ up, state, label }, at) => {
      const place = places[at] ?? 0;
      if (isSmall) return smallMark(state, place, y(up));
      const number = hasLabels
        ? words({ at: [place, y(up) + 18], text: label, anchor: 'middle', look: 'small' })
        : html``;
      return html`${beakerMark(state, place, y(up) + 4)}${number}`;
    });
  });
}
