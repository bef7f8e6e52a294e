import { describe, expect, it } from 'vitest';
import { type MeasuredPair, offsetsOf } from '../../../src/calc/drink/offset.ts';

const pair = (of: string, ph: number): MeasuredPair => ({ of, measured: { ph }, reckoned: { ph: 3 } });

describe('the offset of a bench', () => {
  it('law: the mean and the standard deviation of measured less reckoned', () => {
    const [offset] = offsetsOf([pair('a', 3.08), pair('b', 3.1), pair('c', 3.12)]);
    expect(offset?.offset).toBeCloseTo(0.1, 12);
    expect(offset?.spread).toBeCloseTo(0.02, 12);
    expect([offset?.drinks, offset?.isClear]).toEqual([['a', 'b', 'c'], true]);
  });

  it('law: what scatters about nothing is not clear', () => {
    expect(offsetsOf([pair('a', 2.9), pair('b', 3.12), pair('c', 3.02)])[0]?.isClear).toBe(false);
  });

  it('law: two drinks give none, and a reading counts only where it was taken', () => {
    expect(offsetsOf([pair('a', 3.1), pair('b', 3.1)])).toEqual([]);
    const other = { of: 'd', measured: { brix: 9 }, reckoned: { brix: 9.1, ph: 3 } };
    expect(offsetsOf([pair('a', 3.1), pair('b', 3.1), other])).toEqual([]);
  });
});
