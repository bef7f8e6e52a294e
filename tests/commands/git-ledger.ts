/** A small ledger in a git repository of its own, apart from the settings of this machine. */

import { execFile } from 'node:child_process';
import { cp, mkdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { scratchFolder } from './neckring.ts';

const start = promisify(execFile);

export interface GitLedger {
  /** The root of the ledger. */
  readonly folder: string;
  readonly git: (...words: readonly string[]) => Promise<string>;
  readonly commit: (message: string, author?: string) => Promise<string>;
  /** Replaces a text in a file; the text must be there. */
  readonly change: (file: string, from: string, to: string) => Promise<void>;
  readonly read: (file: string) => Promise<string>;
  readonly write: (file: string, text: string) => Promise<void>;
}

const settings = ['-c', 'user.name=Ada', '-c', 'user.email=ada@bench.invalid', '-c', 'commit.gpgsign=false'];

export const ledgerFolder = new URL('../fixtures/git-ledger', import.meta.url);

export const formulaFile = 'formulas/orange-cardamom.yaml';

/** Committed once. `below` puts the ledger into a folder of the repository. */
export async function gitLedger({ below = '' } = {}): Promise<GitLedger> {
  const top = join(await scratchFolder(), 'bücher und trials');
  const folder = join(top, below);
  await mkdir(folder, { recursive: true });
  await cp(ledgerFolder, folder, { recursive: true });
  const ledger = gitIn(folder);
  await start('git', ['init', '-q', '-b', 'main', top], { env: environment() });
  await ledger.commit('begin');
  return ledger;
}

const environment = (): NodeJS.ProcessEnv => ({
  ...process.env,
  GIT_CONFIG_GLOBAL: '/dev/null',
  GIT_CONFIG_SYSTEM: '/dev/null',
  GIT_AUTHOR_DATE: '2026-03-12T10:00:00+00:00',
  GIT_COMMITTER_DATE: '2026-03-12T10:00:00+00:00',
});

export function gitIn(folder: string): GitLedger {
  const git = async (...words: readonly string[]): Promise<string> =>
    (await start('git', [...settings, ...words], { cwd: folder, env: environment() })).stdout;
  const read = (file: string): Promise<string> => readFile(join(folder, file), 'utf8');
  const write = (file: string, text: string): Promise<void> => writeFile(join(folder, file), text);
  return {
    folder,
    git,
    read,
    write,
    commit: async (message, author = 'Ada') => {
      await git('add', '-A');
      await git('commit', '-q', '-m', message, `--author=${author} <${author}@bench.invalid>`);
      return (await git('rev-parse', 'HEAD')).trim();
    },
    change: async (file, from, to) => {
      const text = await read(file);
      if (!text.includes(from)) throw new Error(`"${from}" is not in ${file}`);
      await write(file, text.replace(from, to));
    },
  };
}
