import { mkdir } from 'node:fs/promises';
import { dirname } from 'node:path';
import { describe, expect, it } from 'vitest';
import { bundledNeckring } from './bundled.ts';
import type { GitLedger } from './git-ledger.ts';
import { neckring } from './neckring.ts';
import { bothWork, done, tried, twoBranches } from './two-branches.ts';

const program = bundledNeckring();

const trial14 = 'trials/0014-orange-1-to-2.5.yaml';
const trial13 = 'trials/0013-orange-1-to-3.yaml';
const formula = 'formulas/orange-cardamom.yaml';

/** Both write down looks with the commands, and edit one page by hand, comments and all. */
const work = (ledger: GitLedger) =>
  bothWork(
    ledger,
    async () => {
      const { folder } = ledger;
      await done(folder, 'observe', '14', '--look', 'ring', '--at', '2026-03-16T09:00', '--note', 'faint');
      await done(folder, 'look', '13', 'clear', '--at', '2026-03-16T09:01');
      await ledger.change(trial14, '- polysorbate 80: 6 g', '# opened today\n      - polysorbate 80: 6.1 g');
      await ledger.change(formula, 'sucrose: 95 g', 'sucrose: 92 g');
    },
    async () => {
      const { folder } = ledger;
      await done(folder, 'observe', '14', '--look', 'hazy', '--at', '2026-03-14T09:00');
      await done(folder, 'look', '13', 'bluish', '--at', '2026-03-14T09:01');
      await ledger.change(trial14, 'propylene glycol: 6 g', 'propylene glycol: 6 g   # the last of it');
      await ledger.change(formula, 'cassis stock: 12 drops', 'cassis stock: 10 drops');
    },
  );

async function expectBoth(ledger: GitLedger): Promise<void> {
  const page = await ledger.read(trial14);
  expect(page).toContain('      # opened today\n      - polysorbate 80: 6.1 g\n');
  expect(page).toContain('propylene glycol: 6 g   # the last of it\n');
  expect(page.slice(page.indexOf('only against the black card'))).toBe(
    'only against the black card\n  - at: 2026-03-14T09:00+00:00\n    look: hazy\n' +
      '  - at: 2026-03-16T09:00+00:00\n    look: ring\n    note: faint\n',
  );
  expect(await ledger.read(trial13)).toContain(
    '  - at: 2026-03-14T09:01+00:00\n    look: bluish\n  - at: 2026-03-16T09:01+00:00\n    look: clear\n',
  );
  expect(await ledger.read(formula)).toMatch(/sucrose: 92 g\n[\s\S]*cassis stock: 10 drops\n/u);
  expect(await ledger.git('status', '--porcelain')).toBe('');
  expect(await neckring(['check'], { folder: ledger.folder, now: '2026-03-20T12:00:00Z' })).toMatchObject({
    code: 0,
  });
}

