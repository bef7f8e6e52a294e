import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { formulaFile, gitIn, gitLedger } from './git-ledger.ts';
import { found, leafValue, neckring, record, scratchFolder } from './neckring.ts';

const name = 'orange cardamom';

describe('a design at a git revision', () => {
  it('drink, show and scale take the files as they were, ingredients among them', async () => {
    const { folder, change, commit, git } = await gitLedger();
    const before = await found(['drink', name], { folder });
    await git('tag', 'v1');
    await change(formulaFile, 'sucrose: 95 g', 'sucrose: 80 g');
    await change('ingredients.yaml', 'orange oil lot 2231:', 'orange oil lot 2290:');
    await change(formulaFile, 'orange oil lot 2231:', 'orange oil lot 2290:');
    await commit('next lot');
    const then = await found(['drink', `${name}@v1`], { folder });
    expect(leafValue(then['brix'])).toBe(leafValue(before['brix']));
    expect(leafValue((await found(['drink', name], { folder }))['brix'])).toBeLessThan(8.5);
    const page = await neckring(['drink', `${formulaFile}@v1`], { folder });
    expect(page.out).toMatch(/^As it was at v1, commit [0-9a-f]{7} of 2026-03-12\.\n/);
    const scaled = await neckring(['scale', `${name}@v1`, '--to', '5 L drink'], { folder });
    expect(scaled.out).toContain('orange oil lot 2231');
    expect(scaled.out).toContain(`(${(await git('rev-parse', '--short=7', 'v1')).trim()})`);
    const shown = await neckring(['show', '17@HEAD~1'], { folder });
    expect(shown.out).toContain('Trial 17');
  });

  it('says the revision and its commit in JSON', async () => {
    const { folder, git } = await gitLedger();
    const { out } = await neckring(['drink', '17@HEAD', '--json'], { folder });
    const given = record(record(JSON.parse(out))['given']);
    expect(given['revision']).toBe('HEAD');
    expect(given['commit']).toBe((await git('rev-parse', 'HEAD')).trim());
  });

  it('names the file and the revision of what was wrong then', async () => {
    const { folder, change, commit } = await gitLedger();
    await change(formulaFile, 'sucrose: 95 g', 'sucrose: 95 gram of');
    await commit('slip');
    await change(formulaFile, 'sucrose: 95 gram of', 'sucrose: 95 g');
    expect((await neckring(['drink', name], { folder })).code).toBe(0);
    const { code, err } = await neckring(['drink', `${name}@HEAD`], { folder });
    expect(code).toBe(2);
    expect(err).toContain(`${formulaFile}@HEAD:10:`);
  });

  it('refuses revisions that are none, and those that git could take for an option', async () => {
    const { folder } = await gitLedger();
    const told = async (typed: string): Promise<string> => {
      const { code, err } = await neckring(['drink', typed], { folder });
      expect(code).toBe(2);
      return err;
    };
    expect(await told('17@v9')).toContain('there is no revision "v9"');
    expect(await told('17@--output=x')).toContain('can be no revision');
    expect(await told('17@HEAD:bench.yaml')).toContain('can be no revision');
    expect(await told('17@')).toContain('names no revision');
    expect(await told('17@HEAD~9')).toContain('there is no revision "HEAD~9"');
    expect(await told('99@HEAD')).toContain('there is no trial 99 (at HEAD)');
  });

  it('takes detached heads as they are, and says of a shallow clone that it is one', async () => {
    const { folder, git, change, commit } = await gitLedger();
    await change(formulaFile, '12 %', '11 %');
    await commit('less');
    await git('checkout', '-q', '--detach', 'HEAD~1');
    expect((await neckring(['drink', `${name}@HEAD`], { folder })).code).toBe(0);
    const shallow = join(await scratchFolder(), 'shallow');
    await git(
      'clone',
      '-q',
      '--depth',
      '1',
      '--branch',
      'main',
      `file://${encodeURI(folder)}`,
      shallow,
    ).catch(() => git('clone', '-q', '--depth', '1', '--branch', 'main', `file://${folder}`, shallow));
    expect((await neckring(['drink', `${name}@HEAD`], { folder: shallow })).code).toBe(0);
    const { err } = await neckring(['drink', `${name}@HEAD~1`], { folder: shallow });
    expect(err).toContain('shallow');
    expect((await gitIn(shallow).git('rev-list', '--count', 'HEAD')).trim()).toBe('1');
  });

  it('takes an @ with a space beside it for part of a name', async () => {
    const { folder, change } = await gitLedger();
    await change(formulaFile, 'formula: orange cardamom', 'formula: orange @ home');
    expect((await neckring(['drink', 'orange @ home'], { folder })).code).toBe(0);
  });

  it('runs nothing that the repository asks for', async () => {
    const { folder, git, write } = await gitLedger();
    const witness = join(folder, 'witness');
    await write('.gitattributes', '*.yaml diff=evil filter=evil\n');
    for (const [key, value] of [
      ['diff.evil.textconv', `touch '${witness}';cat`],
      ['diff.evil.command', `touch '${witness}'`],
      ['filter.evil.smudge', `touch '${witness}';cat`],
      ['core.fsmonitor', `touch '${witness}'`],
      ['core.pager', `touch '${witness}'`],
      ['log.showSignature', 'true'],
      ['gpg.program', `touch '${witness}'`],
    ] as const)
      await git('config', key, value);
    await neckring(['drink', '17@HEAD'], { folder });
    await neckring(['compare', '17'], { folder });
    await neckring(['history', '17', '--show', 'ph'], { folder });
    const { code } = await neckring(['show', 'witness'], { folder });
    expect(code).toBe(2);
    const { existsSync } = await import('node:fs');
    expect(existsSync(witness)).toBe(false);
  });
});
