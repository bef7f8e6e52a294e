/** What a solution holds, down to its pure substances. */

import type { Ingredient } from '../../reference/ingredient.ts';
import type { BookEntry, BookFault, OwnEntry, SubstanceShare } from '../book.ts';
import { contentShares } from './content-shares.ts';
import { type Found, notFound } from './found.ts';

export interface CompositionInput {
  readonly typed: OwnEntry;
  /** Of the solution itself: concentrations go through its density. */
  readonly record: Ingredient;
  readonly lookUp: (name: string) => Found;
  readonly report: (fault: Omit<BookFault, 'entry'>) => void;
}

/**
 * The pure substances of a solution.
 *
 * Formula   share of a substance = sum over the contents of share of content x share of the substance in it
 * Input     contents with their amounts
 * Output    mass fractions that add up to 1; undefined where a fault was reported
 * Refuses   unknown names, circles, amounts that do not come to the whole
 */
export function compositionOf({
  typed,
  record,
  lookUp,
  report,
}: CompositionInput): readonly SubstanceShare[] | undefined {
  const contents = typed.contains ?? [];
  if (contents.length === 0) {
    report({
      code: 'empty-contains',
      message: `${typed.name} contains nothing`,
      hint: 'name what is in it',
      field: 'contains',
    });
    return undefined;
  }
  const entries = contents.map(({ name }, content): BookEntry | undefined => {
    const found = lookUp(name);
    if (found.kind === 'found') return found.entry;
    report({ ...notFound(name, found), field: 'contains', content });
    return undefined;
  });
  const shares = contentShares({
    name: typed.name,
    density: record.figures.density?.value,
    contents: contents.map((content, index) => ({ ...content, entry: entries[index] })),
  });
  for (const fault of shares.faults) report({ ...fault, field: 'contains' });
  if (shares.faults.length > 0 || entries.includes(undefined)) return undefined;
  return flattened(entries.map((entry, index) => ({ entry, share: shares.shares[index] ?? 0 })));
}

/** A substance that is reached twice is added up. */
function flattened(
  parts: readonly { readonly entry: BookEntry | undefined; readonly share: number }[],
): readonly SubstanceShare[] {
  const shares = new Map<string, SubstanceShare>();
  for (const { entry, share } of parts) {
    for (const { substance, massFraction } of entry?.composition ?? []) {
      const before = shares.get(substance.name)?.massFraction ?? 0;
      shares.set(substance.name, { substance, massFraction: before + share * massFraction });
    }
  }
  return [...shares.values()];
}
