// How long `neckring check` takes on 1,000 trials beside the yaml library parsing the same texts, in one run:
// medians of paired runs, the start of node taken off each.
// Usage: node tests/bench/check.mjs [rounds] [trials]
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { median, printTable, timed } from './paired.mjs';

const rounds = Number(process.argv[2] ?? 15);
const count = Number(process.argv[3] ?? 1000);
const atMost = 1.6;
const root = resolve(import.meta.dirname, '../..');
const bin = resolve(root, 'bin/neckring.js');

const bench = `ledger: 1
bench:
  time zone: Europe/Lisbon
  drop: 0.030 g          # water from the glass dropper
  temperature: 20 C
  tastes:
    - soapy
    - bright
`;

const pair = (number) => String(number).padStart(2, '0');

/** A trial of about 33 lines as people type them, no two alike. */
function trialText(number) {
  const day = 1 + (number % 27);
  const month = 1 + (Math.floor(number / 27) % 12);
  const made = `2024-${pair(month)}-${pair(day)}`;
  const oil = (1 + (number % 40) / 16).toFixed(2);
  const look = ['clear', 'bluish', 'hazy', 'hazy, ring'][number % 4];
  return `# beaker ${number}, third shelf
trial: ${number}
title: sweet orange, beaker ${number}
made: ${made}T10:15+00:00
${number > 1 ? `from: ${number - 1}\n` : ''}why: how far does this much emulsifier reach?
stages:
  emulsion:
    process:
      - do: warm
        what: oil and emulsifier
        to: 60 C               # in the water bath
        stir: 400 rpm
      - do: add
        what: water
        over: 3 min
    items:
      - sweet orange oil: ${oil} g
        weighed: ${(Number(oil) + 0.01).toFixed(2)} g
      - polysorbate 80: 6 g
        weighed: 6.0${number % 10} g
      - propylene glycol: 6 g
      - water: to 50 g         # q.s.
samples:
  beaker:
    of: emulsion
    in: 100 mL glass beaker
    cover: film
observations:
  - at: ${made}T18:30+00:00
    look: clear
  - at: ${made}T21:0${number % 10}+00:00
    look: ${look}
    note: seen against the black card, ${number % 3} h after stirring
`;
}

const folder = mkdtempSync(join(tmpdir(), 'neckring-bench-'));
mkdirSync(join(folder, 'trials'));
writeFileSync(join(folder, 'bench.yaml'), bench);
for (let number = 1; number <= count; number++)
  writeFileSync(join(folder, 'trials', `${String(number).padStart(4, '0')}.yaml`), trialText(number));

// The library alone: the same files read and parsed, nothing done with them.
const parser = join(folder, 'parse.cjs');
writeFileSync(
  parser,
  `const { readdirSync, readFileSync } = require('node:fs');
const { parseDocument } = require(${JSON.stringify(resolve(root, 'node_modules/yaml'))});
for (const name of readdirSync('trials')) parseDocument(readFileSync('trials/' + name, 'utf8'));
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
