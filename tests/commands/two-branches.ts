/** The example ledger in a repository with git set up for it, and two people at two branches of it. */

import { cp, mkdir } from 'node:fs/promises';
import { join } from 'node:path';
import { expect } from 'vitest';
import { type GitLedger, gitIn } from './git-ledger.ts';
import { neckring, type Ran, scratchFolder } from './neckring.ts';

export type Program = readonly [node: string, script: string];

const example = new URL('../../examples/orange-cardamom', import.meta.url);

/** The example, committed once on `main`. `below` puts it into a folder of the repository. */
export async function exampleInGit({ below = '' } = {}): Promise<GitLedger> {
  const top = join(await scratchFolder(), 'bücher und trials');
  const folder = join(top, below);
  await mkdir(folder, { recursive: true });
  await cp(example, folder, { recursive: true });
  await gitIn(top).git('init', '-q', '-b', 'main', '.');
  const ledger = gitIn(folder);
  await ledger.commit('begin');
  return ledger;
}

export const gitSetup = (folder: string, program: Program, action = 'setup'): Promise<Ran> =>
  neckring(['git', action], { folder, program });

/** With git set up, and a branch `cassis` that begins where `main` stands. */
export async function twoBranches(program: Program, below = ''): Promise<GitLedger> {
  const ledger = await exampleInGit({ below });
  expect((await gitSetup(ledger.folder, program)).code).toBe(0);
  await ledger.commit('git');
  await ledger.git('branch', 'cassis');
  return ledger;
}

/** What each does on a branch of their own; `main` is left checked out. */
export async function bothWork(
  ledger: GitLedger,
  onMain: () => Promise<void>,
  onCassis: () => Promise<void>,
): Promise<void> {
  await onMain();
  await ledger.commit('on main', 'Ada');
  await ledger.git('checkout', '-q', 'cassis');
  await onCassis();
  await ledger.commit('on cassis', 'Bo');
  await ledger.git('checkout', '-q', 'main');
}

export interface Tried {
  readonly code: number;
  readonly text: string;
}

/** Git where it may well stop. */
export async function tried(ledger: GitLedger, ...words: readonly string[]): Promise<Tried> {
  try {
    return { code: 0, text: await ledger.git(...words) };
  } catch (thrown) {
    if (!(thrown instanceof Error) || !('stderr' in thrown) || !('stdout' in thrown)) throw thrown;
    return { code: 'code' in thrown ? Number(thrown.code) : -1, text: `${thrown.stdout}${thrown.stderr}` };
  }
}

/** A command on the ledger that must do what it was told. */
export async function done(folder: string, ...words: readonly string[]): Promise<string> {
  const { code, out, err } = await neckring(words, { folder, now: '2026-03-20T12:00:00Z' });
  if (code !== 0) throw new Error(`${words.join(' ')}: ${err}${out}`);
  return out;
}
