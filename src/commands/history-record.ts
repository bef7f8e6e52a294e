/** A record through its commits: what each changed, and its figures then. */

import { documentDifference } from '../calc/compare/difference.ts';
import type { ComparedDocument } from '../calc/compare/document.ts';
import type { Io } from '../io.ts';
import type { KnownObjects } from '../ledger/at-revision.ts';
import { type FileCommit, fileCommits } from '../ledger/git-log.ts';
import { type GitObject, type GitObjects, isAskable, openObjects } from '../ledger/git-objects.ts';
import { decodeFile } from '../ledger/guard.ts';
import type { Side } from './compare-side.ts';
import { sideOfText } from './compare-texts.ts';
import { beginning, changeList } from './history-words.ts';
import { hereThen } from './open-at.ts';
import type { Here } from './open-ledger.ts';

export interface HistoryEntry {
  /** Absent for what is not committed yet. */
  readonly commit: FileCommit | undefined;
  readonly words: readonly string[];
  /** Its name before, where it was renamed. */
  readonly renamedFrom: string | undefined;
  /** Absent where it can't be read at that commit. */
  readonly side: Side | undefined;
}

export interface History {
  readonly file: string;
  readonly entries: readonly HistoryEntry[];
}

interface Request {
  readonly io: Io;
  readonly here: Here;
  /** From the root of the ledger, and its text now; absent where it is looked at from a revision. */
  readonly file: string;
  readonly text: string | undefined;
  /** Whether the figures are wanted, which each need the ledger of their commit. */
  readonly withFigures: boolean;
}

const empty: ComparedDocument = {
  facts: [],
  aims: [],
  stages: [],
  samples: [],
  observations: [],
  results: [],
};

export async function historyOf(request: Request): Promise<History> {
  const { here, file, text } = request;
  const commits = await fileCommits(here.root, file, { from: here.revision?.id ?? 'HEAD' });
  const objects = openObjects(here.root);
  const known: KnownObjects = new Map();
  const entries: HistoryEntry[] = [];
  try {
    const texts = await textsOf(objects, commits);
    for (const [at, commit] of commits.entries()) {
      const { now, before } = texts[at] ?? {};
      request.io.progress?.(`reading the history: version ${at + 1} of ${commits.length} …`);
      entries.push(await entryOf(request, { commit, now, before, objects, known }));
    }
    const last = texts.at(-1)?.now;
    if (text !== undefined && text !== last)
      entries.push(await entryOf(request, { commit: undefined, now: text, before: last, objects, known }));
  } finally {
    objects.close();
  }
  return { file, entries };
}

interface TextPair {
  readonly now: string | undefined;
  readonly before: string | undefined;
}

async function textsOf(objects: GitObjects, commits: readonly FileCommit[]): Promise<readonly TextPair[]> {
  const names = commits.flatMap(({ id, path, pathBefore }) => [
    `${id}:${path}`,
    pathBefore === undefined ? `${id}^:` : `${id}^:${pathBefore}`,
  ]);
  if (!names.every(isAskable)) return commits.map(() => ({ now: undefined, before: undefined }));
  const found = await objects.ask(names);
  return commits.map(({ path, pathBefore }, at) => ({
    now: textOf(path, found[2 * at]),
    before: pathBefore === undefined ? undefined : textOf(pathBefore, found[2 * at + 1]),
  }));
}

function textOf(path: string, object: GitObject | undefined): string | undefined {
  if (object?.kind !== 'blob') return undefined;
  const decoded = decodeFile(path, object.bytes);
  return 'text' in decoded ? decoded.text : undefined;
}

interface Version extends TextPair {
  readonly commit: FileCommit | undefined;
  readonly objects: GitObjects;
  readonly known: KnownObjects;
}

async function entryOf(request: Request, version: Version): Promise<HistoryEntry> {
  const { io, here, file, withFigures } = request;
  const { commit, now, before, objects, known } = version;
  const place = commit && withFigures ? await placeThen(io, commit, { objects, known, here }) : here;
  const side = now === undefined ? undefined : await sideOfText(place, io, file, now);
  const was = before === undefined ? undefined : await sideOfText(here, io, file, before);
  const renamedFrom =
    commit?.pathBefore !== undefined && commit.pathBefore !== commit.path ? commit.pathBefore : undefined;
  return { commit, renamedFrom, words: wordsOf(version, was, side, renamedFrom), side };
}

/** The ledger at a commit; as it is now where it was elsewhere then. */
async function placeThen(
  io: Io,
  { id, path }: FileCommit,
  { objects, known, here }: Pick<Version, 'objects' | 'known'> & { readonly here: Here },
): Promise<Here> {
  try {
    return (await hereThen(io, id, { objects, known, name: path })).here;
  } catch {
    return here;
  }
}

function wordsOf(
  { commit, now, before }: Version,
  was: Side | undefined,
  side: Side | undefined,
  renamedFrom: string | undefined,
): readonly string[] {
  const renamed = renamedFrom === undefined ? [] : [`renamed from ${renamedFrom}`];
  if (now === undefined) return [...renamed, commit ? 'taken out' : 'gone'];
  if (!side?.document) return [...renamed, "can't be read here"];
  if (before === undefined) return [...renamed, ...beginning(documentDifference(empty, side.document))];
  if (!was?.document) return [...renamed, 'can be read again'];
  const words = changeList(documentDifference(was.document, side.document));
  if (words.length > 0) return [...renamed, ...words];
  return before === now ? renamed : [...renamed, 'spelling and remarks only'];
}
