import {
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { writeLedger } from '../../bench/made-up-ledger.mjs';
import { neckring } from '../../commands/neckring.ts';

// As if it had been built, and as if what was written just now had lain there for a minute.
vi.mock('../../../src/build-mark.ts', () => ({ buildMark: 'a test' }));
vi.mock('../../../src/ledger/watch/keep-port.ts', async (original) => {
  const real = await original<typeof import('../../../src/ledger/watch/keep-port.ts')>();
  return {
    ...real,
    diskKeepPort: (root: string, self: string) => {
      const disk = real.diskKeepPort(root, self);
      return { ...disk, tick: () => (disk.tick() ?? 0) + 60_000 };
    },
  };
});

const count = 120;
const day = 86_400_000;
const now = Date.parse('2026-03-12T12:00:00Z');
let folder = '';

const trial = (number: number): string => join(folder, 'trials', `${String(number).padStart(5, '0')}.yaml`);
const kept = (): string => join(folder, '.neckring');
const series = (number: number): string => join(folder, 'series', `ladder-${number}.yaml`);

/** Does something to a file that may have gone. */
function tryTo(action: () => void): void {
  try {
    action();
  } catch {
    // It had gone.
  }
}

/** Writes another text; with its length and times kept where `isHidden`. */
function changed(path: string, change: (text: string) => string, isHidden = false): void {
  tryTo(() => {
    const text = readFileSync(path, 'utf8');
    writeFileSync(path, change(text));
    if (isHidden) utimesSync(path, 1_700_000_000, 1_700_000_000);
  });
}

const seen = (at: number, what: string) => (text: string) =>
  `${text.trimEnd()}\n${text.includes('\nobservations:') ? '' : 'observations:\n'}  - at: ${new Date(at).toISOString().slice(0, 16)}+00:00\n    ${what}\n`;

/** Each takes a number and does one thing that people, editors or git do. */
const deeds: readonly ((number: number) => void)[] = [
  (number) => changed(trial(number), seen(now, 'look: hazy')),
  (number) => changed(trial(number), seen(now + 3 * day, 'look: clear')),
  (number) => changed(trial(number), seen(now - day, 'ended: spilled')),
  (number) => changed(trial(number), (text) => text.replaceAll('clear', 'hazy '), true),
  (number) =>
    changed(trial(number), (text) => text.replace(/title: .*/, 'title: "tab\\there, größer \\u2028"')),
  (number) => changed(trial(number), (text) => text.replace(/series: .*/, 'series: Ladder  3')),
  (number) => changed(trial(number), (text) => text.replace('stages:', 'stages: none\nother:')),
  (number) => changed(trial(number), (text) => text.slice(0, text.length / 2)),
  (number) => tryTo(() => rmSync(trial(number))),
  (number) => tryTo(() => renameSync(trial(number), trial(number + 1))),
  (number) => tryTo(() => renameSync(trial(number), join(folder, `trials/7 ä ${number}.yaml`))),
  (number) => {
    for (let one = number; one < number + 30; one += 1) tryTo(() => utimesSync(trial(one), 5, 7));
  },
  (number) => {
    for (let one = number; one < number + 30; one += 1) changed(trial(one), (text) => `${text}# more\n`);
  },
  (number) => changed(series(number % 13), (text) => `${text.replace(/watch:.*\n/, '')}watch: ${number} d\n`),
  (number) => changed(series(number % 13), (text) => `${text}passes:\n  - clear\n  - hazy\n`),
  (number) => changed(series(number % 13), (text) => text.replace(/series: .*/, 'series: other')),
  (number) => tryTo(() => rmSync(series(number % 13))),
  (number) => changed(join(folder, 'bench.yaml'), (text) => `${text}  watch: ${1 + (number % 20)} d\n`),
  (number) => {
    const names = readdirSync(kept()).filter((name) => name.endsWith('.kept'));
    const one = names[number % Math.max(1, names.length)];
    if (one) changed(join(kept(), one), (text) => text.slice(0, text.length - number));
  },
];

const commands = [['list', '--json'], ['list'], ['due', '--json', '--all'], ['due'], ['series']];

async function answers(time: number): Promise<readonly object[]> {
  const all: object[] = [];
  for (const words of commands)
    all.push(await neckring(words, { folder, now: new Date(time).toISOString() }));
  return all;
}

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'neckring-kept-'));
});
afterAll(() => {
  for (const one of [folder, `${folder}-kept`]) rmSync(one, { recursive: true, force: true });
});

/** A longer watch, looks that pass, a clock set back, and a kept file cut short. */
const always = [
  { deeds: [[13, 40]], days: 0 },
  { deeds: [[14, 6]], days: 0 },
  { deeds: [], days: -30 },
  { deeds: [[18, 3]], days: 0 },
] satisfies { deeds: [number, number][]; days: number }[];

describe('list, due and series of a ledger that is kept', () => {
  it('law: after anything that happens to the files they answer, letter for letter, as if nothing were kept', async () => {
    const step = fc.record({
      deeds: fc.array(fc.tuple(fc.nat(deeds.length - 1), fc.integer({ min: 1, max: count })), {
        maxLength: 3,
      }),
      days: fc.constantFrom(0, 0, 0, -2, 30),
    });
    await fc.assert(
      fc.asyncProperty(fc.array(step, { minLength: 4, maxLength: 4 }), async (steps) => {
        for (const one of [folder, `${folder}-kept`]) rmSync(one, { recursive: true, force: true });
        mkdirSync(folder);
        writeLedger(folder, count, now);
        // Then whoever was looked at to the end of the watch is done with, and a clock set back brings them up again.
        changed(join(folder, 'bench.yaml'), (text) =>
          text.replace('30 d', '7 d').replace('    - 90 d\n', ''),
        );
        await answers(now);
        for (const { deeds: done, days } of steps) {
          for (const [which, number] of done) deeds[which]?.(number);
          const found = await answers(now + days * day);
          renameSync(kept(), `${folder}-kept`);
          expect(found).toEqual(await answers(now + days * day));
          rmSync(kept(), { recursive: true, force: true });
          renameSync(`${folder}-kept`, kept());
        }
      }),
      { numRuns: Number(process.env['NECKRING_ROUNDS'] ?? 2), endOnFailure: true, examples: [[always]] },
    );
  }, 120_000);
});
