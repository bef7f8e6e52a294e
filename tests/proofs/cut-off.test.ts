import { cp, readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it, vi } from 'vitest';
import { exampleFor } from '../commands/example-files.ts';
import { neckring, scratchFolder } from '../commands/neckring.ts';
import { aliveAgain, state } from './failing-disk.ts';

vi.mock('../../src/ledger/disk.ts', async (original) => {
  const { mortalFiles } = await import('./failing-disk.ts');
  vi.doMock('node:fs/promises', () => mortalFiles);
  return original();
});

type Files = Readonly<Record<string, string>>;

const now = '2026-03-12T12:00:00Z';
const later = '2026-03-12T12:02:00Z';

/** Texts with the minute in which they were made taken out: what is typed again is made later. */
const timeless = (text: string): string => text.replace(/T12:0\d/g, 'T12:00');

async function filesOf(folder: string): Promise<Files> {
  const names = (await readdir(folder, { recursive: true, withFileTypes: true }))
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name).slice(folder.length + 1))
    .filter((name) => !name.startsWith('.neckring/'));
  const texts = names
    .sort()
    .map(async (name) => [name, timeless(await readFile(join(folder, name), 'latin1'))]);
  return Object.fromEntries(await Promise.all(texts));
}

/** The lock that is left belongs to this process, which lives: it gets the number of one that does not. */
async function buryHolder(folder: string): Promise<void> {
  const lock = join(folder, '.neckring/lock');
  for (const name of await readdir(lock).catch(() => [])) {
    const holder = await readFile(join(lock, name), 'utf8');
    await writeFile(join(lock, name), holder.replace(/"pid":\d+/, `"pid":${2 ** 30}`));
  }
}

const isTemporary = (name: string): boolean => /(^|\/)\.neckring-.*\.tmp$/.test(name);

interface Case {
  readonly words: readonly string[];
  readonly example?: string;
  /** What is typed again a little later says the same; an observation is another one then. */
  readonly again?: string;
}

const cases: readonly Case[] = [
  {
    words: [
      'ladder',
      '13',
      '--rungs',
      '1:4, 1:3',
      '--series',
      'cold',
      '--control',
      '1:8',
      '--blank',
      '--write',
    ],
  },
  {
    words: [
      'ladder',
      '13',
      '--rungs',
      '1:2.8, 1:2.6',
      '--series',
      'orange ladder',
      '--control',
      '1:8',
      '--write',
    ],
  },
  { words: ['next', 'orange ladder', '--beakers', '2', '--within', '1%', '--write'] },
  {
    words: ['batch', 'record', 'orange cardamom', '--to', '20 L syrup', '--bottles', '60', '--retained', '4'],
  },
  { words: ['take', 'cassis-water.yaml'], example: 'take' },
  { words: ['import', 'notes.csv', '--map', 'notes-map.yaml'], example: 'import' },
  { words: ['stocks', 'new', 'weaker', '--contains', '1 ppm cassis thiol', '--in', 'propylene glycol'] },
  { words: ['renumber', '13', '--to', '40'] },
  { words: ['renumber', '13'] },
  { words: ['look', '11-13', 'clear'] },
  { words: ['same', '11-13'] },
  { words: ['end', '11-13', '--why', 'poured away'] },
  { words: ['overpoured', '14', 'polysorbate 80', '6.62', '--write'] },
  { words: ['decide', 'orange ladder', 'a third', '--ratio', '1:3', '--again'] },
  { words: ['reckon', '13', '17'] },
  { words: ['observe', '14', '--look', 'hazy', '--photo', 'seen.jpg'], again: now },
];

const isThorough = Number(process.env['NECKRING_KILLS'] ?? 0) >= 300;

/** Every step at which a file gets its name or loses it, and some of the others. */
function momentsIn(steps: readonly string[]): readonly number[] {
  const all = steps.map((_, at) => at + 1);
  if (isThorough) return all;
  const named = /^rename .*\.neckring-.*\.tmp|^unlink .*\.yaml$/;
  return all.filter((at) => named.test(steps[at - 1] ?? '') || at % 11 === 0);
}

/** The ledger before a command, and copies of it to run the command in. */
async function setUp(example: string) {
  const begin = await exampleFor(example);
  await writeFile(join(begin, 'seen.jpg'), Uint8Array.of(0xff, 0xd8, 0xff, 0xe0, 0, 16, 74, 70, 73, 70, 0));
  const scratch = await scratchFolder();
  const copy = async (name: string): Promise<string> => {
    const folder = join(scratch, name);
    await cp(begin, folder, { recursive: true });
    return folder;
  };
  return { before: await filesOf(begin), copy };
}

const titlesIn = (files: Files): readonly string[] =>
  Object.values(files).flatMap((text) => /^title: (.*)$/m.exec(text)?.[1] ?? []);

describe('cut off at any step of writing', () => {
  it.each(cases.map((one) => [one.words.slice(0, 4).join(' '), one] as const))(
    'law: %s: every file is the old one or the new one; typed again, what is missing is added, nothing is doubled',
    async (_, { words, example = '', again = later }) => {
      const { before, copy } = await setUp(example);
      const whole = await copy('whole');
      aliveAgain();
      const ran = await neckring(words, { folder: whole, now });
      const after = await filesOf(whole);
      expect([ran.code <= 1, Object.keys(after).filter(isTemporary)]).toEqual([true, []]);
      const steps = [...state.steps];
      for (const dieAt of momentsIn(steps)) {
        const at = `${dieAt}: ${steps[dieAt - 1]}`;
        const folder = await copy(`at-${dieAt}`);
        aliveAgain(dieAt);
        await neckring(words, { folder, now });
        aliveAgain();
        await buryHolder(folder);
        for (const [name, text] of Object.entries(await filesOf(folder)))
          expect([at, name, isTemporary(name) || [before[name], after[name]].includes(text)]).toEqual([
            at,
            name,
            true,
          ]);
        const typedAgain = await neckring(words, { folder, now: again });
        expect([at, typedAgain.code <= 2]).toEqual([at, true]);
        const then = await filesOf(folder);
        expect([at, then]).toEqual([at, after]);
        expect(new Set(titlesIn(then)).size).toBe(titlesIn(then).length);
      }
    },
    120_000,
  );

  it('law: init leaves a ledger or a folder in which it can be typed again', async () => {
    const scratch = await scratchFolder();
    const init = (name: string) =>
      neckring(['init', name, '--time-zone', 'Europe/Lisbon'], { folder: scratch, now });
    aliveAgain();
    await init('whole');
    const after = await filesOf(join(scratch, 'whole'));
    for (const dieAt of state.steps.map((_, at) => at + 1)) {
      const folder = join(scratch, `at-${dieAt}`);
      aliveAgain(dieAt);
      await init(`at-${dieAt}`);
      aliveAgain();
      await buryHolder(folder);
      await init(`at-${dieAt}`);
      expect([dieAt, await filesOf(folder)]).toEqual([dieAt, after]);
    }
  });
});
