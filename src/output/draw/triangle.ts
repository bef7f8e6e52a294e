/** The map of oil, emulsifier with carrier, and water: a triangle, or the part of it in which the beakers lie. */

import { type Html, html } from '../html.ts';
import {
  chartWidth,
  drawing,
  type Frame,
  fixed,
  line,
  type Point,
  pathThrough,
  textWidth,
  words,
} from './svg.ts';
import { type MapPart, mapSteps, partHolding, placeIn, type Shares } from './triangle-part.ts';
import { type BeakerState, beakerMark, markLegend, smallMark } from './vessel.ts';

export interface MapPoint extends Shares {
  readonly state: BeakerState | 'made';
  readonly label: string;
}

export interface TriangleMap extends Frame {
  readonly points: readonly MapPoint[];
}

const bottom = 300;

export function triangleMap(map: TriangleMap): Html {
  const part = partHolding(map.points);
  const states = (['held', 'failed', 'watching', 'ended'] as const).filter((state) =>
    map.points.some((one) => one.state === state),
  );
  return drawing({
    ...map,
    width: chartWidth,
    height: bottom + (states.length > 0 ? 88 : 62),
    body: [
      ...net(part),
      frame(part),
      ...corners(part),
      ...(part.side < 1 ? [inset(part)] : []),
      ...marks(map.points, part),
      ...markLegend(states, bottom + 82, 0, isCrowded(map.points, part)),
    ],
  });
}

const percent = (share: number): string => `${Math.round(share * 1000) / 10}`;

/** The corner where one of the three is at its most. */
const cornersOf = ({ oil, emulsifier, side }: MapPart) => ({
  oil: { oil: oil + side, emulsifier },
  emulsifier: { oil, emulsifier: emulsifier + side },
  water: { oil, emulsifier },
});

function frame(part: MapPart): Html {
  const { oil, emulsifier, water } = cornersOf(part);
  const path = pathThrough([water, emulsifier, oil].map((corner) => placeIn(corner, part)));
  return html`<path class="frame" d="${path}Z"/>`;
}

/** Lines of one share each, with its figure at one end: oil on the right, emulsifier below, water on the left. */
function net(part: MapPart): readonly Html[] {
  const { oil, emulsifier, water, side } = part;
  return Array.from({ length: mapSteps - 1 }, (_, at) => ((at + 1) / mapSteps) * side).flatMap((step) => {
    const at = (up: number, right: number): Point =>
      placeIn({ oil: oil + up, emulsifier: emulsifier + right }, part);
    const [oilEnd, emulsifierEnd, waterEnd] = [at(step, side - step), at(0, step), at(side - step, 0)];
    return [
      line({ from: at(step, 0), to: oilEnd, look: 'grid' }),
      line({ from: emulsifierEnd, to: at(side - step, step), look: 'grid' }),
      line({ from: at(0, side - step), to: waterEnd, look: 'grid' }),
      words({ at: [oilEnd[0] + 7, oilEnd[1] + 4], text: percent(oil + step), look: 'small' }),
      words({
        at: [emulsifierEnd[0], emulsifierEnd[1] + 15],
        text: percent(emulsifier + step),
        anchor: 'middle',
        look: 'small',
      }),
      words({
        at: [waterEnd[0] - 7, waterEnd[1] + 4],
        text: percent(water + step),
        anchor: 'end',
        look: 'small',
      }),
    ];
  });
}

const along = (at: Point, turn: number, text: string): Html =>
  html`<text class="strong" text-anchor="middle" transform="translate(${fixed(at[0])} ${fixed(at[1])}) rotate(${turn})">${text}</text>`;

/** What each edge counts. */
function corners(part: MapPart): readonly Html[] {
  const { oil, emulsifier, water } = cornersOf(part);
  const middle = (one: Point, other: Point): Point => [(one[0] + other[0]) / 2, (one[1] + other[1]) / 2];
  const [top, right, left] = [placeIn(oil, part), placeIn(emulsifier, part), placeIn(water, part)];
  const [onRight, onLeft] = [middle(top, right), middle(top, left)];
  return [
    along([onRight[0] + 38, onRight[1] - 22], 60, 'oil, %'),
    along([onLeft[0] - 38, onLeft[1] - 22], -60, 'water, %'),
    words({
      at: [(left[0] + right[0]) / 2, bottom + 36],
      text: 'emulsifier with carrier, %',
      anchor: 'middle',
      look: 'strong',
    }),
  ];
}

/** The whole map, small, with the part that is drawn. */
function inset(part: MapPart): Html {
  const whole: MapPart = { oil: 0, emulsifier: 0, water: 0, side: 1 };
  const small = (corner: { readonly oil: number; readonly emulsifier: number }): Point => {
    const [x, y] = placeIn(corner, whole);
    return [(x - 50) * 0.2 + 2, (y - bottom) * 0.2 + 60];
  };
  const pathOf = (of: MapPart): string => {
    const { oil, emulsifier, water } = cornersOf(of);
    return pathThrough([water, emulsifier, oil].map(small));
  };
  return html`<g><path class="frame thin" d="${pathOf(whole)}Z"/><path class="piece" d="${pathOf(part)}Z"/>${words({ at: [0, 76], text: 'the part drawn', look: 'small' })}</g>`;
}

interface Placed {
  readonly at: Point;
  readonly width: number;
}

const touches = (one: Placed, other: Placed): boolean =>
  Math.abs(one.at[1] - other.at[1]) < 12 &&
  one.at[0] < other.at[0] + other.width &&
  other.at[0] < one.at[0] + one.width;

/** Nearer than this two beakers would lie on each other. */
const leastApart = 9;

function isCrowded(points: readonly MapPoint[], part: MapPart): boolean {
  const places = points.map((point) => placeIn(point, part));
  return places.some(([x, y], at) =>
    places.slice(at + 1).some(([otherX, otherY]) => Math.hypot(x - otherX, y - otherY) < leastApart),
  );
}

/** A label stands to the right of its mark, or to the left, or, where neither is free, in the table alone. */
function marks(points: readonly MapPoint[], part: MapPart): readonly Html[] {
  const isSmall = isCrowded(points, part);
  const taken: Placed[] = points.map((point) => {
    const [x, y] = placeIn(point, part);
    return { at: [x - 8, y + 4], width: 16 };
  });
  const labels = points.flatMap((point): readonly Html[] => {
    const [x, y] = placeIn(point, part);
    const width = textWidth(point.label);
    const places: readonly Placed[] = [
      { at: [x + 11, y + 4], width },
      { at: [x - 11 - width, y + 4], width },
    ];
    const free = places.find((place) => !taken.some((other) => touches(place, other)));
    if (!free) return [];
    taken.push(free);
    return [words({ at: free.at, text: point.label, look: 'small' })];
  });
  return [
    ...points.map((point) => {
      const [x, y] = placeIn(point, part);
      if (isSmall && point.state !== 'made') return smallMark(point.state, x, y);
      return point.state === 'made'
        ? html`<path class="full" d="M${fixed(x)} ${fixed(y - 6)}l6 6l-6 6l-6-6Z"/>`
        : beakerMark(point.state, x, y + 7);
    }),
    ...labels,
  ];
}
