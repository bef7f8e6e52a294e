import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Beaker } from '../../../src/calc/ladder/beaker.ts';
import { type NextBeakersAsked, nextBeakers } from '../../../src/calc/ladder/next-beakers.ts';
import { anyLadder, beakers, found, priors } from './some-beakers.ts';

const next = (all: readonly Beaker[], more: Partial<NextBeakersAsked> = {}) =>
  nextBeakers({ beakers: all, priors, count: 4, withinFraction: 0.1, ...more });

const days = (count: number, text = '0.4 held, 0.44 held, 0.48 failed, 0.52 failed'): readonly Beaker[] =>
  Array.from({ length: count }, (_, day) => beakers(text, String(day))).flat();

describe('The beakers to make next', () => {
  it('law: as many as asked, going up, within reach', () => {
    fc.assert(
      fc.property(anyLadder, fc.integer({ min: 1, max: 7 }), (ladder, count) => {
        const reach = { lowRatio: 0.3, highRatio: 0.6 };
        const { ratios } = next(ladder, { count, reach });
        expect(ratios).toHaveLength(count);
        expect(ratios).toEqual(ratios.toSorted((a, b) => a - b));
        expect(ratios.filter((ratio) => ratio < 0.3 - 1e-9 || ratio > 0.6 + 1e-9)).toEqual([]);
      }),
      { numRuns: 15 },
    );
  });

  it('law: the first four of a ladder lie over the whole span, none at its ends', () => {
    const { ratios, enough } = next([]);
    expect(enough).toBe(false);
    expect(new Set(ratios).size).toBe(4);
    expect(Number(ratios[0])).toBeGreaterThan(priors.lowRatio);
    expect(Number(ratios[3])).toBeLessThan(priors.highRatio);
    expect(Number(ratios[3]) / Number(ratios[0])).toBeGreaterThan(4);
  });

  it('law: all held sends the next ones up, all failed down', () => {
    expect(Number(next(beakers('0.2 held, 0.3 held, 0.4 held')).ratios[0])).toBeGreaterThan(0.4);
    expect(Number(next(beakers('0.8 failed, 0.6 failed, 0.4 failed')).ratios[3])).toBeLessThan(0.4);
  });

  it('law: a single one after a wide bracket goes inside it', () => {
    const [ratio] = next(days(1, '0.3 held, 0.9 failed'), { count: 1 }).ratios;
    expect(Number(ratio)).toBeGreaterThan(0.35);
    expect(Number(ratio)).toBeLessThan(0.8);
  });

  it('law: where beakers fail below the break, the plan is turned over', () => {
    const ladder = days(1);
    const turned = ladder.map((beaker) => ({ ...beaker, ratio: 1 / beaker.ratio }));
    const asked = { ...priors, lowRatio: 1 / priors.highRatio, highRatio: 1 / priors.lowRatio };
    const [one, other] = [next(ladder), next(turned, { priors: asked, failing: 'below' })];
    for (const [at, ratio] of other.ratios.toReversed().entries()) {
      expect(ratio * Number(one.ratios[at])).toBeCloseTo(1, 6);
    }
    expect(other.precisionNow).toBeCloseTo(one.precisionNow, 9);
  });
});

describe('Beakers made and still watched', () => {
  it('law: are not made again: the plan goes where they will not tell', () => {
    const ladder = days(1, '0.2 held, 0.4 held, 0.8 failed, 1.4 failed');
    const first = next(ladder);
    const watched = first.ratios.map((ratio) => ({ ratio, outcome: 'watching' as const, day: 'today' }));
    const second = next([...ladder, ...watched]);
    expect(second.precisionNow).toBeCloseTo(first.precisionNow, 9);
    expect(second.precisionAfter).toBeLessThan(first.precisionAfter);
    const gaps = second.ratios.map((ratio) =>
      Math.min(...first.ratios.map((made) => Math.abs(Math.log(ratio / made)))),
    );
    expect(Math.min(...gaps)).toBeGreaterThan(0.01);
  });
});

describe('Enough', () => {
  it('law: means that 9 of 10 lie within the wanted precision', () => {
    for (const count of [1, 2, 4, 8]) {
      const ladder = days(count);
      const { precisionNow } = next(ladder);
      const { breakLow, breakHigh, breakPoint } = found(ladder);
      const inside = [Number(breakHigh) / Number(breakPoint), Number(breakPoint) / Number(breakLow)];
      expect(precisionNow).toBeGreaterThanOrEqual(Math.min(...inside) - 1 - 1e-6);
      expect(precisionNow).toBeLessThanOrEqual(Math.max(...inside) - 1 + 1e-6);
      expect(next(ladder, { withinFraction: precisionNow * 1.01 }).enough).toBe(true);
      expect(next(ladder, { withinFraction: precisionNow * 0.99 }).enough).toBe(false);
    }
  });

  it('law: is never said of one side alone', () => {
    const { enough, expectedBeakersLeft } = next(days(6, '0.4 held, 0.5 held'), { withinFraction: 20 });
    expect([enough, expectedBeakersLeft > 0]).toEqual([false, true]);
  });

  it('law: fewer beakers are left after more, more for a finer precision, none when it is enough', () => {
    const left = [1, 2, 3, 4].map((count) => next(days(count), { withinFraction: 0.05 }).expectedBeakersLeft);
    expect(left).toEqual(left.toSorted((a, b) => b - a));
    expect(next(days(2), { withinFraction: 0.03 }).expectedBeakersLeft).toBeGreaterThan(Number(left[1]));
    expect(next(days(8), { withinFraction: 0.2 }).expectedBeakersLeft).toBe(0);
  });
});
