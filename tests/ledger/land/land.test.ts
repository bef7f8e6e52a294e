import { chmod, mkdir, readdir, stat, symlink, utimes, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { nodeDisk } from '../../../src/ledger/disk.ts';
import { land, landWithRetry, seeFolder } from '../../../src/ledger/land.ts';
import { portWith, refusal, type Scratch, scratchLedger, systemError } from './scratch.ts';

let ledger: Scratch;
beforeEach(async () => {
  ledger = await scratchLedger();
  await ledger.put('trials/0001.yaml', 'one\n');
  await ledger.put('trials/0002.yaml', 'two\n');
});
afterEach(() => ledger.clear());

const trials = (): Promise<readonly string[]> => readdir(join(ledger.root, 'trials'));
const one = { path: 'trials/0001.yaml', before: 'one\n', after: 'one more\n' };
const two = { path: 'trials/0002.yaml', before: 'two\n', after: 'two more\n' };

describe('land', () => {
  it('writes all files, leaves nothing beside them, and hides its own folder from git', async () => {
    expect(await land(await portWith({}), ledger.root, [one, two])).toEqual({
      state: 'landed',
      written: [one.path, two.path],
    });
    expect(await ledger.get(one.path)).toBe('one more\n');
    expect(await ledger.get(two.path)).toBe('two more\n');
    expect(await trials()).toEqual(['0001.yaml', '0002.yaml']);
    expect(await readdir(join(ledger.root, '.neckring'))).toEqual(['.gitignore']);
    expect(await ledger.get('.neckring/.gitignore')).toBe('*\n');
  });

  it('makes a new file and the folder that it wants', async () => {
    const change = { path: 'series/orange.yaml', before: undefined, after: 'series: orange\n' };
    await land(await portWith({}), ledger.root, [change]);
    expect(await ledger.get(change.path)).toBe(change.after);
  });

  it('does not touch a file whose text stays', async () => {
    const landing = await land(await portWith({}), ledger.root, [{ ...one, after: one.before }]);
    expect(landing).toEqual({ state: 'landed', written: [] });
  });

  it.each([
    ['changed by somebody', { ...one, before: 'once\n' }],
    ['gone', { ...one, path: 'trials/0009.yaml' }],
    ['there already', { ...one, before: undefined }],
  ])('writes nothing when one file is %s', async (_what, change) => {
    const landing = await land(await portWith({}), ledger.root, [two, change]);
    expect(landing).toEqual({ state: 'changed', paths: [change.path] });
    expect(await ledger.get(two.path)).toBe('two\n');
  });

  it('sees a byte that is not UTF-8 as a change', async () => {
    await writeFile(join(ledger.root, one.path), Uint8Array.of(0xff, 0x0a));
    const landing = await land(await portWith({}), ledger.root, [{ ...one, before: '\ufffd\n' }]);
    expect(landing.state).toBe('changed');
  });

  it('keeps the permission bits', async () => {
    await chmod(join(ledger.root, one.path), 0o640);
    await land(await portWith({}), ledger.root, [one]);
    expect((await stat(join(ledger.root, one.path))).mode & 0o777).toBe(0o640);
  });

  it('writes through a link inside the ledger and leaves the link', async () => {
    await mkdir(join(ledger.root, 'kept'));
    await ledger.put('kept/three.yaml', 'three\n');
    await symlink('../kept/three.yaml', join(ledger.root, 'trials/0003.yaml'));
    await land(await portWith({}), ledger.root, [
      { path: 'trials/0003.yaml', before: 'three\n', after: '3\n' },
    ]);
    expect(await ledger.get('kept/three.yaml')).toBe('3\n');
    expect(await nodeDisk.isLink(join(ledger.root, 'trials/0003.yaml'))).toBe(true);
  });

  it('works in a ledger that is itself reached through a link', async () => {
    const link = `${ledger.root}-link`;
    await symlink(ledger.root, link);
    await land(await portWith({}), link, [one]);
    expect(await ledger.get(one.path)).toBe('one more\n');
  });

  it('refuses links that lead outside or nowhere, and paths outside', async () => {
    const port = await portWith({});
    const outside = join(ledger.root, '..', 'outside.yaml');
    await writeFile(outside, 'out\n');
    await symlink(outside, join(ledger.root, 'trials/0003.yaml'));
    await symlink('nowhere', join(ledger.root, 'trials/0004.yaml'));
    await symlink(join(ledger.root, '..'), join(ledger.root, 'formulas'));
    const change = (path: string, before: string | undefined) =>
      refusal(land(port, ledger.root, [one, { path, before, after: 'x\n' }]));
    expect((await change('trials/0003.yaml', 'out\n'))[0]).toBe('link-outside');
    expect((await change('trials/0004.yaml', undefined))[0]).toBe('link-to-nothing');
    expect((await change('formulas/new.yaml', undefined))[0]).toBe('link-outside');
    expect((await change('../outside.yaml', 'out\n'))[0]).toBe('outside-ledger');
    expect(await ledger.get(one.path)).toBe('one\n');
    expect(await nodeDisk.read(outside)).toEqual(Buffer.from('out\n'));
  });

  it('refuses a new name that differs only in capitals from one that is there', async () => {
    await ledger.put('trials/0003-Orange.yaml', 'x\n');
    const change = { path: 'trials/0003-orange.yaml', before: undefined, after: 'y\n' };
    expect(await refusal(land(await portWith({}), ledger.root, [change]))).toEqual([
      'name-clash',
      'trials/0003-orange.yaml differs only in capital letters from 0003-Orange.yaml, which is there already',
      2,
    ]);
  });

  it('names the file and the cause of a name that is too long for the disk', async () => {
    const path = `trials/${'o'.repeat(300)}.yaml`;
    const [code, message, exit] = await refusal(
      land(await portWith({}), ledger.root, [one, { path, before: undefined, after: 'x\n' }]),
    );
    expect([code, message, exit]).toEqual([
      'disk-name-too-long',
      `the name is too long for this disk: ${path}`,
      2,
    ]);
    expect(await ledger.get(one.path)).toBe('one\n');
  });
});

describe('land on a disk that says no', () => {
  it.each([
    ['ENOSPC', 'disk-full', 'no room left on the disk to write trials/0002.yaml'],
    ['EDQUOT', 'disk-full', 'no room left on the disk to write trials/0002.yaml'],
    ['EACCES', 'disk-denied', 'permission denied: trials/0002.yaml'],
    ['EROFS', 'disk-read-only', 'trials/0002.yaml lies on a disk that can only be read'],
    ['EIO', 'disk-failed', 'the disk refused trials/0002.yaml (EIO)'],
  ])(
    '%s while the second file is written beside: nothing changes, nothing is left',
    async (cause, code, says) => {
      let written = 0;
      const port = await portWith({
        writeNew: async (path, bytes, like) => {
          const isTemporary = path.includes('.neckring-');
          if (isTemporary) written += 1;
          const isFault = isTemporary && written === 2;
          await nodeDisk.writeNew(path, isFault ? bytes.slice(0, 2) : bytes, like);
          if (isFault) throw systemError(cause);
        },
      });
      expect(await refusal(land(port, ledger.root, [one, two]))).toEqual([code, says, 2]);
      expect([await ledger.get(one.path), await ledger.get(two.path)]).toEqual(['one\n', 'two\n']);
      expect(await trials()).toEqual(['0001.yaml', '0002.yaml']);
      expect(await readdir(join(ledger.root, '.neckring'))).toEqual(['.gitignore']);
    },
  );

  it('a rename refused half-way: the files before it are put back, new ones taken away', async () => {
    const fresh = { path: 'trials/0003.yaml', before: undefined, after: 'three\n' };
    const port = await portWith({
      rename: (from, to) => {
        if (to.endsWith('0002.yaml')) throw systemError('EACCES');
        return nodeDisk.rename(from, to);
      },
    });
    expect(await refusal(land(port, ledger.root, [one, fresh, two]))).toEqual([
      'disk-denied',
      'permission denied: trials/0002.yaml',
      2,
    ]);
    expect([await ledger.get(one.path), await ledger.get(two.path)]).toEqual(['one\n', 'two\n']);
    expect(await trials()).toEqual(['0001.yaml', '0002.yaml']);
  });

  it('a file that may not be written is refused, although it could be replaced', async () => {
    const port = await portWith({ checkWritable: () => Promise.reject(systemError('EACCES')) });
    expect((await refusal(land(port, ledger.root, [one])))[0]).toBe('disk-denied');
  });

  it('a folder that may not be written is named', async () => {
    const port = await portWith({ makeFolder: () => Promise.reject(systemError('EACCES')) });
    expect(await refusal(land(port, ledger.root, [one]))).toEqual([
      'disk-denied',
      'permission denied: .neckring',
      2,
    ]);
  });

  it('a defect of ours stays one', async () => {
    const port = await portWith({ checkWritable: () => Promise.reject(new RangeError('ours')) });
    await expect(land(port, ledger.root, [one])).rejects.toThrow(RangeError);
  });
});

describe('landWithRetry', () => {
  it('reads again when an editor saved in between, and lands on the newer text', async () => {
    let calls = 0;
    const written = await landWithRetry(await portWith({}), ledger.root, async () => {
      const before = await ledger.get(one.path);
      calls += 1;
      if (calls < 3) await ledger.put(one.path, `edit ${calls}\n`);
      return [{ path: one.path, before, after: `${before}mine\n` }];
    });
    expect(written).toEqual([one.path]);
    expect(await ledger.get(one.path)).toBe('edit 2\nmine\n');
  });

  it('gives up on a file that changes every time', async () => {
    let calls = 0;
    const endless = landWithRetry(await portWith({}), ledger.root, async () => {
      calls += 1;
      return [{ ...one, before: 'never\n' }];
    });
    expect(await refusal(endless)).toEqual([
      'keeps-changing',
      'trials/0001.yaml is being changed by another program',
      2,
    ]);
    expect(calls).toBe(6);
  });

  it('gives two new trials two numbers, though both saw the same folder and have different titles', async () => {
    const port = await portWith({});
    const add = (title: string) =>
      landWithRetry(port, ledger.root, async () => {
        const seen = await seeFolder(nodeDisk, ledger.root, 'trials');
        const number = Math.max(...seen.names.map((name) => Number.parseInt(name, 10))) + 1;
        const path = `trials/${String(number).padStart(4, '0')}-${title}.yaml`;
        return [seen, { path, before: undefined, after: `trial: ${number}\n` }];
      });
    await Promise.all(['a', 'b', 'c', 'd', 'e', 'f'].map(add));
    const numbers = (await trials()).map((name) => name.slice(0, 4));
    expect(numbers).toEqual(['0001', '0002', '0003', '0004', '0005', '0006', '0007', '0008']);
  });
});

describe('what killed processes leave', () => {
  it('does not stop the next command; old temporary files go once a dead lock was found', async () => {
    const hour = 3_700;
    await mkdir(join(ledger.root, '.neckring/lock'), { recursive: true });
    await ledger.put('.neckring/.gitignore', '*\n');
    await ledger.put(
      '.neckring/lock/gone-1',
      JSON.stringify({ pid: 2 ** 30, host: (await portWith({})).self.host }),
    );
    for (const name of ['.neckring-gone-1-0.tmp', '.neckring-new-2-0.tmp', '.neckring-old-3-0.tmp']) {
      await ledger.put(`trials/${name}`, 'half');
    }
    const past = Date.now() / 1000 - hour;
    await utimes(join(ledger.root, 'trials/.neckring-old-3-0.tmp'), past, past);
    expect((await land(await portWith({}), ledger.root, [one])).state).toBe('landed');
    expect(await trials()).toEqual(['.neckring-new-2-0.tmp', '0001.yaml', '0002.yaml']);
  });
});
