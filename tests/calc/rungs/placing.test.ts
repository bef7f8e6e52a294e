import { describe, expect, it } from 'vitest';
import { equalFactors, equalSteps, firstRungs } from '../../../src/calc/rungs/spaced.ts';
import { leastMass, readingError } from '../../../src/calc/rungs/weighing-error.ts';
import { shuffled } from '../../../src/calc/shuffled.ts';

describe('where rungs go', () => {
  it('pinned: the examples in the comments, by hand', () => {
    expect(equalFactors({ low: 0.25, high: 1, count: 3 })).toEqual([0.25, 0.5, 1]);
    expect(equalSteps({ low: 2, high: 10, count: 5 })).toEqual([2, 4, 6, 8, 10]);
    expect(firstRungs({ low: 0.125, high: 2, count: 3 })).toEqual([0.25, 0.5, 1]);
    expect(readingError(0.01, 0.5)).toBe(0.01);
    expect(leastMass(0.01, 0.01)).toBe(0.5);
  });

  it('law: equal factors have one quotient, and both ends stand', () => {
    const rungs = equalFactors({ low: 0.12, high: 2.6, count: 9 });
    const quotients = rungs.slice(1).map((rung, at) => rung / (rungs[at] ?? 1));
    for (const quotient of quotients) expect(quotient).toBeCloseTo((2.6 / 0.12) ** (1 / 8), 12);
    expect([rungs[0], rungs[8]?.toPrecision(12)]).toEqual([0.12, (2.6).toPrecision(12)]);
  });

  it('law: a break anywhere on the logarithm falls into each gap of the first rungs as often', () => {
    const [low, high] = [0.125, 2];
    const rungs = firstRungs({ low, high, count: 5 });
    const draws = 60_000;
    const counts = new Array<number>(6).fill(0);
    for (let draw = 0; draw < draws; draw += 1) {
      const at = low * (high / low) ** ((draw + 0.5) / draws);
      const gap = rungs.filter((rung) => rung < at).length;
      counts[gap] = (counts[gap] ?? 0) + 1;
    }
    expect(counts.map((count) => Math.round((count / draws) * 6000))).toEqual([
      1000, 1000, 1000, 1000, 1000, 1000,
    ]);
  });
});

describe('the order of making', () => {
  it('law: every order of three comes as often (numbers of a fixed sequence)', () => {
    let state = 1;
    const random = () => {
      state = (state * 48271) % 2147483647;
      return state / 2147483647;
    };
    const seen = new Map<string, number>();
    for (let draw = 0; draw < 12_000; draw += 1) {
      const order = shuffled(['a', 'b', 'c'], random).join('');
      seen.set(order, (seen.get(order) ?? 0) + 1);
    }
    // Six orders, 2000 each expected; chi-squared with 5 degrees of freedom is under 20.5 in 99.9 % of cases.
    const chiSquared = [...seen.values()].reduce((sum, count) => sum + (count - 2000) ** 2 / 2000, 0);
    expect([seen.size, chiSquared < 20.5]).toEqual([6, true]);
  });

  it('keeps every beaker, also where chance says 1', () => {
    expect([...shuffled([1, 2, 3, 4], () => 1)].sort()).toEqual([1, 2, 3, 4]);
    expect(shuffled([], () => 0.5)).toEqual([]);
  });
});
