import type { Io } from '../io.ts';
import type { KnownObjects } from '../ledger/at-revision.ts';
import { type Call, type Outcome, optionValue } from './command.ts';
import { comparisonEnvelope } from './compare-json.ts';
import { comparisonPage } from './compare-page.ts';
import { openSide } from './compare-side.ts';
import { comparisonOf, isDifferent, partOf } from './compare-sides.ts';
import { parted } from './open-at.ts';

/** What changed between two records, or between a record and itself at a revision. */
export async function runCompare(call: Call, io: Io): Promise<Outcome> {
  const only = partOf(optionValue(call, 'only'));
  const [first, second] = bothSides(call.words, io);
  const known: KnownObjects = new Map();
    const [before, after] = await Promise.all([openSide(io, first, known), openSide(io, second, known)]);
  const comparison = comparisonOf(before, after);
  return {
    exitCode: isDifferent(comparison, only) ? 1 : 0,
    page: comparisonPage(comparison, only),
    json: comparisonEnvelope(comparison, only),
    problems: [...before.problems, ...after.problems],
  };
}

/** One alone is compared with itself as it stands, or as it was when it was last committed. */
function bothSides(words: readonly string[], io: Io): readonly [string, string] {
  const [first = '', second] = words;
  if (second !== undefined) return [first, second];
  const { name, revision } = parted(io, first);
  return revision === undefined ? [`${first}@HEAD`, first] : [first, name];
}
