/** The drink of a trial as portions of a solution. */

import type { BookEntry } from './book.ts';
import type { ResolvedStage } from './mixture/picture.ts';
import type { PortionItem } from './portions-field.ts';
import { acidSubstanceName, neutralName } from './solution/substance.ts';

/** The name under which a substance is known to the solution chemistry, that of what it was made like included. */
export const solutionNameOf = ({ name, like }: Pick<BookEntry, 'name' | 'like'>): string | undefined =>
  [name, ...(like ?? [])].find((one) => acidSubstanceName(one) ?? neutralName(one));

/**
 * The substances of a stage that count for pH, sugar and water activity, in g/L.
 * Oils, emulsifiers and traces of aroma are left out: they move none of these.
 */
export function portionsIn(stage: ResolvedStage): readonly PortionItem[] {
  return stage.substances.flatMap(({ entry, role, gramsPerLitre }) => {
    const known = solutionNameOf(entry);
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
