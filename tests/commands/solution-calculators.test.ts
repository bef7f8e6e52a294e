/** The quick calculators of the finished drink against published tables, a few rows each; all rows stand in tests/calc/solution. */

import { describe, expect, it } from 'vitest';
import { found, leafValue, neckring, rows } from './neckring.ts';

const numberOf = async (key: string, ...words: readonly string[]): Promise<number> =>
  leafValue((await found(words))[key]);

describe('ph', () => {
  it.each([
    ['0.05 mol/kg potassium tetroxalate dihydrate', '20 C', 1.675],
    ['0.0341 mol/kg potassium hydrogen tartrate', '25 C', 3.557],
    ['0.05 mol/kg potassium dihydrogen citrate', '10 C', 3.82],
    ['0.05 mol/kg potassium dihydrogen citrate', '40 C', 3.754],
    ['0.05 mol/kg potassium hydrogen phthalate', '25 C', 4.005],
    ['0.01 mol/kg borax', '30 C', 9.139],
  ])(
    'published: %s at %s is pH %d within 0.02 (Bates 1962; Staples and Bates 1969)',
    async (item, temperature, ph) => {
      const answer = await numberOf('ph', 'ph', item, '--temperature', temperature);
      expect(Math.abs(answer - ph)).toBeLessThan(0.02);
    },
  );

  it.each([
    ['0.1 % malic acid', 2.78],
    ['3 % malic acid', 2.04],
    ['10 % malic acid', 1.78],
  ])('published: %s is pH %d within 0.10 (Food Additives Data Book 2003, malic acid)', async (item, ph) => {
    expect(Math.abs((await numberOf('ph', 'ph', item)) - ph)).toBeLessThan(0.1);
  });

  it('published: CO2 at 10 atm over water is pH 3.42 within 0.03 (general chemistry table, from memory)', async () => {
    expect(Math.abs((await numberOf('ph', 'ph', 'water', '--co2', '10 atm')) - 3.42)).toBeLessThan(0.03);
  });

  it('law: a strong acid stock has a pH, and is titrated diluted: 300 g/L take fifty times what 6 g/L take', async () => {
    const [weak, strong] = [
      await numberOf('titratableAsCitric', 'ph', '6 g/L citric acid'),
      await numberOf('titratableAsCitric', 'ph', '300 g/L citric acid'),
    ];
    expect(strong / weak / 50).toBeCloseTo(1, 2);
  });

  it('law: titratable acidity in another acid is by mass over its hydrogens, to the end point that is named', async () => {
    const words = ['ph', '4.5 g/L citric acid', '--as', 'malic acid'];
    const answer = await found(words);
    const [citric, malic] = [leafValue(answer['titratableAsCitric']), leafValue(answer['titratable'])];
    // Food Additives Data Book: 1.047 for malic on citric acid.
    expect(malic / citric).toBeCloseTo(1.047, 3);
    const earlier = leafValue((await found([...words, '--end-point', '8.1']))['titratable']);
    expect(earlier).toBeLessThan(malic);
    expect(earlier / malic).toBeGreaterThan(0.998);
    const wrong = await neckring([...words, '--end-point', '2']);
    expect([wrong.code, wrong.err]).toEqual([2, expect.stringContaining('titrate to pH 8.1 or 8.2')]);
  });

  it('says where it is stronger than the tables that it was compared with', async () => {
    const { out } = await neckring(['ph', '500 g/L malic acid']);
    expect(out).toContain('is stronger than what this was');
    expect((await neckring(['ph', '10 % malic acid'])).out).not.toContain('stronger than');
  });

  it('law: sugar takes the place of water, so the acid stands stronger in what is left', async () => {
    const plain = await numberOf('ph', 'ph', '5 g/L citric acid');
    expect(await numberOf('ph', 'ph', '5 g/L citric acid', '300 g/L sucrose')).toBeLessThan(plain);
  });

  it('law: the alkalinity of the water is two thirds of a mole of citric acid a mole of CaCO3', async () => {
    const plain = await numberOf('titratableAsCitric', 'ph', '4.5 g/L citric acid');
    const hard = await found(['ph', '4.5 g/L citric acid', '--alkalinity', '100 mg/L as CaCO3']);
    expect(plain - leafValue(hard['titratableAsCitric'])).toBeCloseTo(((0.1 / 100.09) * 2 * 192.124) / 3, 3);
  });

  it.each([
    ['a substance without acid data', ['ph', '1 g/L caffeine'], 'caffeine'],
    [
      'a temperature outside the constants',
      ['ph', '1 g/L citric acid', '--temperature', '90 C'],
      '0 to 76 C',
    ],
    ['more solids than a litre holds', ['ph', '1700 g/L sucrose'], 'give less'],
    ['nothing at all', ['ph'], 'type such as'],
    ['less than nothing', ['ph', '-1 g/L citric acid'], 'begins with a minus sign'],
  ])('refuses %s, with the mend', async (_, words, said) => {
    const { code, err } = await neckring(words);
    expect(code).toBe(2);
    expect(err).toContain(said);
  });
});

