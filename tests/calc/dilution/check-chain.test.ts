import { describe, expect, it } from 'vitest';
import type { ChainBench } from '../../../src/calc/dilution/chain.ts';
import { checkChain, parseChain } from '../../../src/calc/dilution/check-chain.ts';
import { agreesWithPrint } from '../../support/printed.ts';

const bench: ChainBench = {
  scales: [{ divisionGrams: 0.01, limitGrams: 600 }],
  weighing: 0.01,
  largestDilution: 100,
  vessels: [],
};

function checked(strength: number, typed: string, on: ChainBench = bench) {
  const steps = parseChain(typed);
  if (!steps.ok) throw new Error(steps.fault.message);
  return checkChain({ of: 'thiol', source: { name: 'stock', strength }, steps: steps.value, bench: on });
}

describe('published chains', () => {
  it.each([
    ['study.com, a ppb dilution problem', 500e-9, '10 g in 250 g', 1e9, '20'],
    ['homework.study.com, a ppb dilution problem', 500e-9, '25 g in 100 g', 1e9, '125'],
    ['homework.study.com, molar', 2.5, '10.0 g in 500 g', 1, '0.050'],
    [
      'Timberlake, General, Organic and Biological Chemistry, 5th edition, 9.63c',
      10,
      '25 g in 100.0 g',
      1,
      '2.5',
    ],
    [
      'Timberlake, General, Organic and Biological Chemistry, 5th edition, 9.63d',
      50,
      '15 g in 250 g',
      1,
      '3.0',
    ],
    ['quinine sulfate exercise, wizedu: 0.5 mL', 82.9, '0.5 g in 50 g', 1, '0.83'],
    ['quinine sulfate exercise, wizedu: 0.05 mL', 82.9, '0.05 g in 50 g', 1, '0.083'],
    ['wyzant 866615, two steps', 1.5, '75.0 g in 228 g; 114 g + 189 g', 1, '0.186'],
    ['reference-standard catalogue, 100 ppm', 100, '1 g in 100 g', 1, '1'],
    ['OpenStax Chemistry 2e (from memory)', 5, '0.850 kg in 1.80 kg', 1, '2.36'],
    ['studyzin, micromolar', 10e-3, '1 g in 1 kg', 1e6, '10'],
  ])('published: %s', (_, strength, typed, per, printed) => {
    const { finalStrength } = checked(strength, typed);
    expect(agreesWithPrint(finalStrength * per, printed), String(finalStrength * per)).toBe(true);
  });

  it('law: neat 1 g in 99 g, then 1:100 five times, is 1 part in 10^12', () => {
    const steps = ['1 g + 99 g', ...Array.from({ length: 5 }, () => '1 g + 99 g')].join('; ');
    expect(checked(1, steps).finalStrength).toBeCloseTo(1e-12, 24);
  });

  it('published: 9.93 M is a misprint for 8.93 M, qammunity.org 1535044: 28.0 in 100.00 makes 2.50 of the latter only', () => {
    expect(agreesWithPrint(checked(8.93, '28.0 g in 100.00 g').finalStrength, '2.50')).toBe(true);
    expect(agreesWithPrint(checked(9.93, '28.0 g in 100.00 g').finalStrength, '2.50')).toBe(false);
  });

  it('published: 130.7 mL is a misprint for 129.1 mL, scienceaq.com: 450.0 of 0.990 from 3.45', () => {
    expect(agreesWithPrint(checked(3.45, '129.1 g in 450.0 g').finalStrength, '0.990')).toBe(true);
    expect(agreesWithPrint(checked(3.45, '130.7 g in 450.0 g').finalStrength, '0.990')).toBe(false);
  });
});

describe('what the bench says against a typed chain', () => {
  it('a weighing too small, with the least mass', () => {
    const { objections } = checked(1, '0.1 g in 10 g; 0.1 g in 10 g; 0.05 g in 1 kg');
    expect(objections).toHaveLength(3);
    expect(objections[0]).toContain('weighed to 5 %');
    expect(objections[0]).toContain('0.5 g and up');
  });

  it('a step that is too large, but not the last', () => {
    const { objections } = checked(1, '0.5 g in 500 g; 0.5 g in 500 g');
    expect(objections).toEqual(['"0.5 g in 500 g" is a step of 1:1000, more than the bench\'s 1:100']);
  });

  it('more taken than was made, and a vessel too small', () => {
    const { objections } = checked(1, '1 g in 100 g; 200 g in 1 kg', {
      ...bench,
      vessels: [{ millilitres: 50 }],
    });
    expect(objections).toEqual([
      '"1 g in 100 g" goes into no vessel here: the largest holds 50 mL',
      '"200 g in 1 kg" takes more than the 100 g that there are',
    ]);
  });

  it('nothing where all is in order', () => {
    expect(checked(1, '0.5 g in 50 g; 1 g in 100 g').objections).toEqual([]);
  });
});

describe('steps as they are typed', () => {
  it.each([
    ['', 'missing'],
    ['0.1 g', 'not-a-step'],
    ['0.1 in 10 g', 'no-unit'],
    ['0.1 mL in 10 g', 'wrong-kind'],
    ['10 g in 1 g', 'over-batch'],
    ['0 g in 1 g', 'not-positive'],
  ])('refuses "%s"', (typed, code) => {
    expect(parseChain(typed)).toMatchObject({ ok: false, fault: { code } });
  });
});
