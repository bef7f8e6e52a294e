import { mkdir } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { quoted, ranges } from '../../src/commands/due-words.ts';
import {
  exampleLedger,
  found,
  leafValue,
  neckring,
  readIn,
  rows,
  scratchFolder,
  writeIn,
} from './neckring.ts';

interface Files {
  readonly [path: string]: string;
}

/** A ledger with the usual schedule: 1, 2, 4 and 7 d, then 30 and 90 d. */
async function ledgerOf(files: Files, bench = ''): Promise<string> {
  const folder = await scratchFolder();
  for (const one of ['trials', 'series', 'batches']) await mkdir(join(folder, one));
  await writeIn(folder, 'bench.yaml', `ledger: 1\nbench:\n  time zone: Europe/Lisbon\n${bench}`);
  for (const [path, text] of Object.entries(files)) await writeIn(folder, path, text);
  return folder;
}

const trial = (number: number, rest = '', made = '2026-03-02T16:00+00:00'): string =>
  `trial: ${number}\ntitle: orange, one part to ${number}\nmade: ${made}\nstages:\n  emulsion:\n    - water: to 50 g\n${rest}`;

const seen = (at: string, look = 'clear'): string =>
  `observations:\n  - at: 2026-${at}+00:00\n    look: ${look}\n`;

const now = '2026-03-05T12:00:00Z';

