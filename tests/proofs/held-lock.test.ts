import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdir, readdir, readFile, writeFile } from 'node:fs/promises';
import { hostname } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { takeLock } from '../../src/ledger/lock.ts';
import { startOfProcess } from '../../src/ledger/lock-holder.ts';
import { nodePort } from '../../src/ledger/node-port.ts';
import { exampleLedger, neckring, readIn } from '../commands/neckring.ts';

const fourteen = 'trials/0014-orange-1-to-2.5.yaml';
const now = '2026-03-12T12:00:00Z';

/** The lock as a process leaves it that was killed while it held it. */
async function leaveLock(folder: string, holder: object): Promise<void> {
  const lock = join(folder, '.neckring/lock');
  await mkdir(lock, { recursive: true });
  await writeFile(join(folder, '.neckring/.gitignore'), '*\n');
  const told = { host: hostname(), command: 'neckring look 14 clear', since: '2026-03-12T11:59:00.000Z' };
  await writeFile(join(lock, 'left-1'), JSON.stringify({ ...told, ...holder }));
}

describe('a ledger that another command holds, told through the commands', () => {
  it('waits ten seconds, says once for whom (number, command, machine, since when), then gives up with exit 2', async () => {
    const folder = await exampleLedger();
    const before = await readIn(folder, fourteen);
    await mkdir(join(folder, '.neckring'));
    const port = await nodePort('neckring ladder 13 --rungs "1:4, 1:3"');
    const held = await takeLock({ ...port, now: () => Date.parse(now) }, join(folder, '.neckring'));
    const began = performance.now();
    const words = ['observe', '14', '--look', 'hazy'];
    const [ran, other] = await Promise.all([
      neckring(words, { folder, now }),
      neckring(['new', '--from', '14', '--json'], { folder, now }),
    ]);
    const seconds = (performance.now() - began) / 1000;
    expect([seconds >= 9.5, seconds < 60]).toEqual([true, true]);
    const holder = `process ${process.pid} (neckring ladder 13 --rungs "1:4, 1:3") on ${hostname()}, since 2026-03-12T12:00:00.000Z`;
    const [waiting, gaveUp, ...more] = ran.err.trimEnd().split('\n');
    expect([ran.code, ran.out, more]).toEqual([2, '', []]);
    expect(waiting).toBe(`waiting for the ledger, which is held by ${holder}`);
    expect(gaveUp).toMatch(/^waited 1\d s for the ledger, which is held by process /);
    expect(gaveUp).toContain(`${holder}; let that command end, then type this again`);
    expect([other.code, other.out.includes('"ledger-busy"')]).toEqual([2, true]);
    expect(await readIn(folder, fourteen)).toBe(before);
    await held.release();
    expect((await neckring(words, { folder, now })).code).toBe(0);
  }, 90_000);

  it('takes over at once from a process that was killed, and from one whose number another has now', async () => {
    const child = spawn(process.execPath, ['-e', 'setInterval(() => {}, 1000)']);
    const started = await startOfProcess(child.pid ?? 0);
    child.kill('SIGKILL');
    await once(child, 'close');
    for (const holder of [
      { pid: child.pid, started },
      { pid: process.pid, started: '1' },
    ]) {
      const folder = await exampleLedger();
      await leaveLock(folder, holder);
      await writeFile(join(folder, 'trials/.neckring-left-1-0.tmp'), 'trial: 14\nhalf of');
      const ran = await neckring(['observe', '14', '--look', 'hazy'], { folder, now });
      expect([ran.code, ran.err]).toEqual([0, expect.not.stringContaining('waiting')]);
      expect(await readdir(join(folder, '.neckring'))).not.toContain('lock');
      expect((await readdir(join(folder, 'trials'))).filter((name) => name.startsWith('.'))).toEqual([]);
      expect(await readFile(join(folder, fourteen), 'utf8')).toContain('look: hazy');
    }
  });

  it('reading asks for no lock', async () => {
    const folder = await exampleLedger();
    await leaveLock(folder, { pid: process.pid, started: await startOfProcess(process.pid) });
    for (const words of [['list'], ['show', '14'], ['check'], ['due'], ['series', 'orange ladder']]) {
      const ran = await neckring(words, { folder, now });
      expect([words, ran.code <= 1, ran.err.includes('waiting')]).toEqual([words, true, false]);
    }
  });
});
