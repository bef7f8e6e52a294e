/** Which figures are followed through time. */

import { fail } from '../problem.ts';
import { nearestNames } from '../reference/name.ts';
import type { Side } from './compare-side.ts';

export interface Figure {
  readonly key: string;
  readonly label: string;
  readonly unit: string;
  readonly digits: number;
}

const figures: readonly (Figure & { readonly names: readonly string[] })[] = [
  { key: 'ph', label: 'pH', unit: '', digits: 3, names: ['ph'] },
  { key: 'acid', label: 'acid', unit: 'g/L', digits: 3, names: ['acid'] },
  { key: 'brix', label: 'Brix', unit: '', digits: 4, names: ['brix', 'sugar'] },
  { key: 'oil', label: 'oil', unit: 'mg/L', digits: 3, names: ['oil'] },
  { key: 'emulsifier', label: 'emulsifier', unit: 'mg/L', digits: 3, names: ['emulsifier'] },
  {
    key: 'oilPerEmulsifier',
    label: 'oil per emulsifier',
    unit: '',
    digits: 4,
    names: ['oil per emulsifier', 'ratio'],
  },
  {
    key: 'emulsifierPerOil',
    label: 'emulsifier per oil',
    unit: '',
    digits: 4,
    names: ['emulsifier per oil'],
  },
  { key: 'blendedHlb', label: 'HLB', unit: '', digits: 4, names: ['hlb', 'blended hlb'] },
  { key: 'requiredHlb', label: 'required HLB', unit: '', digits: 4, names: ['required hlb'] },
  { key: 'density', label: 'density', unit: 'g/mL', digits: 5, names: ['density'] },
  { key: 'waterActivity', label: 'water activity', unit: '', digits: 4, names: ['water activity'] },
  { key: 'sweetness', label: 'sweetness', unit: 'g/100 mL', digits: 3, names: ['sweetness'] },
  { key: 'energy', label: 'energy', unit: 'kJ/100 mL', digits: 3, names: ['energy'] },
  { key: 'sodium', label: 'sodium', unit: 'mg/100 mL', digits: 3, names: ['sodium'] },
  { key: 'alcohol', label: 'alcohol', unit: '% v/v', digits: 2, names: ['alcohol'] },
  { key: 'carbonation', label: 'CO2', unit: 'vol', digits: 3, names: ['co2', 'carbonation'] },
];

/** `ph,brix,oil`, or several options. */
export function figuresAsked(typed: readonly string[]): readonly Figure[] {
  const words = typed.flatMap((text) => text.split(',')).map((word) => word.trim().toLowerCase());
  return words
    .filter((word) => word !== '')
    .map((word) => {
      const found = figures.find(({ key, names }) => key.toLowerCase() === word || names.includes(word));
      return found ?? noSuchFigure(word);
    });
}

function noSuchFigure(word: string): never {
  const names = figures.flatMap((one) => one.names[0] ?? []);
  const near = nearestNames(word, names, 2);
  return fail(
    'unknown-figure',
    `--show: "${word}" is no figure that can be followed`,
    near.length > 0 ? `did you mean ${near.join(' or ')}?` : `write ${names.join(', ')}`,
  );
}

export const figureAt = ({ key }: Figure, side: Side | undefined): number | undefined =>
  side?.solved?.properties.find((one) => one.key === key)?.value;
