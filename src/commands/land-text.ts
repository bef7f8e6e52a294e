/** Writing from a command: the change made afresh on what is on the disk, landed, and said in words. */

import { join } from 'node:path';
import type { Io } from '../io.ts';
import { decodeFile } from '../ledger/guard.ts';
import { type Change, landWithRetry } from '../ledger/land.ts';
import { nodePort } from '../ledger/node-port.ts';
import { visible } from '../output/visible.ts';
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
    io.err(`${visible(text)}\n`),
  );
  return landWithRetry(port, root, make);
}

/** Lines that differ, as a reader wants them: `+` new, `-` gone; no context. */
export function changedLines(before: string, after: string): readonly string[] {
  const old = before.split('\n');
  const now = after.split('\n');
  let head = 0;
  while (head < old.length && head < now.length && old[head] === now[head]) head++;
  let tail = 0;
  const room = Math.min(old.length, now.length) - head;
  while (tail < room && old[old.length - 1 - tail] === now[now.length - 1 - tail]) tail++;
  return betweenLines(old.slice(head, old.length - tail), now.slice(head, now.length - tail));
}

/** The changes with as many lines left alone as can be; texts that are too long count as changed whole. */
function betweenLines(old: readonly string[], now: readonly string[]): readonly string[] {
  const gone = (line: string): string => `- ${line.trimEnd()}`;
  const added = (line: string): string => `+ ${line.trimEnd()}`;
  if (old.length * now.length > 1e6) return [...old.map(gone), ...now.map(added)];
  const kept = keptCounts(old, now);
  const lines: string[] = [];
  let at = 0;
  let to = 0;
  while (at < old.length || to < now.length) {
    if (at < old.length && to < now.length && old[at] === now[to]) {
      at++;
      to++;
    } else if (to === now.length || (at < old.length && count(kept, at + 1, to) >= count(kept, at, to + 1)))
      lines.push(gone(old[at++] ?? ''));
    else lines.push(added(now[to++] ?? ''));
  }
  return lines;
}

type Counts = readonly (readonly number[])[];
const count = (kept: Counts, at: number, to: number): number => kept[at]?.[to] ?? 0;

/** How many lines can be left alone from each place on (longest common subsequence). */
function keptCounts(old: readonly string[], now: readonly string[]): Counts {
  const kept: number[][] = old.map(() => []);
  for (let at = old.length - 1; at >= 0; at--)
    for (let to = now.length - 1; to >= 0; to--) {
      const row = kept[at] ?? [];
      row[to] =
        old[at] === now[to]
          ? 1 + count(kept, at + 1, to + 1)
          : Math.max(count(kept, at + 1, to), count(kept, at, to + 1));
    }
  return kept;
}
