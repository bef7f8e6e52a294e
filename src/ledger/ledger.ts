/** A ledger as it was read: the cards of its files, and everything that is wrong in the files themselves. */

import type { Problem } from '../problem.ts';
import type { BatchCard, BenchCard, FormulaCard, IngredientsCard, SeriesCard, TrialCard } from './cards.ts';
import type { LedgerDocument } from './parse.ts';

export interface Ledger {
  readonly root: string;
  /** Milliseconds since 1970, when it was read. */
  readonly now: number;
  readonly bench: BenchCard | undefined;
  readonly ingredients: IngredientsCard | undefined;
  /** In the order of their numbers. */
  readonly trials: readonly TrialCard[];
  readonly series: readonly SeriesCard[];
  readonly formulas: readonly FormulaCard[];
  readonly batches: readonly BatchCard[];
  /** By path from the root, in the order in which they were read. */
  readonly documents: ReadonlyMap<string, LedgerDocument>;
  /** Files that are there and could not be read: nothing is said of what others say of them. */
  readonly unread: readonly string[];
  /** Found in reading; what only shows when files are laid side by side is found by the checks. */
  readonly problems: readonly Problem[];
  /** Whether a file of any kind is at a path from the root. */
  readonly hasFile: (path: string) => boolean;
}
