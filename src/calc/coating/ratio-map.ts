import { ratioMap } from '../../reference/droplet.ts';

export interface MapPlace {
  /** One of the three, or which two it lies between. */
  readonly kind: 'emulsion' | 'nano' | 'micro';
  readonly words: string;
  /** True within 30 % of a boundary. */
  readonly isNearBoundary: boolean;
}

const words = {
  emulsion: 'an emulsion, cloudy: radius above 100 nm',
  nano: 'a fine emulsion, translucent: radius below 100 nm, kept by how it is made and not for ever',
  micro: 'a microemulsion, clear: radius below 10 nm',
} as const;

/**
 * Where a ratio lies on the published map: a prior, before any beaker.
 *
 * Formula   below 1 part of emulsifier to oil an emulsion, from 1 to 2 fine, above 2 a microemulsion; 30 % either way
 * Input     parts of emulsifier per oil, by mass
 * Source    Rao and McClements 2011, J. Agric. Food Chem. 59:5026
 * Example   placeOnMap(3) -> micro
 */
export function placeOnMap(emulsifierPerOil: number): MapPlace {
  const { nano, micro, accuracy } = ratioMap;
  const kind = emulsifierPerOil < nano ? 'emulsion' : emulsifierPerOil < micro ? 'nano' : 'micro';
  const isNear = (bound: number): boolean =>
    emulsifierPerOil > bound / (1 + accuracy) && emulsifierPerOil < bound * (1 + accuracy);
  const near = isNear(nano)
    ? (['emulsion', 'nano'] as const)
    : isNear(micro)
      ? (['nano', 'micro'] as const)
      : undefined;
  return {
    kind,
    isNearBoundary: near !== undefined,
    words: near ? `on the border: ${near.map((one) => words[one]).join('; or ')}` : words[kind],
  };
}
