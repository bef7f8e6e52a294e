/** Which part of the map of three is drawn, and where a composition lies in it. */

import type { Point } from './svg.ts';

/** Shares of the three, together 1. */
export interface Shares {
  readonly oil: number;
  readonly emulsifier: number;
  readonly water: number;
}

/** A triangle of the map like the whole: its least shares, and the length of its side. The whole has 0, 0, 0 and 1. */
export interface MapPart extends Shares {
  readonly side: number;
}

const sides = [0.05, 0.1, 0.15, 0.2, 0.25, 0.3, 0.4, 0.5, 0.75, 1] as const;

export const mapSteps = 5;

/** Points keep this share of the side from the edges, where there is more of the map beyond. */
const margin = 0.06;

/**
 * The smallest part that holds every point, its edges on round figures; of one point alone, the whole.
 *
 * Formula   for each side, least first: oil and emulsifier from the step below their least, water the rest
 * Example   oil 2 to 8 %, emulsifier 24 %, water 68 to 74 % -> oil from 0, emulsifier from 20, water from 65 %, side 15 %
 */
export function partHolding(points: readonly Shares[]): MapPart {
  for (const side of points.length > 1 ? sides : []) {
    const part = partOfSide(points, side);
    if (part) return part;
  }
  return { oil: 0, emulsifier: 0, water: 0, side: 1 };
}

function partOfSide(points: readonly Shares[], side: number): MapPart | undefined {
  const step = side / mapSteps;
  const below = (values: readonly number[]): number =>
    Math.max(0, Math.floor((Math.min(...values) - margin * side) / step + 1e-9) * step);
  const oil = below(points.map((one) => one.oil));
  const emulsifier = below(points.map((one) => one.emulsifier));
  const water = 1 - side - oil - emulsifier;
  const least = Math.min(...points.map((one) => one.water));
  const room = water <= 1e-9 ? 0 : margin * side;
  return water >= -1e-9 && least - water >= room - 1e-9
    ? { oil, emulsifier, water: Math.max(0, water), side }
    : undefined;
}

const base = 300;
const leftCorner: Point = [50, 300];
const slope = Math.sqrt(3) / 2;

/** Where a composition lies; oil upwards, emulsifier to the right. */
export function placeIn({ oil, emulsifier }: Omit<Shares, 'water'>, part: MapPart): Point {
  const up = (oil - part.oil) / part.side;
  const right = (emulsifier - part.emulsifier) / part.side;
  return [leftCorner[0] + (right + up / 2) * base, leftCorner[1] - up * base * slope];
}
