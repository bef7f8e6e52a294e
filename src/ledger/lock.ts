/**
 * One lock for a ledger, which any number of processes can wait for.
 *
 * The lock is the folder `.neckring/lock` with one file in it, whose name is unlike any other and whose text
 * says who holds it. It is made beside and renamed into place, which the system refuses while the folder
 * there has a file in it. It is given back, or taken from a dead holder, by removing the file *of that name*:
 * whoever judges too late removes nothing, so two can never take it over at once.
 */

import { unlinkSync } from 'node:fs';
import { join } from 'node:path';
import { ProblemError } from '../problem.ts';
import { type Disk, errorCode, unless } from './disk.ts';
import { describeHolder, type Holder, isGone, readHolder, type StartOf } from './lock-holder.ts';

export interface LockPort {
  readonly disk: Disk;
  readonly self: Omit<Holder, 'since'>;
  readonly startOf: StartOf;
  /** Milliseconds since 1970. */
  readonly now: () => number;
  readonly wait: (milliseconds: number) => Promise<void>;
  /** From 0 up to 1. */
  readonly chance: () => number;
  /** Told once when the wait grows long. */
  readonly say?: (text: string) => void;
  /** How long one and the same holder is waited for; in all, six times that. */
  readonly patienceMilliseconds?: number;
}

export interface Held {
  readonly token: string;
  /** Holders found dead on the way, whose temporary files may lie about. */
  readonly dead: readonly string[];
  readonly isStillHeld: () => Promise<boolean>;
  readonly release: () => Promise<void>;
}

interface Found {
  readonly token: string;
  readonly holder: Holder | undefined;
  readonly gone: boolean;
}

/** What the system says when the lock is taken. */
const taken =
  process.platform === 'win32'
    ? ['ENOTEMPTY', 'EEXIST', 'ENOTDIR', 'EPERM', 'EACCES', 'EBUSY']
    : ['ENOTEMPTY', 'EEXIST', 'ENOTDIR'];
const shortestWait = 4;
const longestWait = 60;
const sayAfter = 1_000;
let count = 0;

const encode = (text: string): Uint8Array => new TextEncoder().encode(text);
const decode = (bytes: Uint8Array): string => new TextDecoder().decode(bytes);

function newToken(port: LockPort): string {
  count += 1;
  return `${port.self.pid}-${port.now().toString(36)}-${Math.floor(port.chance() * 2 ** 40).toString(36)}-${count}`;
}

async function prepare(port: LockPort, folder: string, token: string): Promise<string> {
  const beside = join(folder, `.lock-${token}`);
  const holder: Holder = { ...port.self, since: new Date(port.now()).toISOString() };
  await port.disk.makeFolder(beside);
  await unless(['EEXIST'], () =>
    port.disk.writeNew(join(beside, token), encode(`${JSON.stringify(holder)}\n`)),
  );
  return beside;
}

async function look(port: LockPort, lock: string): Promise<Found | undefined> {
  const token = (await unless(['ENOENT', 'ENOTDIR'], () => port.disk.list(lock)))?.[0];
  if (token === undefined) return undefined;
  const path = join(lock, token);
  const text = await unless(['ENOENT', 'ENOTDIR'], () => port.disk.read(path));
  const standing = await port.disk.standing(path);
  if (text === undefined || standing === undefined) return undefined;
  const holder = readHolder(decode(text));
  const age = port.now() - standing.modifiedMilliseconds;
  return { token, holder, gone: await isGone(holder, age, { host: port.self.host, startOf: port.startOf }) };
}

/** Tries once. Output: true when it is ours. ENOENT: somebody deleted `.neckring` under our hands. */
async function claim(port: LockPort, folder: string, token: string): Promise<boolean> {
  const beside = await prepare(port, folder, token);
  try {
    await port.disk.rename(beside, join(folder, 'lock'));
    return true;
  } catch (thrown) {
    if (![...taken, 'ENOENT'].includes(errorCode(thrown) ?? '')) throw thrown;
    return false;
  }
}

function busy(found: Found | undefined, waited: number): ProblemError {
  const seconds = Math.round(waited / 1000);
  return new ProblemError([
    {
      code: 'ledger-busy',
      severity: 'error',
      message: `waited ${seconds} s for the ledger, which is held by ${describeHolder(found?.holder)}`,
      hint: 'let that command end, then type this again; if no such program runs, delete .neckring/lock',
    },
  ]);
}

/** Keeps the count of a wait: when to speak, when to give up, how long to sleep. */
function patience(port: LockPort) {
  const limit = port.patienceMilliseconds ?? 10_000;
  const began = port.now();
  let holderSince = began;
  let token: string | undefined;
  let pause = shortestWait;
  let said = false;
  return async (found: Found | undefined): Promise<void> => {
    const now = port.now();
    if (found?.token !== token) holderSince = now;
    token = found?.token;
    if (now - holderSince >= limit || now - began >= 6 * limit) throw busy(found, now - began);
    if (!said && found && now - began >= sayAfter) {
      port.say?.(`waiting for the ledger, which is held by ${describeHolder(found.holder)}`);
      said = true;
    }
    await port.wait(pause * (0.5 + port.chance()));
    pause = Math.min(longestWait, pause * 1.6);
  };
}

function hold(port: LockPort, lock: string, token: string, dead: readonly string[]): Held {
  const path = join(lock, token);
  const atExit = (): void => {
    try {
      unlinkSync(path);
    } catch {
      // Gone already, or not ours to remove: the next one finds us dead.
    }
  };
  process.once('exit', atExit);
  return {
    token,
    dead,
    isStillHeld: async () => (await port.disk.standing(path)) !== undefined,
    release: async () => {
      process.removeListener('exit', atExit);
      await port.disk.remove(path);
      await port.disk.removeEmptyFolder(lock);
    },
  };
}

async function discard(port: LockPort, folder: string, token: string): Promise<void> {
  const beside = join(folder, `.lock-${token}`);
  await port.disk.remove(join(beside, token));
  await port.disk.removeEmptyFolder(beside);
}

/**
 * Waits for the ledger and takes it.
 * Input     the `.neckring` folder, which must exist
 * Output    what is held, to be released by the caller
 * Refuses   after ten seconds behind one holder, or a minute in all, naming the holder
 */
export async function takeLock(port: LockPort, folder: string): Promise<Held> {
  const lock = join(folder, 'lock');
  const token = newToken(port);
  const dead: string[] = [];
  const pause = patience(port);
  try {
    while (!(await claim(port, folder, token))) {
      const found = await look(port, lock);
      if (found?.gone) {
        dead.push(found.token);
        await port.disk.remove(join(lock, found.token));
      } else {
        if (!found) await port.disk.removeEmptyFolder(lock);
        await pause(found);
      }
    }
  } catch (thrown) {
    await discard(port, folder, token).catch(() => undefined);
    throw thrown;
  }
  return hold(port, lock, token, dead);
}
