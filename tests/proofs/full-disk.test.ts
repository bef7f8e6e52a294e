import { spawnSync } from 'node:child_process';
import {
  closeSync,
  cpSync,
  mkdirSync,
  mkdtempSync,
  openSync,
  rmSync,
  writeFileSync,
  writeSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { neckring } from '../commands/neckring.ts';
import { ledgerWriters, outWriters, textsIn } from './writers.ts';

const scratch = mkdtempSync(join(tmpdir(), 'neckring-full-'));
const mounted = spawnSync('mount', ['-t', 'tmpfs', '-o', 'size=1m', 'tmpfs', scratch]).status === 0;
const folder = join(scratch, 'ledger');
const filler = join(scratch, 'filler.bin');
const now = '2026-03-12T12:00:00Z';

/** Writes until the disk takes no more. */
function fill(): void {
  const handle = openSync(filler, 'a');
  try {
    for (;;) writeSync(handle, Buffer.alloc(512));
  } catch (thrown) {
    expect(String(thrown)).toContain('ENOSPC');
  } finally {
    closeSync(handle);
  }
}

afterAll(() => {
  if (mounted) spawnSync('umount', [scratch]);
  rmSync(scratch, { recursive: true, force: true });
});

describe.runIf(mounted)(
  'a disk that is full (a small tmpfs; where none may be mounted, faults are injected in land.test.ts)',
  () => {
    beforeAll(async () => {
      mkdirSync(folder);
      cpSync(new URL('../../examples/orange-cardamom', import.meta.url), folder, { recursive: true });
      writeFileSync(join(scratch, 'seen.jpg'), Uint8Array.of(0xff, 0xd8, 0xff, 0xe0));
      // What is written out stands there from before.
      for (const [, ...words] of outWriters) {
        const ran = await neckring(words, { folder, now: '2026-03-11T12:00:00Z' });
        expect([words, ran.code <= 1, ran.code]).toEqual([words, true, ran.code]);
      }
    });

    it.each(
      [...ledgerWriters, ...outWriters].map(([file, ...words]) => [words.join(' '), file, words] as const),
    )(
      '%s: exit 2, the file and the cause named, the old text intact, nothing left behind',
      async (_, file, words) => {
        const before = textsIn(folder);
        fill();
        const ran = await neckring(words, { folder, now });
        expect([ran.code, ran.out]).toEqual([2, '']);
        expect(ran.err).toContain('no room left on the disk');
        expect(/ write (\S+);/.exec(ran.err)?.[1]).toMatch(new RegExp(`^\\.neckring|${file.source}|series`));
        expect(textsIn(folder)).toEqual(before);
      },
    );

    it('goes on when there is room again', async () => {
      rmSync(filler);
      for (const [, ...words] of [...ledgerWriters, ...outWriters]) {
        const ran = await neckring(words, { folder, now });
        expect([words, ran.code <= 1, ran.code <= 1 ? '' : ran.err]).toEqual([words, true, '']);
      }
    });
  },
);
