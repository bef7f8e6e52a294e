import { describe, expect, it } from 'vitest';
import { found, leafValue, neckring, record, rows } from './neckring.ts';
import { ledgerOf } from './small-ledger.ts';

const trial = (number: number, readings: string, acid = 4.5): string => `trial: ${number}
made: 2026-03-0${number}T10:15+00:00
stages:
  drink:
    - sucrose: 90 g
    - citric acid: ${acid} g
    - deionised water: to 1 L
${readings === '' ? '' : `observations:\n  - at: 2026-03-1${number}T09:00+00:00\n${readings}`}`;

const plain = async (acid: number) =>
  found(['drink', '1'], { folder: await ledgerOf({ 'trials/1.yaml': trial(1, '', acid) }) });

/** Drinks that all read 0.1 of pH, 0.2 g/L of acid and 0.3 Brix above what is reckoned, give or take. */
async function offBench(count: number): Promise<string> {
  const files: Record<string, string> = {};
  for (const number of Array.from({ length: count }, (_, at) => at + 1)) {
    const acid = 4 + number * 0.3;
    const answer = await plain(acid);
    const of = (key: string, more: number): string =>
      String(leafValue(answer[key]) + more + (number - 2) * 0.005);
    const readings = `    ph: ${of('ph', 0.1)}\n    acid: ${of('titratableAsCitric', 0.2)} g/L\n    brix: ${of('refractometerBrix', 0.3)}\n`;
    files[`trials/${number}.yaml`] = trial(number, readings, acid);
  }
  files['formulas/try.yaml'] =
    `${trial(9, '').replace(/^trial: 9\nmade: .*\n/, 'formula: try\n')}aim:\n  ph: 2.5 to 2.6\n`;
  return ledgerOf(files);
}

describe('drink --with-offset', () => {
  it('law: three measured drinks give back what they were off by, and it is added only when asked for', async () => {
    const folder = await offBench(3);
    const [without, asked] = [
      await found(['drink', 'try'], { folder }),
      await found(['drink', 'try', '--with-offset'], { folder }),
    ];
    const moved = (key: string) => leafValue(asked[key]) - leafValue(without[key]);
    expect(moved('ph')).toBeCloseTo(0.1, 9);
    expect(moved('titratableAsCitric')).toBeCloseTo(0.2, 9);
    expect(moved('refractometerBrix')).toBeCloseTo(0.3, 9);
    expect(without['offset']).toEqual([]);
    const offsets = rows(asked['offset']);
    expect(offsets.map(({ reading }) => reading)).toEqual(['ph', 'acid', 'brix']);
    for (const one of offsets) {
      expect(leafValue(one['count'])).toBe(3);
      expect(leafValue(one['spread'])).toBeCloseTo(0.005, 9);
      expect(one['drinks']).toEqual(['trial 1', 'trial 2', 'trial 3']);
    }
  });

  it('says what it rests on, and judges the aims with it', async () => {
    const folder = await offBench(3);
    const { out } = await neckring(['drink', 'try', '--with-offset'], { folder });
    expect(out).toContain('measured less reckoned');
    expect(out).toContain('trial 1, trial 2, trial 3');
    const [aim] = rows((await found(['drink', 'try', '--with-offset'], { folder }))['aims']);
    const asked = await found(['drink', 'try', '--with-offset'], { folder });
    expect(leafValue(aim?.['value'])).toBeCloseTo(leafValue(asked['ph']), 12);
  });

  it('two are too few, with what to do', async () => {
    const { code, err } = await neckring(['drink', 'try', '--with-offset'], { folder: await offBench(2) });
    expect([code, err]).toEqual([2, expect.stringContaining('there are 2')]);
    expect(err).toContain('neckring observe');
  });
});

const formula = (aim: string): string => `formula: fizz
stages:
  drink:
    - sucrose: 90 g
    - citric acid: 4.5 g
    - deionised water: to 1 L
aim:
${aim}`;