describe('two people at one ledger', () => {
  it('git merge keeps the looks, edits and comments of both', async () => {
    const ledger = await twoBranches(program());
    await work(ledger);
    expect(await tried(ledger, 'merge', '-q', 'cassis')).toEqual({
      code: 0,
      text: expect.not.stringContaining('settle'),
    });
    await expectBoth(ledger);
  });

  it('so does a rebase, with the ledger in a folder of the repository', async () => {
    const ledger = await twoBranches(program(), 'the bench/ledger');
    await work(ledger);
    await ledger.git('checkout', '-q', 'cassis');
    expect(await tried(ledger, 'rebase', '-q', 'main')).toMatchObject({ code: 0 });
    await expectBoth(ledger);
  });

  it('so does a cherry-pick, in a work tree beside the first', async () => {
    const ledger = await twoBranches(program());
    await work(ledger);
    const beside = `${dirname(ledger.folder)}/beside`;
    await ledger.git('worktree', 'add', '-q', '-b', 'third', beside, 'main');
    const third = { ...ledger, ...(await import('./git-ledger.ts')).gitIn(beside) };
    expect(await tried(third, 'cherry-pick', 'cassis')).toMatchObject({ code: 0 });
    await expectBoth(third);
  });

  it('what both changed is left in the file, under the names that git gives, and nothing else is', async () => {
    const ledger = await twoBranches(program());
    await bothWork(
      ledger,
      async () => {
        await ledger.change(trial14, 'polysorbate 80: 6 g', 'polysorbate 80: 6.1 g');
        await ledger.change(trial14, 'cover: film', 'cover: foil');
      },
      async () => {
        await ledger.change(trial14, 'polysorbate 80: 6 g', 'polysorbate 80: 6.2 g');
        await ledger.change(trial14, '100 mL glass beaker', '150 mL glass beaker');
      },
    );
    const { code, text } = await tried(ledger, 'merge', 'cassis');
    expect(code).toBe(1);
    expect(text).toContain(`${trial14}: one place to settle by hand`);
    const page = await ledger.read(trial14);
    expect(page).toMatch(
      /<<<<<<< \S+\n {6}- polysorbate 80: 6\.1 g\n=======\n {6}- polysorbate 80: 6\.2 g\n>>>>>>> \S+\n/u,
    );
    expect(page).toContain('in: 150 mL glass beaker\n    cover: foil\n');
    expect((await neckring(['check'], { folder: ledger.folder })).out).toContain(
      'a git conflict was left unsettled',
    );
    const plan = await neckring(['merge-driver', '--plan', trial14], { folder: ledger.folder });
    expect(plan).toMatchObject({ code: 1 });
    expect(plan.out).toContain('emulsion, polysorbate 80: changed on both sides');
  });

  it('a total that holds on each side and not together is left to a person', async () => {
    const ledger = await twoBranches(program());
    await bothWork(
      ledger,
      () => ledger.change(formula, 'polysorbate 80: 12 %', 'polysorbate 80: 52 %'),
      () => ledger.change(formula, 'propylene glycol: 12 %', 'propylene glycol: 52 %'),
    );
    const { code, text } = await tried(ledger, 'merge', 'cassis');
    expect(code).toBe(1);
    expect(text).toMatch(/emulsion: does not fit together/u);
    expect(await ledger.read(formula)).toMatch(
      /<<<<<<< \S+\n {6}- polysorbate 80: 52 %\n {6}- propylene glycol: 12 %\n=======\n {6}- polysorbate 80: 12 %\n {6}- propylene glycol: 52 %\n>>>>>>>/u,
    );
  });

  it('a plan of a merge to come says what it would do and does nothing', async () => {
    const ledger = await twoBranches(program());
    await work(ledger);
    const { code, out } = await neckring(['merge-driver', '--plan', trial14, '--with', 'cassis'], {
      folder: ledger.folder,
    });
    expect(code).toBe(0);
    expect(out).toContain('+ observations, 2026-03-14T09:00+00:00: look: hazy');
    expect(out).toContain('~ emulsion, polysorbate 80: 6 g -> 6.1 g');
    expect(await ledger.git('status', '--porcelain')).toBe('');
  });

  it('a page that can not be read is merged by its lines', async () => {
    const ledger = await twoBranches(program());
    await bothWork(
      ledger,
      () => ledger.change(trial14, 'trial: 14', 'trial: [14'),
      () => ledger.change(trial14, 'only against', 'seen only against'),
    );
    const { code, text } = await tried(ledger, 'merge', 'cassis');
    expect(code).toBe(0);
    expect(text).not.toContain('CONFLICT');
    const page = await ledger.read(trial14);
    expect(page).toContain('trial: [14\n');
    expect(page).toContain('seen only against');
  });

  it('where neckring is gone, git merges by lines and leaves its marks', async () => {
    const ledger = await twoBranches([process.execPath, '/nowhere/neckring.js']);
    await bothWork(
      ledger,
      () => ledger.change(trial14, 'polysorbate 80: 6 g', 'polysorbate 80: 6.1 g'),
      () => ledger.change(trial14, 'polysorbate 80: 6 g', 'polysorbate 80: 6.2 g'),
    );
    expect((await tried(ledger, 'merge', 'cassis')).code).toBe(1);
    expect(await ledger.read(trial14)).toMatch(/<<<<<<< ours\n[\s\S]*=======\n[\s\S]*>>>>>>> theirs\n/u);
  });

  it('129 where the driver itself fails, and its file is as git gave it', async () => {
    const ledger = await twoBranches(program());
    const { code, err } = await neckring(['merge-driver', 'bench.yaml', 'nothing.yaml', 'bench.yaml'], {
      folder: ledger.folder,
    });
    expect({ code, err }).toMatchObject({
      code: 129,
      err: expect.stringContaining('there is no file nothing.yaml'),
    });
  });

  it('every kind of file, with the bench itself', async () => {
    const ledger = await twoBranches(program());
    await bothWork(
      ledger,
      async () => {
        await mkdir(`${ledger.folder}/batches`);
        await ledger.change('bench.yaml', '    - dull\n', '    - dull\n    - round\n');
        await ledger.change('ingredients.yaml', 'price: 42 EUR/kg', 'price: 44 EUR/kg');
        await ledger.change(
          'series/orange-ladder.yaml',
          'series: orange ladder',
          'series: orange ladder\nnote: ours',
        );
        await ledger.write('batches/1.yaml', 'batch: first\nformula: orange cardamom\nyield: 19 kg\n');
      },
      async () => {
        await mkdir(`${ledger.folder}/batches`, { recursive: true });
        await ledger.change('bench.yaml', '    - dull\n', '    - dull\n    - thin\n');
        await ledger.change('ingredients.yaml', 'keep: 90 d', 'keep: 60 d');
        await ledger.change(
          'series/orange-ladder.yaml',
          'series: orange ladder',
          'series: orange ladder\nsettle: 2 d',
        );
        await ledger.write('batches/1.yaml', 'batch: first\nformula: orange cardamom\nbottles: 50\n');
      },
    );
    expect(await tried(ledger, 'merge', '-q', 'cassis')).toEqual({
      code: 0,
      text: expect.not.stringContaining('settle'),
    });
    expect(await ledger.read('bench.yaml')).toContain('    - dull\n    - round\n    - thin\n');
    expect(await ledger.read('ingredients.yaml')).toMatch(/price: 44[\s\S]*keep: 60 d/u);
    expect(await ledger.read('series/orange-ladder.yaml')).toContain('note: ours\nsettle: 2 d\n');
    expect(await ledger.read('batches/1.yaml')).toBe(
      'batch: first\nformula: orange cardamom\nyield: 19 kg\nbottles: 50\n',
    );
    expect((await neckring(['check'], { folder: ledger.folder })).code).toBe(0);
  });
});
