import { mkdir } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { openHere } from '../../src/commands/open-ledger.ts';
import { foamBlocks, foamJson, isFoamSeries } from '../../src/commands/series-foam.ts';
import { readHeadBand } from '../../src/commands/series-foam-wanted.ts';
import { openRungs, openSeriesNamed } from '../../src/commands/series-open.ts';
import type { Io } from '../../src/io.ts';
import { layOut } from '../../src/output/page.ts';
import { exampleLedger, leafValue, neckring, record, rows, scratchFolder, writeIn } from './neckring.ts';

const io = (folder: string): Io => ({
  out: () => {},
  err: () => {},
  outIsTerminal: false,
  errIsTerminal: false,
  canAsk: false,
  ask: async () => undefined,
  columns: 80,
  environment: {},
  workingFolder: folder,
  now: () => Date.parse('2026-03-12T12:00:00Z'),
  random: () => 0.5,
});

interface Glass {
  readonly dose: string;
  readonly heads: readonly string[];
  readonly stage?: string;
  readonly temperature?: string;
}

/** A ledger with one trial a glass, in which only the antifoam differs. */
async function foamLedger(glasses: readonly Glass[], bench = ''): Promise<string> {
  const folder = await scratchFolder();
  for (const one of ['trials', 'series']) await mkdir(join(folder, one));
  await writeIn(folder, 'bench.yaml', `ledger: 1\nbench:\n  time zone: UTC\n${bench}`);
  await writeIn(folder, 'series/foam.yaml', 'series: foam\nvaries: antifoam emulsion\n');
  for (const [at, { dose, heads, stage = 'drink', temperature }] of glasses.entries()) {
    const observed = heads.map(
      (head, minute) =>
        `  - at: 2026-03-02T10:1${minute}+00:00\n    head: ${head}\n    head life: 30 s\n${temperature ? `    temperature: ${temperature}\n` : ''}`,
    );
    await writeIn(
      folder,
      `trials/000${at + 1}-foam.yaml`,
      `trial: ${at + 1}\nmade: 2026-03-01T10:00+00:00\nseries: foam\nstages:\n  ${stage}:\n    - antifoam emulsion: ${dose}\n    - water: to 1 kg\nobservations:\n${observed.join('')}`,
    );
  }
  return folder;
}

async function foamOfLedger(folder: string, name = 'foam', head?: string) {
  const here = await openHere(io(folder));
  const series = await openRungs(here, (await openSeriesNamed(here, io(folder), name)).card);
  const of = { series, bench: here.bench, ...(head ? { wanted: readHeadBand(head) } : {}) };
  const page = await layOut(foamBlocks(of), { width: 100, paint: (_, text) => text });
  return { series, page: page.replace(/\s+/g, ' '), json: foamJson(of) };
}

const four: readonly Glass[] = [
  { dose: '0 ppm', heads: ['40 mm', '44 mm'] },
  { dose: '20 ppm', heads: ['16 mm', '13 mm', '14 mm'] },
  { dose: '40 ppm', heads: ['9 mm', '10 mm'] },
  { dose: '120 ppm', heads: ['15 mm', '18 mm'] },
];