const batch = (acid: number): string => `batch: spring
formula: fizz
made: 2026-03-20T08:00+00:00
stages:
  drink:
    - sucrose: 1.8 kg
    - citric acid: ${acid} g
    - deionised water: to 20 L
`;

describe('a batch', () => {
  it('is held to the aims of its formula: drink exits 1 on a miss, check warns', async () => {
    const aims = '  acid: 4.4 to 4.6 g/L\n  co2: 3.5 vol\n';
    const files = (acid: number) => ({ 'formulas/f.yaml': formula(aims), 'batches/b.yaml': batch(acid) });
    const good = await ledgerOf(files(90));
    expect((await neckring(['drink', 'spring'], { folder: good })).code).toBe(0);
    const off = await ledgerOf(files(80));
    const missed = await neckring(['drink', 'spring'], { folder: off });
    expect(missed.code).toBe(1);
    expect(missed.out).toContain('spring: the finished drink');
    expect(missed.out).toMatch(/1 % more citric acid moves it by/);
    const checked = await neckring(['check'], { folder: off });
    expect([checked.code, checked.out]).toEqual([0, expect.stringContaining('acid comes to')]);
    const answer = await found(['drink', 'batches/b.yaml'], { folder: off });
    expect(leafValue(answer['carbonation'])).toBeCloseTo(3.5, 12);
  });

  it('without stages of its own sends to its formula', async () => {
    const folder = await ledgerOf({
      'formulas/f.yaml': formula('  acid: 4.5 g/L\n'),
      'batches/b.yaml': 'batch: spring\nformula: fizz\nmade: 2026-03-20T08:00+00:00\n',
    });
    const { code, err } = await neckring(['drink', 'spring'], { folder });
    expect([code, err]).toEqual([2, expect.stringContaining('neckring drink "fizz"')]);
  });
});

describe('the closed bottle of a carbonated drink', () => {
  const ledger = (aim: string) => ledgerOf({ 'formulas/f.yaml': formula(aim) });

  it('law: presses as carbonation says for the same volumes, temperatures and headspace', async () => {
    const folder = await ledger('  co2: 3.5 vol\n');
    const words = ['--headspace', '5 %', '--warmed-to', '30 C', '--temperature', '4 C'];
    const drink = await found(['drink', 'fizz', ...words], { folder });
    const quick = await found(['carbonation', '--volumes', '3.5', ...words]);
    const bottle = record(drink['warmedBottle']);
    expect(leafValue(bottle['gaugePressure'])).toBeCloseTo(leafValue(quick['warmedPressure']), 9);
  });

  it('is told at 40 C and 5 % where nobody says, and not at all in a still drink', async () => {
    const fizz = await neckring(['drink', 'fizz'], { folder: await ledger('  co2: 3.5 vol\n') });
    expect(fizz.out).toMatch(/in the bottle +\d\.\d +bar +gauge, warmed to 40 C, 5 % headspace$/m);
    expect(Math.max(...fizz.out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
    expect(fizz.out).toContain('CO2 collects in small rooms');
    const still = await ledger('  acid: 4.5 g/L\n');
    expect((await neckring(['drink', 'fizz'], { folder: still })).out).not.toMatch(/^in the bottle/m);
    const asked = await neckring(['drink', 'fizz', '--warmed-to', '30 C'], { folder: still });
    expect([asked.code, asked.err]).toEqual([2, expect.stringContaining('no CO2 in this drink')]);
  });

  it.each([
    ['--headspace', '0 %', 'leaves no room'],
    ['--headspace', '3 g', '--headspace'],
    ['--warmed-to', '90 C', 'range'],
  ])('refuses %s %s', async (option, value, said) => {
    const { code, err } = await neckring(['drink', 'fizz', option, value], {
      folder: await ledger('  co2: 3.5 vol\n'),
    });
    expect([code, err]).toEqual([2, expect.stringContaining(said)]);
  });
});
