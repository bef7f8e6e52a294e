/** The disk as a process that is killed leaves it: `node:fs/promises` that stops at one of its own writing steps. */

import type { FileHandle } from 'node:fs/promises';
import * as real from 'node:fs/promises';

export class Killed extends Error {}

interface State {
  /** Writing steps done since the last reset. */
  steps: string[];
  /** The step at which the process dies; nothing is read or written from then on. */
  dieAt: number;
}

export const state: State = { steps: [], dieAt: Number.POSITIVE_INFINITY };

export function aliveAgain(dieAt = Number.POSITIVE_INFINITY): void {
  state.steps = [];
  state.dieAt = dieAt;
}

const isDead = (): boolean => state.steps.length >= state.dieAt;

function breathe(): void {
  if (isDead()) throw new Killed('killed');
}

function step(name: string): void {
  breathe();
  state.steps.push(name);
  breathe();
}

/** A step that is done in full, or not at all. */
const whole =
  <Given extends readonly unknown[], Result>(name: string, action: (...given: Given) => Promise<Result>) =>
  async (...given: Given): Promise<Result> => {
    step(`${name} ${String(given[0])}`);
    return action(...given);
  };

const reading =
  <Given extends readonly unknown[], Result>(action: (...given: Given) => Promise<Result>) =>
  async (...given: Given): Promise<Result> => {
    breathe();
    return action(...given);
  };

/** A file whose writing may be cut off in the middle. */
function mortal(handle: FileHandle): object {
  return {
    writeFile: async (bytes: Uint8Array) => {
      breathe();
      state.steps.push('write');
      await handle.writeFile(isDead() ? bytes.slice(0, bytes.length / 2) : bytes);
      breathe();
    },
    stat: reading(() => handle.stat()),
    chown: reading((owner: number, group: number) => handle.chown(owner, group)),
    chmod: reading((mode: number) => handle.chmod(mode)),
    sync: reading(() => handle.sync()),
    // A dead process closes its files too.
    close: () => handle.close(),
  };
}

async function open(path: string, flags: string, mode?: number): Promise<object> {
  if (flags === 'wx') step(`open ${path}`);
  breathe();
  return mortal(await real.open(path, flags, mode));
}

export const mortalFiles = {
  open,
  rename: whole('rename', (from: string, to: string) => real.rename(from, to)),
  unlink: whole('unlink', (path: string) => real.unlink(path)),
  rmdir: whole('rmdir', (path: string) => real.rmdir(path)),
  mkdir: whole('mkdir', (path: string, options: { readonly recursive: true }) => real.mkdir(path, options)),
  readFile: reading((path: string, encoding?: BufferEncoding) => real.readFile(path, encoding)),
  readdir: reading((path: string) => real.readdir(path)),
  realpath: reading((path: string) => real.realpath(path)),
  stat: reading((path: string) => real.stat(path)),
  lstat: reading((path: string) => real.lstat(path)),
  access: reading((path: string, mode: number) => real.access(path, mode)),
};
