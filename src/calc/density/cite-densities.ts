import { figureRange } from '../../reference/figure-range.ts';
import type { Figure } from '../../reference/ingredient.ts';
import type { Citation } from '../answer.ts';
import type { BookEntry } from '../book.ts';
import { withLocator } from '../working.ts';
import { isNamed, isWater } from './blend.ts';

/** Where the room that each pure substance takes is from; sugar and water by their tables. */
export function densityCitations(entries: readonly BookEntry[]): readonly Citation[] {
  return entries.flatMap((entry) => {
    if (isWater(entry) || isNamed(entry, 'sucrose')) return [];
    const { figures } = entry.record;
    const figure = figures['apparent density'] ?? figures.density;
    return figure ? [figureCitation(`density of ${entry.name}`, figure)] : [];
  });
}

export function figureCitation(purpose: string, figure: Figure): Citation {
  const range = figureRange(figure);
  return {
    for: purpose,
    source: withLocator(figure.source, figure.locator),
    fromMemory: figure.fromMemory ?? false,
    ...(range === undefined ? {} : { range }),
  };
}
