import type { Role } from '../../reference/ingredient.ts';
import type { BookEntry } from '../book.ts';
import type { Mixture, ResolvedItem } from '../mixture/picture.ts';

export interface Held {
  readonly entry: BookEntry;
  readonly role: Role;
  readonly massGrams: number;
}

/** The pure substances that one item brings into its stage, in g. */
export function itemSubstances({ source, massGrams, role }: ResolvedItem, mixture: Mixture): readonly Held[] {
  if (source.kind === 'ingredient') {
    const { entry } = source;
    const isOverridden = role !== entry.record.role;
    return entry.composition.map(({ substance, massFraction }) => ({
      entry: substance,
      role: isOverridden ? role : substance.record.role,
      massGrams: massGrams * massFraction,
    }));
  }
  const stage =
    source.kind === 'other trial' ? source.stage : mixture.stages.find(({ name }) => name === source.stage);
  return (stage?.substances ?? []).map(({ entry, role: held, massFraction }) => ({
    entry,
    role: held,
    massGrams: massGrams * massFraction,
  }));
}

/** Whether an entry is the built-in ingredient of this name, or the person's own made like it. */
export const isLike = (entry: BookEntry, name: string): boolean =>
  entry.name === name || (entry.like?.includes(name) ?? false);
