/** Git where it is asked to do something: its settings of one clone, and merging three files by their lines. */

import { execFile } from 'node:child_process';
import { gitEnvironment, longestWait, mostBytes } from './git.ts';

export interface GitRan {
  /** Undefined where there is no git, or it did not answer. */
  readonly code: number | undefined;
  readonly out: Uint8Array;
  readonly said: string;
}

/** Runs git without a shell. */
export const runGit = (folder: string, words: readonly string[]): Promise<GitRan> =>
  new Promise((resolve) => {
    execFile(
      'git',
      [...words],
      { cwd: folder, timeout: longestWait, maxBuffer: mostBytes, env: gitEnvironment(), encoding: 'buffer' },
      (failed, out, said) => {
        const code = failed ? (typeof failed.code === 'number' ? failed.code : undefined) : 0;
        resolve({ code, out, said: new TextDecoder().decode(said) });
      },
    );
  });

export interface ThreeFiles {
  readonly base: string;
  readonly ours: string;
  readonly theirs: string;
  readonly labels: { readonly ours: string; readonly theirs: string };
  readonly markerSize: number;
}

/** The three files merged line by line, as git does it by itself; undefined where it can't. */
export async function mergedByLines(
  folder: string,
  { base, ours, theirs, labels, markerSize }: ThreeFiles,
): Promise<{ readonly bytes: Uint8Array; readonly isClean: boolean } | undefined> {
  const labelled = [labels.ours, 'base', labels.theirs].flatMap((label) => ['-L', label]);
  const words = [
    'merge-file',
    '-p',
    '-q',
    `--marker-size=${markerSize}`,
    ...labelled,
    '--',
    ours,
    base,
    theirs,
  ];
  const { code, out } = await runGit(folder, words);
  return code === undefined || code > 127 ? undefined : { bytes: out, isClean: code === 0 };
}
