import {
  mkdirSync,
  mkdtempSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { beforeEach, describe, expect, it, onTestFinished } from 'vitest';
import type { TrialCard } from '../../../src/ledger/cards.ts';
import { openBench, openFolder, settingsOf } from '../../../src/ledger/folder.ts';
import { looksByDay, newestLook } from '../../../src/ledger/look-strip.ts';
import { diskReadPort, type ReadPort } from '../../../src/ledger/port.ts';
import { readTrialCard } from '../../../src/ledger/read-trial.ts';
import { looksDue } from '../../../src/ledger/schedule.ts';
import { diskKeepPort, type KeepPort } from '../../../src/ledger/watch/keep-port.ts';
import { type TrialsToLookAt, trialsToLookAt } from '../../../src/ledger/watch/kept-trials.ts';

const count = 130;
let root = '';
let reads = 0;
/** How far the disk's clock is taken to be ahead: files written just now count as old. */
let ahead = 60_000;
let clock = 0;

const port: ReadPort = {
  ...diskReadPort,
  read: (path) => {
    reads += 1;
    return diskReadPort.read(path);
  },
};

function keep(): KeepPort {
  const disk = diskKeepPort(root, 'test');
  return { ...disk, tick: () => (disk.tick() ?? 0) + ahead + clock };
}

const path = (number: number): string => join(root, `trials/${String(number).padStart(4, '0')}.yaml`);

const textOf = (number: number, look = 'clear'): string => `trial: ${number}
title: sweet orange ${number}
made: 2026-03-${String(1 + (number % 20)).padStart(2, '0')}T10:15
series: ladder
stages:
  emulsion:
    - sweet orange oil: 2 g
    - water: to 50 g
samples:
  beaker:
    of: emulsion
    in: 100 mL glass beaker
  cold glass:
    of: emulsion
    at: 4 C
    looks:
      - 2 d
      - 5 d
observations:
  - at: 2026-03-25T09:00
    look: ${look}
  - at: 2026-03-26T09:00
    sample: cold glass
    look: hazy, ring
  - at: 2026-03-27T09:00
    ended: spilled
`;

async function opened(of = 'build bench'): Promise<TrialsToLookAt> {
  reads = 0;
  const bench = await openBench(root, port);
  const place = { root, port, settings: settingsOf(bench.card) };
  reads = 0;
  return trialsToLookAt({ place, keep: keep(), of });
}

/** What looking asks, of the trials as they stand on the disk. */
async function asRead(): Promise<readonly object[]> {
  const bench = await openBench(root, diskReadPort);
  const settings = settingsOf(bench.card);
  const all = await openFolder({ root, port: diskReadPort, settings }, 'trials', readTrialCard);
  return asked(
    all.flatMap(({ card }) => (card ? [card] : [])),
    bench.card,
  );
}

function asked(
  trials: readonly TrialCard[],
  bench: Awaited<ReturnType<typeof openBench>>['card'],
): readonly object[] {
  if (!bench) throw new Error('no bench');
  const now = Date.parse('2026-03-28T12:00:00Z');
  return trials.map((card) => ({
    head: [card.file, card.number, card.title, card.made?.written, card.series?.text, card.isSound],
    looks: card.samples.map((sample) => [
      sample.name,
      sample.of,
      sample.in,
      sample.at?.inner,
      looksByDay(card, sample),
    ]),
    due: looksDue({ card, bench, now }).map(({ sample, outcome, ...due }) => [
      sample.name,
      outcome.outcome,
      outcome.lastPass?.at.written,
      due,
    ]),
  }));
}

async function expectAsRead(of?: string): Promise<void> {
  const { trials } = await opened(of);
  const bench = await openBench(root, diskReadPort);
  expect(
    asked(
      trials.map(({ card }) => card),
      bench.card,
    ),
  ).toEqual(await asRead());
  for (const { card, newest, file, number, title, made, series } of trials) {
    expect([file, number, title]).toEqual([card.file, card.number, card.title]);
    expect([made, series]).toEqual([card.made?.written, card.series?.text]);
    expect(newest).toEqual(
      card.samples.map((sample) => ({ sample: sample.name, look: newestLook(card, sample) })),
    );
  }
}

beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'neckring-kept-'));
  const folder = root;
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  mkdirSync(join(root, 'trials'));
  writeFileSync(join(root, 'bench.yaml'), 'ledger: 1\nbench:\n  time zone: Europe/Lisbon\n');
  for (let number = 1; number <= count; number += 1) writeFileSync(path(number), textOf(number));
  ahead = 60_000;
  clock = 0;
});

describe('trials kept between commands', () => {
  it('law: what is kept answers as what is read, and the second time nothing is read', async () => {
    await expectAsRead();
    await opened();
    expect(reads).toBe(0);
    await expectAsRead();
    expect(readFileSync(join(root, '.neckring/.gitignore'), 'utf8')).toBe('*\n');
  });

  it('reads what was edited, made, deleted or put in another place, and only that', async () => {
    await opened();
    writeFileSync(path(7), textOf(7, 'bluish'));
    rmSync(path(8));
    writeFileSync(path(500), textOf(500));
    renameSync(path(9), join(root, 'trials/0009-renamed.yaml'));
    await expectAsRead();
    await opened();
    expect(reads).toBeLessThanOrEqual(3);
  });

  it('an edit of the same length with its times set back is seen', async () => {
    await opened();
    const { atime, mtime } = statSync(path(7));
    writeFileSync(path(7), textOf(7, 'hazy ').replace('hazy ', 'specks').slice(0, textOf(7).length));
    utimesSync(path(7), atime, mtime);
    await expectAsRead();
  });

  it('what changed within the last tick of the clock is not kept, whatever the clock says', async () => {
    ahead = 0;
    await opened();
    await opened();
    expect(reads).toBe(count);
    clock = -3_600_000;
    await opened();
    await opened();
    expect(reads).toBe(count);
  });

  it.each([
    ['another bench', undefined, 'build other bench'],
    ['torn in the middle', (text: string) => text.slice(0, 5000), undefined],
    ['empty', () => '', undefined],
    ['of another form', () => '{"of":"build bench","files":7}', undefined],
    ['no JSON', () => 'trials', undefined],
  ])('%s: everything is read again', async (_, spoil, of) => {
    await opened();
    const kept = join(root, '.neckring/trials.json');
    if (spoil) writeFileSync(kept, spoil(readFileSync(kept, 'utf8')));
    await opened(of);
    expect(reads).toBe(count);
    await expectAsRead(of);
  });

  it('counts the errors of files without reading them again', async () => {
    writeFileSync(path(7), 'trial: 7\nstages: none\n');
    expect((await opened()).errors).toBeGreaterThan(0);
    expect((await opened()).errors).toBeGreaterThan(0);
    expect(reads).toBe(0);
  });
});
