import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { weighedRows } from '../../../src/calc/ladder/likelihood.ts';
import { locationGrid, spanOf } from '../../../src/calc/ladder/location-grid.ts';
import { type BreakPosterior, breakPosterior } from '../../../src/calc/ladder/posterior.ts';
import { priorsAround, priorsFor } from '../../../src/calc/ladder/priors.ts';
import { gridChance, gridPoint } from '../../../src/calc/statistics/grid-distribution.ts';
import { anyLadder, beakers, found, priors } from './some-beakers.ts';

const some = { numRuns: 40 };
const close = (value: number | null, wanted: number | null, off = 1e-9): void => {
  expect(Math.abs(Number(value) / Number(wanted) - 1)).toBeLessThan(off);
};
/** The logarithmic middle of where the break of a stirred emulsion is looked for. */
const centre = Math.sqrt(priors.lowRatio * priors.highRatio);

const ends = (places: Float64Array): readonly [number, number] => [
  places[0] ?? 0,
  places[places.length - 1] ?? 0,
];

/** How far the chances below the 5, 50 and 95 % points of one are off in the other. */
function furthestChance(one: BreakPosterior, other: BreakPosterior): number {
  const offs = [0.05, 0.5, 0.95].map((chance) => {
    const point = gridPoint({ places: one.locations, weights: one.marginal }, chance);
    const below = gridChance({ places: other.locations, weights: other.marginal }, -99, point);
    return Math.abs(below - chance);
  });
  return Math.max(...offs);
}

describe('The posterior', () => {
  it('law: sums to 1', () => {
    fc.assert(
      fc.property(anyLadder, (ladder) => {
        const { rows, marginal } = breakPosterior(ladder, priors);
        const whole = rows.reduce((sum, row) => sum + row.reduce((total, weight) => total + weight, 0), 0);
        expect(whole).toBeCloseTo(1, 12);
        expect(marginal.reduce((sum, weight) => sum + weight, 0)).toBeCloseTo(1, 12);
      }),
      some,
    );
  });

  it('law: a grid three times as fine moves no chance by more than 0.3 %', () => {
    fc.assert(
      fc.property(anyLadder, (ladder) => {
        expect(
          furthestChance(breakPosterior(ladder, priors), breakPosterior(ladder, priors, 0.02 / 3)),
        ).toBeLessThan(0.003);
      }),
      some,
    );
  });

  it('law: places that the first coarse look leaves out hold less than one part in 10 000', () => {
    const ladders = fc.tuple(
      anyLadder,
      fc.array(fc.double({ min: 0.36, max: 0.44, noNaN: true }), { maxLength: 30 }),
    );
    fc.assert(
      fc.property(ladders, ([ladder, near]) => {
        const sharp = near.map((ratio, at) => ({
          ratio,
          outcome: ratio > 0.4 ? ('failed' as const) : ('held' as const),
          day: String(at >> 2),
        }));
        const all = [...ladder, ...sharp];
        const locations = locationGrid(spanOf(priors), 0.02);
        const rows = weighedRows(all, { locations, priors });
        const sums = locations.map((_, at) => rows.reduce((sum, row) => sum + (row[at] ?? 0), 0));
        const whole = sums.reduce((sum, weight) => sum + weight, 0);
        const [least, most] = ends(breakPosterior(all, priors).locations);
        const outside = sums.filter((_, at) => {
          const location = locations[at] ?? 0;
          return location < least - 1e-9 || location > most + 1e-9;
        });
        expect(outside.reduce((sum, weight) => sum + weight, 0) / whole).toBeLessThan(1e-4);
      }),
      some,
    );
  });

  it('law: thrice as many scatters move no chance by more than 3 %', () => {
    fc.assert(
      fc.property(anyLadder, (ladder) => {
        const more = { ...priors, scatter: { ...priors.scatter, points: 3 * priors.scatter.points } };
        expect(furthestChance(breakPosterior(ladder, priors), breakPosterior(ladder, more))).toBeLessThan(
          0.02,
        );
      }),
      some,
    );
  });

  it.each([10, 20, 26])(
    'law: %i beakers at the break leave 1.2533 scatter / sqrt n, the information of a probit at its middle',
    (count) => {
      const scatter = 0.08;
      const known = {
        ...priors,
        scatter: { ...priors.scatter, lowest: scatter, highest: scatter, points: 1 },
        dayShift: 0,
        oddChance: 0,
      };
      const half = Array.from({ length: count / 2 }, () => `${centre} held, ${centre} failed`).join(', ');
      const { locations, marginal } = breakPosterior(beakers(half), known, 0.002);
      const at = locations.findIndex((location) => location > Math.log(centre) - 0.001);
      const [before, here, after] = [-1, 0, 1].map((k) => Math.log(marginal[at + k] ?? 0));
      const step = (locations[1] ?? 0) - (locations[0] ?? 0);
      const bend = ((before ?? 0) - 2 * (here ?? 0) + (after ?? 0)) / step ** 2;
      close(1 / Math.sqrt(-bend), (1.253314 * scatter) / Math.sqrt(count), 1e-3);
    },
  );
});

describe('Priors', () => {
  it('law: two beakers far from the usual span bracket the break there', () => {
    const { breakPoint: middle } = found(beakers('20 held, 24 failed'));
    expect(Number(middle)).toBeGreaterThan(19);
    expect(Number(middle)).toBeLessThan(25);
  });

  it('law: the wide priors of any other amount have the break inside a narrow bracket', () => {
    const { breakLow, breakHigh } = found(
      ['4 held, 6 held, 7 failed, 9 failed', '5 held, 6 held, 7 failed, 8 failed'].flatMap((text, day) =>
        beakers(text, String(day)),
      ),
      priorsAround({ low: 4, high: 9 }),
    );
    expect([Number(breakLow) > 5.3, Number(breakHigh) < 7.9]).toEqual([true, true]);
  });

  it('law: the way of making says where to look first', () => {
    expect(priorsFor('stirred').lowRatio).toBeLessThan(priorsFor('homogenised').lowRatio);
    const { posterior } = found([], priorsFor('homogenised'));
    const middle = Math.exp(gridPoint({ places: posterior.locations, weights: posterior.marginal }, 0.5));
    close(middle, Math.sqrt(5 / 3), 1e-6);
  });
});
