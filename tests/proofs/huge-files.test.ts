import { mkdir, open } from 'node:fs/promises';
import { dirname, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { exampleLedger, neckring, scratchFolder } from '../commands/neckring.ts';

/** More than any program could read into memory: the length is written down, the bytes are never there. */
async function hugeFile(path: string): Promise<void> {
  await mkdir(dirname(path), { recursive: true });
  const handle = await open(path, 'w');
  await handle.truncate(100 * 2 ** 30);
  await handle.close();
}

/** `CAMERA` is a folder outside the ledger. */
const huge: readonly (readonly [file: string, ...lines: (readonly string[])[]])[] = [
  [
    'trials/0014-orange-1-to-2.5.yaml',
    ['show', '14'],
    ['observe', '14', '--look', 'clear'],
    ['list'],
    ['check'],
    ['due'],
  ],
  ['series/orange-ladder.yaml', ['check'], ['series', 'orange ladder']],
  ['formulas/orange-cardamom.yaml', ['check'], ['drink', 'orange cardamom'], ['give', 'orange cardamom']],
  ['batches/first.yaml', ['show', 'first'], ['batch'], ['check']],
  ['bench.yaml', ['check'], ['list'], ['show', '13']],
  ['ingredients.yaml', ['drink', '17'], ['stocks'], ['check']],
  ['notes.csv', ['import', 'notes.csv', '--map', 'bench.yaml']],
  ['map.yaml', ['import', 'series/orange-ladder.yaml', '--map', 'map.yaml']],
  ['gift.yaml', ['take', 'gift.yaml']],
  ['CAMERA/seen.jpg', ['observe', '14', '--photo', 'CAMERA/seen.jpg']],
  [
    'other.yaml',
    ['merge-driver', 'bench.yaml', 'other.yaml', 'bench.yaml', '--path', 'trials/0014.yaml', '--plan'],
  ],
  ['other.yaml', ['diff-driver', 'other.yaml', '--text']],
];

describe('files of 100 GB, refused by their size and unread', () => {
  it.each(huge.map(([file, ...lines]) => [file, lines] as const))('%s', async (file, lines) => {
    const folder = await exampleLedger();
    const scratch = await scratchFolder();
    const place = (word: string): string => word.replace(/^CAMERA/, scratch);
    await hugeFile(resolve(folder, place(file)));
    for (const words of lines) {
      const ran = await neckring(words.map(place), { folder });
      expect([words, ran.code === 70]).toEqual([words, false]);
      // Commands that do without the file go on; those that need it say what is wrong with it.
      if (words[0] === 'check' || words === lines[0])
        expect([words, `${ran.out}${ran.err}`]).toEqual([
          words,
          expect.stringMatching(/too large|is 107374 MB/),
        ]);
    }
  });
});
