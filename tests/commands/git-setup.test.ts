import { readFile, stat } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { attributeLines, quoted, withAttributes, withoutAttributes } from '../../src/ledger/git-drivers.ts';
import { bundledNeckring } from './bundled.ts';
import { type GitLedger, gitIn } from './git-ledger.ts';
import { neckring, record, rows } from './neckring.ts';
import { ledgerOf } from './small-ledger.ts';
import { bothWork, done, exampleInGit, gitSetup, tried, twoBranches } from './two-branches.ts';

const program = bundledNeckring();
const formula = 'formulas/orange-cardamom.yaml';
const trial14 = 'trials/0014-orange-1-to-2.5.yaml';

const settingsIn = (ledger: GitLedger, top = ledger.folder): Promise<string> =>
  readFile(join(top, '.git/config'), 'utf8');

describe('git setup and git remove', () => {
  it('name every key and file, and remove leaves all as it was, byte by byte', async () => {
    const ledger = await exampleInGit();
    const before = await settingsIn(ledger);
    await ledger.write('.gitattributes', '*.jpg binary');
    const setup = await gitSetup(ledger.folder, program());
    expect(setup.code).toBe(0);
    for (const key of [
      'merge.neckring.driver',
      'merge.neckring.name',
      'diff.neckring.command',
      'diff.neckring.textconv',
    ])
      expect(setup.out).toContain(`${key}`);
    expect(setup.out).toContain('.gitattributes');
    expect(await ledger.read('.gitattributes')).toMatch(
      /^\*\.jpg binary\n#.*\n\/bench\.yaml diff=neckring merge=neckring\n/u,
    );
    expect(await settingsIn(ledger)).not.toBe(before);
    const remove = await gitSetup(ledger.folder, program(), 'remove');
    expect(remove.code).toBe(0);
    expect(await settingsIn(ledger)).toBe(before);
    expect(await ledger.read('.gitattributes')).toBe('*.jpg binary');
  });

  it('may be typed again, and takes away a file that it made', async () => {
    const ledger = await exampleInGit();
    const before = await settingsIn(ledger);
    await gitSetup(ledger.folder, program());
    const [once, lines] = [await settingsIn(ledger), await ledger.read('.gitattributes')];
    const again = await neckring(['git', 'setup', '--json'], { folder: ledger.folder, program: program() });
    expect(await settingsIn(ledger)).toBe(once);
    expect(await ledger.read('.gitattributes')).toBe(lines);
    expect(rows(record(record(JSON.parse(again.out))['found'])['touched']).map(({ state }) => state)).toEqual(
      Array(5).fill('as it was'),
    );
    await gitSetup(ledger.folder, program(), 'remove');
    await gitSetup(ledger.folder, program(), 'remove');
    expect(await settingsIn(ledger)).toBe(before);
    await expect(stat(join(ledger.folder, '.gitattributes'))).rejects.toThrow();
    expect(await ledger.git('status', '--porcelain')).toBe('');
  });

  it('writes nothing with --dry-run', async () => {
    const ledger = await exampleInGit();
    const before = await settingsIn(ledger);
    const { code, out } = await neckring(['git', 'setup', '--dry-run'], {
      folder: ledger.folder,
      program: program(),
    });
    expect({ code, out }).toMatchObject({ code: 0, out: expect.stringContaining('merge.neckring.driver') });
    expect(await settingsIn(ledger)).toBe(before);
    expect(await ledger.git('status', '--porcelain')).toBe('');
  });

  it('says that there is no repository, and no such action', async () => {
    const folder = await ledgerOf({});
    expect(await neckring(['git', 'setup'], { folder, program: program() })).toMatchObject({
      code: 2,
      err: expect.stringContaining('is not in a git repository'),
    });
    expect(await neckring(['git', 'merge'], { folder, program: program() })).toMatchObject({
      code: 2,
      err: expect.stringContaining('type git setup or git remove'),
    });
  });

  it('a work tree beside the first shares the settings; the lines lie beside the ledger', async () => {
    const ledger = await exampleInGit({ below: 'the bench' });
    const top = dirname(ledger.folder);
    await ledger.git('worktree', 'add', '-q', '-b', 'third', `${dirname(top)}/beside`);
    const beside = gitIn(`${dirname(top)}/beside/the bench`);
    await gitSetup(beside.folder, program());
    expect(await ledger.git('config', '--local', 'merge.neckring.driver')).toContain('merge-driver');
    expect(await beside.read('.gitattributes')).toContain('/trials/*.yaml');
    expect(await beside.git('check-attr', 'merge', '--', formula, 'README.md')).toBe(
      `${formula}: merge: neckring\nREADME.md: merge: unspecified\n`,
    );
  });
});

