/** Opening the ledger that a command works on: the folder, its bench, one trial. */

import { isAbsolute, relative, resolve, sep } from 'node:path';
import type { Io } from '../io.ts';
import type { Revision } from '../ledger/at-revision.ts';
import type { BenchCard, TrialCard } from '../ledger/cards.ts';
import { findRoot } from '../ledger/find-root.ts';
import { type LedgerPlace, openBench, settingsOf } from '../ledger/folder.ts';
import { type Opened, openFile } from '../ledger/open-file.ts';
import { diskReadPort, type ReadPort } from '../ledger/port.ts';
import { readTrialCard } from '../ledger/read-trial.ts';
import { openTrial, trialFiles } from '../ledger/single-trial.ts';
import { fail, ProblemError } from '../problem.ts';
import { nearestNames } from '../reference/name.ts';

export interface Here extends LedgerPlace {
  readonly bench: BenchCard;
  /** The git revision that is read; absent where the files are read as they stand. */
  readonly revision?: Revision;
}

export const readPort = (io: Io): ReadPort => ({
  ...diskReadPort,
  now: io.now,
  ...(io.progress ? { read: countedRead(io.progress) } : {}),
});

const betweenWords = 20;

/** Reads, and says how many files were read where that takes long. */
function countedRead(progress: (text: string) => void): ReadPort['read'] {
  let count = 0;
  return (path) => {
    count += 1;
    if (count % betweenWords === 0) progress(`reading the ledger: ${count} files …`);
    return diskReadPort.read(path);
  };
}

export async function requireRoot(io: Io): Promise<string> {
  const root = await findRoot(io.workingFolder);
  return (
    root ??
    fail(
      'no-ledger',
      `there is no ledger in ${io.workingFolder} or above it`,
      'neckring init begins one here',
    )
  );
}

/** The ledger around the working folder, with a bench that can be read. */
export async function openHere(io: Io): Promise<Here> {
  const root = await requireRoot(io);
  const port = readPort(io);
  const bench = await openBench(root, port);
  if (!bench.card) throw new ProblemError(bench.problems);
  return { root, port, settings: settingsOf(bench.card), bench: bench.card };
}

export interface OpenedTrial extends Opened<TrialCard> {
  readonly card: TrialCard;
}

/** A trial by its number or its file; refused with its problems where it can't be read. */
export async function openTrialNamed(here: Here, io: Io, typed: string): Promise<OpenedTrial> {
  const opened = /^\d{1,9}$/.test(typed)
    ? await openTrial(here, Number(typed))
    : await openByPath(here, io, typed);
  if (!opened) return noSuchTrial(here, typed);
  const { card } = opened;
  if (!card?.isSound) {
    const errors = opened.problems.filter((one) => one.severity === 'error');
    throw new ProblemError(errors.length > 0 ? errors : opened.problems);
  }
  return { ...opened, card };
}

async function openByPath(here: Here, io: Io, typed: string): Promise<Opened<TrialCard> | undefined> {
  const path = resolve(io.workingFolder, typed);
  const file = relative(here.root, path).split(sep).join('/');
  if (file.startsWith('..') || isAbsolute(file)) {
    return fail(
      'outside',
      `${typed} is outside the ledger in ${here.root}`,
      'name a trial of this ledger by its number or its file',
    );
  }
  if (here.port.sizeOf(path) === undefined) return undefined;
  return openFile(here.port, {
    root: here.root,
    file,
    read: (document) => readTrialCard(document, here.settings),
  });
}

function noSuchTrial(here: Here, typed: string): never {
  const numbers = trialFiles(here.root, here.port).map((one) => one.number);
  const last =
    numbers.length > 0
      ? `the last one is ${Math.max(...numbers)}`
      : 'there are none yet: neckring new writes the first';
  const near = nearestNames(typed, numbers.map(String), 3);
  const hint = near.length > 0 && !/^\d+$/.test(typed) ? `did you mean ${near.join(' or ')}?` : last;
  return fail('no-trial', `there is no trial ${typed}`, `name it by its number or its file; ${hint}`);
}
