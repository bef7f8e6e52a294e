/** Writing down what was seen: a dated fact goes into the list of observations by its time. */

import { type Edited, edit } from './edit.ts';
import { plainFact, plainOf } from './edit-facts.ts';
import { addListEntry } from './edit-list.ts';
import { type PageRead, readPage } from './edit-page.ts';
import type { Fact } from './fact-text.ts';
import { observationContent, sampleOf } from './same-fact.ts';
import { entryOf, type TreeNode } from './tree.ts';

export interface NewObservation {
  /** In the order in which they are written; `at` among them. */
  readonly facts: readonly Fact[];
  /** The time of `at`, in milliseconds since 1970. */
  readonly atEpoch: number;
  /** Reads a time as the file's bench does; undefined where it can't be read. */
  readonly timeOf: (text: string) => number | undefined;
  /** The sample that an observation without one belongs to. */
  readonly firstSample?: string;
  /** When its time was not typed: the last of its sample that says the same, not longer ago than this, is the same one. */
  readonly againMilliseconds?: number;
  /** The text as it was read, where that has been done. */
  readonly page?: PageRead;
}

/** `unchanged`: the very same is there already. */
export type Added = Edited & { readonly state?: 'added' | 'unchanged' };

const entriesOf = (root: TreeNode, key: string): readonly TreeNode[] => {
  const list = entryOf(root, key)?.value;
  return list?.kind === 'list' ? list.items : [];
};

function timeIn(entry: TreeNode, timeOf: NewObservation['timeOf']): number | undefined {
  const at = entryOf(entry, 'at')?.value;
  return at?.kind === 'text' ? timeOf(at.text) : undefined;
}

/** After all of the same time or earlier; the order in which the others stand is left alone. */
function positionFor(times: readonly (number | undefined)[], atEpoch: number): number {
  const earlier = times.findLastIndex((time) => time !== undefined && time <= atEpoch);
  if (earlier !== -1) return earlier + 1;
  const later = times.findIndex((time) => time !== undefined && time > atEpoch);
  return later === -1 ? times.length : later;
}

/** Of what was said of the sample the last, where it says the same and was said just before. */
function typedBefore(
  entries: readonly TreeNode[],
  times: readonly (number | undefined)[],
  { facts, atEpoch, firstSample = '', againMilliseconds = 0 }: NewObservation,
  saysSame: (entry: TreeNode) => boolean,
): TreeNode | undefined {
  const sample = sampleOf(plainFact(facts), firstSample);
  const isNewer = (one: number, other: number): boolean =>
    (times[one] ?? Number.POSITIVE_INFINITY) >= (times[other] ?? Number.POSITIVE_INFINITY);
  const last = entries
    .flatMap((entry, index) => (sampleOf(plainOf(entry), firstSample) === sample ? [index] : []))
    .reduce<number | undefined>(
      (best, index) => (best === undefined || isNewer(index, best) ? index : best),
      undefined,
    );
  const entry = last === undefined ? undefined : entries[last];
  const age = atEpoch - (times[last ?? -1] ?? Number.POSITIVE_INFINITY);
  return entry && age >= 0 && age <= againMilliseconds && saysSame(entry) ? entry : undefined;
}

/**
 * Adds an observation, unless the very same (sample, time, content) is there already.
 * Input     the file's name, its text, and what was seen
 * Output    the new text and the line, or the old text and `unchanged`
 */
export function addObservation(file: string, text: string, observation: NewObservation): Added {
  const read = observation.page ?? readPage(file, text);
  if (!read.ok) return { ok: false, problems: read.problems };
  const { facts, atEpoch, timeOf, firstSample = '' } = observation;
  const entries = entriesOf(read.page.root, 'observations');
  const times = entries.map((entry) => timeIn(entry, timeOf));
  const content = observationContent(plainFact(facts), firstSample);
  const saysSame = (entry: TreeNode): boolean => observationContent(plainOf(entry), firstSample) === content;
  const there =
    entries.find((entry, index) => times[index] === atEpoch && saysSame(entry)) ??
    typedBefore(entries, times, observation, saysSame);
  if (there)
    return { ok: true, text, line: text.slice(0, there.start).split('\n').length, state: 'unchanged' };
  const position = positionFor(times, atEpoch);
  const edited = edit(
    file,
    text,
    addListEntry({ key: 'observations', facts, position, before: ['results'] }),
    read,
  );
  return edited.ok ? { ...edited, state: 'added' } : edited;
}
