import { mkdir, readdir, readFile, utimes, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { nodeDisk } from '../../../src/ledger/disk.ts';
import { takeLock } from '../../../src/ledger/lock.ts';
import { isGone, readHolder, startOfProcess } from '../../../src/ledger/lock-holder.ts';
import { portWith, refusal, type Scratch, scratchLedger } from './scratch.ts';

let ledger: Scratch;
let folder = '';
beforeEach(async () => {
  ledger = await scratchLedger();
  folder = join(ledger.root, '.neckring');
  await mkdir(folder);
});
afterEach(() => ledger.clear());

/** No process can have this number: Linux stops at 2^22. */
const noProcess = 2 ** 30;

async function leaveLock(name: string, holder: object | string, ageSeconds = 0): Promise<void> {
  const path = join(folder, 'lock', name);
  await mkdir(join(folder, 'lock'), { recursive: true });
  await writeFile(path, typeof holder === 'string' ? holder : JSON.stringify(holder));
  const then = Date.now() / 1000 - ageSeconds;
  await utimes(path, then, then);
}

describe('takeLock', () => {
  it('says in the lock who holds it, and leaves nothing when it is released', async () => {
    const port = await portWith({});
    const held = await takeLock(port, folder);
    const holder = readHolder(await readFile(join(folder, 'lock', held.token), 'utf8'));
    expect(holder).toMatchObject({ pid: process.pid, host: port.self.host, command: 'test' });
    expect(await held.isStillHeld()).toBe(true);
    await held.release();
    expect(await held.isStillHeld()).toBe(false);
    expect(await readdir(folder)).toEqual([]);
  });

  it('law: never two at once, also when twenty find the same dead holder', async () => {
    const port = await portWith({});
    await leaveLock('dead', { pid: noProcess, host: port.self.host, started: '1', command: '', since: '' });
    let inside = 0;
    let most = 0;
    const visit = async (): Promise<void> => {
      const held = await takeLock(port, folder);
      inside += 1;
      most = Math.max(most, inside);
      await port.wait(2);
      inside -= 1;
      await held.release();
    };
    await Promise.all(Array.from({ length: 20 }, visit));
    expect(most).toBe(1);
    expect(await readdir(folder)).toEqual([]);
  });

  it('a taker that judged too late removes nothing of the new holder', async () => {
    const port = await portWith({});
    await leaveLock('dead', { pid: noProcess, host: port.self.host });
    let other: Awaited<ReturnType<typeof takeLock>> | undefined;
    const slow = await portWith(
      {
        remove: async (path) => {
          if (path.endsWith('dead') && !other) other = await takeLock(port, folder);
          await nodeDisk.remove(path);
        },
      },
      300,
    );
    expect((await refusal(takeLock(slow, folder)))[0]).toBe('ledger-busy');
    expect(await other?.isStillHeld()).toBe(true);
    await other?.release();
  });

  it('waits only so long, and names the holder', async () => {
    const port = await portWith({}, 200);
    const held = await takeLock(port, folder);
    const [code, message, exit] = await refusal(takeLock(port, folder));
    expect([code, exit]).toEqual(['ledger-busy', 2]);
    expect(message).toMatch(
      new RegExp(
        `^waited 0 s for the ledger, which is held by process ${process.pid} \\(test\\) on .+, since \\d{4}-`,
      ),
    );
    await held.release();
    expect(await readdir(folder)).toEqual([]);
  });

  it('says once that it waits when it takes longer', async () => {
    const said: string[] = [];
    let now = Date.now();
    const real = await portWith({});
    const held = await takeLock(real, folder);
    const port = {
      ...real,
      now: () => now,
      wait: async () => {
        now += 400;
      },
      say: (text: string) => {
        said.push(text);
      },
    };
    expect((await refusal(takeLock(port, folder)))[0]).toBe('ledger-busy');
    expect(said).toHaveLength(1);
    expect(said[0]).toContain(`waiting for the ledger, which is held by process ${process.pid}`);
    await held.release();
  });

  it('takes an empty lock folder, left by one killed while giving it back', async () => {
    await mkdir(join(folder, 'lock'));
    const held = await takeLock(await portWith({}), folder);
    expect(held.dead).toEqual([]);
    await held.release();
  });

  it('takes a torn lock after ten seconds, not before', async () => {
    await leaveLock('torn', '', 5);
    expect((await refusal(takeLock(await portWith({}, 100), folder)))[0]).toBe('ledger-busy');
    await leaveLock('torn', '', 11);
    const held = await takeLock(await portWith({}, 100), folder);
    expect(held.dead).toEqual(['torn']);
    await held.release();
  });
});

describe('isGone', () => {
  const holder = { pid: 7, started: '100', host: 'bench', command: '', since: '' };
  const here = (started: string | undefined) => ({ host: 'bench', startOf: async () => started });
  it.each([
    ['no such process', holder, 0, undefined, true],
    ['the same process', holder, 1e12, '100', false],
    ['a later process with the same number', holder, 0, '200', true],
    ['a start that cannot be known, young', holder, 1_000, '', false],
    ['a start that cannot be known, old', holder, 700_000, '', true],
    ['another machine, young', { ...holder, host: 'cellar' }, 1_000, undefined, false],
    ['another machine, old', { ...holder, host: 'cellar' }, 700_000, undefined, true],
  ])('%s', async (_what, who, age, started, gone) => {
    expect(await isGone(who, age, here(started))).toBe(gone);
  });

  it('knows this process and none', async () => {
    expect(await startOfProcess(noProcess)).toBe(undefined);
    expect(await startOfProcess(process.pid)).toMatch(/^\d*$/);
  });

  it.each(['', '{}', '[1]', '{"pid":"1","host":"x"}', '{"pid":-1,"host":"x"}', 'null'])(
    'reads nobody in %j',
    (text) => {
      expect(readHolder(text)).toBe(undefined);
    },
  );
});
