/** Which git revision of a file this is. Git is only read, and started without a shell. */

import { execFile } from 'node:child_process';

/** Runs git in a folder; undefined where there is no git, or it did not answer. */
export type GitPort = (
  folder: string,
  words: readonly string[],
) => Promise<{ readonly code: number; readonly out: string } | undefined>;

/** Nothing of the repository's own settings is run: no hooks, no watcher, no pager, no signatures. */
const quiet = ['-c', 'core.fsmonitor=false', '-c', 'core.hooksPath=', '--no-pager', '--literal-pathspecs'];
const longestWait = 10_000;
const mostBytes = 64 * 1024 * 1024;

export const nodeGit: GitPort = (folder, words) =>
  new Promise((resolve) => {
    execFile(
      'git',
      [...quiet, ...words],
      {
        cwd: folder,
        timeout: longestWait,
        maxBuffer: mostBytes,
        env: { ...process.env, GIT_OPTIONAL_LOCKS: '0', GIT_TERMINAL_PROMPT: '0', LC_ALL: 'C' },
      },
      (failed, out) => {
        if (!failed) resolve({ code: 0, out });
        else resolve(typeof failed.code === 'number' ? { code: failed.code, out } : undefined);
      },
    );
  });

export interface FileRevision {
  /** The short name of the last commit that changed the file; absent where it is not in git. */
  readonly short: string | undefined;
  /** Whether the file differs from that commit. */
  readonly isChanged: boolean;
}

const notInGit: FileRevision = { short: undefined, isChanged: false };

/**
 * The revision of a file.
 * Input     the root of the ledger, the path of the file from there
 * Output    the last commit that changed it, and whether it differs from that now
 */
export async function fileRevision(
  root: string,
  file: string,
  git: GitPort = nodeGit,
): Promise<FileRevision> {
  const log = await git(root, ['log', '-1', '--no-show-signature', '--format=%h', '--', file]);
  const short = log?.code === 0 ? /^[0-9a-f]{4,64}$/u.exec(log.out.trim())?.[0] : undefined;
  if (short === undefined) return notInGit;
  const status = await git(root, ['status', '--porcelain', '--untracked-files=all', '--', file]);
  return { short, isChanged: status?.code !== 0 || status.out.trim() !== '' };
}

/** `3f2a1bc`, `3f2a1bc, changed since`, `not in git` */
export const revisionWords = ({ short, isChanged }: FileRevision): string =>
  short === undefined ? 'not in git' : `${short}${isChanged ? ', changed since' : ''}`;
