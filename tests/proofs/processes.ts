/** Other processes that run commands on a ledger, to be let run or killed. */

import { spawn, spawnSync } from 'node:child_process';
import { chmod, mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build } from 'esbuild';
import { afterAll, beforeAll } from 'vitest';

export interface Ended {
  readonly code: number | null;
  /** How many commands said that they were done. */
  readonly said: number;
  readonly complaint: string;
}

export interface Job {
  readonly folder: string;
  readonly name: string;
  readonly count: number;
  readonly kind: string;
  /** Killed this long after its first command. */
  readonly killAfterMilliseconds?: number;
}

/** Builds the runner once for a test file; what it returns starts one. */
export function commandRunners(): {
  readonly start: (job: Job) => Promise<Ended>;
  readonly scratch: () => string;
} {
  let scratch = '';
  let script = '';
  beforeAll(async () => {
    scratch = await mkdtemp(join(tmpdir(), 'neckring-proof-'));
    script = join(scratch, 'runner.mjs');
    await build({
      entryPoints: [join(import.meta.dirname, 'command-runner.ts')],
      outfile: script,
      bundle: true,
      platform: 'node',
      format: 'esm',
      banner: {
        js: "import { createRequire } from 'node:module'; const require = createRequire(import.meta.url);",
      },
      logLevel: 'silent',
    });
  }, 60_000);
  afterAll(() => rm(scratch, { recursive: true, force: true }));
  return { start: (job) => started(script, job), scratch: () => scratch };
}

function started(script: string, job: Job): Promise<Ended> {
  const { folder, name, count, kind, killAfterMilliseconds } = job;
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [script, folder, name, String(count), kind]);
    let said = 0;
    let complaint = '';
    child.stdout.on('data', (data: Buffer) => {
      if (said === 0 && killAfterMilliseconds !== undefined)
        setTimeout(() => child.kill('SIGKILL'), killAfterMilliseconds);
      said += data.toString().split('\n').length - 1;
    });
    child.stderr.on('data', (data: Buffer) => {
      complaint += data.toString();
    });
    child.on('error', reject);
    child.on('close', (code) => resolve({ code, said, complaint }));
  });
}

interface As {
  readonly uid?: number;
  readonly gid?: number;
}

/** Builds the program once for a test file, in a folder that anybody may read; what it returns runs it to its end. */
export function programRunner() {
  let scratch = '';
  beforeAll(async () => {
    scratch = await mkdtemp(join(tmpdir(), 'neckring-program-'));
    await chmod(scratch, 0o755);
    await build({
      stdin: {
        contents: "import { main } from './main.ts'; await main();",
        resolveDir: join(import.meta.dirname, '../../src'),
        loader: 'ts',
      },
      outfile: join(scratch, 'program.mjs'),
      bundle: true,
      platform: 'node',
      format: 'esm',
      banner: {
        js: "import { createRequire } from 'node:module'; const require = createRequire(import.meta.url);",
      },
      logLevel: 'silent',
    });
  }, 60_000);
  afterAll(() => rm(scratch, { recursive: true, force: true }));
  return {
    run: (folder: string, words: readonly string[], as: As = {}) =>
      spawnSync(process.execPath, [join(scratch, 'program.mjs'), ...words], {
        cwd: folder,
        encoding: 'utf8',
        env: { PATH: process.env['PATH'] ?? '' },
        ...as,
      }),
  };
}
