import { mkdir, readdir } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { exampleLedger, found, leafValue, neckring, readIn, record, rows, writeIn } from './neckring.ts';
import { ledgerOf, lisbonBench } from './small-ledger.ts';

const now = '2026-03-12T12:00:00Z';
const trialsIn = (folder: string) => readdir(join(folder, 'trials'));

const plain = (stages: string): string => `trial: 1\ntitle: sweet orange, first\nstages:\n${stages}`;
const water = `  emulsion:
    - sweet orange oil: 2 g
    - polysorbate 80: 6 g
    - water: to 50 g
`;

async function beakersOf(folder: string, words: readonly string[]) {
  return rows((await found(['ladder', ...words], { folder, now }))['beakers']);
}

const valuesOf = (beakers: Awaited<ReturnType<typeof beakersOf>>, key: string): readonly number[] =>
  beakers.map((one) => leafValue(one[key])).sort((a, b) => a - b);

describe('ladder: the plan', () => {
  it('shows what it would write and writes nothing', async () => {
    const folder = await exampleLedger();
    const before = await trialsIn(folder);
    const ran = await neckring(['ladder', '13', '--rungs', '1:4, 1:3, 1:2', '--control', '1:8', '--blank'], {
      folder,
      now,
    });
    expect([ran.code, ran.err]).toEqual([
      0,
      'nothing written; --write writes 6 files, in an order drawn anew\n',
    ]);
    expect(ran.out).toContain('kept alike  polysorbate 80 6 g; propylene glycol 6 g; water takes the rest');
    expect(ran.out).toMatch(/1 : 3 +0\.3333 +0 % +2\.00 g +6\.00 g +6\.00 g +36\.00 g/u);
    expect(ran.out).toMatch(/is the control, .* is the blank|is the blank, .* is the control/u);
    expect(Math.max(...ran.out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
    expect(await trialsIn(folder)).toEqual(before);
    expect(await readdir(join(folder, 'series'))).toEqual(['orange-ladder.yaml']);
  });

  it('begins where such emulsions break, by how it is made, and says why', async () => {
    const folder = await exampleLedger();
    const stirred = await neckring(['ladder', '13'], { folder, now });
    expect(stirred.out).toContain('this one is stirred by its');
    // 1:8 to 2:1 is a factor of 16; six rungs part it into seven.
    const wanted = (low: number, factor: number) =>
      [1, 2, 3, 4, 5, 6].map((at) => Number((low * factor ** (at / 7)).toFixed(4)));
    const round = (some: readonly number[]) => some.map((one) => Number(one.toFixed(4)));
    expect(round(valuesOf(await beakersOf(folder, ['13']), 'value'))).toEqual(wanted(1 / 8, 16));
    const strong = await beakersOf(folder, ['13', '--making', 'homogenised']);
    expect(round(valuesOf(strong, 'value'))).toEqual(wanted(1 / 3, 15));
    const sheared = plain(
      water
        .replace(
          /^ {2}emulsion:\n/u,
          '  emulsion:\n    process:\n      - do: shear\n        for: 5 min\n    items:\n',
        )
        .replaceAll('    - s', '      - s')
        .replaceAll('    - p', '      - p')
        .replaceAll('    - w', '      - w'),
    );
    const by = await neckring(['ladder', '1'], { folder: await ledgerOf({ 'trials/1.yaml': sheared }), now });
    expect(by.out).toContain('this one is homogenised by its');
  });

  it('places a range in equal steps of the logarithm for ratios, in equal steps for amounts', async () => {
    const folder = await exampleLedger();
    const ratios = valuesOf(
      await beakersOf(folder, ['13', '--range', '1:4 to 1:1', '--count', '3']),
      'value',
    );
    expect(ratios.map((one) => one.toFixed(6))).toEqual(['0.250000', '0.500000', '1.000000']);
    const amounts = await beakersOf(folder, [
      ...['13', '--vary', 'propylene glycol', '--range', '2 to 8 g', '--count', '4'],
    ]);
    expect(valuesOf(amounts, 'value')).toEqual([2, 4, 6, 8]);
  });

  it.each([
    ['masses', water],
    [
      'shares',
      '  emulsion:\n    makes: 50 g\n    items:\n      - sweet orange oil: 4 %\n      - polysorbate 80: 12 %\n      - water: 84 %\n',
    ],
    [
      'parts',
      '  emulsion:\n    makes: 50 g\n    items:\n      - sweet orange oil: 1 parts\n      - polysorbate 80: 3 parts\n      - water: 21 parts\n',
    ],
    [
      'concentrations',
      '  emulsion:\n    - sweet orange oil: 40 g/L\n    - polysorbate 80: 120 g/L\n    - water: to 50 mL\n',
    ],
    [
      'a volume and arithmetic',
      '  emulsion:\n    - sweet orange oil: 2.4 mL\n    - polysorbate 80: (2 + 4) g\n    - water: to 50 g\n',
    ],
    [
      'masses alone',
      '  emulsion:\n    - sweet orange oil: 2 g\n    - polysorbate 80: 6 g\n    - water: 42 g\n',
    ],
    [
      'several oils and emulsifiers',
      '  emulsion:\n    - sweet orange oil: 1.5 g\n    - cardamom oil: 0.5 g\n    - polysorbate 80: 4 g\n    - polysorbate 20: 2 g\n    - water: 42 g\n',
    ],
  ])(
    'law: written trials come to the ratio within the balance, emulsifier and batch kept: %s',
    async (_, stages) => {
      const folder = await ledgerOf({ 'trials/1.yaml': plain(stages) });
      const written = await found(['ladder', '1', '--rungs', '1:5, 1:2, 1:1', '--write'], { folder, now });
      for (const beaker of rows(written['beakers'])) {
        const shown = await found(['show', String(beaker['trial'])], { folder, now });
        const stage = record(rows(shown['stages'])[0]);
        const items = rows(stage['items']);
        const grams = (names: readonly string[]): number =>
          items
            .filter((item) => names.includes(String(item['name'] ?? item['item'])))
            .reduce((sum, item) => sum + leafValue(item['mass']), 0);
        const oil = grams(['sweet orange oil', 'cardamom oil']);
        const emulsifier = grams(['polysorbate 80', 'polysorbate 20']);
        const wanted = leafValue(beaker['value']);
        // One division of 0.01 g on the oil, and on the emulsifier.
        expect(Math.abs(oil / emulsifier / wanted - 1)).toBeLessThan(0.01 / (6 * wanted) + 0.01 / 6);
        expect(Math.abs(emulsifier - 6)).toBeLessThan(0.04);
        // Made up to 50 g, or to 50 mL.
        const sizes = [leafValue(stage['mass']), leafValue(stage['volume']) * 1000];
        const apart = sizes.map((size) => Math.abs(size - 50));
        expect(Math.min(...apart)).toBeLessThan(0.02);
      }
    },
  );

  it('keeps the oil, or both together, where it is told to', async () => {
    const folder = await ledgerOf({ 'trials/1.yaml': plain(water) });
    const grams = async (same: string) =>
      (await beakersOf(folder, ['1', '--rungs', '1:4, 1:3', '--same', same]))
        .filter((one) => leafValue(one['value']) === 0.25)
        .flatMap((one) => rows(one['items']).map((item) => leafValue(item['mass'])));
    expect((await grams('oil')).map((one) => one.toFixed(2))).toEqual(['2.00', '8.00', '40.00']);
    expect((await grams('batch')).map((one) => one.toFixed(2))).toEqual(['1.60', '6.40', '42.00']);
    expect((await grams('emulsifier')).map((one) => one.toFixed(2))).toEqual(['1.50', '6.00', '42.50']);
  });

  it('says what the balance can not weigh, and a ratio that may be the wrong way up', async () => {
    const coarse = `${lisbonBench}  balances:\n    - division: 0.1 g\n`;
    const folder = await ledgerOf({ 'bench.yaml': coarse, 'trials/1.yaml': plain(water) });
    const ran = await neckring(['ladder', '1', '--rungs', '1:8, 1:3'], { folder, now });
    // 0.75 g on 0.1 g reads 0.8 g: 6.7 % too much; half a division is 0.05 g of 0.8 g, 6.25 %.
    expect(ran.out).toMatch(/1 : 8 +0\.1333 +\+6\.67 % +0\.8 g/u);
    expect(ran.out).toContain('! 6.3 % of sweet orange oil (0.8 g)');
    const turned = await neckring(['ladder', '1', '--rungs', '4:1, 3:1'], { folder, now });
    expect(turned.out).toContain('is this meant? A ratio is typed oil first');
  });

  it('a blend of two emulsifiers at equal total comes to the HLB', async () => {
    const two =
      '  emulsion:\n    - sweet orange oil: 2 g\n    - polysorbate 80: 3 g\n    - sorbitan oleate: 3 g\n    - water: 42 g\n';
    const folder = await ledgerOf({ 'trials/1.yaml': plain(two) });
    const beakers = await beakersOf(folder, ['1', '--vary', 'blend HLB', '--rungs', '10, 12']);
    const page = await neckring(['ladder', '1', '--vary', 'blend HLB', '--rungs', '10, 12'], { folder, now });
    expect(page.out.replace(/\s+/g, ' ')).toContain(
      'polysorbate 80 and sorbitan oleate 6 g together; sweet orange oil 2 g',
    );
    for (const beaker of beakers) {
      const [, soap = 0, oleate = 0] = rows(beaker['items']).map((item) => leafValue(item['mass']));
      expect(soap + oleate).toBeCloseTo(6, 6);
      // 15 and 4.3: the usual figures of polysorbate 80 and sorbitan oleate (HLB system).
      expect((soap * 15 + oleate * 4.3) / 6).toBeCloseTo(leafValue(beaker['value']), 1);
    }
  });
});

describe('ladder: what it writes', () => {
  it('one trial a beaker with the next numbers in the order of making, and the series', async () => {
    const folder = await exampleLedger();
    const ran = await neckring(
      [
        ...['ladder', '13', '--rungs', '1:4, 1:2.5', '--control', 'trial 11', '--blank', '--write'],
        ...['--series', 'cold ladder', '--question', 'does it hold cold?'],
      ],
      { folder, now },
    );
    expect(ran.code).toBe(0);
    const names = (await trialsIn(folder)).filter((name) => name > '0018');
    expect(names.map((name) => name.slice(0, 16))).toEqual([
      '0018-cold-ladder',
      '0019-cold-ladder',
      '0020-cold-ladder',
      '0021-cold-ladder',
    ]);
    const series = await readIn(folder, 'series/cold-ladder.yaml');
    const control = names.find((name) => name.includes('control'))?.slice(2, 4);
    const blank = names.find((name) => name.includes('blank'))?.slice(2, 4);
    expect(series).toBe(
      [
        '# yaml-language-server: $schema=../schema/series.json',
        'series: cold ladder',
        'question: does it hold cold?',
        'varies: oil per emulsifier',
        'same:',
        '  - emulsifier',
        '  - propylene glycol',
        '  - steps of trial 13',
        'judge: beaker',
        'passes:',
        '  - clear',
        'watch: 7 d',
        `control: ${control}`,
        `blank: ${blank}`,
        '',
      ].join('\n'),
    );
    const half = names.find((name) => name.includes('1-to-2-5')) ?? '';
    const text = await readIn(folder, `trials/${half}`);
    expect(text).toContain(
      'title: cold ladder, 1 to 2.5\nmade: 2026-03-12T12:00+00:00\nfrom: 13\nseries: cold ladder\n',
    );
    expect(text).toContain('      - orange oil lot 2231: 2.4 g\n      - polysorbate 80: 6 g\n');
    expect(text).toContain('      - do: add\n        what: water at 60 C\n');
    expect(text).not.toContain('weighed');
    expect(text).not.toContain('observations');
    expect((await neckring(['check'], { folder, now })).code).toBe(0);
  });

  it('asks on a terminal, and leaves everything alone when the answer is no', async () => {
    const folder = await exampleLedger();
    const before = await trialsIn(folder);
    const words = ['ladder', '13', '--rungs', '1:4, 1:3'];
    const no = await neckring(words, { folder, now, answers: ['n'] });
    expect([no.code, no.err]).toEqual([0, 'nothing written\n']);
    const left = await neckring(words, { folder, now, answers: [] });
    expect(left.err).toBe('nothing written\n');
    expect(await trialsIn(folder)).toEqual(before);
    const yes = await neckring(words, { folder, now, answers: ['y'] });
    expect(yes.out).toContain('Write 3 files? (y/n)');
    expect((await trialsIn(folder)).length).toBe(before.length + 2);
  });

  it('gives two ladders at once different numbers', async () => {
    const folder = await exampleLedger();
    const before = (await trialsIn(folder)).length;
    const made = await Promise.all(
      ['one', 'two', 'three'].map((name) =>
        found(['ladder', '13', '--rungs', '1:4, 1:3', '--series', name, '--write'], { folder, now }),
      ),
    );
    const numbers = made.flatMap((one) => rows(one['beakers']).map(({ trial }) => Number(trial))).sort();
    expect(numbers).toEqual([18, 19, 20, 21, 22, 23]);
    expect((await trialsIn(folder)).length).toBe(before + 6);
  });

  it('adds to a series that varies the same; its file stays as it is', async () => {
    const folder = await exampleLedger();
    const before = await readIn(folder, 'series/orange-ladder.yaml');
    const words = ['ladder', '13', '--rungs', '1:2.8, 1:2.6', '--series', 'Orange ladder', '--write'];
    expect((await neckring(words, { folder, now })).code).toBe(0);
    expect(await readIn(folder, 'series/orange-ladder.yaml')).toBe(before);
    const series = await found(['series', 'orange ladder'], { folder, now });
    expect(leafValue(series['watching'])).toBe(2);
    const named = await neckring(
      ['ladder', '13', '--rungs', '1:2.8, 1:2.6', '--series', 'orange ladder', '--control', '1:8', '--write'],
      { folder, now },
    );
    expect(named.code).toBe(0);
    const after = await readIn(folder, 'series/orange-ladder.yaml');
    expect(after.replace(/^control: \d+\n/mu, '')).toBe(before);
  });

  it('a formula is a start like a trial', async () => {
    const folder = await exampleLedger();
    const ran = await neckring(['ladder', 'orange cardamom', '--rungs', '1:4, 1:3', '--write'], {
      folder,
      now,
    });
    expect(ran.code).toBe(0);
    const file = (await trialsIn(folder)).find((name) => name.startsWith('0018'));
    const text = await readIn(folder, `trials/${file}`);
    expect(text).toContain('note: from formula orange cardamom');
    expect(text).not.toContain('aim');
    const series = (await readdir(join(folder, 'series'))).find((name) => name !== 'orange-ladder.yaml');
    expect(await readIn(folder, `series/${series}`)).toContain('\nformula: orange cardamom\n');
    expect((await neckring(['check'], { folder, now })).code).toBe(0);
  });
});

describe('ladder: what it refuses, with nothing written', () => {
  const cases: readonly (readonly [string, readonly string[], string])[] = [
    ['one rung', ['13', '--rungs', '1:4'], '--rungs has one rung'],
    ['no rungs', ['13', '--rungs', ''], 'there are no rungs'],
    ['zero', ['13', '--rungs', '0, 1:3'], '"0" is no ratio'],
    ['negative', ['13', '--rungs', '1:3, -2'], '"-2" has a sign'],
    ['garbage', ['13', '--rungs', '1:3, x'], '"x" is not a ratio'],
    ['nothing varied', ['13', '--vary', ' ', '--rungs', '1:3, 1:4'], '--vary is empty'],
    ['two things', ['13', '--vary', 'oil per emulsifier, blend HLB'], 'are two things'],
    ['the rest kept', ['13', '--same', 'water'], 'takes the rest of the stage'],
    [
      'what is varied kept',
      ['13', '--vary', 'propylene glycol', '--rungs', '2 g, 4 g', '--same', 'propylene glycol'],
      'is what is varied',
    ],
    ['two units', ['13', '--vary', 'propylene glycol', '--rungs', '2 g, 4 %'], 'are of two kinds'],
    ['no unit', ['13', '--vary', 'propylene glycol', '--rungs', '2, 4'], '"2" has no unit'],
    [
      'not there',
      ['13', '--vary', 'glycerol', '--rungs', '2 g, 4 g'],
      '0013-orange-1-to-3.yaml:6:1: trial 13 has no glycerol',
    ],
    ['no rungs for an amount', ['13', '--vary', 'propylene glycol'], 'nothing says where the rungs'],
    ['made up', ['13', '--vary', 'water', '--rungs', '30 g, 40 g'], 'water makes emulsion up'],
    ['no room', ['13', '--rungs', '1:3, 9:1'], '9 : 1: there is no room for it'],
    ['elsewhere', ['17', '--rungs', '1:3, 1:4'], 'which is made in another trial'],
    ['one emulsifier', ['13', '--vary', 'blend HLB', '--rungs', '10, 12'], 'the stage has one emulsifier'],
    ['temperature', ['13', '--vary', 'temperature', '--rungs', '50 C, 60 C'], 'no amount'],
    ['all kept', ['13', '--same', 'oil', '--same', 'emulsifier'], 'nothing is left to vary'],
    ['unknown kept', ['13', '--same', 'polysorbate 8'], 'did you mean polysorbate 80?'],
    ['list and range', ['13', '--rungs', '1:3, 1:4', '--range', '1:4 to 1:2'], 'both given'],
    ['a range of one', ['13', '--range', '1:4 to 1:4'], 'begins where it ends'],
    ['count', ['13', '--range', '1:4 to 1:2', '--count', '1'], '--count 1 is no number of rungs'],
    ['control', ['13', '--rungs', '1:3, 1:4', '--control', '12'], 'may be a ratio or a trial'],
    ['control of no trial', ['13', '--rungs', '1:3, 1:4', '--control', 'trial 99'], 'there is no trial 99'],
    ['judge', ['13', '--rungs', '1:3, 1:4', '--judge', 'cold'], 'there is no sample "cold"'],
    ['making', ['13', '--making', 'shaken'], '--making shaken is not known'],
    [
      'other series',
      ['13', '--vary', 'propylene glycol', '--rungs', '2 g, 4 g', '--series', 'orange ladder'],
      'varies oil per emulsifier',
    ],
    ['no trial', ['99'], 'there is no trial 99'],
  ];
  it.each(cases)('%s', async (_, words, message) => {
    const folder = await exampleLedger();
    const before = await trialsIn(folder);
    const ran = await neckring(['ladder', ...words, '--write'], { folder, now });
    expect(ran.code, ran.out).toBe(2);
    expect(ran.err).toContain(message);
    expect(await trialsIn(folder)).toEqual(before);
    expect(await readdir(join(folder, 'series'))).toEqual(['orange-ladder.yaml']);
  });

  it('a trial without an emulsifier, at its place', async () => {
    const folder = await ledgerOf({
      'trials/1.yaml': plain('  emulsion:\n    - sweet orange oil: 2 g\n    - water: to 50 g\n'),
    });
    const ran = await neckring(['ladder', '1'], { folder, now });
    expect(ran.err).toMatch(/^trials\/1\.yaml:3:1: trial 1 has no emulsifier/u);
  });

  it('a file of another series in the way', async () => {
    const folder = await exampleLedger();
    await writeIn(folder, 'series/cold-ladder.yaml', 'series: something else\nvaries: blend HLB\n');
    const ran = await neckring(
      ['ladder', '13', '--rungs', '1:3, 1:4', '--series', 'cold ladder', '--write'],
      { folder, now },
    );
    expect([ran.code, ran.err]).toEqual([
      2,
      'series/cold-ladder.yaml is there already; give the series another name with --series\n',
    ]);
    expect(await readIn(folder, 'series/cold-ladder.yaml')).toContain('something else');
  });

  it('a trial whose file name is taken keeps its text', async () => {
    const folder = await ledgerOf({ 'trials/1.yaml': plain(water) });
    await mkdir(join(folder, 'trials/0002-sweet-orange-ladder-1-to-3.yaml'));
    const ran = await neckring(['ladder', '1', '--rungs', '1:3, 1:4', '--write'], { folder, now });
    expect(ran.code).toBe(0);
    expect((await trialsIn(folder)).length).toBe(4);
  });
});
