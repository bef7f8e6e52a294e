import { readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { exampleFor } from '../commands/example-files.ts';
import { gitIn } from '../commands/git-ledger.ts';
import { neckring } from '../commands/neckring.ts';

type Files = Readonly<Record<string, string>>;

const now = '2026-03-12T12:00:00Z';
/** Whoever sees that a command was cut off types it again within minutes. */
const later = '2026-03-12T12:03:00Z';

async function filesOf(folder: string): Promise<Files> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  const names = entries
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name).slice(folder.length + 1))
    .filter((name) => !/^\.(?:neckring|git)\//.test(name))
    .sort();
  const texts = names.map(async (name) => [name, await readFile(join(folder, name), 'latin1')]);
  return Object.fromEntries(await Promise.all(texts));
}

/** What is said the second time; where there is an exit code, the second is refused with it. */
interface Case {
  readonly words: readonly string[];
  readonly says: RegExp;
  readonly exit?: number;
  readonly example?: string;
}

const same = /says so already; nothing written/;
const there = /is there already/;

const cases: readonly Case[] = [
  { words: ['look', '11-13', 'clear', '14', 'hazy', '--note', 'in the sun'], says: same },
  { words: ['same', '11-14'], says: same },
  { words: ['end', '14', '16', '--why', 'poured away'], says: same },
  { words: ['observe', '14', '--look', 'hazy', '--ph', '3.1', '--at', '09:00'], says: same },
  { words: ['observe', '14', '--photo', 'seen.jpg', '--at', '09:00'], says: same },
  { words: ['weigh', '17', 'citric', '4.51'], says: same },
  { words: ['weigh', '17', 'citric', '4.51', '--again'], says: same },
  { words: ['overpoured', '14', 'polysorbate 80', '6.62', '--write'], says: same },
  { words: ['overpoured', '14', 'polysorbate 80', '6.62', '--same', 'batch', '--write'], says: same },
  { words: ['reckon', '13', '17'], says: /nothing new; nothing written/ },
  { words: ['hlb', '--trial', '14', '--record'], says: /nothing new; nothing written/ },
  {
    words: ['ladder', '13', '--rungs', '1:4, 1:3', '--series', 'cold', '--write'],
    says: /stand there already/,
  },
  {
    words: ['ladder', '13', '--rungs', '1:4, 1:3', '--series', 'cold', '--control', '1:8', '--write'],
    says: /has a control/,
    exit: 2,
  },
  { words: ['next', 'orange ladder', '--beakers', '2', '--within', '1%', '--write'], says: /already/ },
  { words: ['decide', 'orange ladder', 'a third', '--ratio', '1:3', '--again'], says: same },
  {
    words: ['triangle', '--plan', '12', '--trial', '17', '--key', 'key.txt', '--sheet', 'plan.txt'],
    says: there,
    exit: 2,
  },
  { words: ['batch', 'record', '17', 'citric', '4.48'], says: /says the same already/, exit: 2 },
  {
    words: ['batch', 'record', 'orange cardamom', '--to', '20 L syrup', '--name', 'b7'],
    says: there,
    exit: 2,
  },
  {
    words: ['stocks', 'new', 'weaker', '--contains', '1 ppm cassis thiol', '--in', 'propylene glycol'],
    says: /on the shelf already/,
    exit: 2,
  },
  {
    words: ['dropper', '--weighings', '0.42 g / 20; 0.417 g / 20', '--record', 'cassis stock'],
    says: /says so already/,
  },
  { words: ['dropper', '--weighings', '0.42 g / 20; 0.417 g / 20', '--record', 'bench'], says: /already/ },
  { words: ['scale', 'orange cardamom', '--to', '20 L syrup', '--sheet', 'sheet.html'], says: /wrote/ },
  { words: ['give', 'orange cardamom', '--to', 'card.md'], says: /wrote/ },
  { words: ['give', 'orange cardamom', '--as', 'yaml', '--to', 'gift.yaml'], says: /wrote/ },
  { words: ['export', 'compositions', '17', '--to', 'out.csv'], says: there, exit: 2 },
  { words: ['report', 'orange ladder', '--html', 'report.html'], says: /wrote/ },
  { words: ['labels', 'orange ladder', '--html', 'labels.html'], says: /wrote/ },
  { words: ['take', 'cassis-water.yaml'], says: /nothing to write/, example: 'take' },
  { words: ['import', 'notes.csv', '--map', 'notes-map.yaml'], says: /here already/, example: 'import' },
  { words: ['renumber', '13', '--to', '40'], says: /there is no trial 13/, exit: 2 },
  { words: ['git', 'setup'], says: /as it was/ },
];

describe('a command that writes, typed again', () => {
  it.each(cases.map((one) => [one.words.join(' '), one] as const))(
    'law: %s: nothing is doubled',
    async (_, { words, says, exit = 0, example = '' }) => {
      const folder = await exampleFor(example);
      await writeFile(join(folder, 'seen.jpg'), Uint8Array.of(0xff, 0xd8, 0xff, 0xe0));
      if (words[0] === 'git') await gitIn(folder).git('init', '-q');
      const before = await filesOf(folder);
      const first = await neckring(words, { folder, now });
      expect([first.code <= 1, first.code <= 1 ? '' : first.err]).toEqual([true, '']);
      const written = await filesOf(folder);
      expect(written).not.toEqual(before);
      const again = await neckring(words, { folder, now: later });
      expect([again.code, `${again.out}${again.err}`]).toEqual([
        exit === 0 ? first.code : exit,
        expect.stringMatching(says),
      ]);
      expect(await filesOf(folder)).toEqual(written);
    },
  );
});

/** What a person may mean to say twice is told apart by its time, or gets the next number. */
describe('what is a second fact when it is typed again', () => {
  it('an observation of another minute; in the same minute it is the same', async () => {
    const folder = await exampleFor('');
    const words = ['observe', '14', '--turbidity', '2.1 NTU'];
    await neckring(words, { folder, now });
    expect((await neckring(words, { folder, now })).err).toMatch(same);
    expect((await neckring(words, { folder, now: later })).err).toMatch(/wrote/);
  });

  it('a look after a quarter of an hour, or at once where something else was seen in between', async () => {
    const folder = await exampleFor('');
    const look = (word: string, at: string) =>
      neckring(['look', '14', word], { folder, now: `2026-03-12T${at}:00Z` });
    await look('clear', '12:00');
    expect((await look('clear', '12:10')).err).toMatch(same);
    expect((await look('clear', '12:15')).err).toMatch(/wrote/);
    expect((await look('hazy', '12:16')).err).toMatch(/wrote/);
    expect((await look('clear', '12:17')).err).toMatch(/wrote/);
  });

  it('a new trial', async () => {
    const folder = await exampleFor('');
    const words = ['new', '--from', '14'];
    const numbers = [await neckring(words, { folder, now }), await neckring(words, { folder, now })];
    expect(numbers.map(({ out }) => out)).toEqual(['trial 18\n', 'trial 19\n']);
  });
});
