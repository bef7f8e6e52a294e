/** Writing down what was seen: a dated fact goes into the list of observations by its time. */

import { type Edited, edit } from './edit.ts';
import { type Plain, plainFact, plainOf } from './edit-facts.ts';
import { addListEntry } from './edit-list.ts';
import { type PageRead, readPage } from './edit-page.ts';
import type { Fact } from './fact-text.ts';
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

/** `look: clear, ring` and a list of the two say the same. */
function wordsOf(plain: Plain): string {
  if (typeof plain === 'string')
    return plain
      .split(',')
      .map((word) => word.trim())
      .join(', ');
  if ('list' in plain) return plain.list.map(wordsOf).join(', ');
  return JSON.stringify(plain.map.map(([key, value]) => [key, wordsOf(value)]).sort());
}

/** What an observation says, apart from its time and the order of its facts. */
function contentOf(plain: Plain, firstSample: string): string {
  if (typeof plain === 'string' || 'list' in plain) return wordsOf(plain);
  const told = plain.map.filter(([key]) => key !== 'at' && key !== 'sample');
  const sample = plain.map.find(([key]) => key === 'sample')?.[1] ?? firstSample;
  return wordsOf({ map: [...told, ['sample', sample]] });
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
  const content = contentOf(plainFact(facts), firstSample);
  const same = entries.findIndex(
    (entry, index) => times[index] === atEpoch && contentOf(plainOf(entry), firstSample) === content,
  );
  const there = entries[same];
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
