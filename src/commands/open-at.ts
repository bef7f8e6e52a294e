/** Opening the ledger as it stands, or as it was at the revision behind an `@`. */

import { resolve } from 'node:path';
import type { Io } from '../io.ts';
import type { FilesThen, KnownObjects, Revision } from '../ledger/at-revision.ts';
import { openBench, settingsOf } from '../ledger/folder.ts';
import type { GitObjects } from '../ledger/git-objects.ts';
import { type RevisionName, splitRevision } from '../ledger/revision-name.ts';
import { isProblemError, type Problem, ProblemError } from '../problem.ts';
import type { Call, Outcome, Run } from './command.ts';
import { type Here, openHere, readPort, requireRoot } from './open-ledger.ts';

export interface HereAt {
  readonly here: Here;
  /** What was typed, without its revision. */
  readonly name: string;
  readonly problems: readonly Problem[];
}

export interface OpenAt {
  /** What is read beside what a name says: a series reads every trial. */
  readonly wanted?: (files: FilesThen) => readonly string[];
  readonly known?: KnownObjects;
  /** A process that is asked, where there is one. */
  readonly objects?: GitObjects;
}

/** What was typed, parted from its revision. A path that is there may hold an `@` itself. */
export function parted(io: Io, typed: string): RevisionName {
  const port = readPort(io);
  return splitRevision(typed, (path) => port.sizeOf(resolve(io.workingFolder, path)) !== undefined);
}

export async function openHereAt(io: Io, typed: string, how: OpenAt = {}): Promise<HereAt> {
  const { name, revision } = parted(io, typed);
  if (revision === undefined) return { here: await openHere(io), name, problems: [] };
  return hereThen(io, revision, { ...how, name });
}

/** The ledger at a revision. A bench that can't be read there is taken as it is now. */
export async function hereThen(
  io: Io,
  revision: string,
  { name, ...how }: OpenAt & { readonly name: string },
): Promise<HereAt> {
  const root = await requireRoot(io);
  const { openRevision } = await import('../ledger/at-revision.ts');
  const then = await openRevision({
    root,
    revision,
    now: io.now,
    wanted: (files) => likelyFiles(files, name),
    ...how,
  });
  const bench = await openBench(root, then.port);
  if (bench.card)
    return {
      here: {
        root,
        port: then.port,
        settings: settingsOf(bench.card),
        bench: bench.card,
        revision: then.revision,
      },
      name,
      problems: [],
    };
  const today = await openHere(io);
  return {
    here: { ...today, port: then.port, revision: then.revision },
    name,
    problems: [
      {
        code: 'bench-then',
        severity: 'warning',
        message: `bench.yaml can't be read at ${revision}`,
        hint: 'the bench as it is now is taken instead',
      },
      ...problemsThen(
        bench.problems.map((one) => ({ ...one, severity: 'warning' })),
        then.revision,
      ),
    ],
  };
}

/** A trial by its number, a file by its path; any name may be that of a formula or a batch. */
export function likelyFiles({ list }: FilesThen, name: string): readonly string[] {
  const number = /^0*(\d{1,9})$/u.exec(name)?.[1];
  const inFolder = (folder: string): readonly string[] =>
    list(folder)
      .filter((file) => file.endsWith('.yaml'))
      .map((file) => `${folder}/${file}`);
  if (number !== undefined)
    return inFolder('trials').filter((file) => /^trials\/0*(\d{1,9})(?!\d)/u.exec(file)?.[1] === number);
  const path = /(?:^|\/)((?:formulas|trials|batches|series)\/[^/]+\.yaml)$/u.exec(name)?.[1];
  return path === undefined ? [...inFolder('formulas'), ...inFolder('batches')] : [path];
}

/** `formulas/orange-cassis.yaml@v2`: where it was wrong then; `there is no trial 99 (at v2)`. */
export const problemsThen = (
  problems: readonly Problem[],
  { typed }: Pick<Revision, 'typed'>,
): readonly Problem[] =>
  problems.map((one) =>
    one.place
      ? { ...one, place: { ...one.place, file: `${one.place.file}@${typed}` } }
      : { ...one, message: `${one.message} (at ${typed})` },
  );

/** `v2, commit 3f2a1bc of 2026-03-01` */
export const revisionLine = (revision: Revision): string =>
  `${revision.typed}, commit ${revision.short} of ${dayOf(revision)}`;

/** The day of the person who committed. */
export const dayOf = ({
  epochMilliseconds,
  offsetMinutes,
}: Pick<Revision, 'epochMilliseconds' | 'offsetMinutes'>): string =>
  new Date(epochMilliseconds + offsetMinutes * 60_000).toISOString().slice(0, 10);

export type RunHere = (call: Call, io: Io, here: Here) => Promise<Outcome>;

/** A command whose first word may stand at a revision; the answer then says so. */
export const atRevision =
  (work: RunHere): Run =>
  async (call, io) => {
    const { here, name, problems } = await openHereAt(io, call.words[0] ?? '');
    const { revision } = here;
    if (!revision) return work(call, io, here);
    try {
      const outcome = await work({ ...call, words: [name, ...call.words.slice(1)] }, io, here);
      return asThen(outcome, revision, problems);
    } catch (thrown) {
      if (!isProblemError(thrown)) throw thrown;
      throw new ProblemError([...problems, ...problemsThen(thrown.problems, revision)], thrown.exitCode);
    }
  };

function asThen(outcome: Outcome, revision: Revision, problems: readonly Problem[]): Outcome {
  const { given } = outcome.json;
  const typed = typeof given === 'object' && given !== null ? given : {};
  return {
    ...outcome,
    page: [{ kind: 'text', text: `As it was at ${revisionLine(revision)}.`, tone: 'faint' }, ...outcome.page],
    json: {
      ...outcome.json,
      given: { ...typed, revision: revision.typed, commit: revision.id },
    },
    problems: [...problems, ...problemsThen(outcome.problems ?? [], revision)],
  };
}
