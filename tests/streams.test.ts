import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { buildSync } from 'esbuild';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

const folder = mkdtempSync(join(tmpdir(), 'neckring-streams-'));
const script = join(folder, 'writes.cjs');
const big = 3_000_000;

/** Runs a line of the shell, in which `$0` is node and `$1` writes 3 MB and a last line, and ends with 3. */
const shell = (line: string, setting: { readonly stdio?: 'pipe' | 'ignore' } = {}) =>
  spawnSync('sh', ['-c', line, process.execPath, script], {
    cwd: folder,
    encoding: 'utf8',
    maxBuffer: 2 * big,
    ...setting,
  });

beforeAll(() => {
  buildSync({
    stdin: {
      contents: `import { openStream } from './src/streams.ts';
        // Node's own stream sets a pipe so that it does not wait for its reader, for every program that shares it.
        if (process.argv[2] === 'no-wait') process.stdout.write('');
        const [out, err] = [openStream('stdout'), openStream('stderr')];
        out.write('x'.repeat(${big}));
        out.write('é\\n');
        err.write(String(out.isTerminal));
        process.exitCode = 3;
        if (out.hasLeft() && err.hasLeft()) process.exit();`,
      resolveDir: resolve(import.meta.dirname, '..'),
    },
    outfile: script,
    bundle: true,
    platform: 'node',
    format: 'cjs',
    logLevel: 'silent',
  });
});

afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe.skipIf(process.platform === 'win32')('what is written', () => {
  it('reaches a pipe whole and in order, however slow its reader', () => {
    const { stdout } = shell(`"$0" "$1" 2>told | { sleep 0.3; cat; }`);
    expect([stdout.length, stdout.slice(-3)]).toEqual([big + 2, 'xé\n']);
    expect(readFileSync(join(folder, 'told'), 'utf8')).toBe('false');
  });

  it('reaches a pipe that does not wait whole and in order', () => {
    const { stdout } = shell(`"$0" "$1" no-wait 2>/dev/null | { sleep 0.3; cat; }`);
    expect([stdout.length, stdout.slice(-3)]).toEqual([big + 2, 'xé\n']);
  });

  it('reaches a file whole', () => {
    const ran = shell(`"$0" "$1" >file`);
    expect([ran.status, ran.stderr]).toEqual([3, 'false']);
    expect(readFileSync(join(folder, 'file'), 'utf8').slice(-3)).toBe('xé\n');
  });

  it('a closed pipe ends the program without a word, and the null device is no terminal', () => {
    expect(shell(`"$0" "$1" | head -c 3`).stderr).toBe('');
    expect(shell(`"$0" "$1" >/dev/null`).stderr).toBe('false');
  });
});