describe('what is due', () => {
  it('the longest missed first, with what to type', async () => {
    const folder = await ledgerOf({
      'trials/0011.yaml': trial(11, seen('03-04T16:30')),
      'trials/0012.yaml': trial(12),
      'trials/0013.yaml': trial(13, seen('03-03T16:30')),
      'trials/0014.yaml': trial(14, seen('03-03T16:30')),
    });
    const { out, code, err } = await neckring(['due'], { folder, now });
    expect([code, err]).toEqual([0, '']);
    const lines = out.split('\n');
    expect(lines[1]).toMatch(/^ +12 {2}emulsion .* day 2 +44 h$/);
    expect(lines[2]).toMatch(/^ +13 .* day 2 +20 h$/);
    expect(out).not.toMatch(/^ +11 /m);
    expect(out).toContain('neckring look 12-14 LOOK\n');
  });

  it('the title is shown only outside a series, since it would tell the ratio', async () => {
    const folder = await ledgerOf({
      'trials/0011.yaml': trial(11).replace('made:', 'series: orange ladder\nmade:'),
      'trials/0012.yaml': trial(12),
    });
    const { out } = await neckring(['due'], { folder, now });
    expect(out).toContain('orange ladder');
    expect(out).not.toContain('one part to 11');
    expect(out).toContain('orange, one part to 12');
  });

  it('samples with a schedule of their own, one line each', async () => {
    const samples =
      'samples:\n  cold:\n    of: emulsion\n    at: 4 C\n  hot jar:\n    of: emulsion\n    watch: 2 d\n    looks:\n      - 2 h\n      - 12 h\n';
    const folder = await ledgerOf({ 'trials/0011.yaml': trial(11, samples) });
    const { out } = await neckring(['due'], { folder, now: '2026-03-02T18:30:00Z' });
    expect(out).toContain('after 2 h');
    expect(out).not.toContain('cold');
    expect(out).toContain('neckring look 11 LOOK --sample "hot jar"');
    const later = await neckring(['due'], { folder, now: '2026-03-04T17:00:00Z' });
    expect(later.out).toContain('day 2, watch ends');
  });

  it('the watch of the series counts', async () => {
    const folder = await ledgerOf({
      'series/a.yaml': 'series: short\nvaries: water\nwatch: 3 d\n',
      'trials/0011.yaml': trial(11, `series: short\n${seen('03-04T16:30')}`),
    });
    const { out } = await neckring(['due'], { folder, now: '2026-03-05T16:30:00Z' });
    expect(out).toContain('day 3, watch ends');
  });

  it('bottles kept back of a batch, with how many', async () => {
    const batch =
      'batch: orange 3\nmade: 2026-01-30T09:00+00:00\nstages:\n  drink:\n    - water: to 20 L\nsamples:\n  retained:\n    of: drink\n    count: 6\n    looks:\n      - 30 d\n      - 180 d\n      - 365 d\n';
    const folder = await ledgerOf({ 'batches/orange-3.yaml': batch });
    const { out } = await neckring(['due'], { folder, now });
    expect(out).toMatch(/batch orange 3 {2}retained \(6\) .*day 30 +4 d/);
    expect(out).toContain('\n  neckring look "orange 3" LOOK\n');
    const [first] = rows((await found(['due'], { folder, now }))['due']);
    expect(first).toMatchObject({ kind: 'batch', batch: 'orange 3', count: { value: 6, unit: '' } });
    const looked = await neckring(['look', 'orange 3', 'clear'], { folder, now });
    expect(looked.code).toBe(0);
    const after = await neckring(['due'], { folder, now });
    expect(after.out).toContain('Nothing is due.');
  });

  it('a batch whose name reads as a trial is named by its file, one with several samples sample by sample', async () => {
    const batch = (name: string, samples: string) =>
      `batch: ${name}\nmade: 2026-01-30T09:00+00:00\nstages:\n  drink:\n    - water: to 20 L\nsamples:\n${samples}`;
    const sample = (name: string) => `  ${name}:\n    of: drink\n    looks:\n      - 30 d\n`;
    const folder = await ledgerOf({
      'batches/one.yaml': batch('12', sample('cold')),
      'batches/two.yaml': batch('2026-01-30-1', sample('cold') + sample('warm')),
    });
    const { out } = await neckring(['due'], { folder, now });
    expect(out).toContain(`neckring look batches/one.yaml LOOK\n`);
    expect(out).toContain('neckring look 2026-01-30-1 LOOK --sample warm\n');
    const looked = await neckring(['look', 'batches/one.yaml', 'clear'], { folder, now });
    expect(looked.code).toBe(0);
  });

  it('nothing due: when the next is, or that nothing is watched', async () => {
    const folder = await ledgerOf({ 'trials/0011.yaml': trial(11, seen('03-04T16:30')) });
    const { out } = await neckring(['due'], { folder, now });
    expect(out.replace(/\s+/g, ' ')).toContain(
      'Nothing is due. One sample is watched; the next look is trial 11, emulsion, day 4, 2026-03-06 16:00.',
    );
    expect((await neckring(['due'], { folder: await ledgerOf({}), now })).out).toBe(
      'Nothing is due, and no sample is being watched.\n',
    );
  });

  it('what failed or ended is not asked for', async () => {
    const folder = await ledgerOf({
      'trials/0011.yaml': trial(11, seen('03-04T16:30', 'ring')),
      'trials/0012.yaml': trial(12, 'observations:\n  - at: 2026-03-03T09:00+00:00\n    ended: spilled\n'),
    });
    expect((await neckring(['due'], { folder, now })).out).toContain('Nothing is due, and no sample');
  });

  it('what comes, in so many days or all of it', async () => {
    const folder = await ledgerOf({ 'trials/0011.yaml': trial(11, seen('03-04T16:30')) });
    const days = async (...words: readonly string[]) =>
      rows((await found(['due', ...words], { folder, now }))['coming']).map((one) => leafValue(one['look']));
    expect(await days('--days', '3')).toEqual([4]);
    expect(await days('--days', '7 d')).toEqual([4, 7]);
    expect(await days('--all')).toEqual([4, 7, 30, 90]);
    expect(await days()).toEqual([4]);
    // Lisbon goes to summer time on 29 March: 90 days are 90 times 24 hours.
    expect((await neckring(['due', '--all'], { folder, now })).out).toContain('2026-05-31 17:00');
  });

  it('stocks whose keeping ends, by their owner', async () => {
    const folder = await exampleLedger();
    // Made on 9 March, kept 90 d: to the first hour of 7 June.
    const { out, err } = await neckring(['due'], { folder, now: '2026-06-09T12:00:00Z' });
    expect(err).toBe('');
    expect(out).toContain('cassis stock: ended 2 d ago');
    expect((await neckring(['due'], { folder, now: '2026-03-12T12:00:00Z' })).out).not.toContain('Keeping');
    expect(rows((await found(['due', '--days', '90'], { folder }))['stocks'])).toMatchObject([
      { stock: 'cassis stock', over: false },
    ]);
  });

  it('a file that can not be read is told of, and the rest is shown', async () => {
    const folder = await ledgerOf({
      'trials/0011.yaml': trial(11),
      'trials/0012.yaml': 'trial: 12\nstages: [oops\n',
    });
    const { out, err, code } = await neckring(['due'], { folder, now });
    expect(code).toBe(0);
    expect(out).toContain('neckring look 11 LOOK');
    expect(err).toContain("1 error in the files; what can't be read is left out; neckring check shows them");
  });

  it('names that would drive a terminal or a shell are tamed', async () => {
    const samples = 'samples:\n  "$(reboot)\\e[2J":\n    of: emulsion\n  other:\n    of: emulsion\n';
    const folder = await ledgerOf({ 'trials/0011.yaml': trial(11, samples) });
    const { out } = await neckring(['due'], { folder, now });
    expect(out).not.toContain('\u001b');
    expect(out).toContain("--sample '$(reboot)");
  });

  it('a look beyond every calendar is no look', async () => {
    const samples = 'samples:\n  jar:\n    of: emulsion\n    looks:\n      - 1e12 d\n';
    const folder = await ledgerOf({ 'trials/0011.yaml': trial(11, samples) });
    expect((await neckring(['due', '--all'], { folder, now })).code).toBe(0);
  });

  it.each([
    [['--days', '0'], "--days 0 can't be"],
    [['--days=-1'], '--days: "-1" has a sign'],
    [['--days', 'soon'], '--days: "soon"'],
    [['--days', '1e9'], "--days 1e9 can't be"],
    [['--days', '3', '--all'], 'both --all and --days'],
    [['--ics', 'trials'], 'trials is a folder'],
    [['--ics', 'nowhere/a.ics'], 'there is no folder for nowhere/a.ics'],
    [['--ics', 'bench.yaml'], 'bench.yaml would be taken for a file of the ledger'],
  ])('refuses %j', async (words, message) => {
    const folder = await ledgerOf({ 'trials/0011.yaml': trial(11) });
    const { code, err, out } = await neckring(['due', ...words], { folder, now });
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain(message);
  });

  it('needs a ledger', async () => {
    expect((await neckring(['due'], { folder: await scratchFolder() })).code).toBe(2);
  });
});

