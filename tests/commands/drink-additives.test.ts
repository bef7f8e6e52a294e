import { describe, expect, it } from 'vitest';
import { exampleLedger, found, leafValue, neckring, record, rows } from './neckring.ts';
import { ledgerOf, lisbonBench } from './small-ledger.ts';

const litre = (...items: readonly string[]): string =>
  `formula: try\nstages:\n  drink:\n${[...items, 'deionised water: to 1 L'].map((item) => `    - ${item}\n`).join('')}`;

const ledger = (text: string, more: Readonly<Record<string, string>> = {}): Promise<string> =>
  ledgerOf({ 'formulas/try.yaml': text, ...more });

const cautionsIn = async (folder: string): Promise<readonly string[]> => {
  const { out } = await neckring(['drink', 'try', '--json', '--yes'], { folder });
  const parsed: unknown = JSON.parse(out);
  return rows(record(parsed)['cautions']).map((one) => `${String(one['code'])}: ${String(one['text'])}`);
};

const figuresIn = async (folder: string): Promise<readonly Readonly<Record<string, unknown>>[]> =>
  rows((await found(['drink', 'try', '--yes'], { folder }))['publishedFigures']);

describe('beside published figures', () => {
  it('published: 177 mg/L of sodium benzoate is 150 mg/L of benzoic acid, which is not above the EU figure (UK FSA survey 2008)', async () => {
    const at = async (milligrams: number) =>
      (await figuresIn(await ledger(litre(`sodium benzoate: ${milligrams} mg`, 'citric acid: 4 g')))).find(
        (one) => one['body'] === 'EU' && one['as'] === 'benzoic acid',
      );
    const even = await at(176.9);
    expect(leafValue(even?.['here'])).toBeCloseTo(150, 0);
    expect([even?.['above'], (await at(200))?.['above']]).toEqual([false, true]);
  });

  it('law: mg/L over density is mg/kg, and each figure stands in its own unit', async () => {
    const folder = await ledger(litre('sucrose: 100 g', 'propylene glycol: 432 mg'));
    const density = leafValue((await found(['drink', 'try'], { folder }))['density']);
    const [us, eu] = ['US FDA', 'EU'];
    const figures = (await figuresIn(folder)).filter(({ forSuchDrinks }) => forSuchDrinks === true);
    const of = (body: string | undefined) => leafValue(figures.find((one) => one['body'] === body)?.['here']);
    expect(of(eu)).toBeCloseTo(432, 9);
    expect(of(us)).toBeCloseTo(432 / density, 9);
  });

  it('says of a drink above a figure whose it is and for what, and never judges it', async () => {
    const folder = await ledger(litre('polysorbate 80: 600 mg', 'polysorbate 20: 20 mg'));
    const above = (await cautionsIn(folder)).filter((one) => one.startsWith('above-figure'));
    expect(above).toEqual([
      expect.stringMatching(
        /polysorbates: 6\d\d mg\/kg, above the figure of 500 mg\/kg that Codex gives for water-based flavoured drinks/,
      ),
    ]);
    const { out } = await neckring(['drink', 'try', '--all'], { folder });
    expect(out).toContain('! 500 mg/kg');
    expect(out).not.toMatch(
      /\b(?:compliant|legal|approved|safe|safely|permitted|allowed|banned|non-toxic)\b/i,
    );
    expect(out).toContain('local food law and a qualified person');
  });

  it('shows the bodies that the bench names, and marks what is from memory', async () => {
    const text = litre('polysorbate 80: 200 mg');
    const bench = `${lisbonBench}  limits:\n    - eu\n`;
    const { out } = await neckring(['drink', 'try'], { folder: await ledger(text, { 'bench.yaml': bench }) });
    expect(out).toContain('none found *');
    expect(out).toContain('* from memory');
    expect(out).not.toContain('Codex');
  });

  it('goes by what else is in it: sorbate alone 300 mg/L, with benzoate 250 mg/L (UK FSA survey 2008)', async () => {
    const eu = async (...items: readonly string[]) =>
      (await figuresIn(await ledger(litre(...items)))).find(
        (one) => one['body'] === 'EU' && one['as'] === 'sorbic acid',
      )?.['figure'];
    expect(leafValue(await eu('potassium sorbate: 200 mg'))).toBe(300);
    expect(leafValue(await eu('potassium sorbate: 200 mg', 'sodium benzoate: 100 mg'))).toBe(250);
  });

  it('law: of a preservative only the undissociated share acts, and it is said (pKa of benzoic acid 4.2)', async () => {
    const folder = await ledger(
      litre('citric acid: 3 g', 'trisodium citrate dihydrate: 4 g', 'benzoic acid: 100 mg'),
    );
    const answer = await found(['drink', 'try'], { folder });
    const benzoic = rows(answer['acids']).find((one) => one['acid'] === 'benzoic acid');
    const share = leafValue(benzoic?.['undissociated']);
    // Henderson and Hasselbalch with activities: within a few hundredths of 1/(1 + 10^(pH - 4.1)).
    expect(share).toBeCloseTo(1 / (1 + 10 ** (leafValue(answer['ph']) - 4.11)), 1);
    expect((await neckring(['drink', 'try'], { folder })).out).toMatch(
      /benzoic acid +100 +mg\/L +\d+ % undissociated/,
    );
  });

  it('law: alcohol by volume is the volume of its ethanol, 0.7893 g/mL at 20 C (CRC Handbook), over that of the drink', async () => {
    const folder = await ledger(litre('ethanol: 7.893 g'));
    expect(leafValue((await found(['drink', 'try'], { folder }))['alcohol'])).toBeCloseTo(1, 9);
    const label = (await figuresIn(folder)).find(
      (one) => one['substance'] === 'ethanol' && one['body'] === 'US FDA',
    );
    expect([leafValue(label?.['figure']), label?.['above'], label?.['fromMemory']]).toEqual([
      0.5,
      true,
      true,
    ]);
  });

  it('takes an antifoam emulsion at its active silicone, and says so', async () => {
    const folder = await ledger(litre('antifoam emulsion: 200 mg'));
    const us = (await figuresIn(folder)).find((one) => one['body'] === 'US FDA');
    // A retail hint for a 10 % emulsion, 200 ppm of it, is 20 mg/kg active: twice the US figure.
    expect(leafValue(us?.['here'])).toBeCloseTo(20, 0);
    expect(us?.['above']).toBe(true);
    expect((await cautionsIn(folder)).join('\n')).toContain('10 % active');
  });
});

