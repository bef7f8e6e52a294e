import { mkdir } from 'node:fs/promises';
import { join } from 'node:path';
import { beforeEach, describe, expect, it } from 'vitest';
import { exampleLedger, found, leafValue, neckring, readIn, record, rows, writeIn } from './neckring.ts';

const vessels = `  vessels:
    - name: beaker
      volume: 1 L
      mass: 310 g
    - name: tank
      volume: 25 L
      mass: 3.2 kg
`;

const prices = `  polysorbate 80:
    price: 14 EUR/kg
  propylene glycol:
    price: 9.5 EUR/L
  sucrose:
    price: 1.1 EUR/kg
`;

const onceOf = async (folder: string, path: string, before: string, after: string): Promise<void> =>
  writeIn(folder, path, (await readIn(folder, path)).replace(before, after));

let folder = '';
const run = (...words: string[]) => neckring(words, { folder });
const json = (...words: string[]) => found(words, { folder });

beforeEach(async () => {
  folder = await exampleLedger();
  const bench = await readIn(folder, 'bench.yaml');
  await writeIn(folder, 'bench.yaml', bench.replace(/ {2}vessels:\n(?: {4}.*\n)+/, vessels));
  const book = await readIn(folder, 'ingredients.yaml');
  await writeIn(folder, 'ingredients.yaml', book.replace(/ {2}polysorbate 80:.*/s, prices));
});