describe('titrate', () => {
  it('law: 7.80 mL of 0.1 mol/L on 10 mL is 0.078 mol/L, a third of it citric acid', async () => {
    const words = ['titrate', '--base', '0.1 mol/L', '--used', '7.80 mL', '--sample', '10 mL'];
    const answer = await found(words);
    const grams = Object.values(answer).map((leaf) => leafValue(leaf));
    expect(grams.some((one) => Math.abs(one - (0.078 * 192.124) / 3) < 0.002)).toBe(true);
  });
});

describe('brix', () => {
  it('shows the unit of a density to who typed none', async () => {
    const bare = await neckring(['brix', '--density', '1.04']);
    expect([bare.code, bare.err]).toEqual([2, expect.stringContaining('write 1.04 g/mL')]);
    const light = await neckring(['brix', '--density', '0.5 g/mL']);
    expect(light.err).toMatch(/density of 0\.5 g\/mL.*from 0\.99820 to 1\.4459 g\/mL/);
  });

  it.each([
    ['15', 1.05916],
    ['35', 1.15133],
    ['65', 1.31656],
  ])(
    'published: %s Brix at 20 C weighs %d g/mL within 0.0001 (Bettin and others 1998, ICUMSA)',
    async (brix, density) => {
      const answer = await numberOf('density', 'brix', '--brix', brix, '--temperature', '20 C');
      expect(Math.abs(answer - density)).toBeLessThan(0.0001);
    },
  );

  it('law: density, grams per litre and refractive index each give the Brix again', async () => {
    const answer = await found(['brix', '--brix', '42']);
    for (const [option, key, unit] of [
      ['--density', 'density', ' g/mL'],
      ['--grams-per-litre', 'sugarGramsPerLitre', ' g/L'],
      ['--refractive-index', 'refractiveIndex', ''],
    ] as const) {
      expect(await numberOf('brix', 'brix', option, `${leafValue(answer[key])}${unit}`)).toBeCloseTo(42, 6);
    }
  });
});

describe('water-activity', () => {
  it('published: water of 25 C holds 67.9 % of sucrose, and more is told (CRC Handbook, older editions, by its rows)', async () => {
    expect((await neckring(['water-activity', '80 % sucrose'])).out).toContain('crystallises');
    expect((await neckring(['water-activity', '67 % sucrose'])).out).not.toContain('crystallises');
  });

  it.each([
    [0.5, 0.9907],
    [3, 0.9328],
    [6, 0.8493],
  ])(
    'published: %d mol/kg of sucrose at 25 C has %d within 0.001 (Robinson and Stokes 1959, from memory)',
    async (molality, activity) => {
      const water = 100 / (1 + molality * 0.342297);
      const items = [`${100 - water} % sucrose`, `${water} % water`];
      const answer = await numberOf('waterActivity', 'water-activity', ...items);
      expect(Math.abs(answer - activity)).toBeLessThan(0.001);
    },
  );
});

describe('carbonation', () => {
  it.each([
    ['0 C', '20 psi', 4.01],
    ['10 C', '30 psi', 3.56],
    ['15.6 C', '40 psi', 3.62],
  ])(
    'pinned: at %s and %s gauge water holds %d volumes within 1.5 %% (worked from Weiss 1974 with fugacity)',
    async (temperature, pressure, volumes) => {
      const answer = await numberOf(
        'volumes',
        'carbonation',
        '--temperature',
        temperature,
        '--pressure',
        pressure,
      );
      expect(Math.abs(answer / volumes - 1)).toBeLessThan(0.015);
    },
  );

  it('law: volumes and gauge pressure give each other', async () => {
    const bar = await numberOf('gaugePressure', 'carbonation', '--temperature', '4 C', '--volumes', '3.5');
    const again = await numberOf(
      'volumes',
      'carbonation',
      '--temperature',
      '4 C',
      '--pressure',
      `${bar} bar`,
    );
    expect(again).toBeCloseTo(3.5, 6);
  });

  it('refuses a gauge pressure below vacuum', async () => {
    const { code, err } = await neckring(['carbonation', '--temperature', '4 C', '--pressure', '-2 bar']);
    expect(code).toBe(2);
    expect(err).toContain('vacuum');
  });
});

describe('adjust', () => {
  it('law: acid and salt for an acidity and a pH come out so in ph', async () => {
    const answer = await found(['adjust', '--acidity', '4.5 g/L', '--ph', '3']);
    const items = rows(answer['doses']).map(
      (row) => `${leafValue(row['gramsPerLitre'])} g/L ${String(row['substance'])}`,
    );
    const again = await found(['ph', ...items]);
    expect(leafValue(again['ph'])).toBeCloseTo(3, 4);
    expect(leafValue(again['titratableAsCitric'])).toBeCloseTo(4.5, 4);
  });

  it('says plainly that no mixture does it, and exits 1', async () => {
    const { code, out } = await neckring(['adjust', '--acidity', '0.1 g/L', '--ph', '2']);
    expect(code).toBe(1);
    expect(out).toContain('No mixture does it');
  });
});
