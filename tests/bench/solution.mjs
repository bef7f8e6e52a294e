// How many pH solves one core does in a second of its own time, whatever else the machine does, on drinks of an
// everyday kind, each another.
// Usage: node tests/bench/solution.mjs [solves]

import { median, printTable } from './paired.mjs';
import { finishedAcidity, solvePh, titrate } from './solution-source.mjs';

const solves = Number(process.argv[2] ?? 5000);
const ROUNDS = 5;
const ASKED = 5000;

/** Drinks from a fixed row of numbers, so that every run solves the same. */
function* drinks(seed) {
  let state = seed;
  const random = () => {
    state = (state * 1_103_515_245 + 12_345) % 2_147_483_648;
    return state / 2_147_483_648;
  };
  for (;;)
    yield [
      { substance: 'citric acid', molesPerKilogramWater: 0.005 + 0.04 * random() },
      { substance: 'malic acid', molesPerKilogramWater: 0.01 * random() },
      { substance: 'trisodium citrate dihydrate', molesPerKilogramWater: 0.008 * random() },
      { substance: 'sodium benzoate', molesPerKilogramWater: 0.001 * random() },
      { substance: 'calcium bicarbonate', molesPerKilogramWater: 0.001 * random() },
    ];
}

function perSecond(solve, seed) {
  const each = drinks(seed);
  const started = process.cpuUsage();
  for (let at = 0; at < solves; at++) solve(each.next().value);
  const { user, system } = process.cpuUsage(started);
  return (solves / (user + system)) * 1e6;
}

const kinds = [
  ['pH by charge balance', solvePh],
  ['titratable acidity to pH 8.2', titrate],
  ['both, as drink does for a stage', finishedAcidity],
];

printTable(
  ['solve', 'cold, a second', 'warm, a second', 'asked', 'warm / asked'],
  kinds.map(([name, solve], kind) => {
    const runs = Array.from({ length: ROUNDS }, (_, round) => perSecond(solve, kind * 100 + round + 1));
    const warm = median(runs.slice(1));
    const asked = kind === 0 ? ASKED : '';
    return [name, Math.round(runs[0]), Math.round(warm), asked, kind === 0 ? (warm / ASKED).toFixed(2) : ''];
  }),
);
