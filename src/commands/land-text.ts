/** Writing from a command: the change made afresh on what is on the disk, landed, and said in words. */

import { join } from 'node:path';
import type { Io } from '../io.ts';
import { decodeFile } from '../ledger/guard.ts';
import { type Change, landWithRetry } from '../ledger/land.ts';
import { nodePort } from '../ledger/node-port.ts';
import { fail, ProblemError } from '../problem.ts';
import type { Call } from './command.ts';
import { readPort } from './open-ledger.ts';

/** Text of a file of the ledger as it is on the disk now. */
export function textNow(root: string, file: string, io: Io): string {
  const port = readPort(io);
  const path = join(root, file);
  if (port.sizeOf(path) === undefined)
    fail('gone', `${file} is gone`, 'it was moved or deleted meanwhile; look with neckring list');
  const decoded = decodeFile(file, port.read(path));
  if ('problem' in decoded) throw new ProblemError([decoded.problem]);
  return decoded.text;
}

/** Lands what `make` says; it is called again where another program was quicker. */
export async function landHere(
  root: string,
  call: Call,
  io: Io,
  make: () => Promise<readonly Change[]>,
): Promise<readonly string[]> {
  const port = await nodePort(['neckring', call.command, ...call.words].join(' '), (text) =>
    io.err(`${text}\n`),
  );
  return landWithRetry(port, root, make);
}

/** Lines that differ, as a reader wants them: `+` new, `-` gone, with their numbers; no context. */
export function changedLines(before: string, after: string): readonly string[] {
  const old = before.split('\n');
  const now = after.split('\n');
  let head = 0;
  while (head < old.length && head < now.length && old[head] === now[head]) head++;
  let tail = 0;
  while (
    tail < old.length - head &&
    tail < now.length - head &&
    old[old.length - 1 - tail] === now[now.length - 1 - tail]
  )
    tail++;
  const gone = old.slice(head, old.length - tail).map((line) => `- ${line.trimEnd()}`);
  const added = now.slice(head, now.length - tail).map((line) => `+ ${line.trimEnd()}`);
  return [...gone, ...added];
}
