import { describe, expect, it } from 'vitest';
import { breakPoint } from '../../../src/calc/ladder/break-point.ts';
import { compareBreaks } from '../../../src/calc/ladder/compare-breaks.ts';
import { beakers, found, priors } from './some-beakers.ts';

const days = (factor: number, count = 2) =>
  Array.from({ length: count }, (_, day) =>
    beakers('0.3 held, 0.34 held, 0.38 failed, 0.42 failed', String(day)),
  )
    .flat()
    .map((beaker) => ({ ...beaker, ratio: beaker.ratio * factor }));

describe('Two breaks compared', () => {
  it('law: a ladder beside itself has the ratio 1 and an even chance', () => {
    const one = found(days(1));
    const { ratio, low, high, chanceFirstHigher } = compareBreaks({ first: one, second: one });
    expect(ratio).toBeCloseTo(1, 6);
    expect(Number(low) * Number(high)).toBeCloseTo(1, 6);
    expect(chanceFirstHigher).toBeCloseTo(0.5, 6);
  });

  it('law: the interval is wider than that of either, and narrower than both end to end', () => {
    const one = found(days(1));
    const { low, high } = compareBreaks({ first: one, second: one });
    const [width, own] = [Number(high) / Number(low), Number(one.breakHigh) / Number(one.breakLow)];
    expect(width).toBeGreaterThan(own);
    expect(width).toBeLessThan(own ** 2);
  });

  it('law: half as much again is found as half as much again, and backwards the other way round', () => {
    const [first, second] = [found(days(1.5)), found(days(1))];
    const [forth, back] = [compareBreaks({ first, second }), compareBreaks({ first: second, second: first })];
    expect(Number(forth.ratio)).toBeCloseTo(1.5, 1);
    expect(Number(forth.ratio) * Number(back.ratio)).toBeCloseTo(1, 6);
    expect(Number(forth.low) * Number(back.high)).toBeCloseTo(1, 6);
    expect(Number(forth.chanceFirstHigher)).toBeGreaterThan(0.99);
    expect(Number(forth.chanceFirstHigher) + Number(back.chanceFirstHigher)).toBeCloseTo(1, 6);
  });

  it('law: of amounts that must be enough, the ratio is that of the amounts', () => {
    const asked = { ...priors, lowRatio: 1 / priors.highRatio, highRatio: 1 / priors.lowRatio };
    const turned = (factor: number) =>
      breakPoint({
        beakers: days(factor).map((beaker) => ({ ...beaker, ratio: 1 / beaker.ratio })),
        priors: asked,
        marginFraction: 0.1,
        failing: 'below',
      });
    const { ratio, chanceFirstHigher } = compareBreaks({ first: turned(1), second: turned(1.5) });
    expect(Number(ratio)).toBeCloseTo(1.5, 1);
    expect(Number(chanceFirstHigher)).toBeGreaterThan(0.99);
  });

  it('law: an open side stays open', () => {
    const known = found(days(1));
    const above = found(beakers('0.8 held, 1 held'));
    const { ratio, low, high, chanceFirstHigher } = compareBreaks({ first: above, second: known });
    expect([ratio, high]).toEqual([null, null]);
    expect(Number(low)).toBeGreaterThan(1.5);
    expect(Number(chanceFirstHigher)).toBeGreaterThan(0.95);
    const below = compareBreaks({ first: known, second: above });
    expect([below.ratio, below.low]).toEqual([null, null]);
    expect(compareBreaks({ first: above, second: above })).toEqual({
      ratio: null,
      low: null,
      high: null,
      chanceFirstHigher: null,
    });
    expect(compareBreaks({ first: found([]), second: known }).chanceFirstHigher).toBe(null);
  });
});
