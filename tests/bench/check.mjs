// How long `neckring check` takes on 1,000 trials beside the yaml library parsing the same texts, in one run:
// medians of paired runs, the start of node taken off each.
// Usage: node tests/bench/check.mjs [rounds] [trials]
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { writeLedger } from './made-up-ledger.mjs';
import { median, printTable, timed } from './paired.mjs';

const rounds = Number(process.argv[2] ?? 15);
const count = Number(process.argv[3] ?? 1000);
const atMost = 1.4;
const root = resolve(import.meta.dirname, '../..');
const bin = resolve(root, 'bin/neckring.js');

const folder = mkdtempSync(join(tmpdir(), 'neckring-bench-'));
writeLedger(folder, count);

// The library alone: the same files read and parsed, nothing done with them.
const parser = join(folder, 'parse.cjs');
writeFileSync(
  parser,
  `const { readdirSync, readFileSync } = require('node:fs');
const { parseDocument } = require(${JSON.stringify(resolve(root, 'node_modules/yaml'))});
for (const kind of ['trials', 'series'])
  for (const name of readdirSync(kind)) parseDocument(readFileSync(kind + '/' + name, 'utf8'));
`,
);

const runs = { start: ['-e', '0'], check: [bin, 'check'], library: [parser] };
const times = { start: [], check: [], library: [] };
for (let round = 0; round < rounds; round++) {
  for (const [name, argv] of Object.entries(runs)) {
    const { milliseconds, status } = timed(argv, { cwd: folder });
    if (status !== 0) throw new Error(`${name} ended with ${status}`);
    times[name].push(milliseconds);
  }
}
const over = (name) => times[name].map((one, at) => one - times.start[at]);
const ratio = median(over('check').map((one, at) => one / over('library')[at]));
printTable(
  ['run', 'median ms', 'over node -e 0', 'times the library', 'at most'],
  [
    ['node -e 0', median(times.start).toFixed(0), '', '', ''],
    [
      `check, ${count} trials`,
      median(times.check).toFixed(0),
      median(over('check')).toFixed(0),
      ratio.toFixed(2),
      atMost,
    ],
    ['yaml library alone', median(times.library).toFixed(0), median(over('library')).toFixed(0), '1', ''],
  ],
);
rmSync(folder, { recursive: true, force: true });
