import {
  carrierIndex,
  emulsifierDensity,
  emulsifierIndex,
  indexIncrements,
  indexIncrementsSource,
  otherIncrement,
} from '../../reference/refraction.ts';
import type { Citation } from '../answer.ts';
import { densityCitations, figureCitation } from '../density/cite-densities.ts';
import type { Working } from '../working.ts';
import type { MediumPart, StageMedium } from './stage-medium.ts';

/** Notes where the density of what the droplets float in is from, and its index where that counts. */
export function citeMedium({ dissolved }: StageMedium, working: Working, hasIndex: boolean): void {
  const all = [
    ...densityCitations(dissolved.map(({ entry }) => entry)),
    ...(hasIndex ? dissolved.flatMap(indexCitations) : []),
  ];
  for (const { for: purpose, source, fromMemory, range } of all)
    working.cite(purpose, source, fromMemory, range);
}

function indexCitations({ name, role, entry }: MediumPart): readonly Citation[] {
  const { density, 'refractive index': index } = entry.record.figures;
  const constant = (purpose: string, { source, fromMemory = false }: Stated): Citation => ({
    for: purpose,
    source,
    fromMemory,
  });
  if (role === 'emulsifier' || role === 'carrier') {
    const isEmulsifier = role === 'emulsifier';
    return [
      index
        ? figureCitation(`refractive index of ${entry.name}`, index)
        : constant(`index of ${role}s`, isEmulsifier ? emulsifierIndex : carrierIndex),
      ...(isEmulsifier && !density ? [constant('density of emulsifiers', emulsifierDensity)] : []),
    ];
  }
  if (role !== 'acid' && role !== 'salt' && role !== 'preservative') return [];
  return [
    Object.hasOwn(indexIncrements, name)
      ? constant('what acids and salts add to the index', indexIncrementsSource)
      : constant('index of other acids and salts', otherIncrement),
  ];
}

interface Stated {
  readonly source: string;
  readonly fromMemory?: boolean;
}
