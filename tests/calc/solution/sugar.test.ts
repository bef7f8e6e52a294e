import { describe, expect, it } from 'vitest';
import { acidCorrectedBrix, refractometerBrix } from '../../../src/calc/solution/refractometer.ts';
import { type Sugar, type SugarMeasure, sugarSolution } from '../../../src/calc/solution/sugar.ts';
import { sucroseSolubilityAt, sucroseViscosityAt } from '../../../src/calc/solution/sugar-limits.ts';
import { drinkFromThrow, syrupForThrow } from '../../../src/calc/solution/syrup.ts';
import { answered, celsius, misses, numbersOf, tableOf } from './support.ts';

const solution = (sugar: Sugar, kind: SugarMeasure['kind'], value: number, degrees = 20) =>
  answered(sugarSolution({ sugar, measure: { kind, value }, temperatureKelvin: celsius(degrees) }));

const rows = (name: string) => numbersOf('solution-sugars', name);

describe('published: sucrose', () => {
  it('published: density at 20 C, ICUMSA polynomial, within 0.0001 g/mL', () => {
    const off = misses(
      rows('density20'),
      ([brix = 0, printed = 0]) => ({
        printed: printed / 1000,
        value: solution('sucrose', 'brix', brix).density,
      }),
      1e-4,
    );
    expect(off).toEqual([]);
  });

  it('published: density at 20 C to 60 Brix, CRC Handbook and NBS C440, within 0.00025 g/mL', () => {
    const table = tableOf('solution-sugars', 'density20').rows.filter(([brix]) => Number(brix) <= 60);
    for (const [brix, , handbook, plato] of table) {
      const { density } = solution('sucrose', 'brix', Number(brix));
      if (handbook !== null) expect(Math.abs(density - Number(handbook) / 1000)).toBeLessThan(2.5e-4);
      if (plato !== null) expect(Math.abs(density - (Number(plato) / 1000) * 0.99997)).toBeLessThan(2.5e-4);
    }
  });

  it('published: density from 5 to 60 C, ICUMSA polynomial, within 0.0001 g/mL', () => {
    const off = misses(
      rows('densityWarm'),
      ([brix = 0, degrees = 0, printed = 0]) => ({
        printed: printed / 1000,
        value: solution('sucrose', 'brix', brix, degrees).density,
      }),
      1e-4,
    );
    expect(off).toEqual([]);
  });

  it('published: refractive index at 20 C, ICUMSA 1974 and CRC Handbook, within 0.0002', () => {
    for (const [brix, icumsa, handbook] of tableOf('solution-sugars', 'index20').rows) {
      const { refractiveIndex = Number.NaN } = solution('sucrose', 'brix', Number(brix));
      expect(Math.abs(refractiveIndex - Number(icumsa))).toBeLessThan(2e-5);
      if (handbook !== null) expect(Math.abs(refractiveIndex - Number(handbook))).toBeLessThan(2e-4);
    }
  });

  it('published: refractometer corrections of OIV-MA-AS2-02, index within 0.0002', () => {
    const off = misses(
      rows('indexCorrection'),
      ([degrees = 0, reading = 0, correction = 0]) => ({
        printed: solution('sucrose', 'brix', reading).refractiveIndex ?? Number.NaN,
        value: solution('sucrose', 'brix', reading + correction, degrees).refractiveIndex ?? Number.NaN,
      }),
      2e-4,
    );
    expect(off).toEqual([]);
  });

  it('published: refractometer corrections of OIV-MA-AS2-02, Brix within 0.04 to 30 and 0.09 at 50', () => {
    for (const [degrees = 0, reading = 0, correction = 0] of rows('indexCorrection')) {
      const meant = answered(refractometerBrix({ reading, temperatureKelvin: celsius(degrees) }));
      expect(Math.abs(meant - reading - correction)).toBeLessThan(reading > 30 ? 0.09 : 0.045);
    }
  });

  it('published: viscosity, CRC Handbook and NBS Circular 440, within 4 % at every row', () => {
    const off = misses(
      rows('viscosity'),
      ([brix = 0, degrees = 0, printed = 0]) => ({
        printed,
        value: answered(
          sucroseViscosityAt({ massFraction: brix / 100, temperatureKelvin: celsius(degrees) }),
        ),
      }),
      0.04,
      true,
    );
    expect(off).toEqual([]);
  });

  it('published: solubility, older CRC Handbook, to the digit printed but for the slip at 30 C', () => {
    for (const [degrees = 0, printed = 0] of rows('solubility')) {
      const found = answered(sucroseSolubilityAt({ temperatureKelvin: celsius(degrees) })) * 100;
      const likely = degrees === 30 ? 68.7 : printed;
      expect(Math.abs(found - likely), `${degrees} C: ${found}`).toBeLessThan(0.0051);
    }
  });

  it('published: g/L and throws worked from the ICUMSA density, to the digit printed', () => {
    for (const [brix = 0, printed = 0] of rows('gramsPerLitre')) {
      expect(solution('sucrose', 'brix', brix).sugarGramsPerLitre).toBeCloseTo(printed, 1);
    }
    for (const [drinkBrix = 0, waterParts = 0, grams = 0, brix = 0] of rows('throws')) {
      const given = { sugar: 'sucrose', drinkBrix, waterParts, temperatureKelvin: celsius(20) } as const;
      const syrup = answered(syrupForThrow(given));
      // The pack multiplies 109.2 g/L, rounded.
      expect(Math.abs(syrup.sugarGramsPerLitre - grams)).toBeLessThan(0.11);
      expect(Math.abs(syrup.brix - brix)).toBeLessThan(0.011);
    }
  });
});

