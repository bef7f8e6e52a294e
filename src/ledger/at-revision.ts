/** The ledger as it was at a git revision, behind the port through which every reader looks at the disk. */

import { dirname, relative, sep } from 'node:path';
import { fail } from '../problem.ts';
import { hasCommits, isShallow } from './git.ts';
import {
  type AskGit,
  type CommitHead,
  type GitObject,
  type GitObjects,
  isAskable,
  objectsNow,
  openObjects,
  readCommit,
  readTree,
  type TreeEntry,
} from './git-objects.ts';
import type { ReadPort } from './port.ts';

/** A revision that was typed, and the commit that it names. */
export interface Revision extends CommitHead {
  readonly typed: string;
  readonly short: string;
}

export interface AtRevision {
  readonly revision: Revision;
  readonly port: ReadPort;
}

/** Texts that were read, by their name in git: many revisions share most of them. */
export type KnownObjects = Map<string, Uint8Array>;

export interface RevisionRequest {
  /** The root of the ledger on the disk. */
  readonly root: string;
  readonly revision: string;
  readonly now: () => number;
  /** Which files are sure to be read, once it is known what is there: they come in the same process. */
  readonly wanted?: (names: FilesThen) => readonly string[];
  readonly known?: KnownObjects;
  /** A process that is asked, and left open; a new one where there is none. */
  readonly objects?: GitObjects;
}

export interface FilesThen {
  /** Names in a folder of the ledger. */
  readonly list: (folder: string) => readonly string[];
}

const folders = ['', 'formulas', 'trials', 'series', 'batches'] as const;
const always = ['bench.yaml', 'ingredients.yaml'];
/** `emulsion of 13` in a text, so that trial 13 comes along. */
const usedTrial = /\bof\s+(?:trial\s+)?(\d{1,9})\s*:/gu;
const mostRounds = 4;

/**
 * Opens a revision.
 * Output    the commit, and a port that reads the ledger's files as they were in it
 * Refuses   no git, no repository, no such revision, a ledger that was not there yet
 */
export async function openRevision(request: RevisionRequest): Promise<AtRevision> {
  const { root, revision } = request;
  const objects = request.objects ?? openObjects(root);
  try {
    const path = (folder: string): string => `${revision}:./${folder}`;
    const [commit, ...trees] = await objects.ask([`${revision}^{commit}`, ...folders.map(path)]);
    if (!commit) return await noSuchRevision(root, revision);
    if (!trees[0]) return notThere(revision);
    const store = storeOf(request, commit, trees);
    await bringAlong(store, objects.ask, request);
    const head = readCommit(commit);
    return { revision: { ...head, typed: revision, short: head.id.slice(0, 7) }, port: portOf(store) };
  } finally {
    if (!request.objects) objects.close();
  }
}

interface Store {
  readonly root: string;
  readonly commit: string;
  readonly known: KnownObjects;
  /** By folder, from the root of the ledger; undefined where there was none. */
  readonly trees: Map<string, ReadonlyMap<string, TreeEntry> | undefined>;
  /** How often a file of a folder had to be fetched alone. */
  readonly misses: Map<string, number>;
  readonly now: () => number;
}

function storeOf(
  { root, known, now }: RevisionRequest,
  commit: GitObject,
  trees: readonly (GitObject | undefined)[],
): Store {
  const byFolder = new Map(
    folders.map((folder, at): [string, ReadonlyMap<string, TreeEntry> | undefined] => {
      const tree = trees[at];
      return [folder, tree?.kind === 'tree' ? entriesOf(tree) : undefined];
    }),
  );
  return { root, commit: commit.id, known: known ?? new Map(), trees: byFolder, misses: new Map(), now };
}

const entriesOf = (tree: GitObject): ReadonlyMap<string, TreeEntry> =>
  new Map(readTree(tree).map((entry): [string, TreeEntry] => [entry.name, entry]));