describe('git diff and git log on a ledger that is set up', () => {
  it('git diff shows what compare says', async () => {
    const ledger = await twoBranches(program(), 'the bench');
    await ledger.change(formula, 'sucrose: 95 g', 'sucrose: 90 g');
    const shown = (await ledger.git('diff')).replace(/^.*\n/u, '');
    const compared = await neckring(['compare', 'orange cardamom@HEAD', 'orange cardamom'], {
      folder: ledger.folder,
    });
    const lines = (text: string): readonly string[] =>
      text.split('\n').filter((line) => /sucrose|brix/iu.test(line));
    expect(lines(shown).length).toBeGreaterThan(0);
    expect(lines(shown)).toEqual(lines(compared.out));
  });

  it('git diff shows files that are new, gone, or no records', async () => {
    const ledger = await twoBranches(program());
    await ledger.write('trials/0030-new.yaml', 'trial: 30\nstages:\n  drink:\n    - water: 1 L\n');
    await ledger.git('add', '-N', 'trials/0030-new.yaml');
    await ledger.git('rm', '-q', '--cached', trial14);
    await ledger.change('bench.yaml', 'weighing: 1 %', 'weighing: 2 %');
    const shown = await ledger.git('diff', 'HEAD');
    expect(shown).toContain('trials/0030-new.yaml (new)');
    expect(shown).toMatch(/weighing\D+1 %.*2 %/u);
  });

  it('git log -p reads as a notebook', async () => {
    const ledger = await twoBranches(program());
    await ledger.change(formula, 'sucrose: 95 g', 'sucrose: 90 g');
    await ledger.commit('less sweet');
    const log = await ledger.git('log', '-p', '-1', '--', formula);
    expect(log).toMatch(/^-.*sucrose.*95 g/mu);
    expect(log).toMatch(/^\+.*sucrose.*90 g/mu);
    expect(log).toMatch(/^\+.*brix/imu);
  });

  it('both show the plain lines where neckring is gone', async () => {
    const ledger = await twoBranches([process.execPath, '/nowhere/neckring.js']);
    await ledger.change(formula, 'sucrose: 95 g', 'sucrose: 90 g');
    expect(await ledger.git('diff')).toMatch(/^-.*sucrose: 95 g\n\+.*sucrose: 90 g$/mu);
    await ledger.commit('less sweet');
    expect(await ledger.git('log', '-p', '-1')).toMatch(/^-.*sucrose: 95 g\n\+.*sucrose: 90 g$/mu);
  });

  it('after git remove two looks at one beaker are a conflict again', async () => {
    const ledger = await twoBranches(program());
    await gitSetup(ledger.folder, program(), 'remove');
    await ledger.commit('without');
    await ledger.git('branch', '-f', 'cassis');
    await bothWork(
      ledger,
      async () =>
        void (await done(ledger.folder, 'observe', '14', '--look', 'ring', '--at', '2026-03-16T09:00')),
      async () =>
        void (await done(ledger.folder, 'observe', '14', '--look', 'hazy', '--at', '2026-03-14T09:00')),
    );
    expect(await tried(ledger, 'merge', 'cassis')).toMatchObject({
      code: 1,
      text: expect.stringContaining('CONFLICT'),
    });
  });
});

describe('the lines of .gitattributes', () => {
  it('are added to any text and taken out of it without another byte moving', () => {
    for (const text of ['', '*.jpg binary\n', '*.jpg binary', 'a\r\nb\r\n', 'a\r\nb', '\n']) {
      const added = withAttributes(text);
      expect(added.startsWith(text)).toBe(true);
      expect(withAttributes(added)).toBe(added);
      expect(withoutAttributes(added)).toBe(text);
      expect(withoutAttributes(`${added}*.png binary\n`)).toContain('*.png binary\n');
    }
    expect(withoutAttributes(`${withAttributes('a')}b\n`)).toBe('a\nb\n');
  });

  it('only what is missing is added', () => {
    const [first = '', ...rest] = attributeLines;
    const added = withAttributes(`${first}\n`);
    expect(added.split('\n').filter((line) => line === first)).toHaveLength(1);
    for (const line of rest) expect(added).toContain(`${line}\n`);
  });
});

describe('a word for the shell', () => {
  it('is one word, letter by letter', () => {
    expect(quoted('ada\'s $HOME `x` "y" \\')).toBe(`'ada'\\''s $HOME \`x\` "y" \\'`);
  });
});
