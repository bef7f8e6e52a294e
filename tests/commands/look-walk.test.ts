import { describe, expect, it } from 'vitest';
import { exampleLedger, neckring, readIn } from './neckring.ts';
import { ledgerOf } from './small-ledger.ts';

const trial = (number: number, more = '') => `trial: ${number}
title: orange, one part to ${number}
made: 2026-03-01T10:00+00:00
stages:
  emulsion:
    - sweet orange oil: ${number}.25 g
    - polysorbate 80: 6 g
    - water: to 50 g
samples:
  beaker:
    of: emulsion
    in: 100 mL glass beaker
    at: 21 C
${more}`;
const looked = (words: string): string =>
  `observations:\n  - at: 2026-03-02T11:00+00:00\n    look: ${words}\n`;

/** Day 2.1: the second look is due, for all but 3 (failed), 4 (ended) and 5 (looked at today). */
const now = '2026-03-03T12:00:00Z';
const ladder = (): Promise<string> =>
  ledgerOf({
    'trials/1.yaml': trial(1, looked('clear')),
    'trials/2.yaml': trial(2),
    'trials/3.yaml': trial(3, looked('broken')),
    'trials/4.yaml': trial(4, `${looked('clear')}  - at: 2026-03-02T12:00+00:00\n    ended: spilled\n`),
    'trials/5.yaml': trial(5, 'observations:\n  - at: 2026-03-03T11:00+00:00\n    look: clear\n'),
    'trials/6.yaml': trial(6, looked('clear')),
  });

const walk = (folder: string, answers: readonly string[], words: readonly string[] = []) =>
  neckring(['look', ...words], { folder, now, answers, terminal: true, environment: { NO_COLOR: '1' } });

describe('look alone on a terminal', () => {
  it('asks for the samples that are due, shuffled, and for no other', async () => {
    const { code, out } = await walk(await ladder(), ['', '', '']);
    expect(code).toBe(0);
    expect(out).toContain('3 samples are due.');
    const asked = [...out.matchAll(/(\d) beaker, 100 mL glass beaker, at 21 C \(\d of 3\): /g)];
    expect(asked.map(([, number]) => number).sort()).toEqual(['1', '2', '6']);
    // Fisher and Yates by hand, with 0.5 throughout: the last, 6, changes places with 2; then 6 with itself.
    expect(asked.map(([, number]) => number)).toEqual(['1', '6', '2']);
    expect(out).toContain('0 of 3 written down');
  });

  it('shows neither title nor amounts nor what was seen before', async () => {
    const { out } = await walk(await ladder(), ['', '', '']);
    for (const hint of ['one part', '.25', 'orange', 'clear (', '6 g']) expect(out).not.toContain(hint);
  });

  it('writes each answer at once, so that leaving loses nothing', async () => {
    const folder = await ladder();
    const { code, out, err } = await walk(folder, ['Hazy, ring; only from the side']);
    expect(code).toBe(0);
    expect(await readIn(folder, 'trials/1.yaml')).toBe(
      `${trial(1, looked('clear'))}  - at: 2026-03-03T12:00+00:00\n    look: hazy, ring\n    note: only from the side\n`,
    );
    expect(out).toContain('1 of 3 written down');
    expect(err).toMatch(/^wrote trials\/1\.yaml:\d+\n$/);
  });

  it('left at the first question nothing is written', async () => {
    const folder = await ladder();
    expect((await walk(folder, [])).out).toContain('0 of 3 written down');
    expect(await readIn(folder, 'trials/1.yaml')).toBe(trial(1, looked('clear')));
  });

  it('Enter skips, and same repeats the last look', async () => {
    const folder = await ladder();
    await walk(folder, ['', 'same', '']);
    expect(await readIn(folder, 'trials/1.yaml')).toBe(trial(1, looked('clear')));
    expect(await readIn(folder, 'trials/2.yaml')).toBe(trial(2));
    expect(await readIn(folder, 'trials/6.yaml')).toBe(
      `${trial(6, looked('clear'))}  - at: 2026-03-03T12:00+00:00\n    look: clear\n`,
    );
  });

  it('asks again where it does not understand, or there is no look to repeat', async () => {
    const folder = await ladder();
    const { out } = await walk(folder, ['', '', 'blueish', 'same', 'bluish']);
    expect(out).toContain('"blueish" is not a look; did you mean bluish?');
    expect(out).toContain('there is no look of the beaker of trial 2 to repeat');
    expect(await readIn(folder, 'trials/2.yaml')).toContain('    look: bluish\n');
  });

  it('what was looked at is not asked for again', async () => {
    const folder = await ladder();
    await walk(folder, ['clear', 'clear', 'clear']);
    const again = await walk(folder, []);
    expect(again.out).toBe('Nothing is due. The next look is trial 1, beaker, 2026-03-05 10:00.\n');
  });

  it('takes --viewed and --by for all, --sample for one name, and --dry-run', async () => {
    const folder = await ladder();
    const dry = await walk(folder, ['clear'], ['--dry-run']);
    expect(dry.err).toContain('would write trials/1.yaml');
    expect(await readIn(folder, 'trials/1.yaml')).toBe(trial(1, looked('clear')));
    await walk(folder, ['clear'], ['--viewed', 'window', '--by', 'K']);
    expect(await readIn(folder, 'trials/1.yaml')).toContain('look: clear\n    viewed: window\n    by: K\n');
    expect((await walk(folder, [], ['--sample', 'bottle'])).out).toContain('Nothing is due');
  });

  it('leaves out files that can not be read', async () => {
    const folder = await ledgerOf({ 'trials/1.yaml': trial(1), 'trials/2.yaml': 'trial: [' });
    expect((await walk(folder, [])).out).toContain('One sample is due.');
  });

  it('passes by what the series lets pass', async () => {
    const bluish = trial(
      1,
      looked('bluish').replace('02T11', '02T10:30+00:00\n    note: x\n  - at: 2026-03-02T11'),
    );
    const files = { 'trials/1.yaml': `${bluish}series: ladder\n` };
    const strict = await ledgerOf({ ...files, 'series/l.yaml': 'series: ladder\n' });
    expect((await walk(strict, [])).out).toContain('Nothing is due');
    const mild = await ledgerOf({ ...files, 'series/l.yaml': 'series: ladder\npasses: clear, bluish\n' });
    expect((await walk(mild, [])).out).toContain('One sample is due.');
  });

  it('in the example ledger, a month later, the long watch goes on', async () => {
    const folder = await exampleLedger();
    const setting = { folder, now: '2026-04-02T09:00:00Z', answers: [] };
    expect((await neckring(['look'], setting)).out).toMatch(
      /11 beaker|12 beaker|13 beaker|17 (cold|warm) glass/,
    );
  });
});
