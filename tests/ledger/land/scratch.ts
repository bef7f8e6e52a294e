/** A ledger in a scratch folder, and a port to it whose disk can be made to fail. */

import { mkdir, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Disk, nodeDisk } from '../../../src/ledger/disk.ts';
import type { LandPort } from '../../../src/ledger/land.ts';
import { nodePort } from '../../../src/ledger/node-port.ts';
import { isProblemError } from '../../../src/problem.ts';

export interface Scratch {
  readonly root: string;
  readonly put: (path: string, text: string) => Promise<void>;
  readonly get: (path: string) => Promise<string>;
  readonly clear: () => Promise<void>;
}

export async function scratchLedger(): Promise<Scratch> {
  const base = await mkdtemp(join(tmpdir(), 'neckring-'));
  const root = join(base, 'ledger');
  await mkdir(join(root, 'trials'), { recursive: true });
  await writeFile(join(root, 'bench.yaml'), 'ledger: 1\n');
  return {
    root,
    put: (path, text) => writeFile(join(root, path), text),
    get: (path) => readFile(join(root, path), 'utf8'),
    clear: () => rm(base, { recursive: true, force: true }),
  };
}

/** The disk with some of its doings replaced. */
export async function portWith(changed: Partial<Disk>, patienceMilliseconds = 10_000): Promise<LandPort> {
  return { ...(await nodePort('test')), disk: { ...nodeDisk, ...changed }, patienceMilliseconds };
}

export const systemError = (code: string): Error => Object.assign(new Error(`${code}: injected`), { code });

/** What a refusal says: its code, message and exit code. */
export async function refusal(action: Promise<unknown>): Promise<readonly [string, string, number]> {
  try {
    await action;
  } catch (thrown) {
    if (!isProblemError(thrown)) throw thrown;
    const [problem] = thrown.problems;
    return [problem?.code ?? '', problem?.message ?? '', thrown.exitCode];
  }
  throw new Error('nothing was refused');
}
