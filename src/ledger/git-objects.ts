/** Objects out of git's store: commits, folders and files, as many as are wanted through one process. */

import { spawn, spawnSync } from 'node:child_process';
import { gitEnvironment, gitRefused, longestWait, mostBytes, quietWords } from './git.ts';

export interface GitObject {
  readonly id: string;
  readonly kind: string;
  readonly bytes: Uint8Array;
}

/** The object of each name, in the order asked; undefined for what is not there. */
export type AskGit = (names: readonly string[]) => Promise<readonly (GitObject | undefined)[]>;

export interface GitObjects {
  readonly ask: AskGit;
  readonly close: () => void;
}

const batch = [...quietWords, 'cat-file', '--batch'];
const newline = 10;

/** A name that git can be asked about on a line of its own. */
export const isAskable = (name: string): boolean => !/[\n\r\0]/u.test(name);

interface Waiting {
  readonly count: number;
  readonly resolve: (objects: readonly (GitObject | undefined)[]) => void;
  readonly reject: (thrown: unknown) => void;
}

/** One process that answers until it is closed; one question at a time. */
export function openObjects(folder: string): GitObjects {
  const git = spawn('git', batch, { cwd: folder, env: gitEnvironment(), stdio: 'pipe' });
  const chunks: Uint8Array[] = [];
  let said = '';
  let waiting: Waiting | undefined;
  let ended: unknown;
  let clock = setTimeout(() => git.kill(), longestWait);
  const stop = (thrown?: unknown): void => {
    clearTimeout(clock);
    ended ??= refusal(folder, said, thrown);
    waiting?.reject(ended);
    waiting = undefined;
  };
  git.on('error', stop);
  git.on('close', () => stop());
  git.stdin.on('error', () => {});
  git.stderr.on('data', (text: Uint8Array) => {
    said += new TextDecoder().decode(text);
  });
  git.stdout.on('data', (bytes: Uint8Array) => {
    chunks.push(bytes);
    if (!waiting) return;
    const all = joined(chunks);
    const read = readObjects(all, waiting.count);
    chunks.splice(0, chunks.length, all);
    if (!read) return;
    chunks.length = 0;
    const { resolve } = waiting;
    waiting = undefined;
    resolve(read);
  });
  const ask: AskGit = (names) =>
    new Promise((resolve, reject) => {
      if (ended !== undefined) return reject(ended);
      if (names.length === 0) return resolve([]);
      waiting = { count: names.length, resolve, reject };
      clearTimeout(clock);
      clock = setTimeout(() => git.kill(), longestWait);
      git.stdin.write(names.map((name) => `${name}\n`).join(''));
    });
  const close = (): void => {
    clearTimeout(clock);
    git.stdin.end();
  };
  return { ask, close };
}

/** The same at once, by a process of its own: for what is only found to be wanted while reading. */
export function objectsNow(folder: string, names: readonly string[]): readonly (GitObject | undefined)[] {
  const { stdout, stderr, error } = spawnSync('git', batch, {
    cwd: folder,
    env: gitEnvironment(),
    input: names.map((name) => `${name}\n`).join(''),
    timeout: longestWait,
    maxBuffer: mostBytes,
  });
  const read = error ? undefined : readObjects(stdout, names.length);
  return read ?? gitRefused(folder, new TextDecoder().decode(stderr ?? new Uint8Array()), error);
}

function refusal(folder: string, said: string, thrown: unknown): unknown {
  try {
    return gitRefused(folder, said, thrown);
  } catch (problem) {
    return problem;
  }
}

function joined(chunks: readonly Uint8Array[]): Uint8Array {
  const [first] = chunks;
  if (chunks.length === 1 && first) return first;
  return Buffer.concat([...chunks]);
}

/** What git wrote for so many names; undefined while some of it is still to come. */
export function readObjects(
  bytes: Uint8Array,
  count: number,
): readonly (GitObject | undefined)[] | undefined {
  const objects: (GitObject | undefined)[] = [];
  let at = 0;
  while (objects.length < count) {
    const end = bytes.indexOf(newline, at);
    if (end === -1) return undefined;
    const head = new TextDecoder().decode(bytes.subarray(at, end));
    const [, id, kind, size] = /^([0-9a-f]{40,64}) (commit|tree|blob|tag) (\d+)$/u.exec(head) ?? [];
    at = end + 1;
    if (id === undefined || kind === undefined) {
      objects.push(undefined);
      continue;
    }
    const last = at + Number(size);
    if (bytes.length <= last) return undefined;
    objects.push({ id, kind, bytes: bytes.subarray(at, last) });
    at = last + 1;
  }
  return objects;
}

export interface TreeEntry {
  readonly name: string;
  readonly id: string;
  readonly kind: 'file' | 'folder' | 'other';
}

/** What a folder holds; links and other repositories inside it are `other`. */
export function readTree({ id, bytes }: GitObject): readonly TreeEntry[] {
  const entries: TreeEntry[] = [];
  const idBytes = id.length / 2;
  for (let at = 0; at < bytes.length; ) {
    const space = bytes.indexOf(32, at);
    const nul = bytes.indexOf(0, space);
    if (space === -1 || nul === -1) break;
    const mode = new TextDecoder().decode(bytes.subarray(at, space));
    const name = new TextDecoder().decode(bytes.subarray(space + 1, nul));
    const entry = Buffer.from(bytes.subarray(nul + 1, nul + 1 + idBytes)).toString('hex');
    entries.push({ name, id: entry, kind: kindOfMode(mode) });
    at = nul + 1 + idBytes;
  }
  return entries;
}

function kindOfMode(mode: string): TreeEntry['kind'] {
  if (mode.startsWith('100')) return 'file';
  return mode === '40000' ? 'folder' : 'other';
}

export interface CommitHead {
  readonly id: string;
  /** When it was written, with the offset of who wrote it. */
  readonly epochMilliseconds: number;
  readonly offsetMinutes: number;
}

/** The author's time of a commit. */
export function readCommit({ id, bytes }: GitObject): CommitHead {
  const head = new TextDecoder().decode(bytes.subarray(0, 4096));
  const [, seconds, sign, hours, minutes] =
    /^author .*> (-?\d+) ([+-])(\d\d)(\d\d)$/mu.exec(head.split('\n\n')[0] ?? '') ?? [];
  const offset = Number(hours ?? 0) * 60 + Number(minutes ?? 0);
  return {
    id,
    epochMilliseconds: Number(seconds ?? 0) * 1000,
    offsetMinutes: sign === '-' ? -offset : offset,
  };
}
