import { describe, expect, it } from 'vitest';
import { found, leafValue, neckring, record, rows } from './neckring.ts';

const values = (answer: Readonly<Record<string, unknown>>, ...keys: readonly string[]): readonly number[] =>
  keys.map((key) => leafValue(answer[key]));

describe('emulsifier', () => {
  it('law: the parts add up to the batch, at the ratio that was asked', async () => {
    const answer = await found([
      'emulsifier',
      '--batch',
      '50 g',
      '--oil',
      '4%',
      '--ratio',
      '1:2',
      '--carrier',
      '12%',
    ]);
    const [oil, emulsifier, carrier, water] = values(
      answer,
      'oilMass',
      'emulsifierMass',
      'carrierMass',
      'waterMass',
    );
    expect([oil, emulsifier, carrier, water]).toEqual([2, 4, 6, 38].map((one) => expect.closeTo(one, 12)));
    expect(values(answer, 'oilPerEmulsifier', 'emulsifierFraction')).toEqual(
      [0.5, 0.08].map((one) => expect.closeTo(one, 12)),
    );
  });

  it('law: the ratio and the share of emulsifier are two ways to say the same', async () => {
    const byRatio = await found(['emulsifier', '--batch', '50 g', '--oil', '4%', '--ratio', '1:2']);
    const byShare = await found(['emulsifier', '--batch', '50 g', '--oil', '4%', '--emulsifier-share', '8%']);
    expect(byShare).toEqual(byRatio);
  });

  it('published: the blend for HLB 12 of polysorbate 80 and sorbitan oleate is 72.0 and 28.0 per cent (PMC3969497, Table I)', async () => {
    const answer = await found([
      ...['emulsifier', '--batch', '100 g', '--oil', '10%', '--ratio', '1:1'],
      ...['--blend', 'polysorbate 80', '--blend', 'sorbitan oleate', '--required', '12'],
    ]);
    expect(rows(answer['blend']).map((row) => (100 * leafValue(row['fraction'])).toFixed(1))).toEqual([
      '72.0',
      '28.0',
    ]);
    expect(rows(answer['blend']).reduce((sum, row) => sum + leafValue(row['mass']), 0)).toBeCloseTo(10, 12);
  });

  it('joins an amount typed without quotes, and only after an option that takes one', async () => {
    const joined = await neckring([
      'emulsifier',
      '--batch',
      '50',
      'g',
      '--oil',
      '4',
      '%',
      '--ratio',
      '1:2',
      '--json',
    ]);
    expect(joined.code).toBe(0);
    const left = await neckring(['emulsifier', '--batch', '50 g', '--oil', '4%', '--ratio', '1:2', 'g']);
    expect(left.code).toBe(2);
    expect(left.err).toContain('left over');
  });

  it('says the ratio both ways in words', async () => {
    const { out } = await neckring(['emulsifier', '--batch', '50 g', '--oil', '2%', '--ratio', '1:3']);
    expect(out).toContain('1 part oil to 3 parts emulsifier (oil per emulsifier 0.3333)');
  });

  it.each([
    [['--batch', '50', '--oil', '4%', '--ratio', '1:2'], '--batch: '],
    [['--oil', '4%', '--ratio', '1:2'], '--batch is needed'],
    [['--batch', '50 mL', '--oil', '4%', '--ratio', '1:2'], '--batch: '],
    [['--batch', '50 g', '--oil', '60%', '--ratio', '1:2'], 'more than the batch'],
    [['--batch', '50 g', '--oil', '4%'], '--ratio is needed'],
    [
      ['--batch', '50 g', '--oil', '4%', '--ratio', '1:2', '--emulsifier-share', '8%'],
      'both --ratio and --emulsifier-share',
    ],
    [['--batch', '2,5 g', '--oil', '4%', '--ratio', '1:2'], '2.5'],
    [['--batch', '1,000 g', '--oil', '4%', '--ratio', '1:2'], '1000'],
    [['--batch', '-5 g', '--oil', '4%', '--ratio', '1:2'], '--batch: '],
    [['--batch', '5 oz', '--oil', '4%', '--ratio', '1:2'], 'oz av'],
  ])('refuses %j', async (words, message) => {
    const { code, err, out } = await neckring(['emulsifier', ...words]);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toContain(message);
  });

  it('exits 1 where the blend is out of reach', async () => {
    const words = [
      '--batch',
      '50 g',
      '--oil',
      '4%',
      '--ratio',
      '1:2',
      '--blend',
      'polysorbate 80',
      '--blend',
      'polysorbate 20',
    ];
    const { code, err } = await neckring(['emulsifier', ...words, '--required', '12']);
    expect(code).toBe(1);
    expect(err).toContain('outside');
  });
});

