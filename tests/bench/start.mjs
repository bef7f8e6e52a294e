// How long commands take beside `node -e 0`, in one run: medians of paired runs. Quick calculators and help outside a
// ledger; commands that read a ledger in one of ten trials.
// Usage: node tests/bench/start.mjs [rounds]
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { writeLedger } from './made-up-ledger.mjs';
import { paired, printTable } from './paired.mjs';

const usualRounds = 31;
const bin = resolve(import.meta.dirname, '../../bin/neckring.js');
const outside = [
  ['acid', ['acid', '--acid', '40 g citric acid', '--drink', '8 L'], 1.35],
  [
    'hlb',
    ['hlb', '--target', '12', '--emulsifier', '1 g polysorbate 80', '--emulsifier', '1 g sorbitan oleate'],
    1.35,
  ],
  ['emulsifier', ['emulsifier', '--batch', '50 g', '--oil', '4%', '--ratio', '1:2'], 1.35],
  ['brix', ['brix', '--brix', '65'], 1.35],
  ['ph', ['ph', '4.5 g/L citric acid'], 1.35],
  ['--help', ['--help'], 1.35],
  ['acid, with a sum', ['acid', '--acid', '2 * 20 g citric acid', '--drink', '8 L'], undefined],
];
const inside = [
  ['Tab after show', ['complete-words', 'bash', 'neckring show '], 1.7],
  ['list', ['list'], 1.7],
  ['due', ['due'], 1.7],
  ['show', ['show', '7'], 1.7],
  ['check', ['check'], 1.7],
  ['look', ['look', '7', 'clear', '--dry-run'], 1.7],
];

function rows(commands, cwd, rounds) {
  const results = paired([['-e', '0'], ...commands.map(([, words]) => [bin, ...words])], rounds, { cwd });
  return results.map(({ median, ratio }, at) => {
    const [name, , most = ''] = commands[at - 1] ?? ['node -e 0'];
    return [name, median.toFixed(1), ratio.toFixed(2), most];
  });
}

export const startHead = ['command', 'median ms', 'times node -e 0', 'at most'];

/** One row a command, and one for `node -e 0` before those of each folder. */
export function startRows(rounds = usualRounds) {
  const empty = mkdtempSync(join(tmpdir(), 'neckring-bench-'));
  const ledger = mkdtempSync(join(tmpdir(), 'neckring-bench-'));
  writeLedger(ledger, 10);
  const all = [...rows(outside, empty, rounds), ...rows(inside, ledger, rounds)];
  for (const folder of [empty, ledger]) rmSync(folder, { recursive: true, force: true });
  return all;
}

if (import.meta.filename === process.argv[1])
  printTable(startHead, startRows(process.argv[2] === undefined ? undefined : Number(process.argv[2])));
