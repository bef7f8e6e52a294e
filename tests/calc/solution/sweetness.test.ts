import { describe, expect, it } from 'vitest';
import { sweetnessOf } from '../../../src/calc/solution/sweetness.ts';
import { answered } from './support.ts';

const percent = (sweetener: string, milligramsPerLitre: number) =>
  answered(sweetnessOf({ sweetener, milligramsPerLitre }));

describe('sweetness', () => {
  it('published: aspartame, 200 times sucrose at 4.3 % and 130 times at 10 % (Prepared Foods, trade article), within 10 %', () => {
    for (const [level, potency] of [
      [4.3, 200],
      [10, 130],
    ] as const) {
      const found = percent('aspartame', (level * 10_000) / potency);
      expect(Math.abs(found.sucrosePercent / level - 1)).toBeLessThan(0.1);
      expect(found.low).toBeLessThanOrEqual(level * 1.0005);
      expect(found.high).toBeGreaterThanOrEqual(level * 0.9995);
    }
  });

  it('published: amounts as sweet as 10 g of sucrose in 240 mL, Alternative Sweeteners, Table 1', () => {
    for (const [sweetener, low, high] of [
      ['sodium saccharin', 30, 40],
      ['sodium cyclamate', 150, 200],
      ['acesulfame-K', 50, 60],
      ['sucralose', 12, 15],
    ] as const) {
      const found = percent(sweetener, ((low + high) / 2) * (1000 / 240));
      expect(Math.abs(found.sucrosePercent / 4.17 - 1), sweetener).toBeLessThan(0.06);
    }
  });

  it('law: a curve weakens with level and never passes its highest', () => {
    const weak = percent('aspartame', 100).sucrosePercent / 100;
    const strong = percent('aspartame', 1000).sucrosePercent / 1000;
    expect(strong).toBeLessThan(weak);
    expect(percent('saccharin', 1e6).sucrosePercent).toBeLessThan(10.1);
  });

  it('refuses a name without a figure', () => {
    expect(sweetnessOf({ sweetener: 'orange oil', milligramsPerLitre: 1 })).toMatchObject({ ok: false });
  });
});
