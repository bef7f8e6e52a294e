import { chmod, readdir, readFile, rm, stat, symlink, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { type WriteOut, writeAllOut } from '../../src/commands/write-out.ts';
import type { Io } from '../../src/io.ts';
import { type Disk, nodeDisk } from '../../src/ledger/disk.ts';
import { refusal, systemError } from '../ledger/land/scratch.ts';
import { scratchFolder } from './neckring.ts';

const old = '# neckring: the old sheet\n';
const text = '# neckring: the new sheet\n';

function ioAt(workingFolder: string): Io {
  return {
    ...{ out: () => {}, err: () => {}, outIsTerminal: false, errIsTerminal: false, canAsk: false },
    ...{ ask: async () => undefined, columns: 80, environment: {}, workingFolder },
    ...{ now: Date.now, random: () => 0.5 },
  };
}

async function place(names: readonly string[] = ['a.txt', 'b.txt']) {
  const folder = await scratchFolder();
  for (const name of names) await writeFile(join(folder, name), old);
  const sheets = (changed: Partial<Disk> = {}, given: readonly string[] = names): readonly WriteOut[] =>
    given.map((typed) => ({ io: ioAt(folder), typed, text, disk: { ...nodeDisk, ...changed } }));
  const texts = () => Promise.all(names.map((name) => readFile(join(folder, name), 'utf8')));
  return { folder, sheets, texts };
}

const causes = [
  ['ENOSPC', 'disk-full', 'no room left on the disk to write b.txt'],
  ['EDQUOT', 'disk-full', 'no room left on the disk to write b.txt'],
  ['EACCES', 'disk-denied', 'permission denied: b.txt'],
  ['EROFS', 'disk-read-only', 'b.txt lies on a disk that can only be read'],
  ['ENAMETOOLONG', 'disk-name-too-long', 'the name is too long for this disk: b.txt'],
  ['ENOENT', 'disk-missing', 'b.txt is gone, or its folder is'],
  ['EIO', 'disk-failed', 'the disk refused b.txt (EIO)'],
] as const;

describe('a text written to a path that was typed, on a disk that says no', () => {
  it.each(causes)('%s while the second is written beside: both are as they were', async (cause, ...said) => {
    const { folder, sheets, texts } = await place();
    let written = 0;
    const writeNew: Disk['writeNew'] = async (path, bytes, like) => {
      written += 1;
      await nodeDisk.writeNew(path, written === 2 ? bytes.slice(0, 3) : bytes, like);
      if (written === 2) throw systemError(cause);
    };
    expect(await refusal(writeAllOut(sheets({ writeNew })))).toEqual([...said, 2]);
    expect([await texts(), await readdir(folder)]).toEqual([
      [old, old],
      ['a.txt', 'b.txt'],
    ]);
  });

  it.each(causes)('%s at the rename of the second: the first is put back', async (cause, ...said) => {
    const { folder, sheets, texts } = await place();
    const rename: Disk['rename'] = (from, to) => {
      if (to.endsWith('b.txt')) throw systemError(cause);
      return nodeDisk.rename(from, to);
    };
    expect(await refusal(writeAllOut(sheets({ rename })))).toEqual([...said, 2]);
    expect([await texts(), await readdir(folder)]).toEqual([
      [old, old],
      ['a.txt', 'b.txt'],
    ]);
  });

  it('a folder that vanishes after it was looked at', async () => {
    const { folder, sheets } = await place([]);
    const writeNew: Disk['writeNew'] = async (path, bytes, like) => {
      await rm(folder, { recursive: true });
      await nodeDisk.writeNew(path, bytes, like);
    };
    expect(await refusal(writeAllOut(sheets({ writeNew }, ['a.txt'])))).toEqual([
      'disk-missing',
      'a.txt is gone, or its folder is',
      2,
    ]);
  });

  it('a folder that is not there, and a folder in the place of the file', async () => {
    const { sheets } = await place();
    const codes = await Promise.all(
      ['nowhere/a.txt', '.', `${'o'.repeat(300)}.txt`].map((typed) =>
        refusal(writeAllOut(sheets({}, [typed]))),
      ),
    );
    expect(codes.map(([code, , exit]) => [code, exit])).toEqual([
      ['no-folder', 2],
      ['not-a-file', 2],
      ['disk-name-too-long', 2],
    ]);
  });

  it('a defect of ours stays one, and leaves nothing', async () => {
    const { folder, sheets } = await place();
    const writeNew: Disk['writeNew'] = () => Promise.reject(new RangeError('ours'));
    await expect(writeAllOut(sheets({ writeNew }))).rejects.toThrow(RangeError);
    expect(await readdir(folder)).toEqual(['a.txt', 'b.txt']);
  });
});

describe('a text written to a path that was typed', () => {
  it('keeps the permission bits, and writes through a link wherever it leads', async () => {
    const { folder, sheets } = await place(['a.txt']);
    const elsewhere = await scratchFolder();
    await writeFile(join(elsewhere, 'kept.txt'), old);
    await symlink(join(elsewhere, 'kept.txt'), join(folder, 'link.txt'));
    await chmod(join(folder, 'a.txt'), 0o640);
    await writeAllOut(sheets({}, ['a.txt', 'link.txt']));
    expect((await stat(join(folder, 'a.txt'))).mode & 0o777).toBe(0o640);
    expect(await readFile(join(elsewhere, 'kept.txt'), 'utf8')).toBe(text);
    expect(await nodeDisk.isLink(join(folder, 'link.txt'))).toBe(true);
    expect(await readdir(folder)).toEqual(['a.txt', 'link.txt']);
  });

  it('refuses a link to nothing rather than make a file somewhere else', async () => {
    const { folder, sheets } = await place([]);
    await symlink(join(folder, 'gone/a.txt'), join(folder, 'link.txt'));
    const said = await refusal(writeAllOut(sheets({}, ['link.txt'])));
    expect([said[0], said[2]]).toEqual(['link-to-nothing', 2]);
    expect(await nodeDisk.isLink(join(folder, 'link.txt'))).toBe(true);
  });
});
