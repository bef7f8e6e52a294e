import { join } from 'node:path';
import type { Io } from '../io.ts';
import type { KnownObjects } from '../ledger/at-revision.ts';
import { isProblemError } from '../problem.ts';
import { type Call, type Outcome, optionValue } from './command.ts';
import { comparisonEnvelope } from './compare-json.ts';
import { comparisonPage } from './compare-page.ts';
import { openSide, type Side } from './compare-side.ts';
import { comparisonOf, isDifferent, partOf } from './compare-sides.ts';

/** What changed between two records, or between a record and itself at a revision. */
export async function runCompare(call: Call, io: Io): Promise<Outcome> {
  const only = partOf(optionValue(call, 'only'));
  const [before, after] = await bothSides(call.words, io);
  const comparison = comparisonOf(before, after);
  return {
    exitCode: isDifferent(comparison, only) ? 1 : 0,
    page: comparisonPage(comparison, only),
    json: comparisonEnvelope(comparison, only),
    problems: [...before.problems, ...after.problems],
    explained: async () => (await import('./explain-records.ts')).comparisonExplanation(comparison),
  };
}

/** One alone is compared with itself as it stands, or as it was when it was last committed. */
async function bothSides(words: readonly string[], io: Io): Promise<readonly [Side, Side]> {
  const [first = '', second] = words;
  const known: KnownObjects = new Map();
  if (second !== undefined) return Promise.all([openSide(io, first, known), openSide(io, second, known)]);
  const one = await openSide(io, first, known);
  if (one.revision) return [one, await sameRecord(one, { io, known, at: '' })];
  return [await sameRecord(one, { io, known, at: '@HEAD' }), one];
}

interface Elsewhen {
  readonly io: Io;
  readonly known: KnownObjects;
  readonly at: '' | '@HEAD';
}

/** The same record at another time: by what it is called, else by its file. */
async function sameRecord({ card, here, file }: Side, { io, known, at }: Elsewhen): Promise<Side> {
  const path = join(here.root, file);
  if (!card) return openSide(io, `${path}${at}`, known);
  const name = card.kind === 'trial' ? String(card.number) : card.name;
  try {
    return await openSide(io, `${name}${at}`, known);
  } catch (thrown) {
    const isElsewhere = isProblemError(thrown) && thrown.problems.some(({ code }) => nowhere.has(code));
    if (!isElsewhere) throw thrown;
    return openSide(io, `${path}${at}`, known);
  }
}

const nowhere: ReadonlySet<string> = new Set(['no-formula', 'no-trial', 'no-batch']);
