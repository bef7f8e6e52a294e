import { describe, expect, it } from 'vitest';
import {
  bandQuestion,
  carbonationSlip,
  emulsifierQuestion,
} from '../../../src/calc/slip-guard/band-question.ts';
import { factorSlips, slipFactor, slipsOfWeighing } from '../../../src/calc/slip-guard/factor-slips.ts';
import { slipsOfDose, slipsOfDrops } from '../../../src/calc/slip-guard/quick-slips.ts';
import { quinineBase, usualBands } from '../../../src/reference/usual-bands.ts';

const codes = (cautions: readonly { readonly code: string }[]): readonly string[] =>
  cautions.map(({ code }) => code);

describe('bands', () => {
  // common practice (from memory): 10 to 200 mg/L; asked beyond three times
  it.each([
    [700, true],
    [601, true],
    [600, false],
    [3.4, false],
    [3.3, true],
    [0, false],
  ])('common practice: %d mg/L of flavour oil', (value, isAsked) => {
    const question = bandQuestion({ name: 'flavour-oil', band: usualBands['flavour-oil'], value });
    expect(question !== undefined).toBe(isAsked);
  });

  it('common practice: the question names the figure, the usual and where that is from', () => {
    expect(bandQuestion({ name: 'sugar', band: usualBands.sugar, value: 500 })).toEqual({
      code: 'slip-sugar',
      text: '500 g/L of sugar, where 20 to 140 g/L is usual: is this meant?',
      source: 'common practice, no source',
    });
    const recalled = bandQuestion({ name: 'flavour-oil', band: usualBands['flavour-oil'], value: 5000 });
    expect(recalled?.source).toMatch(/\(from memory\)$/);
  });

  it('common practice: carbonation and emulsifier per oil', () => {
    expect([37, 16, 15, 3.5, 0.2].map((volumes) => carbonationSlip(volumes)?.code)).toEqual([
      'slip-co2',
      'slip-co2',
      undefined,
      undefined,
      'slip-co2',
    ]);
    expect([0.49, 0.5, 10, 10.1].map((ratio) => emulsifierQuestion(ratio) !== undefined)).toEqual([
      true,
      false,
      false,
      true,
    ]);
  });

  // published: 83 mg of the base are 101.5 mg of the hydrochloride dihydrate and 100.2 mg of the sulfate dihydrate,
  // by the molar masses of the pack's conversions for 21 CFR 172.575
  it('published: salts of quinine as the base', () => {
    expect(101.5 * (quinineBase['quinine hydrochloride dihydrate'] ?? 0)).toBeCloseTo(83, 1);
    expect(100.2 * (quinineBase['quinine sulfate dihydrate'] ?? 0)).toBeCloseTo(83, 1);
  });
});

describe('factors', () => {
  it.each([
    [20, 2, 10],
    [20, 2.05, 10],
    [2, 20, 10],
    [0.21, 2, 10],
    [200, 2, 100],
    [2, 2000, 1000],
    [19.05, 2, 10],
    [18.9, 2, undefined],
    [21.1, 2, undefined],
    [10_000, 1, undefined],
    [2, 2, undefined],
    [0, 2, undefined],
  ])('common practice: %d and %d', (one, other, factor) => {
    expect(slipFactor(one, other)).toBe(factor);
  });

  it('law: it does not matter which stands first', () => {
    for (const [one, other] of [
      [3, 31],
      [0.004, 4.1],
      [7, 9],
    ] as const)
      expect(slipFactor(one, other)).toBe(slipFactor(other, one));
  });

  it('common practice: a weighing beside its plan', () => {
    expect(codes(slipsOfWeighing(2, 20.3))).toEqual(['slip-weighed']);
    expect(slipsOfWeighing(2, 0.2)[0]?.text).toContain('10 times less');
    expect(slipsOfWeighing(2, 2.03)).toEqual([]);
  });

  it('pinned: amounts in units of different kinds are not laid beside each other', () => {
    const item = (kind: string, inner: number) => ({
      name: 'emulsion',
      items: [{ name: 'oil', key: 'oil', measure: { kind, inner, isWhole: true, written: `${inner}` } }],
    });
    const compare = (kind: string) =>
      factorSlips({ now: [item('mass', 20)], before: [item(kind, 2)], from: 'trial 1' });
    expect(compare('share')).toEqual([]);
    expect(codes(compare('mass'))).toEqual(['slip-factor']);
  });
});

describe('typed figures', () => {
  it('common practice: a dose in g where mg was meant', () => {
    const dosed = { oilMilligramsPerLitre: 60_000, emulsifierPerOil: 3, carrierGramsPerLitre: undefined };
    expect(codes(slipsOfDose(dosed))).toEqual(['slip-flavour-oil']);
    expect(slipsOfDose({ ...dosed, oilMilligramsPerLitre: 60 })).toEqual([]);
  });

  it('common practice: drops for a target in ppm where ppb was meant', () => {
    expect(codes(slipsOfDrops(5e-6))).toEqual(['slip-target']);
    expect(slipsOfDrops(5e-6)[0]?.text).toContain('5 ppm in the drink');
    expect(slipsOfDrops(1e-6)).toEqual([]);
    expect(codes(slipsOfDrops(5e-13))).toEqual(['slip-target']);
  });
});
