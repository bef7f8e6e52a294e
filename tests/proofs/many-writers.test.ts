import { mkdir, mkdtemp, readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { beforeEach, describe, expect, it } from 'vitest';
import { neckring } from '../commands/neckring.ts';
import { commandRunners } from './processes.ts';

const rounds = Number(process.env['NECKRING_ROUNDS'] ?? 12);
const kills = Number(process.env['NECKRING_KILLS'] ?? 12);
const trial = (number: number): string => `trial: ${number}
made: 2026-03-02T10:15+00:00
# the shelf by the window
stages:
  emulsion:
    - sweet orange oil: 2 g      # planned
    - polysorbate 80: 6 g
    - water: to 50 g
`;

const runners = commandRunners();
let folder = '';

beforeEach(async () => {
  folder = await mkdtemp(join(runners.scratch(), 'ledger-'));
  await mkdir(join(folder, 'trials'));
  await writeFile(join(folder, 'bench.yaml'), 'ledger: 1\nbench:\n  time zone: Europe/Lisbon\n');
  for (const number of [14, 15]) await writeFile(join(folder, `trials/00${number}.yaml`), trial(number));
});

const readTrial = (number: number): Promise<string> =>
  readFile(join(folder, `trials/00${number}.yaml`), 'utf8');

const timesIn = (text: string): readonly string[] =>
  [...text.matchAll(/^ {2}- at: (\S+)/gm)].map(([, time]) => time ?? '');

const notesOf = (text: string, name: string): readonly string[] =>
  [...text.matchAll(/note: (\S+) (\d+)$/gm)].filter(([, who]) => who === name).map(([, , at]) => at ?? '');

async function expectSound(): Promise<void> {
  const checked = await neckring(['check'], { folder, now: new Date().toISOString() });
  expect([checked.code, checked.out]).toEqual([0, expect.stringContaining('no errors')]);
}

describe('many processes at once, through the commands', () => {
  it(`law: 8 processes with ${rounds} observations each on one trial: all land, in order, nothing else moved`, async () => {
    const names = [...'abcdefgh'];
    const ended = await Promise.all(
      names.map((name) => runners.start({ folder, name, count: rounds, kind: 'observe' })),
    );
    expect(ended.map(({ code, said, complaint }) => [code, said, complaint.includes('exit')])).toEqual(
      names.map(() => [0, rounds, false]),
    );
    const text = await readTrial(14);
    expect(text.startsWith(trial(14))).toBe(true);
    const times = timesIn(text);
    expect(times).toHaveLength(8 * rounds);
    expect(times).toEqual([...times].sort());
    for (const name of names) expect(notesOf(text, name)).toHaveLength(rounds);
    await expectSound();
  }, 240_000);

  it('law: observe, look, reckon and new at once: nothing is lost and no number is given twice', async () => {
    const count = Math.max(3, Math.floor(rounds / 3));
    const kinds = ['observe', 'observe', 'look', 'look', 'reckon', 'new', 'new', 'new'];
    const ended = await Promise.all(
      kinds.map((kind, at) => runners.start({ folder, name: `p${at}`, count, kind })),
    );
    expect(ended.map(({ code, said, complaint }) => [code, said, complaint.includes('exit')])).toEqual(
      kinds.map(() => [0, count, false]),
    );
    const files = (await readdir(join(folder, 'trials'))).sort();
    expect(files).toHaveLength(2 + 3 * count);
    expect(new Set(files.map((name) => name.slice(0, 4))).size).toBe(files.length);
    expect(timesIn(await readTrial(15))).toHaveLength(2 * count);
    await expectSound();
  }, 240_000);

  it(
    `law: after ${kills} kills in mid-command every file is whole, and the next command goes on`,
    async () => {
      let landed = 0;
      for (let kill = 0; kill < kills; kill += 1) {
        const name = `k${kill}`;
        const killAfterMilliseconds = Math.random() * 80;
        const { said } = await runners.start({
          folder,
          name,
          count: 1000,
          kind: 'look',
          killAfterMilliseconds,
        });
        const done = notesOf(await readTrial(14), name).length;
        const beside = notesOf(await readTrial(15), name).length;
        expect([done - beside, done - said].every((ahead) => ahead === 0 || ahead === 1)).toBe(true);
        landed += done;
      }
      const after = await runners.start({ folder, name: 'after', count: 1, kind: 'look' });
      expect([after.code, after.said]).toEqual([0, 1]);
      expect(timesIn(await readTrial(14))).toHaveLength(landed + 1);
      expect((await readdir(join(folder, 'trials'))).sort()).toEqual(['0014.yaml', '0015.yaml']);
      await expectSound();
    },
    60_000 + kills * 2_000,
  );
});