describe('the schedule as a calendar', () => {
  const files = { 'trials/0011.yaml': trial(11, seen('03-04T16:30')), 'trials/0012.yaml': trial(12) };
  const read = async (folder: string): Promise<readonly string[]> =>
    (await readIn(folder, 'looks.ics')).replace(/\r\n /g, '').split('\r\n');
  const valuesOf = (lines: readonly string[], name: string): readonly string[] =>
    lines.filter((line) => line.startsWith(`${name}:`)).map((line) => line.slice(name.length + 1));

  it('has every look still to be made, at its time in UTC', async () => {
    const folder = await ledgerOf(files);
    const { err, code } = await neckring(['due', '--ics', 'looks.ics'], { folder, now });
    expect([code, err]).toEqual([0, 'wrote looks.ics, 9 looks\n']);
    const lines = await read(folder);
    expect(valuesOf(lines, 'DTSTART').slice(0, 2)).toEqual(['20260304T160000Z', '20260306T160000Z']);
    expect(valuesOf(lines, 'SUMMARY')).toContain('Look at 11 emulsion\\, day 7\\, watch ends');
    expect(new Set(valuesOf(lines, 'UID')).size).toBe(9);
    expect(lines.join('\n')).not.toContain('CONFIDENTIAL');
  });

  it('a look keeps its UID when it moves, and what was seen goes out', async () => {
    const folder = await ledgerOf(files);
    await neckring(['due', '--ics', 'looks.ics'], { folder, now });
    const before = valuesOf(await read(folder), 'UID');
    await writeIn(folder, 'trials/0011.yaml', trial(11, seen('03-04T16:30'), '2026-03-02T17:00+00:00'));
    await neckring(['look', '12', 'clear'], { folder, now });
    await neckring(['due', '--ics', 'looks.ics'], { folder, now });
    const after = valuesOf(await read(folder), 'UID');
    expect(before).toEqual(expect.arrayContaining([...after]));
    expect(after).toHaveLength(8);
  });

  it('writes over its own file, over another only when told', async () => {
    const folder = await ledgerOf(files);
    await writeIn(folder, 'looks.ics', 'BEGIN:VCALENDAR\r\nPRODID:-//someone//else//EN\r\nEND:VCALENDAR\r\n');
    const refused = await neckring(['due', '--ics', 'looks.ics'], { folder, now });
    expect(refused.code).toBe(2);
    expect(refused.err).toContain('looks.ics is there already, and not one of ours');
    expect(await readIn(folder, 'looks.ics')).toContain('someone');
    expect((await neckring(['due', '--ics', 'looks.ics', '--replace'], { folder, now })).code).toBe(0);
    expect((await neckring(['due', '--ics', 'looks.ics'], { folder, now })).code).toBe(0);
  });

  it('holds what --days asks for', async () => {
    const folder = await ledgerOf(files);
    const { err } = await neckring(['due', '--days', '2', '--ics', 'looks.ics'], { folder, now });
    expect(err).toBe('wrote looks.ics, 3 looks\n');
  });

  it('with nothing planned there is no calendar to write', async () => {
    const folder = await ledgerOf({});
    const { err, code } = await neckring(['due', '--ics', 'looks.ics'], { folder, now });
    expect([code, err]).toEqual([0, 'no look is planned, so looks.ics was not written\n']);
    await expect(readIn(folder, 'looks.ics')).rejects.toThrow('ENOENT');
  });

  it('a title can not drive it', async () => {
    const title = 'title: "x\\r\\nEND:VCALENDAR\\r\\nBEGIN:VCALENDAR; a, b"';
    const folder = await ledgerOf({ 'trials/0011.yaml': trial(11).replace(/title: .*/, title) });
    await neckring(['due', '--ics', 'looks.ics'], { folder, now });
    const lines = await read(folder);
    expect(lines.filter((line) => line === 'END:VCALENDAR')).toHaveLength(1);
    expect(lines.at(-2)).toBe('END:VCALENDAR');
  });
});

describe('what to type', () => {
  it('numbers in ranges', () => {
    expect(ranges([15, 11, 12, 13, 11])).toBe('11-13 15');
    expect(ranges([3, 4])).toBe('3 4');
    expect(ranges([7])).toBe('7');
    expect(ranges(Array.from({ length: 600 }, (_, at) => at + 1))).toBe('1-500 501-600');
  });

  it('words as a shell takes them', () => {
    expect(quoted('beaker')).toBe('beaker');
    expect(quoted('cold glass')).toBe('"cold glass"');
    expect(quoted('a$b')).toBe("'a$b'");
    expect(quoted("it's `x`")).toBe("'it'\\''s `x`'");
  });
});
