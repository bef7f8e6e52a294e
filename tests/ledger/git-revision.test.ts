import { execFile } from 'node:child_process';
import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { describe, expect, it } from 'vitest';
import { fileRevision, type GitPort, revisionWords } from '../../src/ledger/git-revision.ts';
import { scratchFolder } from '../commands/neckring.ts';

const file = 'formulas/orange $(touch hacked); *.yaml';

async function repository(): Promise<{ root: string; git: (...words: string[]) => Promise<string> }> {
  const root = await scratchFolder();
  await mkdir(join(root, 'formulas'));
  await writeFile(join(root, file), 'formula: a\n');
  const who = ['-c', 'user.name=A Person', '-c', 'user.email=person@example.org'];
  const git = async (...words: string[]): Promise<string> =>
    (await promisify(execFile)('git', [...who, ...words], { cwd: root })).stdout.trim();
  await git('init', '-q');
  return { root, git };
}

describe('fileRevision', () => {
  it('is the last commit that changed the file, as git itself abbreviates it', async () => {
    const { root, git } = await repository();
    await git('add', '.');
    await git('commit', '-q', '-m', 'one');
    const short = await git('rev-parse', '--short', 'HEAD');
    await writeFile(join(root, 'other.txt'), 'other\n');
    await git('add', '.');
    await git('commit', '-q', '-m', 'two');
    expect(await fileRevision(root, file)).toEqual({ short, isChanged: false });
    await writeFile(join(root, file), 'formula: b\n');
    const changed = await fileRevision(root, file);
    expect([changed, revisionWords(changed)]).toEqual([
      { short, isChanged: true },
      `${short}, changed since`,
    ]);
  });

  it('is none for a file that was never committed, and outside of git', async () => {
    const { root } = await repository();
    expect(revisionWords(await fileRevision(root, file))).toBe('not in git');
    expect(revisionWords(await fileRevision(await scratchFolder(), file))).toBe('not in git');
  });

  it('is none where there is no git, or where it answers nonsense', async () => {
    const gone: GitPort = async () => undefined;
    const nonsense: GitPort = async () => ({ code: 0, out: '<b>not a commit</b>' });
    expect(await fileRevision('/', file, gone)).toEqual({ short: undefined, isChanged: false });
    expect(await fileRevision('/', file, nonsense)).toEqual({ short: undefined, isChanged: false });
  });
});