describe('scale', () => {
  it('law: 20 L of syrup is 20 L, and what is weighed is the printed total to the last digit', async () => {
    const answer = await json('scale', 'orange cardamom', '--to', '20 L syrup', '--loss', '3 %');
    const stages = rows(answer['stages']);
    expect(stages.map(({ stage }) => stage)).toEqual(['emulsion', 'syrup']);
    const syrup = stages[1] ?? {};
    expect(Math.abs(leafValue(syrup['volume']) * 0.97 - 20)).toBeLessThan(0.002);
    for (const { items, mass } of stages) {
      const sum = rows(items).reduce((total, item) => total + Math.round(leafValue(item['weigh']) * 100), 0);
      expect(sum).toBe(Math.round(leafValue(mass) * 100));
    }
    expect(record(rows(syrup['items'])[0]?.['exact'])['unit']).toBe('g');
    expect(Math.abs(leafValue(answer['drinkDeviation']))).toBeLessThan(0.01);
  });

  it('law: an amount counted in the drink is still that at 500 bottles: 4.5 g/L of citric acid', async () => {
    const answer = await json('scale', 'orange cardamom', '--to', '500 x 330 mL');
    const syrup = rows(answer['stages'])[1] ?? {};
    const acid = rows(syrup['items']).find(({ ingredient }) => ingredient === 'citric acid');
    expect(leafValue(acid?.['exact'])).toBeCloseTo(4.5 * 165, 6);
  });

  it('splits a stage into equal sub-batches, weighs portions, and turns drops into a mass', async () => {
    const { code, out } = await run('scale', 'orange cardamom', '--to', '500 x 330 mL', '--loss', '3 %');
    expect(code).toBe(0);
    expect(out).toContain('syrup: 2 times 20857.13 g, about 17.54 L, in the tank (25 L)');
    expect(out).toMatch(/water +2 x 5974 g +1 g/);
    expect(out).toContain('12 drops in the design');
    expect(out).toContain('Make a pilot first (10 L drink)');
    expect(out.split('\n').filter((line) => line.length > 80)).toEqual([]);
  });

  it('makes the stages of other trials anew, with their process', async () => {
    const { out } = await run('scale', '17', '--to', '20 L syrup');
    expect(out).toContain('emulsion of 13: 150.00 g');
    expect(out).toContain('warm oil and emulsifier to 60 C');
  });

  it('weighs what no balance takes as a stock, with its recipe, and an emulsion large enough', async () => {
    const answer = await json('scale', 'orange cardamom', '--to', '500 mL drink');
    const [stock] = rows(answer['stocks']).filter(({ of }) => of === 'cassis stock');
    expect(stock).toMatchObject({ stage: 'drink', solvent: 'water' });
    const drink = rows(answer['stages']).at(-1) ?? {};
    const line = rows(drink['items']).find(({ ingredient }) => ingredient === stock?.['name']);
    const strength = leafValue(rows(stock?.['steps']).at(-1)?.['strength']);
    expect(leafValue(line?.['weigh']) * strength).toBeCloseTo(0.126, 3);
    const emulsion = rows(answer['stages'])[0] ?? {};
    for (const item of rows(emulsion['items']))
      expect(leafValue(item['readingError'])).toBeLessThanOrEqual(0.01 * (1 + 1e-9));
  });

  it('--fill: syrup and carbonated water of a bottle, and the CO2 that the water must bring', async () => {
    const words = ['--to', '500 x 330 mL', '--fill', '--co2', '3.5 vol'];
    const answer = await json('scale', 'orange cardamom', ...words);
    const filling = record(answer['filling']);
    const [syrup, water] = rows(filling['parts']);
    expect(water).toMatchObject({ ingredient: 'water', carbonated: true });
    expect(leafValue(syrup?.['volume']) + leafValue(water?.['volume'])).toBeCloseTo(330, 0);
    expect(leafValue(filling['waterCarbonation'])).toBeCloseTo((3.5 * 330) / leafValue(water?.['volume']), 6);
    const { out } = await run('scale', 'orange cardamom', ...words);
    expect(out).toContain('Filling: each of 500 bottles of 330 mL');
    expect(out).toContain('finished syrup');
    expect(out).toContain('CO2 is heavier than air');
  });

  it('--keg: the same for one keg, without --to', async () => {
    const answer = await json('scale', '17', '--keg', '19 L', '--co2', '2.5');
    expect(record(answer['filling'])).toMatchObject({ into: 'keg', count: { value: 1 } });
    expect(leafValue(rows(answer['stages']).at(-1)?.['volume'])).toBeCloseTo(19, 2);
  });

  it('says of an emulsion what is to be minded of an emulsion, and of gas once', async () => {
    const codes = async (...words: string[]) => {
      const { out } = await run('scale', 'orange cardamom', ...words, '--json');
      return rows(record(JSON.parse(out))['cautions']).map(({ code }) => code);
    };
    const emulsion = await codes('--to', '1.2 kg emulsion');
    expect(emulsion).toContain('flammable-near-heat');
    expect(emulsion).not.toContain('acid-and-teeth');
    expect(await codes('--to', '20 L syrup')).toContain('acid-syrup');
    const filled = await codes('--to', '500 x 330 mL', '--fill');
    expect(filled).toEqual(expect.arrayContaining(['gas-at-work', 'acid-and-teeth']));
    expect(filled).not.toContain('pressure');
  });

  it('--keg is of the drink: not with a syrup', async () => {
    const { code, err } = await run('scale', '17', '--keg', '19 L', '--to', '20 L syrup');
    expect([code, err]).toEqual([2, expect.stringContaining('--to asks for syrup')]);
  });

  it('--strength: another throw, the same drink, and what falls out at that strength', async () => {
    const { out } = await run('scale', 'orange cardamom', '--to', '10 L syrup', '--strength', '1.2');
    expect(out).toContain('a throw of 1+5; the drink stays the same');
    const thick = await run('scale', 'orange cardamom', '--to', '10 L syrup', '--strength', '3');
    expect(thick.out).toMatch(/of sucrose in the syrup, where about .* dissolves/);
  });

  it('law: says what the drink gets that is not in the syrup: 12 drops a litre of 100 L', async () => {
    const words = ['scale', 'orange cardamom', '--to', '20 L syrup'];
    const left = record((await json(...words))['notInThis']);
    const drink = await json('scale', 'orange cardamom', '--to', '100 L drink');
    const there = rows(rows(drink['stages']).at(-1)?.['items']);
    // 200 mL of syrup a litre: 20 L make 100 L.
    expect(left).toMatchObject({ stage: 'syrup', drink: { unit: 'L' } });
    expect(leafValue(left['drink'])).toBeCloseTo(100, 6);
    const [stock, ...others] = rows(left['items']);
    expect([stock?.['ingredient'], others]).toEqual(['cassis stock', []]);
    const whole = there.find(({ ingredient }) => ingredient === 'cassis stock');
    expect(leafValue(stock?.['mass'])).toBeCloseTo(leafValue(whole?.['exact']), 6);
    const { out } = await run(...words, '--sheet', 'batch.html', '--sheet', 'batch.md');
    const says = /Not in this syrup: cassis stock [\d.]+ g, for the 100 L of drink that this syrup makes/u;
    for (const text of [out, await readIn(folder, 'batch.html'), await readIn(folder, 'batch.md')])
      expect(text.replace(/\s+/gu, ' ')).toMatch(says);
    expect('notInThis' in drink).toBe(false);
  });

  it('pinned: bottles are not filled with an emulsion that no drink is made of', async () => {
    const { code, err } = await run('scale', '13', '--to', '40 x 330 mL');
    expect([code, err]).toEqual([2, expect.stringContaining('bottles hold the drink')]);
    expect(err).toMatch(/by mass: --to "13\.?\d* kg emulsion"/u);
    expect((await run('scale', '13', '--to', '40 x 330 mL emulsion')).code).toBe(0);
    expect((await run('scale', '13', '--to', '13 kg')).code).toBe(0);
  });

  it('pinned: how many times more, stage by stage, in words', async () => {
    const { out } = await run('scale', '17', '--to', '500 x 330 mL');
    expect(out.replace(/\s+/gu, ' ')).toContain(
      'This is 165 times as much drink as was made before (syrup: 165 times',
    );
  });

  it('refuses what it can not make, each with its mend', async () => {
    const cases: readonly (readonly [readonly string[], string])[] = [
      [['--to', '20 L cordial'], 'its stages are emulsion, syrup, drink'],
      [['--to', '0 L syrup'], 'give an amount above zero'],
      [['--to', '20 L syrup', '--loss', '100 %'], 'give what stays in the vessels'],
      [['--to', '10 L syrup', '--strength', '9'], 'give at most --strength'],
      [['--to', '10 L syrup', '--strength', '0'], 'give a figure such as 1.2'],
      [['--to', '10 L syrup', '--sheet', 'batch.pdf'], 'name it batch.html or batch.md'],
      [['--fill', '--to', '20 L syrup', '--keg', '19 L', '--bottle', '330 mL'], 'both --keg and --bottle'],
      [[], '--to "500 x 330 mL"'],
    ];
    for (const [words, says] of cases) {
      const { code, err } = await run('scale', 'orange cardamom', ...words);
      expect([words, code, err.includes(says) ? says : err]).toEqual([words, 2, says]);
    }
  });

  it('refuses a vessel smaller than a single item, and takes one that is typed', async () => {
    await onceOf(folder, 'bench.yaml', vessels, '  vessels:\n    - volume: 50 mL\n');
    const words = ['scale', 'orange cardamom', '--to', '20 L syrup'];
    const refused = await run(...words);
    expect([refused.code, refused.err]).toEqual([
      2,
      expect.stringContaining('smaller than the water of syrup alone'),
    ]);
    expect((await run(...words, '--vessel', '25 L')).out).toContain('in the 25 L');
  });

  it('says what to buy where no balance here can bring an item in', async () => {
    const coarse = `  balances:\n    - division: 1 kg\n      limit: 60 kg\n`;
    const bench = await readIn(folder, 'bench.yaml');
    await writeIn(
      folder,
      'bench.yaml',
      bench.replace(/ {2}balances:[\s\S]*?(?= {2}vessels:| {2}weighing:)/, coarse),
    );
    const { code, err } = await run('scale', 'orange cardamom', '--to', '20 L syrup');
    expect([code, err]).toEqual([2, expect.stringContaining('a balance that shows')]);
  });

  it('asks before a serving with more than 200 mg of caffeine', async () => {
    await onceOf(
      folder,
      'formulas/orange-cardamom.yaml',
      '    - cassis stock',
      '    - caffeine: 1 g/L\n    - cassis stock',
    );
    const words = ['scale', 'orange cardamom', '--to', '20 L drink'];
    expect(await run(...words)).toMatchObject({ code: 2, err: expect.stringContaining('add --yes') });
    const allowed = await run(...words, '--yes');
    expect(allowed.code).toBe(0);
    expect(allowed.out).toContain('a teaspoon is some 3 g');
  });

  it('shows the pharmacopoeial 0.10 % beside the figure of the bench with --explain', async () => {
    const { out } = await run('scale', 'orange cardamom', '--to', '20 L syrup', '--explain');
    expect(out).toContain('United States Pharmacopeia 2019, general chapter 41');
    expect(out).toMatch(/cardamom oil lot 7 in emulsion: [\s\S]* 0\.10 % would need 8\.2\s+g/);
  });
});

