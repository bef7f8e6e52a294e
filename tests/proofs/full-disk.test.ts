import { spawnSync } from 'node:child_process';
import {
  closeSync,
  mkdirSync,
  mkdtempSync,
  openSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
  writeSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { neckring } from '../commands/neckring.ts';

const scratch = mkdtempSync(join(tmpdir(), 'neckring-full-'));
const mounted = spawnSync('mount', ['-t', 'tmpfs', '-o', 'size=96k', 'tmpfs', scratch]).status === 0;
const trial = `trial: 14
made: 2026-03-02T10:15+00:00
stages:
  emulsion:
    - sweet orange oil: 2 g
    - polysorbate 80: 6 g
    - water: to 50 g
`;
const file = join(scratch, 'trials/0014.yaml');
const now = '2026-03-05T09:00:00Z';

/** Writes until the disk takes no more. */
function fill(): void {
  const handle = openSync(join(scratch, 'filler.bin'), 'a');
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
    beforeAll(() => {
      mkdirSync(join(scratch, 'trials'));
      writeFileSync(join(scratch, 'bench.yaml'), 'ledger: 1\nbench:\n  time zone: Europe/Lisbon\n');
      writeFileSync(file, trial);
    });

    it.each([
      ['observe', ['observe', '14', '--look', 'clear']],
      ['look', ['look', '14', 'clear']],
      ['new', ['new', '--title', 'next', '--item', '2 g sweet orange oil']],
      ['reckon', ['reckon', '14']],
    ])(
      '%s: exit 2, the file and the cause named, the old text intact, nothing left behind',
      async (_, words) => {
        fill();
        const ran = await neckring(words, { folder: scratch, now });
        expect([ran.code, ran.out]).toEqual([2, '']);
        expect(ran.err).toContain('no room left on the disk');
        expect(ran.err).toMatch(/write (trials\/|\.neckring)/);
        expect(readFileSync(file, 'utf8')).toBe(trial);
        expect(readdirSync(join(scratch, 'trials'))).toEqual(['0014.yaml']);
      },
    );

    it('goes on when there is room again', async () => {
      rmSync(join(scratch, 'filler.bin'));
      const ran = await neckring(['observe', '14', '--look', 'clear'], { folder: scratch, now });
      expect([ran.code, ran.err.includes('wrote') || ran.out !== '']).toEqual([0, true]);
      expect(readFileSync(file, 'utf8')).toContain('look: clear');
    });
  },
);
