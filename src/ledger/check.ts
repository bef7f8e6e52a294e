/** What every check works on, and how it reports. */

import type { Book } from '../calc/book.ts';
import type { Problem } from '../problem.ts';
import type { FileCard, MadeCard } from './cards.ts';
import type { Ledger } from './ledger.ts';
import { type Finding, problemAt } from './places.ts';
import type { Sources } from './resolve.ts';
import type { Span } from './tree.ts';

export interface CheckContext {
  readonly ledger: Ledger;
  readonly book: Book;
  readonly sources: Sources;
}

export type Check = (context: CheckContext) => readonly Problem[];

/** A problem in the file of a card. */
export function found(
  { ledger }: CheckContext,
  { file }: Pick<FileCard, 'file'>,
  finding: Finding,
  span: Span,
): Problem {
  const source = ledger.documents.get(file)?.source;
  if (!source) throw new Error(`no text of ${file}`);
  return problemAt(source, finding, span);
}

/** Trials and batches: what was made and looked at. */
export const madeIn = ({ trials, batches }: Ledger): readonly MadeCard[] => [...trials, ...batches];