describe('dose', () => {
  it('law: the oil in the emulsion that is weighed is the oil in the drink', async () => {
    const answer = await found([
      ...[
        'dose',
        '--oil',
        '60 mg/L',
        '--emulsion',
        '4%',
        '--ratio',
        '1:3',
        '--in',
        '6 L',
        '--throw',
        '1+4',
        '--carrier',
        '12%',
      ],
    ]);
    const [mass, perDrink, perSyrup, emulsifier, carrier] = values(
      answer,
      'emulsionMass',
      'emulsionPerLitreDrink',
      'emulsionPerLitreSyrup',
      'emulsifierInDrink',
      'carrierInDrink',
    );
    expect(((mass ?? 0) * 0.04 * 1000) / 6).toBeCloseTo(60, 10);
    expect([mass, perDrink, perSyrup, emulsifier, carrier]).toEqual(
      [9, 1.5, 7.5, 180, 180].map((one) => expect.closeTo(one, 10)),
    );
  });

  it.each([
    [['--oil', '60 mg/L', '--emulsion', '4%', '--in', '6 L', '--throw', '1:5'], '1+4'],
    [['--oil', '60', '--emulsion', '4%', '--in', '6 L'], '--oil: '],
    [['--oil', '60 mg/L', '--emulsion', '0%', '--in', '6 L'], 'holds no oil'],
    [['--oil', '60 mg/L', '--emulsion', '40%', '--ratio', '1:3', '--in', '6 L'], 'of the emulsion'],
  ])('refuses %j', async (words, message) => {
    const { code, err } = await neckring(['dose', ...words]);
    expect(code).toBe(2);
    expect(err).toContain(message);
  });
});

