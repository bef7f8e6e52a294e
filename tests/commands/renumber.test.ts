import { readdir } from 'node:fs/promises';
import { describe, expect, it } from 'vitest';
import { bundledNeckring } from './bundled.ts';
import { exampleLedger, found, leafValue, neckring, readIn } from './neckring.ts';
import { ledgerOf } from './small-ledger.ts';
import { bothWork, done, tried, twoBranches } from './two-branches.ts';

const program = bundledNeckring();

const page = (number: number, more = ''): string =>
  `trial: ${number}\n${more}stages:\n  emulsion:\n    - sweet orange oil: 2 g\n    - water: to 50 g\n`;

const user = (number: number, from: string): string =>
  `trial: ${number}\nfrom: ${from}   # as it says\nstages:\n  drink:\n    - "emulsion of ${from}": 2 g\n    - water: to 1 L\n`;

const trialNames = async (folder: string): Promise<readonly string[]> =>
  (await readdir(`${folder}/trials`)).sort();

describe('renumber', () => {
  it('changes the file, its name and every reference, and not another byte', async () => {
    const files = {
      'trials/0021-a.yaml': `# page\n${page(21, 'title: the first   # of many\n')}`,
      'trials/0022-b.yaml': user(22, '21'),
      'trials/0023-c.yaml': `${page(23)}observations:\n  - at: 2026-03-03T09:00Z\n    against: 21\n    note: like trial 21\n`,
      'series/s.yaml': "series: s\ncontrol: '21'\nblank: 22\n",
      'formulas/f.yaml':
        'formula: f\nfrom: 21\nstages:\n  drink:\n    - emulsion of trial 21: 1 g\n    - water: to 1 L\n',
      'batches/b.yaml': 'batch: b\ntrial: 21\n',
    };
    const folder = await ledgerOf(files);
    const { code, out, err } = await neckring(['renumber', '21', '--to', '31'], { folder });
    expect({ code, err: err.trim() }).toEqual({
      code: 0,
      err: 'trial 21 is now trial 31, in trials/0031-a.yaml',
    });
    expect(await trialNames(folder)).toEqual(['0022-b.yaml', '0023-c.yaml', '0031-a.yaml']);
    for (const [file, text] of Object.entries(files)) {
      const moved = file.replace('0021', '0031');
      const wanted = text.replace(/(trial: |from: |of |control: '|trial |against: )21/gu, '$131');
      expect(await readIn(folder, moved)).toBe(
        file.includes('0023') ? wanted.replace('like trial 31', 'like trial 21') : wanted,
      );
    }
    expect(out).toContain('trials/0022-b.yaml:2  from: 21');
    expect(out).toContain('trials/0022-b.yaml:5  emulsion of 21');
    expect(out).toMatch(
      /Mentioned in words, left as it is\n\s+trials\/0023-c\.yaml:\d+ {2}note: like trial 21/u,
    );
    expect((await neckring(['check'], { folder })).out).not.toContain('there is no trial');
  });

  it('writes nothing with --dry-run, and takes the next free number by itself', async () => {
    const folder = await exampleLedger();
    const told = await found(['renumber', '13', '--dry-run'], { folder });
    expect(leafValue(told['number'])).toBe(18);
    expect(told['file']).toBe('trials/0018-orange-1-to-3.yaml');
    expect(await trialNames(folder)).toContain('0013-orange-1-to-3.yaml');
  });

  it('leaves no answer stale that was not', async () => {
    const folder = await exampleLedger();
    await done(folder, 'reckon', '17');
    const before = (await neckring(['check'], { folder, now: '2026-03-20T12:00:00Z' })).out;
    await done(folder, 'renumber', '13', '--to', '24');
    const after = (await neckring(['check'], { folder, now: '2026-03-20T12:00:00Z' })).out;
    expect(after.split('\n').at(-2)).toBe(before.split('\n').at(-2));
  });

  it('refuses a number that is taken, no number, and a trial that is not there', async () => {
    const folder = await ledgerOf({ 'trials/0001-a.yaml': page(1), 'trials/0002-b.yaml': page(2) });
    const says = async (...words: readonly string[]): Promise<string> => {
      const { code, err } = await neckring(['renumber', ...words], { folder });
      expect(code).toBe(2);
      return err;
    };
    expect(await says('1', '--to', '2')).toContain('there is a trial 2 already; the next free number is 3');
    expect(await says('1', '--to', '1')).toContain('it is trial 1 already');
    expect(await says('1', '--to', 'x')).toContain('"x" is no number of a trial');
    expect(await says('9')).toContain('there is no trial 9');
    expect(await says('../elsewhere.yaml')).toContain('outside the ledger');
  });
});

describe('two trials of one number', () => {
  const twins = {
    'trials/0021-mine.yaml': page(21),
    'trials/0021-yours.yaml': page(21).replace('emulsion', 'oil phase'),
    'trials/0022-b.yaml': user(22, '21'),
    'series/s.yaml': 'series: s\ncontrol: 21\n',
  };

  it('are shown at both places, with what to type', async () => {
    const folder = await ledgerOf(twins);
    const { code, out } = await neckring(['check'], { folder });
    expect(code).toBe(1);
    expect(out).toContain('trials/0021-mine.yaml:1:8: trial 21 is trials/0021-yours.yaml too');
    expect(out).toContain('trials/0021-yours.yaml:1:8: trial 21 is trials/0021-mine.yaml too');
    expect(out).toContain('neckring renumber trials/0021-yours.yaml --to 23');
    expect((await neckring(['renumber', '21'], { folder })).err).toContain(
      'trial 21 is trials/0021-mine.yaml and trials/0021-yours.yaml; name the file',
    );
  });

  it('a reference that could mean either is asked about, or settled by the command line', async () => {
    const folder = await ledgerOf(twins);
    const moving = 'trials/0021-mine.yaml';
    const refused = await neckring(['renumber', moving, '--to', '24'], { folder });
    expect(refused).toMatchObject({ code: 2 });
    expect(refused.err).toMatch(/it can't be told whether \S+ (?:from|control): 21 means/u);
    expect(await readIn(folder, moving)).toBe(page(21));
    const asked = await neckring(['renumber', moving, '--to', '24', '--dry-run'], {
      folder,
      answers: ['y', 'n'],
    });
    expect(asked.code).toBe(0);
    expect(asked.out).toMatch(/Means the other one, and stays\n\s+series\/s\.yaml:2/u);
    expect(
      (
        await neckring(['renumber', moving, '--to', '24', '--with', 'trials/0022-b.yaml', '--leave', 'all'], {
          folder,
        })
      ).code,
    ).toBe(0);
    expect(await readIn(folder, 'trials/0022-b.yaml')).toBe(user(22, '24'));
    expect(await readIn(folder, 'series/s.yaml')).toBe('series: s\ncontrol: 21\n');
    expect((await neckring(['check'], { folder })).out).not.toContain('too; give');
  });

  it('after a merge, the branches tell which one was meant', async () => {
    const ledger = await twoBranches(program());
    const { folder } = ledger;
    await bothWork(
      ledger,
      async () => {
        await ledger.write('trials/0021-mine.yaml', page(21));
        await ledger.write('trials/0022-drink.yaml', user(22, '21'));
      },
      async () => {
        await ledger.write('trials/0021-yours.yaml', page(21));
        await ledger.write('trials/0023-drink.yaml', user(23, '21'));
        await ledger.change('series/orange-ladder.yaml', 'varies:', 'control: 21\nvaries:');
      },
    );
    expect((await tried(ledger, 'merge', '-q', 'cassis')).code).toBe(0);
    await done(folder, 'renumber', 'trials/0021-yours.yaml', '--to', '24');
    expect(await ledger.read('trials/0022-drink.yaml')).toBe(user(22, '21'));
    expect(await ledger.read('trials/0023-drink.yaml')).toBe(user(23, '24'));
    expect(await ledger.read('series/orange-ladder.yaml')).toContain('control: 24\n');
    expect((await ledger.git('status', '--porcelain', '-uall')).split('\n').sort()).toEqual([
      '',
      ' D trials/0021-yours.yaml',
      ' M series/orange-ladder.yaml',
      ' M trials/0023-drink.yaml',
      '?? trials/0024-yours.yaml',
    ]);
  });
});