describe('published: glucose and fructose', () => {
  it('published: density and index at 20 C, CRC Handbook, within 0.0002', () => {
    for (const [name, percent, density, index] of tableOf('solution-sugars', 'others').rows) {
      const sugar = name === 'glucose' ? 'glucose' : 'fructose';
      const found = solution(sugar, 'brix', Number(percent));
      expect(Math.abs(found.density - Number(density)), `${name} ${percent}`).toBeLessThan(2e-4);
      expect(Math.abs((found.refractiveIndex ?? 0) - Number(index))).toBeLessThan(1e-4);
    }
  });
});

describe('law: there and back', () => {
  it('law: Brix from density, g/L and index gives the Brix again', () => {
    for (const sugar of ['sucrose', 'glucose', 'fructose', 'invert sugar'] as const) {
      for (const degrees of [5, 20, 35]) {
        for (const brix of [0, 0.5, 10, 49]) {
          const known = solution(sugar, 'brix', brix, degrees);
          const measures = [
            ['density', known.density],
            ['grams per litre', known.sugarGramsPerLitre],
            ['refractive index', known.refractiveIndex ?? Number.NaN],
          ] as const;
          for (const [kind, value] of measures) {
            expect(solution(sugar, kind, value, degrees).brix).toBeCloseTo(brix, 6);
          }
        }
      }
    }
  });

  it('law: a throw and its drink', () => {
    const given = { sugar: 'sucrose', waterParts: 5, temperatureKelvin: celsius(20) } as const;
    const drink = answered(drinkFromThrow({ ...given, syrupBrix: 65 }));
    expect(answered(syrupForThrow({ ...given, drinkBrix: drink.brix })).brix).toBeCloseTo(65, 8);
  });

  it('refuses what lies outside', () => {
    const ask = (measure: SugarMeasure, degrees = 20) =>
      sugarSolution({ sugar: 'glucose', measure, temperatureKelvin: celsius(degrees) });
    expect(ask({ kind: 'brix', value: 65 })).toMatchObject({ ok: false });
    expect(ask({ kind: 'brix', value: -1 })).toMatchObject({ ok: false });
    expect(ask({ kind: 'density', value: 0.9 })).toMatchObject({ ok: false });
    expect(ask({ kind: 'refractive index', value: 1.35 }, 55)).toMatchObject({ ok: false });
    expect(sucroseSolubilityAt({ temperatureKelvin: celsius(-1) })).toMatchObject({ ok: false });
    expect(sucroseViscosityAt({ massFraction: 0.8, temperatureKelvin: celsius(20) })).toMatchObject({
      ok: false,
    });
    expect(acidCorrectedBrix({ brix: 10, citricPercent: 9 })).toMatchObject({ ok: false });
  });
});
