// How commands do on ledgers of 1,000, 3,000 and 10,000 trials, in one run: cold (nothing kept) as a multiple of what
// the yaml library takes to parse the same texts, the start of node taken off both; warm as a multiple of `node -e 0`;
// and the memory of the largest. Medians of paired runs.
// Usage: node tests/bench/size.mjs [rounds] [trials …]; `sizeRows` gives the rows to a table of all benches
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, rmSync, utimesSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { writeLedger } from './made-up-ledger.mjs';
import { median, printTable, timed } from './paired.mjs';

const usualSizes = [1000, 3000, 10_000];
const mostMegabytes = 300;
/** Each size takes about as long as the others together: the larger, the fewer rounds. */
const roundsFor = (size) => (size <= 1000 ? 5 : size <= 3000 ? 5 : 3);
const warmRounds = 9;
const root = resolve(process.env.NECKRING_BUILD ?? resolve(import.meta.dirname, '../..'));
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

export const sizeHead = [
  'trials',
  'command',
  'cold / library',
  'at most',
  'warm / node -e 0',
  'at most',
  'memory cold MB',
  'warm MB',
  'at most',
];

/** One row a command and size. */
export async function sizeRows({ rounds, sizes = usualSizes } = {}) {
  const rows = [];
  for (const size of sizes) rows.push(...(await rowsOf(size, rounds ?? roundsFor(size))));
  return rows;
}

async function rowsOf(size, rounds) {
  const rows = [];
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
    note('cold start', ['-e', '0']);
    note('library', [parse]);
    for (const [name, words] of commands) {
      rmSync(join(folder, '.neckring'), { recursive: true, force: true });
      note(`${name} cold`, [bin, ...words]);
    }
  }
  timed([bin, 'list'], { cwd: folder });
  for (let round = 0; round < Math.max(rounds, warmRounds); round += 1) {
    note('start', ['-e', '0']);
    for (const [name, words, isWarm] of commands) if (isWarm) note(`${name} warm`, [bin, ...words]);
  }
  const start = times.get('start');
  const coldStart = times.get('cold start');
  const over = (name) => times.get(name).map((one, at) => one - coldStart[at]);
  for (const [name, words, isWarm] of commands) {
    const cold = median(over(`${name} cold`).map((one, at) => one / over('library')[at]));
    const warm = isWarm ? median(times.get(`${name} warm`).map((one, at) => one / start[at])) : undefined;
    const most = isWarm ? warmMost[size] : undefined;
    const warmMemory = isWarm ? memoryOf(words, folder).toFixed(0) : '';
    rmSync(join(folder, '.neckring'), { recursive: true, force: true });
    const memory = memoryOf(words, folder).toFixed(0);
    const ratios = [cold.toFixed(2), coldMost, warm?.toFixed(2) ?? '', most ?? ''];
    rows.push([size, name, ...ratios, memory, warmMemory, mostMegabytes]);
    timed([bin, 'list'], { cwd: folder });
  }
  rmSync(folder, { recursive: true, force: true });
  return rows;
}

if (import.meta.filename === process.argv[1]) {
  const [rounds, ...sizes] = process.argv.slice(2).map(Number);
  printTable(sizeHead, await sizeRows({ rounds, ...(sizes.length > 0 ? { sizes } : {}) }));
}
