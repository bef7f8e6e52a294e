import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { textsIn } from './writers.ts';

const root = resolve(import.meta.dirname, '../..');

/** Loaded before the program: reading or renaming one file fails without the code that a disk would give. */
const breaking = `const fs = require('node:fs');
const files = require('node:fs/promises');
const [read, rename] = [fs.readFileSync, files.rename];
const breaks = process.env.BREAKS;
fs.readFileSync = (path, ...more) => {
  if (breaks === 'read' && String(path).endsWith('0014-orange-1-to-2.5.yaml')) throw new TypeError('\\u001b[31mours\\nindeed');
  return read(path, ...more);
};
files.rename = (from, to) => {
  if (breaks === 'write' && String(to).endsWith('0014-orange-1-to-2.5.yaml')) throw new TypeError('ours');
  return rename(from, to);
};
`;

describe('a defect of ours, in the program as it is built', () => {
  let place = '';
  let folder = '';
  beforeAll(() => {
    place = mkdtempSync(join(tmpdir(), 'neckring-defect-'));
    for (const part of ['src', 'bin', 'examples', 'build.mjs', 'package.json'])
      cpSync(join(root, part), join(place, part), { recursive: true });
    symlinkSync(join(root, 'node_modules'), join(place, 'node_modules'));
    const built = spawnSync(process.execPath, ['build.mjs'], { cwd: place, encoding: 'utf8' });
    if (built.status !== 0) throw new Error(built.stderr);
    writeFileSync(join(place, 'breaking.cjs'), breaking);
    folder = join(place, 'examples/orange-cardamom');
  }, 60_000);
  afterAll(() => rmSync(place, { recursive: true, force: true }));

  const run = (words: readonly string[], environment: Readonly<Record<string, string>>) =>
    spawnSync(
      process.execPath,
      ['--require', join(place, 'breaking.cjs'), join(place, 'bin/neckring.js'), ...words],
      {
        cwd: folder,
        encoding: 'utf8',
        env: { PATH: process.env['PATH'] ?? '', ...environment },
      },
    );

  it.each([[['show', '14']], [['show', '14', '--json']], [['reckon', '14']]])(
    '%j: exit 70, one line that says what to report, no stack',
    (words) => {
      const ran = run(words, { BREAKS: 'read' });
      expect([ran.status, ran.stdout]).toEqual([70, '']);
      expect(ran.stderr).toBe(
        'neckring: a defect of ours (TypeError: ␛[31mours␊indeed); please report this line with what you typed; nothing more was written\n',
      );
    },
  );

  it('NECKRING_DEBUG=1 shows the stack below the same line; any other value does not', () => {
    const plain = run(['show', '14'], { BREAKS: 'read' });
    const shown = run(['show', '14'], { BREAKS: 'read', NECKRING_DEBUG: '1' });
    expect([shown.status, shown.stderr.startsWith(plain.stderr)]).toEqual([70, true]);
    expect(shown.stderr.slice(plain.stderr.length)).toMatch(/^TypeError: [\s\S]*\n {4}at /);
    expect(run(['show', '14'], { BREAKS: 'read', NECKRING_DEBUG: '0' }).stderr).toBe(plain.stderr);
  });

  it('in the middle of writing it leaves the files as they were, and the ledger free', () => {
    const before = textsIn(folder);
    const ran = run(['look', '13-15', 'hazy'], { BREAKS: 'write' });
    expect([ran.status, ran.stderr.split('\n').length]).toEqual([70, 2]);
    expect(textsIn(folder)).toEqual(before);
    expect(run(['look', '13-15', 'hazy'], {}).status).toBe(0);
  });

  it('without one the exit is 0', () => {
    expect(run(['show', '14'], {}).status).toBe(0);
  });
});
