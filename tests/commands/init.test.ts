import { mkdir, readdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { neckring, readIn, scratchFolder } from './neckring.ts';

const zone = ['--time-zone', 'Europe/Lisbon'];

describe('init', () => {
  it('begins a ledger in a new folder, which passes its own check', async () => {
    const folder = await scratchFolder();
    const began = await neckring(['init', 'drinks', ...zone], { folder });
    expect(began.code).toBe(0);
    expect(began.out).toContain(join(folder, 'drinks'));
    expect(began.err).toBe(
      'wrote bench.yaml\nwrote ingredients.yaml\nwrote schema/: what editors need to complete and check\n',
    );
    const drinks = join(folder, 'drinks');
    expect(await readIn(drinks, 'bench.yaml')).toContain('  time zone: Europe/Lisbon\n');
    expect(await neckring(['check'], { folder: drinks })).toEqual({
      code: 0,
      out: '2 files: no errors, no warnings\n',
      err: '',
    });
  });

  it('says to go into a folder that is not this one', async () => {
    const folder = await scratchFolder();
    expect((await neckring(['init', 'drinks', ...zone], { folder })).out).toContain('cd drinks');
    const here = await scratchFolder();
    expect((await neckring(['init', ...zone], { folder: here })).out).not.toContain('cd ');
  });

  it('begins in this folder beside what is there, and changes none of it', async () => {
    const folder = await scratchFolder();
    await writeFile(join(folder, 'ingredients.yaml'), 'ingredients: {}  # mine\n');
    await writeFile(join(folder, 'letter.txt'), 'kept');
    const began = await neckring(['init', ...zone, '--json'], { folder });
    const schemas = ['batch', 'bench', 'formula', 'ingredients', 'series', 'trial'];
    expect(JSON.parse(began.out)).toMatchObject({
      schema: 'init@1',
      found: { written: ['bench.yaml', ...schemas.map((kind) => `schema/${kind}.json`)] },
    });
    expect(await readIn(folder, 'ingredients.yaml')).toBe('ingredients: {}  # mine\n');
    expect(await readIn(folder, 'letter.txt')).toBe('kept');
  });

  it('takes the zone of this computer where none is given', async () => {
    const folder = await scratchFolder();
    await neckring(['init'], { folder });
    const here = Intl.DateTimeFormat().resolvedOptions().timeZone;
    expect(await readIn(folder, 'bench.yaml')).toContain(`  time zone: ${here}\n`);
  });

  it('refuses a folder that is a ledger already, and changes nothing', async () => {
    const folder = await scratchFolder();
    await neckring(['init', ...zone], { folder });
    await writeFile(join(folder, 'bench.yaml'), 'ledger: 1\n# mine\n');
    const again = await neckring(['init', ...zone], { folder });
    expect(again.code).toBe(2);
    expect(again.err).toBe(`${folder} is a ledger already; neckring list shows what is in it\n`);
    expect(await readIn(folder, 'bench.yaml')).toBe('ledger: 1\n# mine\n');
  });

  it('refuses a folder inside a ledger', async () => {
    const folder = await scratchFolder();
    await neckring(['init', ...zone], { folder });
    await mkdir(join(folder, 'trials'));
    const inside = await neckring(['init', 'trials/more', ...zone], { folder });
    expect(inside.code).toBe(2);
    expect(inside.err).toContain(`lies inside the ledger ${folder}; choose a folder outside it`);
    expect(await readdir(join(folder, 'trials'))).toEqual([]);
  });

  it.each(['Atlantis/Capital', 'Lisboa', '+01:00', ''])(
    'refuses the zone "%s" and makes no folder',
    async (name) => {
      const folder = await scratchFolder();
      const refused = await neckring(['init', 'drinks', '--time-zone', name], { folder });
      expect(refused.code).toBe(2);
      expect(refused.err).toBe(
        `--time-zone: there is no zone "${name}"; give a name such as Europe/Lisbon\n`,
      );
      expect(await readdir(folder)).toEqual([]);
    },
  );
});
