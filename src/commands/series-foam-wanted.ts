/** The head that is wanted of a foam series: as typed, else the aim of the formula that its file names. */

import { parseRange, type Range } from '../calc/range.ts';
import type { Io } from '../io.ts';
import type { SeriesCard } from '../ledger/cards.ts';
import { fail } from '../problem.ts';
import { openFormulaNamed } from './open-formula.ts';
import type { Here } from './open-ledger.ts';

export interface WantedHead {
  readonly range: Range;
  readonly written: string;
  /** Whose aim it is; undefined where it was typed. */
  readonly formula?: string | undefined;
}

/** `5 to 15 mm`, `at most 10 mm`. Refuses one figure alone: a head is never exact. */
export function readHeadBand(typed: string): WantedHead {
  const range = parseRange(typed, ['length']);
  if (!range.ok) return fail(range.fault.code, `--head: ${range.fault.message}`, range.fault.hint);
  if (range.value.exact)
    return fail('not-a-range', `--head ${typed} is one figure`, 'give a band, such as --head "5 to 15 mm"');
  return { range: range.value, written: typed.trim() };
}

interface WantedOf {
  readonly head: string | undefined;
  readonly series: SeriesCard;
}

export async function wantedHead(
  here: Here,
  io: Io,
  { head, series }: WantedOf,
): Promise<WantedHead | undefined> {
  if (head !== undefined) return readHeadBand(head);
  if (!series.formula) return undefined;
  const { card } = await openFormulaNamed(here, io, series.formula.text);
  const aim = card.aims.find(({ name }) => name === 'head');
  if (!aim?.range) return undefined;
  if (aim.range.exact)
    return fail(
      'not-a-range',
      `the aim "head: ${aim.written}" of ${card.name} is one figure`,
      'give a band, such as head: 5 to 15 mm',
    );
  return { range: aim.range, written: aim.written, formula: card.name };
}
