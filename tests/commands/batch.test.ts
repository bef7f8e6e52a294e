import { describe, expect, it } from 'vitest';
import { exampleLedger, found, leafValue, neckring, readIn, record, rows, writeIn } from './neckring.ts';

const syrup = ['batch', 'record', 'orange cardamom', '--to', '20 L syrup'];
const name = '2026-03-12-1';
const file = `batches/${name}.yaml`;

describe('batch record', () => {
  it('files the plan at size, the readings, the yield, and bottles kept back that come up on four days', async () => {
    const folder = await exampleLedger();
    const ran = await neckring(
      [
        ...syrup,
        '--yield',
        '23.8 kg',
        '--brix',
        '41.4',
        '--acid',
        '22.4 g/L',
        '--bottles',
        '300',
        '--bottle',
        '330 mL',
        '--retained',
        '6',
      ],
      { folder },
    );
    expect([ran.code, ran.err]).toEqual([0, `wrote ${file}\n`]);
    const text = await readIn(folder, file);
    expect(text).toContain(`batch: ${name}\nformula: orange cardamom\n`);
    expect(text).toContain('scaled to: 20 L syrup\nyield: 23.8 kg\nbottles: 300\nbottle: 330 mL\n');
    // 95 g a 200 mL of syrup: 9500 g in 20 L.
    expect(text).toContain('    - sucrose: 9500 g\n');
    expect(text).toContain(
      '    count: 6\n    watch: 365 d\n    looks:\n      - 30 d\n      - 90 d\n      - 180 d\n      - 365 d\n',
    );
    expect(text).toContain('    sample: tank\n    acid: 22.4 g/L\n    brix: 41.4\n');
    expect((await neckring(['check'], { folder })).code).toBe(0);
  });

  it('asks for no look at a tank that was filled into bottles, and for looks at what is kept back', async () => {
    const folder = await exampleLedger();
    await neckring([...syrup, '--bottles', '60', '--retained', '4', '--brix', '41.4'], { folder });
    expect(await readIn(folder, file)).toContain('    brix: 41.4\n    ended: filled into bottles\n');
    expect((await neckring(['check'], { folder })).out).toContain('no errors, no warnings');
    const { out } = await neckring(['due', '--days', '40'], { folder, now: '2026-03-13T12:00:00Z' });
    expect(out).not.toContain('tank');
    expect(out).toContain('retained (4)');
  });

  it('takes what was weighed in the order of addition, and says what the drink came to', async () => {
    const folder = await exampleLedger();
    const plain = await found(['drink', 'orange cardamom'], { folder });
    const ran = await neckring([...syrup, '5.40', '0.60', '18.0', '18.0', '108.0', '9500', '495', '--json'], {
      folder,
    });
    const answer = record(record(JSON.parse(ran.out))['found']);
    expect(await readIn(folder, file)).toContain('    - citric acid: 450.00 g\n      weighed: 495 g\n');
    const acid = (of: unknown): number => leafValue(record(of)['titratableAsCitric']);
    // A tenth more acid than planned, in a syrup that is 45 g heavier.
    expect(acid(answer['drink']) / acid(plain)).toBeCloseTo(1.1, 1);
    const change = rows(answer['changes']).find((one) => one['substance'] === 'citric acid');
    expect(leafValue(change?.['change'])).toBeGreaterThan(0.09);
  });

  it('takes figures by name, and numbers the next batch of a day', async () => {
    const folder = await exampleLedger();
    await neckring([...syrup, 'sucrose', '9510'], { folder });
    await neckring(['batch', 'record', '17', 'citric', '4.48'], { folder });
    expect(await readIn(folder, file)).toContain('weighed: 9510 g');
    expect(await readIn(folder, 'batches/2026-03-12-2.yaml')).toContain('trial: 17\n');
    expect(rows((await found(['batch'], { folder }))['batches'])).toHaveLength(2);
  });

  it('law: reckons the drink with the CO2 that the formula aims at, as drink does', async () => {
    const folder = await exampleLedger();
    const filed = await found(syrup, { folder });
    const drink = await found(['drink', name], { folder });
    expect(leafValue(record(filed['drink'])['ph'])).toBeCloseTo(leafValue(drink['ph']), 9);
  });

  it('shows a batch, and takes later readings of it once', async () => {
    const folder = await exampleLedger();
    await neckring([...syrup, '--retained', '4', '--bottles', '60'], { folder });
    const words = ['observe', name, '--sample', 'retained', '--look', 'clear'];
    const later = { folder, now: '2026-04-11T12:00:00Z' };
    expect((await neckring(words, later)).err).toContain(`wrote ${file}`);
    expect((await neckring(words, later)).err).toContain('nothing written');
    const shown = await neckring(['show', name], { folder });
    expect([shown.code, shown.err]).toEqual([0, '']);
    expect(shown.out).toContain(`Batch ${name}`);
    expect(shown.out).toContain('4 of drink, to look at after 30 d, 90 d, 180 d, 365 d');
    expect(shown.out).toContain('d30 clear');
    expect(Math.max(...shown.out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
  });

  it('takes a look at a bottle kept back, as look does of trials', async () => {
    const folder = await exampleLedger();
    await neckring([...syrup, '--retained', '4', '--bottles', '60'], { folder });
    const ran = await neckring(['look', name, 'clear, sediment', '--sample', 'retained'], {
      folder,
      now: '2026-06-10T12:00:00Z',
    });
    expect([ran.code, ran.err.startsWith(`wrote ${file}`)]).toEqual([0, true]);
    expect(await readIn(folder, file)).toContain('    sample: retained\n    look: clear, sediment\n');
  });

  it('writes nothing with --dry-run', async () => {
    const folder = await exampleLedger();
    const ran = await neckring([...syrup, '--dry-run'], { folder });
    expect(ran.out).toContain('scaled to: 20 L syrup');
    expect(rows((await found(['batch'], { folder }))['batches'])).toEqual([]);
  });

  it.each([
    [['batch', 'record'], 'needs what it is a batch of'],
    [['batch', 'record', 'orange cardamon'], 'did you mean "orange cardamom"'],
    [['batch', 'record', 'orange cardamom', '--to', '0 L syrup'], 'is nothing to make'],
    [['batch', 'record', 'orange cardamom', '--to', '20 L sirup'], 'there is no stage "sirup"'],
    [['batch', 'record', 'orange cardamom', '5.4', '0.6', '18', '18', '108'], 'say how much was made'],
    [[...syrup, '--bottles', '10', '--retained', '12'], '12 bottles are kept back of 10'],
    [[...syrup, '--bottles', 'ten'], 'is no number of bottles'],
    [[...syrup, '--brix', 'x'], '--brix'],
    [[...syrup, '--brix', '182'], "--brix: Brix 182 can't be"],
    [[...syrup, 'sucrose'], 'has no figure'],
    [['batch', 'make'], 'is not what batch takes'],
  ])('refuses %j and writes nothing', async (words, message) => {
    const folder = await exampleLedger();
    const ran = await neckring(words, { folder });
    expect(ran.code).toBe(2);
    expect(ran.err).toContain(message);
    expect(rows((await found(['batch'], { folder }))['batches'])).toEqual([]);
  });
});

describe('correct', () => {
  it('law: a batch with a kilogram of sugar too little is found by its Brix, and mended', async () => {
    const folder = await exampleLedger();
    // The balance showed 9500 g of sucrose where 8500 g went in.
    await neckring([...syrup, 'sucrose', '9500'], { folder });
    const truth = async (grams: string): Promise<Readonly<Record<string, unknown>>> => {
      const real = await exampleLedger();
      await neckring([...syrup, 'sucrose', grams, '--brix', '1', '--acid', '1 g/L'], { folder: real });
      return found(['show', name], { folder: real });
    };
    const reads = rows((await truth('8500'))['measured']);
    const reckoned = (reading: string): number =>
      leafValue(reads.find((one) => one['reading'] === reading)?.['reckoned']);
    const tank = 5.4 + 0.6 + 18 + 18 + 108 + 8500 + 450 + 60 + 13_627;
    const words = [
      'correct',
      name,
      '--brix',
      reckoned('brix').toFixed(2),
      '--acid',
      reckoned('acid').toFixed(2),
      '--tank',
      `${tank + 6} g`,
    ];
    const answer = await found(words, { folder });
    expect(answer['stage']).toBe('syrup');
    expect(rows(answer['explainedBy'])[0]).toMatchObject({ item: 'sucrose' });
    expect(leafValue(rows(answer['explainedBy'])[0]?.['mass'])).toBeCloseTo(8500, -2);
    const sugar = rows(answer['additions']).find((one) => one['ingredient'] === 'sucrose');
    expect(Math.abs(leafValue(sugar?.['mass']) - 1000)).toBeLessThan(40);
    expect(leafValue(record(answer['after'])['brix'])).toBeCloseTo(
      leafValue(record(answer['aim'])['brix']),
      6,
    );
    expect(leafValue(record(answer['after'])['acid'])).toBeCloseTo(
      leafValue(record(answer['aim'])['acid']),
      6,
    );
  });

  it('takes the readings that were filed with the batch', async () => {
    const folder = await exampleLedger();
    await neckring([...syrup, '--brix', '39.1', '--acid', '22.4 g/L'], { folder });
    const { code, out } = await neckring(['correct', name], { folder });
    expect(code).toBe(0);
    expect(out).toContain('One slip would explain all of it');
    expect(out).toContain('Nobody said how much is in the tank');
    const told = await neckring(['correct', name, '--tank', '23 kg'], { folder });
    expect(told.out).not.toContain('Nobody said');
    expect(out).toContain('Or sugar, acid and water alone');
    expect(Math.max(...out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
  });

  it('adds nothing where the readings agree with the aim', async () => {
    const { out } = await neckring(['correct', '17', '--brix', '9.1', '--acid', '4.45'], {
      folder: await exampleLedger(),
    });
    expect(out).toContain('Nothing is');
  });

  it('takes another aim', async () => {
    const answer = await found(['correct', '17', '--brix', '9.04', '--aim-brix', '10'], {
      folder: await exampleLedger(),
    });
    expect(rows(answer['additions']).map((one) => one['ingredient'])).toContain('sucrose');
    expect(leafValue(record(answer['after'])['brix'])).toBeCloseTo(10, 6);
  });

  it('starts from what was weighed: the slip is in what is still unexplained', async () => {
    const folder = await exampleLedger();
    await neckring([...syrup, 'sucrose', '9000', '--brix', '38.2'], { folder });
    const answer = await found(['correct', name], { folder });
    const slip = rows(answer['explainedBy']).find((one) => one['item'] === 'sucrose');
    expect(leafValue(slip?.['planned'])).toBeCloseTo(9000, 6);
    const filed = await found(['show', name], { folder });
    expect(rows(answer['explainedBy'])).toEqual(rows(filed['explainedBy']));
  });

  it('law: a tank without half of its citrate is found by its pH, and mended', async () => {
    const folder = await exampleLedger();
    const words = ['correct', '17', '--stage', 'drink', '--brix', '9.04', '--acid', '4.42'];
    // What the quick calculator says of the drink with 0.1 g/L of citrate for 0.6, in the water of the bench.
    const real = ['4.5 g/L citric acid', '0.1 g/L trisodium citrate dihydrate', '90 g/L sucrose'];
    const water = ['--alkalinity', '56 mg/L as CaCO3', '--temperature', '20 C'];
    const ph = leafValue((await found(['ph', ...real, ...water]))['ph']);
    const answer = await found([...words, '--ph', ph.toFixed(2)], { folder });
    const salt = rows(answer['additions']).find((one) => String(one['ingredient']).startsWith('trisodium'));
    expect(leafValue(salt?.['mass'])).toBeGreaterThan(0.4);
    expect(leafValue(salt?.['mass'])).toBeLessThan(0.6);
    const [after, aim] = [record(answer['after']), record(answer['aim'])];
    expect(leafValue(after['ph'])).toBeCloseTo(leafValue(aim['ph']), 6);
    // A pH that is as near as a meter tells it moves no salt.
    const near = await found([...words, '--ph', '2.85'], { folder });
    expect(rows(near['additions'])).toEqual([]);
    const { out } = await neckring([...words, '--ph', ph.toFixed(2)], { folder });
    expect(out).toMatch(/pH +2\.\d\d +2\.81 +2\.81/);
  });

  it('--aim-ph: the salt that another pH takes', async () => {
    const words = [
      'correct',
      '17',
      '--stage',
      'drink',
      '--brix',
      '9.04',
      '--acid',
      '4.42',
      '--aim-ph',
      '3.1',
    ];
    const answer = await found(words, { folder: await exampleLedger() });
    expect(leafValue(record(answer['after'])['ph'])).toBeCloseTo(3.1, 6);
    expect(rows(answer['additions']).map((one) => one['ingredient'])).toContain(
      'trisodium citrate dihydrate',
    );
  });

  it('says that it can not be mended by adding where the vessel does not hold it, and where it would double', async () => {
    const folder = await exampleLedger();
    await neckring(syrup, { folder });
    const small = await neckring(['correct', name, '--brix', '50', '--vessel', '22 L'], { folder });
    expect(small.code).toBe(1);
    expect(small.out).toContain("can't be mended by adding");
    const twice = await found(['correct', '17', '--brix', '30', '--acid', '4.4'], { folder });
    expect(twice['mendable']).toBe(false);
  });

  it.each([
    [['17'], 'nothing was read of drink'],
    [['17', '--brix', '99', '--stage', 'drink'], 'no tank of drink can show'],
    [['17', '--brix', '9', '--stage', 'glass'], 'there is no stage "glass"'],
    [['nope', '--brix', '9'], 'there is no trial nope'],
    [['17', '--brix', '9', '--tank', '0 kg'], '"0 kg" is nothing'],
    [['13', '--acid', '3'], 'there is no acid in emulsion'],
  ])('refuses %j', async (words, message) => {
    const ran = await neckring(['correct', ...words], { folder: await exampleLedger() });
    expect([ran.code, ran.out]).toEqual([2, '']);
    expect(ran.err).toContain(message);
  });
});

describe('a batch of a stronger syrup', () => {
  it('law: holds as much of everything in 1/1.2 of the syrup, and makes the same drink', async () => {
    const folder = await exampleLedger();
    const plain = await found(['drink', 'orange cardamom'], { folder });
    const sheet = ['scale', 'orange cardamom', '--to', '20 L syrup', '--strength', '1.2'];
    expect((await neckring([...sheet, '--sheet', 'sheet.md'], { folder })).err).toContain(
      `--to "20 L syrup" --strength 1.2 --name ${name}`,
    );
    const strong = await found([...syrup, '--strength', '1.2'], { folder });
    // 475 g of sucrose a litre: 9500 g x 1.2.
    expect(await readIn(folder, file)).toContain('    - sucrose: 11400 g\n');
    for (const key of ['brix', 'titratableAsCitric'])
      expect(leafValue(record(strong['drink'])[key]) / leafValue(plain[key])).toBeCloseTo(1, 4);
  });

  it('needs its size', async () => {
    const folder = await exampleLedger();
    const ran = await neckring(['batch', 'record', 'orange cardamom', '--strength', '1.2'], { folder });
    expect([ran.code, ran.err]).toEqual([2, expect.stringContaining('--strength needs --to')]);
  });
});

describe('a batch with more than 200 mg of caffeine a serving', () => {
  it('is asked about before anything is written (EFSA 2015)', async () => {
    const folder = await exampleLedger();
    const formula = 'formulas/orange-cardamom.yaml';
    const text = await readIn(folder, formula);
    await writeIn(
      folder,
      formula,
      text.replace('    - cassis stock', '    - caffeine: 1 g/L\n    - cassis stock'),
    );
    const ran = await neckring(syrup, { folder });
    expect([ran.code, ran.err]).toEqual([2, expect.stringContaining('add --yes')]);
    expect(rows((await found(['batch'], { folder }))['batches'])).toEqual([]);
    expect((await neckring([...syrup, '--yes'], { folder })).code).toBe(0);
  });
});
