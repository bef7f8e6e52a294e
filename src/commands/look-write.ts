/** Writing what was seen of several trials: everything is checked and changed first, then landed at once. */

import { join } from 'node:path';
import type { Io } from '../io.ts';
import { pageOf } from '../ledger/edit-page.ts';
import { addObservation } from '../ledger/observations-edit.ts';
import { trialFiles } from '../ledger/single-trial.ts';
import { readTime } from '../ledger/times.ts';
import { isProblemError, type Problem, ProblemError } from '../problem.ts';
import { type Call, optionValue } from './command.ts';
import { changedLines, landHere } from './land-text.ts';
import { type Entries, type Entry, entriesOf, type Manner, type Said } from './look-entry.ts';
import { sampleText } from './look-sample.ts';
import { type Here, type OpenedTrial, openTrialNamed } from './open-ledger.ts';

export interface WrittenLook {
  readonly entry: Entry;
  readonly file: string;
  readonly line: number;
  readonly state: 'added' | 'unchanged';
  /** Only with `--dry-run`. */
  readonly diff: readonly string[];
}

export interface Round {
  readonly call: Call;
  readonly io: Io;
  readonly here: Here;
  readonly manner: Manner;
  readonly said: readonly Said[];
  /** What was wrong with the line itself; said together with what is wrong with the trials. */
  readonly problems?: readonly Problem[];
}

/**
 * Output    what was written, or with `--dry-run` would be, in the order in which it was said
 * Refuses   every fault of every trial at once, with nothing written
 */
export async function writeRound(round: Round): Promise<readonly WrittenLook[]> {
  const { call, io, here } = round;
  let written: readonly WrittenLook[] = [];
  const make = async () => {
    const added = addAll(await entriesIn(round), round);
    written = added.written;
    return added.changes;
  };
  if (call.flags.has('dry-run')) await make();
  else await landHere(here.root, call, io, make);
  return written;
}

async function entriesIn({ io, here, manner, said, problems: first = [] }: Round): Promise<Entries> {
  const files = new Map(trialFiles(here.root, here.port).map(({ number, file }) => [String(number), file]));
  const opened = new Map<string, OpenedTrial>();
  const entries: Entry[] = [];
  const problems: Problem[] = [...first];
  for (const one of said) {
    const file = files.get(one.trial);
    try {
      const read = await openTrialNamed(here, io, file === undefined ? one.trial : join(here.root, file));
      const trial = opened.get(read.file) ?? read;
      opened.set(read.file, trial);
      const made = entriesOf(trial, one, manner);
      entries.push(...made.entries);
      problems.push(...made.problems);
    } catch (thrown) {
      if (!isProblemError(thrown)) throw thrown;
      problems.push(...thrown.problems);
    }
  }
  return { entries, problems: [...problems, ...contradictions(entries)] };
}

/** One sample can't look two ways at one time. */
function contradictions(entries: readonly Entry[]): readonly Problem[] {
  return entries.flatMap((entry, index) => {
    const other = entries
      .slice(0, index)
      .find((one) => one.trial === entry.trial && one.sample === entry.sample);
    if (!other || other.words === entry.words || other.words === '' || entry.words === '') return [];
    return [
      {
        code: 'two-looks',
        severity: 'error',
        message: `${sampleText(entry.trial.card, entry.sample)} is said to be ${other.words} and ${entry.words}`,
        hint: 'say one of the two',
      } as const,
    ];
  });
}

/** A round that was cut off is typed again within minutes; a look of the same sample that tells more comes later. */
const againMilliseconds = 600_000;

interface FileText {
  readonly before: string;
  after: string;
}

function addAll({ entries, problems }: Entries, { call, here, manner }: Round) {
  const isDry = call.flags.has('dry-run');
  const texts = new Map<string, FileText>();
  const faults: Problem[] = [...problems];
  const written: WrittenLook[] = [];
  for (const entry of entries) {
    const { file, document, card } = entry.trial;
    const text = texts.get(file) ?? { before: document.source.text, after: document.source.text };
    texts.set(file, text);
    const added = addObservation(file, text.after, {
      facts: entry.facts,
      atEpoch: manner.at.epochMilliseconds,
      timeOf: (typed) => timeOf(typed, here),
      firstSample: card.samples[0]?.name ?? '',
      againMilliseconds: optionValue(call, 'at') === undefined ? againMilliseconds : 0,
      ...(text.after === text.before ? { page: pageOf(document) } : {}),
    });
    if (!added.ok) {
      faults.push(...added.problems);
      continue;
    }
    const state = added.state ?? 'added';
    if (state === 'added' && entry.refusal) faults.push(entry.refusal);
    const diff = isDry ? changedLines(text.after, added.text) : [];
    written.push({ entry, file, line: added.line, state, diff });
    text.after = added.text;
  }
  if (faults.length > 0) throw new ProblemError(faults);
  const changes = [...texts]
    .filter(([, { before, after }]) => before !== after)
    .map(([path, { before, after }]) => ({ path, before, after }));
  return { written, changes };
}

function timeOf(text: string, here: Here): number | undefined {
  const time = readTime(text, here.settings.zone);
  return time.ok ? time.value.epochMilliseconds : undefined;
}
