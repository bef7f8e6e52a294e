import { describe, expect, it } from 'vitest';
import { parseAmount } from '../../../src/calc/parse-amount.ts';
import { roundedAmount, timesAmount } from '../../../src/calc/rungs/amount-for.ts';
import { blendMasses } from '../../../src/calc/rungs/blend-masses.ts';
import { type Kept, type LadderItem, ratioMasses } from '../../../src/calc/rungs/ratio-masses.ts';
import type { Parsed } from '../../../src/problem.ts';

const item = (name: string, massGrams: number, over = 0, under = 0): LadderItem => ({
  name,
  massGrams,
  over,
  under,
  makesUp: false,
});

const plain = [item('oil', 2, 1), item('emulsifier', 6, 0, 1), item('water', 42)];
const names = { overName: 'oil', underName: 'emulsifier' };

function value<T>(parsed: Parsed<T>): T {
  if (!parsed.ok) throw new Error(parsed.fault.message);
  return parsed.value;
}
const massesOf = (items: readonly LadderItem[], wanted: number, kept: Kept) =>
  value(ratioMasses({ items, wanted, kept, ...names }));

describe('masses at a wanted ratio', () => {
  it('pinned: two grams of oil to six of emulsifier, by hand', () => {
    expect(massesOf(plain, 0.5, 'under')).toEqual([3, 6, 42]);
    expect(massesOf(plain, 0.5, 'over')).toEqual([2, 4, 42]);
    // 8 g together at 1 to 4: 1.6 g and 6.4 g.
    const both = massesOf(plain, 0.25, 'both');
    expect(both.map((grams) => Number(grams.toFixed(12)))).toEqual([1.6, 6.4, 42]);
  });

  it.each(['under', 'over', 'both'] as const)(
    'law: the masses come to the ratio, and what is kept (%s) is kept, with solutions of both sides',
    (kept) => {
      const items = [
        item('oil in carrier', 2.5, 0.8),
        item('second oil', 0.6, 1),
        item('soap solution', 12, 0, 0.5),
        item('ready blend', 1, 0.2, 0.6),
        item('water', 34),
      ];
      const sum = (masses: readonly number[], side: 'over' | 'under'): number =>
        items.reduce((total, one, at) => total + (masses[at] ?? 0) * one[side], 0);
      const before = items.map(({ massGrams }) => massGrams);
      for (const wanted of [0.12, 0.4, 0.9]) {
        const masses = massesOf(items, wanted, kept);
        expect(sum(masses, 'over') / sum(masses, 'under')).toBeCloseTo(wanted, 12);
        if (kept === 'under') expect(sum(masses, 'under')).toBeCloseTo(sum(before, 'under'), 12);
        if (kept === 'over') expect(sum(masses, 'over')).toBeCloseTo(sum(before, 'over'), 12);
        if (kept === 'both') {
          const whole = (some: readonly number[]) => some.reduce((total, one) => total + one, 0);
          expect(whole(masses)).toBeCloseTo(whole(before), 10);
        }
        // Items of one side are scaled alike.
        expect((masses[0] ?? 0) / 2.5).toBeCloseTo((masses[1] ?? 0) / 0.6, 12);
      }
    },
  );

  it('refuses what has nothing of its own to vary, and what would need less than nothing', () => {
    const mixed = [item('ready blend', 8, 0.25, 0.75), item('water', 42)];
    expect(ratioMasses({ items: mixed, wanted: 0.5, kept: 'under', ...names })).toMatchObject({
      fault: { code: 'no-lever', message: 'the oil has no line of its own whose amount could be varied' },
    });
    const some = [item('oil', 1, 1), item('ready blend', 8, 0.25, 0.75)];
    expect(ratioMasses({ items: some, wanted: 0.1, kept: 'under', ...names })).toMatchObject({
      fault: {
        code: 'out-of-reach',
        message: 'oil per emulsifier of 0.1 is out of reach: ready blend brings both',
      },
    });
  });
});

describe('masses at a wanted HLB', () => {
  it('law: the blend has the HLB, and the emulsifier in all is kept', () => {
    const items = [
      { name: 'a', massGrams: 4, share: 1, hlb: 15 },
      { name: 'b', massGrams: 5, share: 0.4, hlb: 4.3 },
    ];
    for (const wanted of [5, 9, 12, 14.9]) {
      const [a = 0, b = 0] = value(blendMasses(items, wanted));
      expect(a + b * 0.4).toBeCloseTo(6, 12);
      expect((a * 15 + b * 0.4 * 4.3) / 6).toBeCloseTo(wanted, 12);
    }
  });

  it('refuses one emulsifier, and what they do not reach', () => {
    const one = [{ name: 'a', massGrams: 4, share: 1, hlb: 15 }];
    expect(blendMasses(one, 12)).toMatchObject({ fault: { code: 'one-emulsifier' } });
    const two = [...one, { name: 'b', massGrams: 4, share: 1, hlb: 4.3 }];
    expect(blendMasses(two, 16)).toMatchObject({
      fault: { message: 'a blend HLB of 16 is out of reach: a has 15, b has 4.3' },
    });
  });
});

describe('amounts as they are typed', () => {
  it.each([
    ['6 g', 0.39978, 0.01, '2.4 g'],
    ['6 g', 0.39978, 0.001, '2.399 g'],
    ['600 mg', 0.1234567, 0.01, '70 mg'],
    ['12 %', 0.3333333333, 0.01, '4 %'],
    ['2 mL', 0.8912345, 0.01, '1.782 mL'],
    ['20 drops', 0.66, 0.01, '13 drops'],
    ['(2 * 3) parts', 0.5, 0.01, '3 parts'],
    ['40 g/L', 0.75, 0.1, '30 g/L'],
    ['4 g/L in drink', 0.5, 0.1, '2 g/L in drink'],
    ['6 g', 0, 0.01, '0 g'],
    ['12 %', 0, 0.01, '0 %'],
  ])('%s times %f to a division of %f g is %s', (typed, factor, division, written) => {
    const amount = value(parseAmount(typed.replace('(2 * 3)', '6')));
    expect(roundedAmount(timesAmount(amount, factor), division).written).toBe(written);
  });
});
