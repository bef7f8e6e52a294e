import { describe, expect, it } from 'vitest';
import { sum } from '../../src/calc/sum.ts';

describe('sum', () => {
  // Neumaier 1974, method IV; the example is the usual one that plain and Kahan summation both miss (from memory).
  it('published: 1 + 1e100 + 1 - 1e100 is 2', () => {
    expect(sum([1, 1e100, 1, -1e100])).toBe(2);
  });

  it('law: ten tenths are one, and nothing is nothing', () => {
    expect(sum(new Array<number>(10).fill(0.1))).toBe(1);
    expect(sum([])).toBe(0);
  });
});