/** Asks for what is wanted, and for the trials that those texts name. */
async function bringAlong(store: Store, ask: AskGit, { wanted }: RevisionRequest): Promise<void> {
  const list = (folder: string): readonly string[] => [...(store.trees.get(folder)?.keys() ?? [])];
  const asked = new Set<string>();
  let files: readonly string[] = [...always, ...(wanted?.({ list }) ?? [])];
  for (let round = 0; round < mostRounds && files.length > 0; round += 1) {
    const entries = files.flatMap((file) => fileEntry(store, file) ?? []);
    for (const file of files) asked.add(file);
    const missing = entries.filter(({ id }) => !store.known.has(id)).map(({ id }) => id);
    const found = await ask(missing);
    for (const one of found) if (one) store.known.set(one.id, one.bytes);
    const numbers = new Set(entries.flatMap(({ id }) => trialsIn(store.known.get(id))));
    files = list('trials')
      .filter((name) => numbers.has(Number(/^0*(\d{1,9})(?!\d)/u.exec(name)?.[1] ?? Number.NaN)))
      .map((name) => `trials/${name}`)
      .filter((file) => !asked.has(file));
  }
}

const trialsIn = (bytes: Uint8Array | undefined): readonly number[] =>
  bytes ? [...new TextDecoder().decode(bytes).matchAll(usedTrial)].map((match) => Number(match[1])) : [];

function portOf(store: Store): ReadPort {
  const bytesAt = (path: string): Uint8Array | undefined => {
    const file = fileFrom(store.root, path);
    const entry = file === undefined ? undefined : fileEntry(store, file);
    return entry && file !== undefined ? bytesOf(store, file, entry) : undefined;
  };
  const treeAt = (path: string): ReadonlyMap<string, TreeEntry> | undefined => {
    const folder = fileFrom(store.root, path);
    return folder === undefined ? undefined : treeOf(store, folder);
  };
  return {
    sizeOf: (path) => bytesAt(path)?.length,
    isFolder: (path) => treeAt(path) !== undefined,
    read: (path) => bytesAt(path) ?? new Uint8Array(),
    list: (path) =>
      [...(treeAt(path)?.values() ?? [])].filter(({ kind }) => kind === 'file').map(({ name }) => name),
    now: store.now,
  };
}

/** From the root of the ledger, with `/`; undefined for what lies outside it. */
function fileFrom(root: string, path: string): string | undefined {
  const file = relative(root, path).split(sep).join('/');
  return file === '..' || file.startsWith('../') ? undefined : file;
}

function fileEntry(store: Store, file: string): TreeEntry | undefined {
  const folder = dirname(file);
  const entry = treeOf(store, folder === '.' ? '' : folder)?.get(file.slice(file.lastIndexOf('/') + 1));
  return entry?.kind === 'file' ? entry : undefined;
}

function treeOf(store: Store, folder: string): ReadonlyMap<string, TreeEntry> | undefined {
  const { trees } = store;
  if (trees.has(folder) || !isAskable(folder)) return trees.get(folder);
  const parent = dirname(folder);
  const above = treeOf(store, parent === '.' ? '' : parent);
  const entry = above?.get(folder.slice(folder.lastIndexOf('/') + 1));
  const [tree] = entry?.kind === 'folder' ? objectsNow(store.root, [entry.id]) : [];
  trees.set(folder, tree && entriesOf(tree));
  return trees.get(folder);
}

/** What was not brought along: one file alone, the whole folder from the third on. */
function bytesOf(store: Store, file: string, entry: TreeEntry): Uint8Array | undefined {
  const { known, misses, root } = store;
  const found = known.get(entry.id);
  if (found) return found;
  const folder = dirname(file) === '.' ? '' : dirname(file);
  const times = (misses.get(folder) ?? 0) + 1;
  misses.set(folder, times);
  const all = [...(treeOf(store, folder)?.values() ?? [])].filter(({ kind }) => kind === 'file');
  const ids = times < mostAlone ? [entry.id] : all.map(({ id }) => id).filter((id) => !known.has(id));
  for (const one of objectsNow(root, ids)) if (one) known.set(one.id, one.bytes);
  return known.get(entry.id);
}

const mostAlone = 3;

async function noSuchRevision(root: string, revision: string): Promise<never> {
  if (!(await hasCommits(root)))
    return fail(
      'no-commits',
      'nothing is committed in this repository yet',
      'git add and git commit the ledger first',
    );
  const hint = (await isShallow(root))
    ? 'this clone is shallow, so older commits are not here; git fetch --unshallow brings them'
    : 'git log --oneline and git tag show what there is';
  return fail('no-such-revision', `there is no revision "${revision}" in this repository`, hint);
}

const notThere = (revision: string): never =>
  fail(
    'no-ledger-then',
    `at ${revision} this folder was not in the repository`,
    'the ledger stood elsewhere then, or was not committed; name a later revision',
  );
