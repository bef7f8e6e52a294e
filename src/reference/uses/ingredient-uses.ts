/** The figures of ingredients: which are from where, and which commands rest on each kind of figure. */

import { figureRange } from '../figure-range.ts';
import type { Figure, FigureName, Ingredient } from '../ingredient.ts';
import { ingredients } from '../ingredients/index.ts';
import type { Use } from './use.ts';

const volumes = ['drink', 'scale', 'ring', 'clarity', 'coat', 'weigh', 'ladder', 'cost'] as const;

/** Left out: a figure that is only shown by `ingredient`. */
const users: Readonly<Partial<Record<FigureName, readonly string[]>>> = {
  density: volumes,
  'apparent density': volumes,
  'molar mass': ['acid', 'ph', 'adjust', 'titrate', 'swap', 'lasts'],
  hlb: ['hlb', 'emulsifier', 'ladder', 'swap'],
  'required hlb': ['hlb', 'compare', 'history'],
  'refractive index': ['clarity', 'why'],
  'flash point': ['reckon', 'scale'],
  'odour threshold': ['drink'],
  'use level': ['drink', 'reckon', 'check'],
  'acid equivalents': ['acid', 'titrate', 'drink', 'swap'],
  'relative sweetness': ['drink'],
};

export const ingredientUses = (): readonly Use[] =>
  ingredients.flatMap((record) => [...figureUses(record), ...withdrawnUses(record)]);

function figureUses({ name, figures }: Ingredient): readonly Use[] {
  return Object.entries(figures).flatMap(([figureName, figure]) => {
    const by = ['ingredient', ...usersOf(figureName)];
    const [used, ...others] = everyFigure(figure);
    if (!used) return [];
    const what = `${figureName} of ${name}`;
    const of = { name: figureName, of: name };
    return [
      { ...useOf(used, what, by), figure: of },
      ...others.map((other) => ({ ...useOf(other, `${what}, another value`, ['ingredient']), figure: of })),
    ];
  });
}

const usersOf = (name: string): readonly string[] =>
  Object.entries(users).find(([one]) => one === name)?.[1] ?? [];

const everyFigure = (figure: Figure): readonly Figure[] => [
  figure,
  ...(figure.others ?? []).flatMap(everyFigure),
];

function useOf(figure: Figure, what: string, by: readonly string[]): Use {
  const { source, locator, fromMemory = false } = figure;
  const range = figureRange(figure);
  return {
    ...{ what, source, fromMemory, by },
    ...(locator === undefined ? {} : { locator }),
    ...(range === undefined ? {} : { range }),
  };
}

const withdrawnUses = ({ name, withdrawn = [] }: Ingredient): readonly Use[] =>
  withdrawn.map(({ by, what, source }) => ({
    what: `${name}: ${by} ${what}`,
    source,
    fromMemory: false,
    by: ['ingredient', 'drink', 'reckon', 'check'],
  }));
