import { readdir } from 'node:fs/promises';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { nodeDisk } from '../../../src/ledger/disk.ts';
import { land } from '../../../src/ledger/land.ts';
import { portWith, refusal, type Scratch, scratchLedger, systemError } from './scratch.ts';

let ledger: Scratch;
beforeEach(async () => {
  ledger = await scratchLedger();
  await ledger.put('trials/0001.yaml', 'one\n');
  await ledger.put('trials/0002.yaml', 'two\n');
});
afterEach(() => ledger.clear());

const trials = (): Promise<readonly string[]> => readdir(join(ledger.root, 'trials'));
const removal = { path: 'trials/0001.yaml', before: 'one\n', after: undefined };
const made = { path: 'trials/0003.yaml', before: undefined, after: 'one\n' };
const two = { path: 'trials/0002.yaml', before: 'two\n', after: 'two more\n' };

describe('land with a file that is to go', () => {
  it('takes it away after the others are in place, whatever the order', async () => {
    const gone: string[] = [];
    const port = await portWith({
      remove: async (path) => {
        if (path.endsWith('0001.yaml')) gone.push(...(await trials()));
        await nodeDisk.remove(path);
      },
    });
    await land(port, ledger.root, [removal, made, two]);
    expect(gone.sort()).toEqual(['0001.yaml', '0002.yaml', '0003.yaml']);
    expect(await trials()).toEqual(['0002.yaml', '0003.yaml']);
  });

  it('leaves all as it was when the file has changed meanwhile', async () => {
    await ledger.put(removal.path, 'one more\n');
    expect(await land(await portWith({}), ledger.root, [made, removal])).toEqual({
      state: 'changed',
      paths: [removal.path],
    });
    expect(await trials()).toEqual(['0001.yaml', '0002.yaml']);
  });

  it('puts everything back when the disk refuses', async () => {
    const port = await portWith({
      remove: (path) =>
        path.endsWith('0001.yaml') ? Promise.reject(systemError('EACCES')) : nodeDisk.remove(path),
    });
    expect((await refusal(land(port, ledger.root, [made, two, removal])))[0]).toBe('disk-denied');
    expect(await trials()).toEqual(['0001.yaml', '0002.yaml']);
    expect(await ledger.get(two.path)).toBe('two\n');
  });
});