describe('aroma as dosed', () => {
  it('published: thresholds of sotolon from 0.001 (from memory) to 90 ppb (Belitz 2009), a factor of 90,000', async () => {
    const folder = await ledger(litre('sotolon stock: 1 g'), {
      'ingredients.yaml':
        'ingredients:\n  sotolon stock:\n    contains:\n      sotolon: 10 ppm\n      propylene glycol: rest\n',
    });
    const [sotolon] = rows((await found(['drink', 'try'], { folder }))['aroma']);
    const [low, high] = ['odourActivityLow', 'odourActivityHigh'].map((key) => leafValue(sotolon?.[key]));
    expect((high ?? 0) / (low ?? 1)).toBeCloseTo(90_000, 0);
    expect(leafValue(sotolon?.['asDosed']) / (high ?? 1)).toBeCloseTo(0.001, 9);
    const { out } = await neckring(['drink', 'try'], { folder });
    expect(out).toContain('As dosed'.toLowerCase());
    expect(out).not.toMatch(/taste it|will taste|below threshold/);
  });
});

describe('what is named for the harm that it could do', () => {
  it.each([
    ['ascorbic acid itself', 'ascorbic acid: 0.3 g', ''],
    [
      'juice, which holds it',
      'blackcurrant juice: 50 g',
      'ingredients:\n  blackcurrant juice:\n    density: 1.05 g/mL\n',
    ],
  ])('benzoate with %s raises the caution on benzene', async (_, item, own) => {
    const text = litre('sodium benzoate: 150 mg', item);
    const folder = await ledger(text, own === '' ? {} : { 'ingredients.yaml': own });
    const benzene = (await cautionsIn(folder)).find((one) => one.startsWith('benzene'));
    expect(benzene).toContain('Both precursors of benzene');
    expect(benzene).toContain('from memory');
    expect(benzene).not.toMatch(/will form/);
    const checked = (await neckring(['check'], { folder })).out.replace(/\s+/g, ' ');
    expect(checked).toContain('both precursors of benzene are in it: sodium benzoate, and');
    expect((await cautionsIn(await ledger(litre('sodium benzoate: 150 mg')))).join()).not.toContain(
      'benzene:',
    );
  });

  it.each([
    ['brominated vegetable oil', '2 August 2024'],
    ['safrole', '21 CFR 189.180'],
    ['coumarin', 'Annex III Part A'],
  ])(
    '%s is named with who withdrew it, in drink, check and show, and no dose is worked out',
    async (name, said) => {
      const folder = await ledgerOf({
        'trials/1.yaml': `trial: 1\nmade: 2026-03-02T10:15+00:00\nstages:\n  drink:\n    - ${name}: 20 mg\n    - water: to 1 L\n`,
      });
      for (const words of [['drink', '1'], ['check'], ['show', '1']]) {
        const { out } = await neckring(words, { folder });
        expect(out.replace(/\s+/g, ' '), words[0]).toContain(name);
        expect(out.replace(/\s+/g, ' '), words[0]).toContain(said);
      }
      const dose = await neckring(['hlb', '--oil', `2 g ${name}`, '--emulsifier', 'polysorbate 80'], {
        folder,
      });
      expect([dose.code, dose.err]).toEqual([2, expect.stringContaining('no dose is given for it')]);
    },
  );

  it('sodium cyclamate is named as prohibited by one body, with the figures of the others', async () => {
    const folder = await ledger(litre('sodium cyclamate: 200 mg'));
    expect((await cautionsIn(folder)).join('\n')).toContain('US FDA prohibits it');
    expect((await figuresIn(folder)).map((one) => one['body'])).toEqual(['EU', 'Codex']);
  });

  it('sugar without a preservative can ferment; with one, or without sugar, nothing is said of it', async () => {
    const fermentation = async (...items: readonly string[]) =>
      (await cautionsIn(await ledger(litre(...items)))).some((one) => one.startsWith('fermentation'));
    expect(await fermentation('sucrose: 90 g', 'citric acid: 4 g')).toBe(true);
    expect(await fermentation('sucrose: 90 g', 'citric acid: 4 g', 'potassium sorbate: 0.2 g')).toBe(false);
    expect(await fermentation('sucralose: 0.2 g', 'citric acid: 4 g')).toBe(false);
  });

  it('published: drinks below pH 3.0 extremely erosive, 3.0 to 3.99 erosive (Reddy 2016); over pH 4.6 low-acid (21 CFR 114.3)', async () => {
    const codes = async (...items: readonly string[]) =>
      (await cautionsIn(await ledger(litre(...items)))).join('\n');
    expect(await codes('citric acid: 5 g')).toContain('below pH 3 extremely erosive');
    expect(await codes('citric acid: 2 g', 'trisodium citrate dihydrate: 1.5 g')).toContain(
      'of pH 3 to 4 erosive',
    );
    const mild = await codes('citric acid: 0.2 g', 'trisodium citrate dihydrate: 3 g');
    expect(mild).toContain('low-acid: Above pH 4.6');
    expect(mild).not.toContain('acid-and-teeth');
  });

  it('names the people whom advice names', async () => {
    const text = litre('quinine: 60 mg', 'aspartame: 300 mg', 'phosphoric acid: 0.5 g', 'glycerol: 50 g');
    const said = (await cautionsIn(await ledger(text)))
      .filter((one) => one.startsWith('sensitive-group'))
      .join('\n');
    for (const word of ['Quinine', 'phenylketonuria', 'kidney', '7 years']) expect(said).toContain(word);
  });

  it('above 200 mg of caffeine a serving it asks, and elsewhere refuses without --yes (EFSA 2015)', async () => {
    const folder = await ledger(litre('caffeine: 1 g'));
    const refused = await neckring(['drink', 'try'], { folder });
    expect([refused.code, refused.err]).toEqual([2, expect.stringContaining('330 mg of caffeine')]);
    expect((await neckring(['drink', 'try', '--yes'], { folder })).code).toBe(0);
    expect((await neckring(['drink', 'try'], { folder, answers: ['yes'], terminal: true })).code).toBe(0);
    const small = `${litre('caffeine: 1 g')}aim:\n  serving: 100 mL\n`;
    expect((await neckring(['drink', 'try'], { folder: await ledger(small) })).code).toBe(0);
  });

  it('a stock used after it keeps is named with by how many days', async () => {
    const own =
      'ingredients:\n  cassis stock:\n    contains:\n      cassis thiol: 2 ppm\n      propylene glycol: rest\n    made: 2026-01-01\n    keep: 30 d\n';
    const trial = (made: string) =>
      ledgerOf({
        'ingredients.yaml': own,
        'trials/1.yaml': `trial: 1\nmade: ${made}T10:15+00:00\nstages:\n  drink:\n    - cassis stock: 0.3 g\n    - water: to 1 L\n`,
      });
    const late = await neckring(['check'], { folder: await trial('2026-02-10') });
    expect(late.out.replace(/\s+/g, ' ')).toContain(
      '"cassis stock" was made 2026-01-01 and keeps 30 d: over by 10 days',
    );
    expect((await neckring(['drink', '1'], { folder: await trial('2026-02-10') })).out).toContain(
      'over by 10 days',
    );
    expect((await neckring(['check'], { folder: await trial('2026-01-20') })).out).not.toContain(
      'keeps 30 d',
    );
  });
});

describe('the example', () => {
  it('stands beside its figures within 80 columns', async () => {
    const folder = await exampleLedger();
    for (const more of [[], ['--all'], ['--explain']]) {
      const { out } = await neckring(['drink', 'orange cardamom', ...more], { folder });
      expect(Math.max(...out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
      expect(out).toContain('Beside published figures');
      expect(out).toContain('24,000 times');
    }
  });
});
