import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gridChance, gridMoments, gridPoint } from '../../../src/calc/statistics/grid-distribution.ts';
import { failChances } from '../../../src/calc/statistics/tolerance.ts';

const weighed = fc
  .array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 3, maxLength: 40 })
  .filter((raw) => raw.some((weight) => weight > 0.01))
  .map((raw) => {
    const sum = raw.reduce((total, weight) => total + weight, 0);
    return {
      places: Float64Array.from(raw, (_, at) => -1 + 0.25 * at),
      weights: Float64Array.from(raw, (weight) => weight / sum),
    };
  });

describe('Weights on a grid', () => {
  it('law: the chance below a point is the chance that the point was asked for', () => {
    fc.assert(
      fc.property(weighed, fc.double({ min: 0.001, max: 0.999, noNaN: true }), (distribution, chance) => {
        const point = gridPoint(distribution, chance);
        expect(gridChance(distribution, Number.NEGATIVE_INFINITY, point)).toBeCloseTo(chance, 9);
      }),
      { numRuns: 200 },
    );
  });

  it('law: all chance lies between the ends', () => {
    fc.assert(
      fc.property(weighed, (distribution) => {
        expect(gridChance(distribution, -2, 20)).toBeCloseTo(1, 12);
      }),
    );
  });

  it('law: mean and variance of n even places are those of a die', () => {
    const places = Float64Array.of(1, 2, 3, 4, 5, 6);
    const { mean, variance } = gridMoments({ places, weights: places.map(() => 1 / 6) });
    expect(mean).toBeCloseTo(3.5, 12);
    expect(variance).toBeCloseTo(35 / 12, 12);
  });
});

describe('Chance to fail', () => {
  it.each(['normal', 'logistic'] as const)(
    'law: rises with the level, mirrored about the break, %s',
    (curve) => {
      const locations = Float64Array.from({ length: 801 }, (_, at) => (at - 400) / 10);
      for (const oddChance of [0, 0.02]) {
        const fails = new Float64Array(locations.length);
        failChances({ logLevel: 0, scatter: 1, curve, oddChance }, locations, fails);
        fails.forEach((chance, at) => {
          expect(chance).toBeLessThanOrEqual(fails[at - 1] ?? 1);
          expect(chance + (fails[fails.length - 1 - at] ?? 0)).toBeCloseTo(1, 14);
        });
        expect(fails[400]).toBe(0.5);
      }
    },
  );
});
