// How commands do on ledgers of 1,000, 3,000 and 10,000 trials, in one run: cold (nothing kept) as a multiple of what
// the yaml library takes to parse the same texts, the start of node taken off both; warm as a multiple of `node -e 0`;
// and the memory of the largest. Medians of paired runs.
// Usage: node tests/bench/size.mjs [rounds] [trials …]
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, rmSync, utimesSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { writeLedger } from './made-up-ledger.mjs';
import { median, printTable, timed } from './paired.mjs';

const rounds = Number(process.argv[2] ?? 7);
const sizes = process.argv.length > 3 ? process.argv.slice(3).map(Number) : [1000, 3000, 10_000];
const root = resolve(import.meta.dirname, '../..');
const bin = resolve(root, 'bin/neckring.js');
const coldMost = 1.4;
const warmMost = { 3000: 3, 10000: 6 };

/** Each command, with what is asked of it warm. */
const commandsFor = (size) => [
  ['list', ['list'], true],
  ['due', ['due'], true],
  ['look, written', ['look', String(size), 'clear'], true],
  ['series', ['series', 'ladder 3'], false],
  ['check', ['check'], false],
];

const parser = (folder) => `const { readdirSync, readFileSync } = require('node:fs');
const { parseDocument } = require(${JSON.stringify(resolve(root, 'node_modules/yaml'))});
for (const kind of ['trials', 'series'])
  for (const name of readdirSync(${JSON.stringify(folder)} + '/' + kind))
    parseDocument(readFileSync(${JSON.stringify(folder)} + '/' + kind + '/' + name, 'utf8'));
`;

/** The largest resident memory of a command in MB, as the process itself says at its end. */
function memoryOf(words, folder) {
  const script = `process.on('exit', () => process.stderr.write('peak ' + process.resourceUsage().maxRSS));
process.argv = [process.execPath, 'neckring', ...${JSON.stringify(words)}];
require(${JSON.stringify(resolve(root, 'bin/load-bundle.js'))}).load('main.cjs').main();`;
  const { stderr } = spawnSync(process.execPath, ['-e', script], { cwd: folder, encoding: 'utf8' });
  return Number(/peak (\d+)$/.exec(stderr)?.[1] ?? Number.NaN) / 1024;
}

const rows = [];
for (const size of sizes) {
  const commands = commandsFor(size);
  const folder = mkdtempSync(join(tmpdir(), 'neckring-size-'));
  writeLedger(folder, size);
  // As if they had lain there: what changed a moment ago is never kept.
  const old = Date.now() / 1000 - 3600;
  for (const name of readdirSync(join(folder, 'trials'))) utimesSync(join(folder, 'trials', name), old, old);
  const parse = join(folder, 'parse.cjs');
  writeFileSync(parse, parser(folder));
  await new Promise((done) => setTimeout(done, 3000));
  const times = new Map();
  const note = (name, argv) => {
    const { milliseconds, status } = timed(argv, { cwd: folder });
    if (status > 1) throw new Error(`${name} ended with ${status}`);
    times.set(name, [...(times.get(name) ?? []), milliseconds]);
  };
  for (let round = 0; round < rounds; round += 1) {
    note('start', ['-e', '0']);
    note('library', [parse]);
    for (const [name, words] of commands) {
      rmSync(join(folder, '.neckring'), { recursive: true, force: true });
      note(`${name} cold`, [bin, ...words]);
    }
    timed([bin, 'list'], { cwd: folder });
    for (const [name, words, isWarm] of commands) if (isWarm) note(`${name} warm`, [bin, ...words]);
  }
  const start = times.get('start');
  const over = (name) => times.get(name).map((one, at) => one - start[at]);
  for (const [name, words, isWarm] of commands) {
    const cold = median(over(`${name} cold`).map((one, at) => one / over('library')[at]));
    const warm = isWarm ? median(times.get(`${name} warm`).map((one, at) => one / start[at])) : undefined;
    const most = isWarm ? warmMost[size] : undefined;
    const memory = memoryOf(words, folder);
    rows.push([size, name, cold.toFixed(2), coldMost, warm?.toFixed(2) ?? '', most ?? '', memory.toFixed(0)]);
  }
  rmSync(folder, { recursive: true, force: true });
}
printTable(
  ['trials', 'command', 'cold / library', 'at most', 'warm / node -e 0', 'at most', 'memory MB'],
  rows,
);