describe('acid', () => {
  it('common practice, no source: 40 g of citric acid in a syrup that becomes 8 L of drink is 5 g/L', async () => {
    const answer = await found(['acid', '--acid', '40 g citric acid', '--drink', '8 L']);
    expect(values(answer, 'totalGramsPerLitre', 'titratableAsCitric', 'drinkVolume')).toEqual(
      [5, 5, 8].map((one) => expect.closeTo(one, 3)),
    );
    expect(rows(answer['acids'])[0]?.['acid']).toBe('citric acid');
  });

  it('law: a syrup at its throw is the same drink', async () => {
    const bySyrup = await found(['acid', '--acid', '18 g citric acid', '--syrup', '0.8 L', '--throw', '1+4']);
    const byDrink = await found(['acid', '--acid', '18 g citric acid', '--drink', '4 L']);
    expect(leafValue(bySyrup['totalGramsPerLitre'])).toBeCloseTo(
      leafValue(byDrink['totalGramsPerLitre']),
      12,
    );
  });

  it('law: target and weighed mass are inverse', async () => {
    const wanted = await found(['acid', '--target', '4.5 g/L citric acid', '--drink', '4 L']);
    expect(leafValue(record(rows(wanted['acids'])[0])['mass'])).toBeCloseTo(18, 12);
  });

  it('published: the hydrate holds 9 per cent less acid (molar masses 192.12 and 210.14, IUPAC atomic weights)', async () => {
    const hydrate = await found(['acid', '--acid', '40 g citric acid monohydrate', '--drink', '8 L']);
    expect(leafValue(hydrate['titratableAsCitric'])).toBeCloseTo((5 * 192.12) / 210.14, 3);
  });

  it('published: 1 g/L of malic, tartaric or phosphoric acid as citric by equivalents (molar masses by IUPAC atomic weights)', async () => {
    const asCitric = async (name: string): Promise<number> =>
      leafValue((await found(['acid', '--acid', `1 g ${name}`, '--drink', '1 L']))['titratableAsCitric']);
    expect(await asCitric('malic acid')).toBeCloseTo(((2 / 134.087) * 192.124) / 3, 3);
    expect(await asCitric('tartaric acid')).toBeCloseTo(((2 / 150.087) * 192.124) / 3, 3);
  });

  it.each([
    [['--drink', '4 L'], 'no acid is given'],
    [['--acid', '18 g citric acid'], 'no volume of drink'],
    [['--acid', '18 g citric acid', '--syrup', '0.8 L'], '--syrup needs --throw'],
    [['--acid', '18 g sucrose', '--drink', '4 L'], 'sucrose has no'],
    [['--acid', '18 g citrc acid', '--drink', '4 L'], 'did you mean citric acid'],
    [['--acid', '18 g citric acid', '--drink', '0 L'], 'is no drink'],
    [['--acid', '18 g citric acid', '--drink', '4 L', '--syrup', '1 L'], 'both --drink and --syrup'],
  ])('refuses %j', async (words, message) => {
    const { code, err } = await neckring(['acid', ...words]);
    expect(code).toBe(2);
    expect(err).toContain(message);
  });
});

describe('drops', () => {
  it('published: 0.5 ppb in 8 L from a 100 ppm stock is 1.9 drops of 21 mg (worked out in the bench practice notes)', async () => {
    const answer = await found([
      'drops',
      '--target',
      '0.5 ppb',
      '--in',
      '8 L',
      '--stock',
      '100 ppm',
      '--drop',
      '0.021 g',
    ]);
    expect(leafValue(answer['drops']).toFixed(1)).toBe('1.9');
    expect(leafValue(answer['stockMass'])).toBeCloseTo(0.04, 12);
  });

  it('published: 0.000012 g in 1000.0 g is 12 ppb (homework problem, dilution examples)', async () => {
    const answer = await found([
      'drops',
      '--drops',
      '1',
      '--in',
      '1000.0 g',
      '--stock',
      '100 %',
      '--drop',
      '0.000012 g',
    ]);
    expect(leafValue(answer['achieved'])).toBeCloseTo(12, 9);
  });

  it('published: 0.62 ppm in 6.0e3 g is 3.7e-3 g (general chemistry problem, dilution examples)', async () => {
    const answer = await found([
      'drops',
      '--target',
      '0.62 ppm',
      '--in',
      '6.0e3 g',
      '--stock',
      '1 %',
      '--drop',
      '0.02 g',
    ]);
    expect(leafValue(answer['soluteMass']).toPrecision(2)).toBe('0.0037');
  });

  it('law: counting the exact drops gives the target back', async () => {
    const there = await found([
      'drops',
      '--target',
      '0.5 ppb',
      '--in',
      '6 L',
      '--stock',
      '1 ppm',
      '--drop',
      '0.021 g',
    ]);
    const back = await found([
      'drops',
      '--drops',
      String(leafValue(there['drops'])),
      '--in',
      '6 L',
      '--stock',
      '1 ppm',
      '--drop',
      '0.021 g',
    ]);
    expect(leafValue(back['soluteMass'])).toBeCloseTo(3e-6, 15);
  });

  it('counts whole drops without decimals', async () => {
    const { out } = await neckring([
      'drops',
      '--drops',
      '143',
      '--in',
      '6 L',
      '--stock',
      '1 ppm',
      '--drop',
      '0.021 g',
    ]);
    expect(out).toMatch(/whole drops +143 *\n/);
  });

  it('leads with the stock to make where the drops are too few, and that stock makes 5 to 20', async () => {
    const words = ['drops', '--target', '0.5 ppb', '--in', '8 L', '--stock', '100 ppm', '--drop', '0.021 g'];
    const { out } = await neckring(words);
    expect(out.split('\n')[0]).toContain('drops are too few to count');
    const advice = leafValue((await found(words))['adviceStrength']);
    const mended = await found([...words.slice(0, 6), `${advice * 1e6} ppm`, ...words.slice(7)]);
    expect(leafValue(mended['drops'])).toBeGreaterThanOrEqual(5);
    expect(leafValue(mended['drops'])).toBeLessThanOrEqual(20);
  });

  it('published: a dropper is no better than 15 per cent (USP 32 <1101>)', async () => {
    const answer = await found([
      'drops',
      '--target',
      '0.5 ppb',
      '--in',
      '8 L',
      '--stock',
      '10 ppm',
      '--drop',
      '0.021 g',
    ]);
    expect(leafValue(answer['uncertainty'])).toBe(0.15);
  });

  it.each([
    [['--in', '6 L', '--stock', '10 ppm', '--drop', '0.021 g'], 'neither --target nor --drops'],
    [
      ['--target', '50 ppm', '--in', '6 L', '--stock', '10 ppm', '--drop', '0.021 g'],
      'no weaker than the stock',
    ],
    [['--target', '0.5 ppb', '--in', '6 L', '--stock', '10 ppm'], '--drop is needed'],
    [['--target', '0.5 ppb', '--in', '6 L', '--stock', '10 ppm', '--drop', '0 g'], 'weighs nothing'],
  ])('refuses %j', async (words, message) => {
    const { code, err } = await neckring(['drops', ...words]);
    expect(code).toBe(2);
    expect(err).toContain(message);
  });
});

