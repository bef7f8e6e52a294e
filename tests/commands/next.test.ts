import { readdir, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { exampleLedger, found, leafValue, neckring, readIn, rows, writeIn } from './neckring.ts';
import { fortyBeakers, seriesLedger } from './series-ledger.ts';
import { ledgerOf } from './small-ledger.ts';

const now = '2026-03-20T12:00:00Z';
const trialsIn = (folder: string) => readdir(join(folder, 'trials'));
const ratiosOf = (ratios: unknown): readonly number[] => rows(ratios).map((one) => Number(one['value']));

const seriesText = 'series: ladder\nvaries: oil per emulsifier\n';

/** A beaker made on 2 March and looked at after a week. */
const rung = (number: number, oil: number, look: string | undefined, more = ''): string => `trial: ${number}
made: 2026-03-02T10:00+00:00
series: ladder
${more}stages:
  emulsion:
    - sweet orange oil: ${oil} g
    - polysorbate 80: 6 g
    - water: to 50 g
${look === undefined ? '' : `observations:\n  - at: 2026-03-09T10:00+00:00\n    look: ${look}\n`}`;

const ladderOf = (
  looks: readonly (readonly [oil: number, look: string | undefined])[],
  series = seriesText,
) =>
  ledgerOf({
    'series/ladder.yaml': series,
    ...Object.fromEntries(looks.map(([oil, look], at) => [`trials/${at + 1}.yaml`, rung(at + 1, oil, look)])),
  });

describe('next', () => {
  it('proposes ratios between the last that held and the first that failed, both ways up', async () => {
    const folder = await exampleLedger();
    const ran = await neckring(['next', 'orange ladder', '--beakers', '3'], { folder, now });
    expect(ran.code, ran.err).toBe(0);
    expect(ran.out).toMatch(/1 part oil to 2\.\d+ of emulsifier, 0\.3\d+/u);
    expect(ran.out).toMatch(/3 held, 3 failed\. The break is known within \d+ % with a chance of 90 %/u);
    expect(Math.max(...ran.out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
    const { ratios, enough, expectedBeakersLeft } = await found(['next', 'orange ladder', '--beakers', '3'], {
      folder,
      now,
    });
    expect([ratiosOf(ratios).length, enough]).toEqual([3, false]);
    for (const ratio of ratiosOf(ratios)) expect(ratio).toBeGreaterThan(0.25);
    for (const ratio of ratiosOf(ratios)) expect(ratio).toBeLessThan(0.5);
    expect(leafValue(expectedBeakersLeft)).toBeGreaterThan(1);
  });

  it('writes them as trials of the series, its file left alone', async () => {
    const folder = await exampleLedger();
    const before = await readIn(folder, 'series/orange-ladder.yaml');
    const ran = await neckring(['next', 'orange ladder', '--write'], { folder, now });
    expect(ran.code, ran.err).toBe(0);
    expect(await readIn(folder, 'series/orange-ladder.yaml')).toBe(before);
    expect((await trialsIn(folder)).filter((name) => name > '0018').length).toBe(4);
    const series = await found(['series', 'orange ladder'], { folder, now });
    expect([leafValue(series['beakers']), leafValue(series['watching'])]).toEqual([10, 4]);
    expect((await neckring(['check'], { folder, now })).code).toBe(0);
  });

  it('says when enough is known, and asks for less when less is wanted', async () => {
    const folder = await exampleLedger();
    const loose = ['next', 'orange ladder', '--within', '60', '%'];
    const ran = await neckring(loose, { folder, now });
    expect(ran.out).toContain('No more beakers are needed');
    expect(ran.out).toContain('neckring decide "orange ladder"');
    const { enough, expectedBeakersLeft } = await found(loose, { folder, now });
    expect([enough, leafValue(expectedBeakersLeft)]).toEqual([true, 0]);
    const left = async (within: string) =>
      leafValue(
        (await found(['next', 'orange ladder', '--within', within], { folder, now }))['expectedBeakersLeft'],
      );
    expect(await left('5 %')).toBeGreaterThan(await left('15 %'));
  });

  it('the same ratio more than once is said to be a repeat', async () => {
    const folder = await seriesLedger(fortyBeakers);
    const ran = await neckring(['next', 'ladder', '--beakers', '2', '--within', '1 %'], { folder, now });
    const [one, other] = ratiosOf(
      (await found(['next', 'ladder', '--beakers', '2', '--within', '1 %'], { folder, now }))['ratios'],
    );
    expect(one).toBe(other);
    expect(ran.out).toMatch(/^ {2}1 part oil to [\d.]+ of emulsifier, 0\.3\d+, twice$/mu);
    expect(ran.out.replace(/\s+/g, ' ')).toContain('These are repeats, and meant');
    const apart = await neckring(['next', 'orange ladder'], { folder: await exampleLedger(), now });
    expect(apart.out).not.toContain('repeats');
  });

  it('one-sided: says which side, what to make, and exits 1', async () => {
    const held = await ladderOf([
      [1, 'clear'],
      [2, 'clear'],
      [3, 'clear'],
    ]);
    const up = await neckring(['next', 'ladder'], { folder: held, now });
    expect([up.code, up.out.includes('all held')]).toEqual([1, true]);
    const failed = await ladderOf([
      [1, 'hazy'],
      [2, 'hazy'],
      [3, 'hazy'],
    ]);
    const down = await neckring(['next', 'ladder'], { folder: failed, now });
    expect([down.code, down.out.includes('all failed')]).toEqual([1, true]);
    const above = ratiosOf((await found(['next', 'ladder'], { folder: held, now }))['ratios']);
    const below = ratiosOf((await found(['next', 'ladder'], { folder: failed, now }))['ratios']);
    expect(Math.max(...above)).toBeGreaterThan(0.5);
    expect(Math.min(...below)).toBeLessThan(1 / 6);
  });

  it('no outcome yet: says so and exits 1', async () => {
    const folder = await ladderOf([
      [1, undefined],
      [2, undefined],
    ]);
    const ran = await neckring(['next', 'ladder'], { folder, now });
    expect([ran.code, ran.out.includes('no outcome yet')]).toEqual([1, true]);
  });

  it('a failed control and a hazy blank are told of, exit 1', async () => {
    const folder = await ladderOf(
      [
        [1, 'clear'],
        [3, 'hazy'],
      ],
      `${seriesText}control: 3\nblank: 4\n`,
    );
    await writeIn(folder, 'trials/3.yaml', rung(3, 0.75, 'hazy'));
    await writeIn(folder, 'trials/4.yaml', rung(4, 0, 'hazy'));
    const ran = await neckring(['next', 'ladder'], { folder, now });
    expect(ran.code).toBe(1);
    expect(ran.out).toContain('the control (trial 3)');
    expect(ran.out).toContain('the blank (trial 4)');
  });

  it('proposes no more oil than the beaker has room for', async () => {
    const folder = await ledgerOf({
      'series/ladder.yaml': seriesText,
      'trials/1.yaml': rung(1, 2, 'clear').replace('to 50 g', 'to 16 g'),
    });
    const { ratios } = await found(['next', 'ladder', '--beakers', '2'], { folder, now });
    // 16 g less 6 g of emulsifier leave 10 g of oil at most.
    for (const ratio of ratiosOf(ratios)) expect(ratio).toBeLessThanOrEqual(10 / 6 + 1e-3);
    expect((await neckring(['next', 'ladder', '--write'], { folder, now })).err).toContain(
      'wrote trials/0002',
    );
  });

  it('more of an emulsifier may be what holds: then the next go where it turns', async () => {
    const folder = await ledgerOf({
      'series/ladder.yaml': 'series: ladder\nvaries: polysorbate 80\n',
      ...Object.fromEntries(
        [2, 3, 4, 6, 8].map((grams, at) => [
          `trials/${at + 1}.yaml`,
          rung(at + 1, 2, grams < 5 ? 'hazy' : 'clear').replace('80: 6 g', `80: ${grams} g`),
        ]),
      ),
    });
    const answer = await found(['next', 'ladder'], { folder, now });
    for (const grams of ratiosOf(answer['ratios'])) expect(grams > 3 && grams < 8).toBe(true);
    expect(rows(answer['ratios'])[0]?.['unit']).toBe('g');
  });

  it.each([
    ['nothing varied', 'series: ladder\n', 'series/ladder.yaml:1:9: the series does not say what it varies'],
    ['two things', 'series: ladder\nvaries: oil per emulsifier, blend HLB\n', 'varies two things'],
    ['a window', 'series: ladder\nvaries: blend HLB\n', 'has an optimum rather than an edge'],
    ['a window by its shape', `${seriesText}shape: window\n`, 'has an optimum rather than an edge'],
  ])('refuses %s', async (_, series, message) => {
    const folder = await ladderOf(
      [
        [1, 'clear'],
        [3, 'hazy'],
      ],
      series,
    );
    const ran = await neckring(['next', 'ladder', '--write'], { folder, now });
    expect([ran.code, ran.err.includes(message)], ran.err).toEqual([2, true]);
    expect((await trialsIn(folder)).length).toBe(2);
  });

  it('refuses a series without trials, and options that are none', async () => {
    const folder = await exampleLedger();
    const bad = async (...words: readonly string[]) =>
      (await neckring(['next', ...words], { folder, now })).err;
    expect(await bad('orange laddr')).toContain('did you mean "orange ladder"?');
    expect(await bad('orange ladder', '--beakers', '0')).toContain('--beakers 0 is no number of beakers');
    expect(await bad('orange ladder', '--beakers', 'four')).toContain('--beakers four');
    expect(await bad('orange ladder', '--within', '10')).toContain('write it in per cent');
    expect(await bad('orange ladder', '--within', '0 %')).toContain("can't be aimed at");
    await rm(join(folder, 'trials'), { recursive: true });
    expect(await bad('orange ladder')).toContain('no trial with a value to count');
  });

  it('a rung whose oil line is missing is told of with its place, and the others count', async () => {
    const folder = await ladderOf([
      [1, 'clear'],
      [2, 'clear'],
      [3, 'hazy'],
    ]);
    const broken = (await readIn(folder, 'trials/2.yaml')).replace('    - sweet orange oil: 2 g\n', '');
    await writeIn(folder, 'trials/2.yaml', broken);
    const ran = await neckring(['next', 'ladder'], { folder, now });
    expect(ran.code).toBe(1);
    expect(ran.err).toContain('trials/2.yaml:4:1: trial 2 has no oil');
    expect(ran.out).toContain('1 held, 1 failed');
  });
});
