// How long commands take beside `node -e 0`, in one run: medians of paired runs.
// Usage: npm run bench [rounds]
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { paired, printTable } from './paired.mjs';

const rounds = Number(process.argv[2] ?? 31);
const bin = resolve(import.meta.dirname, '../../bin/neckring.js');
const folder = mkdtempSync(join(tmpdir(), 'neckring-bench-'));
const commands = [
  ['acid', ['acid', '--acid', '40 g citric acid', '--drink', '8 L'], 1.6],
  [
    'hlb',
    ['hlb', '--target', '12', '--emulsifier', '1 g polysorbate 80', '--emulsifier', '1 g sorbitan oleate'],
    1.6,
  ],
  ['emulsifier', ['emulsifier', '--batch', '50 g', '--oil', '4%', '--ratio', '1:2'], 1.6],
  ['--help', ['--help'], 1.6],
  ['acid, with a sum', ['acid', '--acid', '2 * 20 g citric acid', '--drink', '8 L'], undefined],
];
const results = paired([['-e', '0'], ...commands.map(([, words]) => [bin, ...words])], rounds, {
  cwd: folder,
});
printTable(
  ['command', 'median ms', 'times node -e 0', 'at most'],
  results.map((result, at) => [
    at === 0 ? 'node -e 0' : commands[at - 1][0],
    result.median.toFixed(1),
    result.ratio.toFixed(2),
    at === 0 ? '' : (commands[at - 1][2] ?? ''),
  ]),
);
rmSync(folder, { recursive: true, force: true });
