/** The drink of a trial as portions of a solution. */

import type { ResolvedStage } from './mixture/picture.ts';
import type { PortionItem } from './portions-field.ts';
import { acidSubstanceName, neutralName } from './solution/substance.ts';

/**
 * The substances of a stage that count for pH, sugar and water activity, in g/L.
 * Oils, emulsifiers and traces of aroma are left out: they move none of these.
 */
export function portionsIn(stage: ResolvedStage): readonly PortionItem[] {
  return stage.substances.flatMap(({ name, entry, role, gramsPerLitre }) => {
    const known = [name, ...(entry.like ?? [])].find((one) => acidSubstanceName(one) ?? neutralName(one));
    if (known === undefined || role === 'water' || gramsPerLitre <= 0) return [];
    return [
      {
        name: known,
        entry,
        quantity: {
          value: gramsPerLitre,
          unit: 'g/L',
          dimension: 'mass per volume',
          inner: gramsPerLitre / 1000,
          written: `${gramsPerLitre} g/L`,
        } as const,
      },
    ];
  });
}