describe('every calculator', () => {
  it('prints one JSON object with the problems when it fails', async () => {
    const { code, out, err } = await neckring(['acid', '--acid', '18 g citric acid', '--json']);
    const answer = record(JSON.parse(out));
    expect({ code, err, schema: answer['schema'], found: answer['found'] }).toEqual({
      code: 2,
      err: '',
      schema: 'acid@1',
      found: {},
    });
    expect(rows(answer['problems'])[0]?.['code']).toBe('missing');
  });

  it('shows the equation with the numbers in it and the sources, with --explain', async () => {
    const { out } = await neckring(['acid', '--acid', '40 g citric acid', '--drink', '8 L', '--explain']);
    expect(out).toContain('40 g / 8 L = 5 g/L');
    expect(out).toContain('Sources');
    expect(out).toContain('molar mass of citric acid');
  });

  it('takes a sum or a product as an amount', async () => {
    const answer = await found(['acid', '--acid', '2 * 20 g citric acid', '--drink', '(5 + 3) L']);
    expect(leafValue(answer['totalGramsPerLitre'])).toBeCloseTo(5, 12);
  });

  it.each(['hlb', 'hlb-of', 'emulsifier', 'dose', 'acid', 'drops'])(
    '%s --help gives two examples that work',
    async (name) => {
      const { code, out } = await neckring([name, '--help']);
      expect(code).toBe(0);
      const whole = out.replace(/ \\\n\s+/g, ' ');
      const lines = whole.split('\n').filter((line) => line.startsWith(`  neckring ${name} `));
      expect(lines).toHaveLength(2);
      for (const line of lines) {
        const words = [
          ...line
            .trim()
            .slice('neckring '.length)
            .matchAll(/"([^"]*)"|(\S+)/g),
        ].map((match) => match[1] ?? match[2] ?? '');
        expect((await neckring(words)).code, line).toBe(0);
      }
    },
  );

  it('offers the nearest command and option', async () => {
    expect((await neckring(['acdi'])).err).toContain('did you mean acid');
    const option = await neckring(['acid', '--drnk', '8 L']);
    expect(option.code).toBe(2);
    expect(option.err).toContain('did you mean --drink');
  });
});
