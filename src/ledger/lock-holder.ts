/** Who holds the ledger's lock, and whether it is still there to give it back. */

import { readFile } from 'node:fs/promises';
import { hostname } from 'node:os';
import { unless } from './disk.ts';

export interface Holder {
  readonly pid: number;
  /** When the process began, in the system's own count; tells it from a later one with the same number. */
  readonly started: string;
  readonly host: string;
  readonly command: string;
  /** When it took the lock, ISO 8601. */
  readonly since: string;
}

/** Looks at processes on this machine: undefined when there is none of that number, '' when its start is unknown. */
export type StartOf = (pid: number) => Promise<string | undefined>;

/** A lock of another machine, or one that can't be read, is given up after this. */
export const strangerMilliseconds = 600_000;
/** The text is complete before the lock appears; one that can't be read was torn by a power cut. */
export const tornMilliseconds = 10_000;

const field = (found: object, name: string): unknown =>
  Object.entries(found).find(([key]) => key === name)?.[1];

export function readHolder(text: string): Holder | undefined {
  let found: unknown;
  try {
    found = JSON.parse(text);
  } catch {
    return undefined;
  }
  if (typeof found !== 'object' || found === null) return undefined;
  const pid = field(found, 'pid');
  const host = field(found, 'host');
  if (typeof pid !== 'number' || !Number.isInteger(pid) || pid < 1 || typeof host !== 'string')
    return undefined;
  const word = (name: string): string => {
    const value = field(found, name);
    return typeof value === 'string' ? value : '';
  };
  return { pid, host, started: word('started'), command: word('command'), since: word('since') };
}

/** Whether the holder is gone and its lock may be taken over. */
export async function isGone(
  holder: Holder | undefined,
  ageMilliseconds: number,
  here: { readonly host: string; readonly startOf: StartOf },
): Promise<boolean> {
  if (!holder) return ageMilliseconds > tornMilliseconds;
  if (holder.host !== here.host) return ageMilliseconds > strangerMilliseconds;
  const started = await here.startOf(holder.pid);
  if (started === undefined) return true;
  if (started === '' || holder.started === '') return ageMilliseconds > strangerMilliseconds;
  return started !== holder.started;
}

export function describeHolder(holder: Holder | undefined): string {
  if (!holder) return 'another program';
  const command = holder.command === '' ? '' : ` (${holder.command})`;
  return `process ${holder.pid}${command} on ${holder.host}, since ${holder.since}`;
}

function exists(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (thrown) {
    // Somebody else's process may not be signalled, but it is there.
    return typeof thrown === 'object' && thrown !== null && 'code' in thrown && thrown.code === 'EPERM';
  }
}

/** The start of a process by proc(5): field 22 of `stat`, counted after the name in brackets; Z and X are dead. */
export const startOfProcess: StartOf = async (pid) => {
  if (!exists(pid)) return undefined;
  const stat = await unless(['ENOENT', 'ESRCH', 'EACCES', 'ENOTDIR'], () =>
    readFile(`/proc/${pid}/stat`, 'latin1'),
  );
  if (stat === undefined) return exists(pid) ? '' : undefined;
  const fields = stat.slice(stat.lastIndexOf(')') + 2).split(' ');
  return fields[0] === 'Z' || fields[0] === 'X' ? undefined : (fields[19] ?? '');
};

/** This process, as a holder. */
export async function thisProcess(command: string): Promise<Omit<Holder, 'since'>> {
  return {
    pid: process.pid,
    started: (await startOfProcess(process.pid)) ?? '',
    host: hostname(),
    command: command.slice(0, 80),
  };
}
