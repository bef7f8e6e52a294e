/** Runs a command line in-process, with a folder, a clock and a person of the test's own. */

import { cp, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { onTestFinished } from 'vitest';
import { run } from '../../src/cli.ts';
import type { Io } from '../../src/io.ts';

export interface Setting {
  readonly folder?: string;
  /** An ISO time; the clock stands still. */
  readonly now?: string;
  readonly columns?: number;
  readonly terminal?: boolean;
  /** What the person types at each question; then they leave. */
  readonly answers?: readonly string[];
  readonly environment?: Readonly<Record<string, string>>;
  readonly program?: readonly [node: string, script: string];
  /** Is told how far a command is, as on a terminal. */
  readonly progress?: (text: string) => void;
}

export interface Ran {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

const bin = fileURLToPath(new URL('../../bin/neckring.js', import.meta.url));

export async function neckring(words: readonly string[], setting: Setting = {}): Promise<Ran> {
  let out = '';
  let err = '';
  const answers = [...(setting.answers ?? [])];
  const io: Io = {
    out: (text) => {
      out += text;
    },
    err: (text) => {
      err += text;
    },
    outIsTerminal: setting.terminal ?? false,
    errIsTerminal: setting.terminal ?? false,
    canAsk: setting.answers !== undefined,
    ask: async (question) => {
      out += question;
      return answers.shift();
    },
    columns: setting.columns ?? 80,
    environment: setting.environment ?? {},
    workingFolder: setting.folder ?? tmpdir(),
    program: setting.program ?? [process.execPath, bin],
    now: () => Date.parse(setting.now ?? '2026-03-12T12:00:00Z'),
    random: () => 0.5,
    ...(setting.progress ? { progress: setting.progress } : {}),
  };
  const code = await run(words, io);
  return { code, out, err };
}

/** The value of a found leaf of a `--json` answer. */
export async function found(
  words: readonly string[],
  setting: Setting = {},
): Promise<Readonly<Record<string, unknown>>> {
  const { out } = await neckring([...words, '--json'], setting);
  const parsed: unknown = JSON.parse(out);
  return record(record(parsed)['found']);
}

export function record(value: unknown): Readonly<Record<string, unknown>> {
  if (typeof value !== 'object' || value === null) throw new Error(`not an object: ${JSON.stringify(value)}`);
  return Object.fromEntries(Object.entries(value));
}

export function leafValue(value: unknown): number {
  const number = record(value)['value'];
  if (typeof number !== 'number') throw new Error(`not a number leaf: ${JSON.stringify(value)}`);
  return number;
}

export function rows(value: unknown): readonly Readonly<Record<string, unknown>>[] {
  if (!Array.isArray(value)) throw new Error(`not a list: ${JSON.stringify(value)}`);
  return value.map(record);
}

/** A folder of the test's own, gone when the test ends. */
export async function scratchFolder(): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), 'neckring-'));
  onTestFinished(() => rm(folder, { recursive: true, force: true }));
  return folder;
}

/** A copy of the example ledger. */
export async function exampleLedger(): Promise<string> {
  const folder = await scratchFolder();
  await cp(new URL('../../examples/orange-cardamom', import.meta.url), folder, { recursive: true });
  return folder;
}

export const readIn = (folder: string, path: string): Promise<string> => readFile(join(folder, path), 'utf8');
export const writeIn = (folder: string, path: string, text: string): Promise<void> =>
  writeFile(join(folder, path), text);
