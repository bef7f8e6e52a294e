// A ledger of any size as a bench fills it: ladders of ten trials, looked at day by day until they failed or were poured
// away, with comments and notes; only the newest are still watched. Invented, no two trials alike.
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

const bench = `ledger: 1
bench:
  time zone: Europe/Lisbon
  drop: 0.030 g          # water from the glass dropper
  temperature: 20 C
  looks:
    - 1 d
    - 2 d
    - 4 d
    - 7 d
  long watch:
    - 30 d
    - 90 d
  tastes:
    - soapy
    - bright
`;

const day = 86_400_000;
const rungs = 10;
const iso = (epoch) => `${new Date(epoch).toISOString().slice(0, 16)}+00:00`;

/** When the trial was made: ladders of ten, three days apart, the last ladder a day before `now`. */
const madeAt = (number, count, now) =>
  now - day * (1 + 3 * Math.floor((count - number) / rungs)) - (number % rungs) * 600_000;

function observations(number, made, now) {
  const failsOn = [99, 99, 99, 99, 7, 7, 4, 2, 1, 1][number % rungs];
  const lines = [];
  for (const after of [1, 2, 4, 7, 30, 90]) {
    const at = made + after * day + (number % 7) * 60_000;
    if (at > now) break;
    const look = after < failsOn ? 'clear' : ['bluish', 'hazy', 'hazy, ring'][number % 3];
    lines.push(`  - at: ${iso(at)}`, `    look: ${look}`);
    if (after === 2)
      lines.push(`    note: black card, lamp from the side; smell ${number % 4 ? 'clean' : 'faint'}`);
    if (after >= failsOn) return lines;
  }
  if (now - made > 91 * day) lines.push(`  - at: ${iso(made + 91 * day)}`, '    ended: poured away');
  return lines;
}

export function trialText(number, count, now) {
  const made = madeAt(number, count, now);
  const oil = (0.6 + 0.22 * (number % rungs) + (number % 13) / 500).toFixed(2);
  const seen = observations(number, made, now);
  return `# beaker ${number}, shelf ${1 + (number % 3)}
trial: ${number}
title: sweet orange, rung ${1 + (number % rungs)} of ladder ${1 + Math.floor(number / rungs)}
made: ${iso(made)}
${number > 1 ? `from: ${number - 1}\n` : ''}why: how far does this much emulsifier reach?
series: ladder ${1 + Math.floor(number / rungs)}
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
${seen.length > 0 ? `observations:\n${seen.join('\n')}\n` : ''}`;
}

/** Writes the ledger into a folder that is there. */
export function writeLedger(folder, count, now = Date.now()) {
  for (const name of ['trials', 'series']) mkdirSync(join(folder, name), { recursive: true });
  writeFileSync(join(folder, 'bench.yaml'), bench);
  for (let number = 1; number <= count; number += 1)
    writeFileSync(
      join(folder, 'trials', `${String(number).padStart(5, '0')}.yaml`),
      trialText(number, count, now),
    );
  for (let ladder = 1; ladder <= 1 + Math.floor(count / rungs); ladder += 1)
    writeFileSync(
      join(folder, 'series', `ladder-${ladder}.yaml`),
      `series: ladder ${ladder}\nquestion: where does it break?\nvaries: oil per emulsifier\njudge: beaker\n`,
    );
}
