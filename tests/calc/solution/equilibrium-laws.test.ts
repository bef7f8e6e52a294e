import { describe, expect, it } from 'vitest';
import { chargeAt } from '../../../src/calc/solution/charge-balance.ts';
import { solveEquilibrium } from '../../../src/calc/solution/equilibrium.ts';
import { prepareSolution } from '../../../src/calc/solution/prepare.ts';
import { solvePh } from '../../../src/calc/solution/solve-ph.ts';
import { acidSubstanceByName } from '../../../src/reference/solution/acid-systems.ts';
import { answered, celsius } from './support.ts';

describe('law: what any equilibrium keeps', () => {
  const drink = [
    { substance: 'citric acid', molesPerKilogramWater: 0.023 },
    { substance: 'trisodium citrate dihydrate', molesPerKilogramWater: 0.004 },
    { substance: 'potassium sorbate', molesPerKilogramWater: 0.001 },
  ];

  it('law: the charges of all species add up to nothing', () => {
    const found = answered(solveEquilibrium({ components: drink, temperatureKelvin: celsius(20) }));
    const metals = 3 * 0.004 + 0.001;
    const hydroxide = 10 ** (found.ph - 14.163) / (found.activityCoefficients[1] ?? 1);
    let charge = metals + found.hydrogenMolality - hydroxide;
    for (const { molalities } of found.acids) {
      molalities.forEach((molality, given) => {
        charge -= given * molality;
      });
    }
    expect(Math.abs(charge)).toBeLessThan(1e-10);
  });

  it('law: 2,000 random solutions of everything known balance, or are refused for their ionic strength alone', () => {
    const names = Object.keys(acidSubstanceByName);
    let state = 1;
    const random = (): number => {
      state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
      return state / 2 ** 32;
    };
    let balanced = 0;
    for (let count = 0; count < 2000; count += 1) {
      const components = Array.from({ length: 1 + Math.floor(5 * random()) }, () => ({
        substance: names[Math.floor(names.length * random())] ?? '',
        molesPerKilogramWater: 10 ** (-6 + 6.3 * random()),
      }));
      const solution = answered(prepareSolution({ components, temperatureKelvin: celsius(75 * random()) }));
      const solved = solvePh(solution);
      if (solved.ok) {
        const { ph, logActivity } = solved.value;
        expect(Math.abs(chargeAt(solution, ph, logActivity).charge)).toBeLessThan(1e-9);
        balanced += 1;
      } else {
        expect(solved.fault.code).toBe('too-concentrated');
      }
    }
    expect(balanced).toBeGreaterThan(1500);
  });

  it('law: pure water is neutral, pH half of pKw', () => {
    const found = answered(solveEquilibrium({ components: [], temperatureKelvin: celsius(25) }));
    expect(found.ph).toBeCloseTo(13.995 / 2, 3);
  });

  it('law: the species of an acid add up to the acid', () => {
    const { acids } = answered(solveEquilibrium({ components: drink, temperatureKelvin: celsius(20) }));
    for (const { molality, molalities } of acids) {
      expect(molalities.reduce((sum, each) => sum + each, 0)).toBeCloseTo(molality, 14);
    }
    expect(acids.map(({ acid }) => acid)).toEqual(['citric', 'sorbic']);
  });

  it('law: the salt of an acid is the acid with as much base', () => {
    const temperatureKelvin = celsius(25);
    const salt = solveEquilibrium({
      components: [{ substance: 'trisodium citrate', molesPerKilogramWater: 0.02 }],
      temperatureKelvin,
    });
    const both = solveEquilibrium({
      components: [
        { substance: 'citric acid', molesPerKilogramWater: 0.02 },
        { substance: 'sodium hydroxide', molesPerKilogramWater: 0.06 },
      ],
      temperatureKelvin,
    });
    expect(answered(salt).ph).toBeCloseTo(answered(both).ph, 9);
  });

  it('refuses what has no acid data, a temperature outside, a solution too strong', () => {
    const ask = (substance: string, amount: number, degrees: number) =>
      solveEquilibrium({
        components: [{ substance, molesPerKilogramWater: amount }],
        temperatureKelvin: celsius(degrees),
      });
    expect(ask('vanillin', 0.1, 25)).toMatchObject({ ok: false, fault: { code: 'no-acid-data' } });
    expect(ask('citric acid', 0.1, -5)).toMatchObject({ ok: false, fault: { code: 'outside-range' } });
    expect(ask('citric acid', -0.1, 25)).toMatchObject({ ok: false, fault: { code: 'not-an-amount' } });
    expect(ask('trisodium citrate', 1, 25)).toMatchObject({
      ok: false,
      fault: { code: 'too-concentrated' },
    });
  });

  it('says where the activity model is carried past its source and where temperature is not known', () => {
    const found = answered(
      solveEquilibrium({
        components: [{ substance: 'potassium sorbate', molesPerKilogramWater: 0.7 }],
        temperatureKelvin: celsius(4),
      }),
    );
    expect(found.withinActivityModel).toBe(false);
    expect(found.temperatureUnknown).toEqual(['sorbic']);
  });
});
