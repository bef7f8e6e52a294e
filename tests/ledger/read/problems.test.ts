import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { checkLedger } from '../../../src/ledger/checks.ts';
import { readLedger } from '../../../src/ledger/folder.ts';
import { diskReadPort, type ReadPort } from '../../../src/ledger/port.ts';
import type { Problem } from '../../../src/problem.ts';
import { problemLine } from './problem-line.ts';
import { shelf } from './shelf.ts';

const folder = resolve(import.meta.dirname, '../../fixtures/problems');
const codes = readdirSync(folder);

/** Ledgers without a bench of their own stand in Lisbon. */
const bench = 'ledger: 1\nbench:\n  time zone: Europe/Lisbon\n';

function portOf(root: string): ReadPort {
  const path = join(root, 'bench.yaml');
  const isMissing = !existsSync(path);
  return {
    ...diskReadPort,
    sizeOf: (asked) => (isMissing && asked === path ? bench.length : diskReadPort.sizeOf(asked)),
    read: (asked) => (isMissing && asked === path ? Buffer.from(bench) : diskReadPort.read(asked)),
    now: () => Date.UTC(2026, 3, 1),
  };
}

async function problemsOf(code: string): Promise<readonly Problem[]> {
  const root = join(folder, code);
  return checkLedger(await readLedger(root, portOf(root)), shelf);
}

/** The wording is ours: what there is to check is that each slip is found at its place, and nothing else is. */
describe('pinned: the problems of small ledgers, each with one kind of slip', () => {
  it.each(codes)('%s', async (code) => {
    const problems = await problemsOf(code);
    const expected = readFileSync(join(folder, code, 'expected.txt'), 'utf8')
      .trimEnd()
      .split('\n');
    expect(problems.map(problemLine)).toEqual(expected);
    if (code !== 'all-at-once') expect(problems.map((problem) => problem.code)).toContain(code);
  });
});
