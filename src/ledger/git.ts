/** Git, only read: started without a shell, without the repository's own programs, without a network. */

import { execFile } from 'node:child_process';
import { fail } from '../problem.ts';
import { errorCode } from './disk.ts';

/** Runs git in a folder; undefined where there is no git, or it did not answer. */
export type GitPort = (
  folder: string,
  words: readonly string[],
) => Promise<{ readonly code: number; readonly out: string } | undefined>;

/** Nothing of the repository's own settings is run: no hooks, no watcher, no pager, no signatures. */
export const quietWords = ['-c', 'core.fsmonitor=false', '-c', 'core.hooksPath=', '--no-pager'] as const;
export const longestWait = 10_000;
export const mostBytes = 64 * 1024 * 1024;

/** In plain English, asks nobody, takes no lock, and fetches nothing that a partial clone left out. */
export const gitEnvironment = (): NodeJS.ProcessEnv => ({
  ...process.env,
  GIT_OPTIONAL_LOCKS: '0',
  GIT_TERMINAL_PROMPT: '0',
  GIT_NO_LAZY_FETCH: '1',
  GIT_ALLOW_PROTOCOL: 'none',
  LC_ALL: 'C',
});

export const nodeGit: GitPort = (folder, words) =>
  new Promise((resolve) => {
    execFile(
      'git',
      [...quietWords, '--literal-pathspecs', ...words],
      { cwd: folder, timeout: longestWait, maxBuffer: mostBytes, env: gitEnvironment() },
      (failed, out) => {
        if (!failed) resolve({ code: 0, out });
        else resolve(typeof failed.code === 'number' ? { code: failed.code, out } : undefined);
      },
    );
  });

/** Refuses with what git said, in our words. */
export function gitRefused(folder: string, said: string, thrown?: unknown): never {
  if (errorCode(thrown) === 'ENOENT')
    return fail('no-git', 'git is not installed, or not on the path', 'install git, then type it again');
  if (/not a git repository/iu.test(said))
    return fail(
      'not-in-git',
      `the ledger in ${folder} is not in a git repository`,
      'git init in the ledger begins one; without it only what stands in the files can be compared',
    );
  if (/dubious ownership/iu.test(said))
    return fail(
      'not-yours',
      `git does not trust the repository around ${folder}: its folder belongs to somebody else`,
      'git config --global --add safe.directory FOLDER says that you trust it',
    );
  const [first = 'git did not answer'] = said.split('\n').filter((line) => line.trim() !== '');
  return fail('git-failed', `git: ${first.replace(/^fatal:\s*/u, '')}`, 'see what git status says here');
}

/** Whether only the newest commits are there. */
export const isShallow = async (folder: string, git: GitPort = nodeGit): Promise<boolean> =>
  (await git(folder, ['rev-parse', '--is-shallow-repository']))?.out.trim() === 'true';

/** Whether there is any commit. */
export const hasCommits = async (folder: string, git: GitPort = nodeGit): Promise<boolean> =>
  (await git(folder, ['rev-parse', '--verify', '--quiet', 'HEAD^{commit}']))?.code === 0;