describe('scale --sheet', () => {
  const words = ['scale', 'orange cardamom', '--to', '500 x 330 mL', '--fill', '--batch', '2026-14'];

  it('writes one self-contained page with boxes, checks, cautions and notes', async () => {
    const { code, err } = await run(...words, '--sheet', 'batch.html', '--sheet', 'batch.md');
    expect([code, err]).toEqual([0, expect.stringContaining('wrote batch.html')]);
    const sheet = await readIn(folder, 'batch.html');
    expect(sheet.split('\n')[0]).toContain('neckring');
    expect(sheet).not.toMatch(/(?:src|href)=|url\(|@import|<script/i);
    for (const part of [
      '2026-14',
      'not in git',
      '1. emulsion',
      'weighed',
      'initials',
      'Checks',
      '2.8 to 3.2',
      'Take care',
      'Notes',
    ])
      expect(sheet).toContain(part);
    const plain = await readIn(folder, 'batch.md');
    expect(plain).toContain('# Batch 2026-14: orange cardamom');
    expect(plain).toContain('## 1. emulsion');
  });

  it('never lets a text of a file become markup', async () => {
    await onceOf(
      folder,
      'formulas/orange-cardamom.yaml',
      '      - orange oil lot 2231: 3.6 %',
      '      - orange oil lot 2231: 3.6 %\n        note: <script>alert(1)</script> & "more" | *`x`',
    );
    await run(...words, '--batch', '"><img src=x>', '--sheet', 'batch.html', '--sheet', 'batch.md');
    const sheet = await readIn(folder, 'batch.html');
    expect(sheet).not.toMatch(/<script|<img/);
    expect(sheet).toContain('&lt;script&gt;alert(1)&lt;/script&gt; &amp; &quot;more&quot;');
    expect(await readIn(folder, 'batch.md')).toContain('\\<script\\>');
  });

  it('writes over a sheet of ours, never over another file, a folder or the ledger', async () => {
    expect((await run(...words, '--sheet', 'batch.html')).code).toBe(0);
    expect((await run(...words, '--sheet', 'batch.html')).code).toBe(0);
    await writeIn(folder, 'mine.html', '<p>mine</p>');
    await mkdir(join(folder, 'shelf.html'));
    for (const [file, says] of [
      ['mine.html', 'not one of ours'],
      ['shelf.html', 'is a folder'],
      ['nowhere/batch.html', 'there is no folder'],
    ] as const) {
      const { code, err } = await run(...words, '--sheet', file);
      expect([file, code, err.includes(says)]).toEqual([file, 2, true]);
    }
    expect(await readIn(folder, 'mine.html')).toBe('<p>mine</p>');
    expect((await run(...words, '--sheet', 'mine.html', '--replace')).code).toBe(0);
    expect(await readIn(folder, 'mine.html')).toContain('neckring');
  });
});