describe('a series over the dose of antifoam', () => {
  it('is one by what is varied, and an oil ladder is none', async () => {
    expect(isFoamSeries((await foamOfLedger(await foamLedger(four))).series)).toBe(true);
    expect(isFoamSeries((await foamOfLedger(await exampleLedger(), 'orange ladder')).series)).toBe(false);
  });

  it('the smallest dose with its head in the band, and the one of which every pour is', async () => {
    const { page, json } = await foamOfLedger(await foamLedger(four), 'foam', '5 to 15 mm');
    expect(leafValue(json['smallestDose'])).toBeCloseTo(20, 6);
    expect(leafValue(json['everyPourDose'])).toBeCloseTo(40, 6);
    expect(page).toContain('The smallest dose tried with a head in the band is 20.0 ppm (14.3 mm, 3 pours');
    expect(page).toContain('Every pour is in it from 40.0 ppm');
  });

  it('more antifoam that gave more foam is said plainly', async () => {
    const { page, json } = await foamOfLedger(await foamLedger(four));
    expect(page).toContain('more antifoam gave more foam: 16.5 mm at 120 ppm after 9.5 mm at 40.0 ppm');
    expect(rows(json['rises'])).toMatchObject([{ clear: true }]);
  });

  // 120 ppm of an emulsion of 10 % active are 12 mg/kg; worked out by hand.
  it('published: the active in the drink beside 21 CFR 173.340, Codex and the European figure', async () => {
    const { page, json } = await foamOfLedger(await foamLedger(four));
    expect(rows(json['doses']).map((one) => leafValue(record(one)['head']))).toHaveLength(4);
    expect(leafValue(rows(json['doses'])[3]?.['activeInDrink'])).toBeCloseTo(12, 6);
    expect(page).toContain('120 ppm: above the 10 mg/kg that US FDA gives for dimethylpolysiloxane');
    expect(page).toContain('120 ppm: above the 10 mg/L that EU gives');
    expect(page).toContain('no dose poured is above the 20 mg/kg that Codex gives');
    expect(page).toContain('the emulsion is taken as 10 % active');
    expect(page).toContain('local food law and a qualified person decide');
    expect(page).not.toMatch(/\b(safe|legal|compliant|approved|permitted)\b/i);
  });

  it('with --explain shows the mean of each dose, and what was taken for the antifoam', async () => {
    const { out } = await neckring(['series', 'foam', '--explain'], { folder: await foamLedger(four) });
    expect(out).toContain(' - dose 20.0 ppm: head = mean of its pours\n   3 of 9 pours: 14.3 mm\n');
    expect(out).toContain(' - dose 120 ppm: active = antifoam x its active share / drink\n   12 mg/kg\n');
    expect(out).toContain('silicone in an antifoam emulsion: common practice, no source');
  });

  it('stands on the page of the series and in its JSON, cautions and all', async () => {
    const folder = await foamLedger(four);
    const page = await neckring(['series', 'foam', '--head', '5 to 15 mm'], { folder });
    expect(page.out).toContain('The smallest dose tried with a head in the band is 20.0 ppm');
    const parsed: unknown = JSON.parse((await neckring(['series', 'foam', '--json'], { folder })).out);
    expect(rows(record(parsed)['cautions']).map(({ code }) => code)).toEqual([
      'antifoam-above',
      'antifoam-above',
      'antifoam-figure',
    ]);
    const exact = await neckring(['series', 'foam', '--head', '5 mm'], { folder });
    expect([exact.code, exact.out]).toEqual([2, '']);
  });

  it('the wanted head is the aim of the formula that the series names; a typed one goes before it', async () => {
    const folder = await foamLedger(four);
    await mkdir(join(folder, 'formulas'));
    const formula = (aim: string) =>
      `formula: orange soda\nstages:\n  drink:\n    - sucrose: 90 g\n    - water: to 1 L\naim:\n  ${aim}\n`;
    await writeIn(folder, 'formulas/soda.yaml', formula('head: 5 to 15 mm'));
    await writeIn(
      folder,
      'series/foam.yaml',
      'series: foam\nvaries: antifoam emulsion\nformula: orange soda\n',
    );
    expect((await neckring(['check'], { folder })).out).toContain('no errors, no warnings');
    const { out } = await neckring(['series', 'foam'], { folder });
    expect(out).toContain('Wanted: a head of 5 to 15 mm, the aim of orange soda.');
    expect(out).toContain('The smallest dose tried with a head in the band is 20.0 ppm');
    const typed = await neckring(['series', 'foam', '--head', '40 to 50 mm'], { folder });
    expect(typed.out).toContain('Wanted: a head of 40 to 50 mm.');
    await writeIn(folder, 'formulas/soda.yaml', formula('head: 5 mm'));
    const exact = await neckring(['series', 'foam'], { folder });
    expect([exact.code, exact.err.includes('the aim "head: 5 mm" of orange soda is one figure')]).toEqual([
      2,
      true,
    ]);
    await writeIn(
      folder,
      'series/foam.yaml',
      'series: foam\nvaries: antifoam emulsion\nformula: orange sod\n',
    );
    const gone = await neckring(['series', 'foam'], { folder });
    expect([gone.code, gone.err.includes('orange soda')]).toEqual([2, true]);
    expect((await neckring(['check'], { folder })).out).toContain('there is no formula "orange sod"');
  });

  it('only the bodies that the bench asks for', async () => {
    const { page } = await foamOfLedger(await foamLedger(four, '  limits:\n    - codex\n'));
    expect(page).toContain('Codex');
    expect(page).not.toContain('FDA');
  });

  it('says how it was poured, or that nobody wrote it', async () => {
    const without = await foamOfLedger(await foamLedger(four));
    expect(without.page).toContain('bench.yaml does not say how foam is tested');
    const test =
      '  foam test:\n    glass: straight, 400 mL\n    volume: 200 mL\n    temperature: 4 C\n    pour: 30 cm\n';
    const warm = four.map((one, at) => (at === 1 ? { ...one, temperature: '9 C' } : one));
    const { page } = await foamOfLedger(await foamLedger(warm, test));
    expect(page).toContain('As poured here: 200 mL, at 4 C, poured from 30 cm, into straight, 400 mL.');
    expect(page).toContain('3 heads of trial 2 were poured more than 2 C away from the 4 C');
  });

  it.each([
    ['over', '1 to 3 mm', 'Every head is over the band'],
    ['under', 'at least 60 mm', 'Every head is under the band'],
    ['on both sides', '20 to 30 mm', 'some are over it, some under'],
  ])('no dose in the band: %s', async (_, band, words) => {
    const { page, json } = await foamOfLedger(await foamLedger(four), 'foam', band);
    expect(page).toContain(words);
    expect(page).toContain('no curve is known');
    expect(record(json['smallestDose'])['value']).toBe(null);
  });

  it('one pour a dose, no drink, no head yet: each is said', async () => {
    const single = [
      { dose: '10 ppm', heads: ['16 mm'], stage: 'syrup' },
      { dose: '20 ppm', heads: ['12 mm'], stage: 'syrup' },
    ];
    const { page } = await foamOfLedger(await foamLedger(single));
    expect(page).toContain('one pour a dose');
    expect(page).toContain('no rung has a stage named drink');
    const none = await foamLedger([{ dose: '10 ppm', heads: [] }]);
    await writeIn(
      none,
      'trials/0001-foam.yaml',
      'trial: 1\nmade: 2026-03-01T10:00+00:00\nseries: foam\nstages:\n  drink:\n    - antifoam emulsion: 10 ppm\n    - water: to 1 kg\n',
    );
    expect((await foamOfLedger(none)).page).toContain('no head is noted yet');
  });

  it.each([
    ['5 mm', 'is one figure'],
    ['15 to 5 mm', 'runs from high to low'],
    ['5 to 15', '--head'],
    ['5 to 15 g', '--head'],
  ])('refuses --head %s', (typed, words) => {
    expect(() => readHeadBand(typed)).toThrow(words);
  });
});
