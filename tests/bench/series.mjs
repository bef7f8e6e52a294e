// How long `neckring series` and `next` take for forty beakers beside `node -e 0`, in one run: medians of paired runs.
// Usage: node tests/bench/series.mjs [rounds] [beakers] [bin]
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { paired, printTable, timed } from './paired.mjs';

const rounds = Number(process.argv[2] ?? 15);
const count = Number(process.argv[3] ?? 40);
const atMost = 3;
const root = resolve(import.meta.dirname, '../..');
const bin = resolve(process.argv[4] ?? join(root, 'bin/neckring.js'));

const bench = `ledger: 1
bench:
  time zone: Europe/Lisbon
  temperature: 20 C
  viewed: black card, lamp from the side
  tastes:
    - soapy
    - bright
`;
const series = 'series: ladder\nquestion: how much oil?\nvaries: oil per emulsifier\nsame:\n  - emulsifier\n';

/** Ten days of four beakers around a break at a third; one of them is odd. */
function trialText(number) {
  const ratio = 0.2 * 3 ** ((number - 1) / Math.max(1, count - 1));
  const holds = ratio < 1 / 3 && number !== 16;
  const made = 1 + (number % 10);
  const at = (after) => `2026-03-${String(made + after).padStart(2, '0')}T10:00+00:00`;
  const looks = (holds ? [1, 2, 4, 7] : [1, 2, 4]).map(
    (after) => `  - at: ${at(after)}\n    look: ${!holds && after === 4 ? 'hazy' : 'clear'}\n`,
  );
  return `# beaker ${number}
trial: ${number}
made: ${at(0)}
series: ladder
stages:
  emulsion:
    process:
      - do: warm
        what: oil and emulsifier
        to: 60 C
        stir: 400 rpm
      - do: add
        what: water
        over: 4 min
    items:
      - sweet orange oil: ${(6 * ratio).toFixed(2)} g
        weighed: ${(6 * ratio + 0.01).toFixed(2)} g
      - polysorbate 80: 6 g
      - propylene glycol: 6 g
      - water: to 50 g
observations:
${looks.join('')}`;
}

const folder = mkdtempSync(join(tmpdir(), 'neckring-bench-'));
for (const name of ['trials', 'series']) mkdirSync(join(folder, name));
writeFileSync(join(folder, 'bench.yaml'), bench);
writeFileSync(join(folder, 'series/ladder.yaml'), series);
for (let number = 1; number <= count; number++)
  writeFileSync(join(folder, 'trials', `${String(number).padStart(4, '0')}.yaml`), trialText(number));

const commands = [
  ['series', 'ladder'],
  ['next', 'ladder'],
];
for (const words of commands) {
  const { status } = timed([bin, ...words], { cwd: folder });
  if (status !== 0) throw new Error(`${words.join(' ')} ended with ${status}`);
}
const [bare, ...rest] = paired([['-e', '0'], ...commands.map((words) => [bin, ...words])], rounds, {
  cwd: folder,
});
printTable(
  ['run', 'median ms', 'times node -e 0', 'at most'],
  [
    ['node -e 0', bare.median.toFixed(0), '1', ''],
    ...rest.map(({ median, ratio }, at) => [
      `${commands[at].join(' ')}, ${count} beakers`,
      median.toFixed(0),
      ratio.toFixed(2),
      atMost,
    ]),
  ],
);
rmSync(folder, { recursive: true, force: true });
