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
import { openBench, settingsOf } from '../../../src/ledger/folder.ts';
import { looksByDay } from '../../../src/ledger/look-strip.ts';
import { diskReadPort, type ReadPort } from '../../../src/ledger/port.ts';
import { looksOpen } from '../../../src/ledger/schedule.ts';
import { diskKeepPort, type KeepPort } from '../../../src/ledger/watch/keep-port.ts';
import { madeToWatch, trialLines } from '../../../src/ledger/watch/kept-trials.ts';
import { openRules } from '../../../src/ledger/watch/watch-rules.ts';

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

const seriesText = 'series: ladder\nquestion: how much oil?\nvaries: oil per emulsifier\n';

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

interface Answers {
  readonly list: Awaited<ReturnType<typeof trialLines>>;
  readonly due: readonly object[];
  readonly errors: number;
}

/** What `list` and `due` ask, of the trials as they stand on the disk where nothing is kept. */
async function answers(kept: KeepPort | undefined, of: string, now: number): Promise<Answers> {
  const own: ReadPort = { ...port, now: () => now };
  const { card: bench } = await openBench(root, own);
  if (!bench) throw new Error('no bench');
  const wanted = { place: { root, port: own, settings: settingsOf(bench) }, keep: kept, of, bench };
  reads = 0;
  const { trials, errors } = await trialLines(wanted);
  const made = await madeToWatch(kept ? { ...wanted, keep: keep() } : wanted);
  const looks = [...made.trials, ...made.batches].flatMap((card) => {
    const rules = card.kind === 'trial' && card.series ? made.rulesOf(card.series.text) : '';
    return looksOpen({ card, bench, series: openRules(rules), now })
      .filter(({ open }) => open.length > 0)
      .map(({ sample, outcome, open }) => [
        card.file,
        card.title,
        sample.name,
        sample.in,
        sample.at?.inner,
        looksByDay(card, sample),
        outcome.outcome,
        outcome.lastPass?.at.written,
        open,
      ]);
  });
  const list = { trials: trials.map((one) => ({ ...one, newest: one.newest })), errors };
  return { list, due: looks, errors: made.errors };
}

const noon = Date.parse('2026-03-28T12:00:00Z');

const opened = (of = 'build bench', now = noon): Promise<Answers> => answers(keep(), of, now);

async function expectAsRead(of?: string, now = noon): Promise<void> {
  const found = await opened(of, now);
  const seen = reads;
  expect(found).toEqual(await answers(undefined, '', now));
  reads = seen;
}

beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'neckring-kept-'));
  const folder = root;
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  for (const name of ['trials', 'series']) mkdirSync(join(root, name));
  writeFileSync(join(root, 'series/ladder.yaml'), seriesText);
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
    expect(reads).toBeLessThanOrEqual(6);
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
    expect(reads).toBe(2 * (count + 1));
    clock = -3_600_000;
    await opened();
    await opened();
    expect(reads).toBe(2 * (count + 1));
  });

  it.each([
    ['another bench', undefined, 'build other bench'],
    ['torn in the middle', (text: string) => text.slice(0, 5000), undefined],
    ['one sign another', (text: string) => text.replace('hazy', 'lazy'), undefined],
    [
      'zeros in the middle',
      (text: string) => text.slice(0, 400) + '\0'.repeat(64) + text.slice(464),
      undefined,
    ],
    ['empty', () => '', undefined],
    ['of another form', () => '{"of":"build bench"}', undefined],
    ['a word', () => 'trials', undefined],
  ])('%s: everything is read again', async (_, spoil, of) => {
    await opened();
    const kept = join(root, '.neckring/trials.kept');
    if (spoil) writeFileSync(kept, spoil(readFileSync(kept, 'utf8')));
    await opened(of);
    expect(reads).toBeGreaterThanOrEqual(count);
    await expectAsRead(of);
  });

  it('what a series says of looking is asked anew: a longer watch, a name that comes and goes', async () => {
    await opened();
    const series = join(root, 'series/ladder.yaml');
    for (const more of ['watch: 40 d\n', 'passes:\n  - clear\n  - hazy\n', 'settle: 30 d\n', '']) {
      writeFileSync(series, `${seriesText}${more}`);
      await expectAsRead();
    }
    writeFileSync(series, seriesText.replace('ladder', 'other'));
    await expectAsRead();
    rmSync(series);
    await expectAsRead();
  });

  it('whatever the time is: before the last look, between looks, long after', async () => {
    for (const day of ['03-28', '03-10', '03-25', '03-26', '04-20', '12-31', '03-01', '03-28'])
      await expectAsRead(undefined, Date.parse(`2026-${day}T11:00:00Z`));
  });

  it('counts the errors of files without reading them again', async () => {
    writeFileSync(path(7), 'trial: 7\nstages: none\n');
    expect((await opened()).errors).toBeGreaterThan(0);
    expect((await opened()).list.errors).toBeGreaterThan(0);
    expect(reads).toBe(0);
  });
});
