import { describe, expect, it } from 'vitest';
import { headSteps, type Pour, placeOf, rises, smallestInBand } from '../../../src/calc/foam/head-band.ts';
import { seeded } from '../../support/seeded.ts';

const pour = (dose: number, millimetres: number, lifeSeconds?: number): Pour => ({
  dose,
  headMetres: millimetres / 1000,
  lifeSeconds,
});

describe('heads over the dose', () => {
  it('pours of one dose stand together: mean, least, greatest; a weighing error is no other dose', () => {
    const steps = headSteps([pour(20, 12, 30), pour(0, 40), pour(20.2, 14, 50), pour(20, 10)]);
    expect(steps).toHaveLength(2);
    expect(steps[0]).toMatchObject({ dose: 0, pours: 1, lifeSeconds: undefined });
    expect(steps[1]).toMatchObject({
      dose: 20,
      pours: 3,
      lowMetres: 0.01,
      highMetres: 0.014,
      lifeSeconds: 40,
    });
    expect(steps[1]?.meanMetres).toBeCloseTo(0.012, 12);
  });

  it('the smallest dose in the band by its mean, and the one of which every pour is in it', () => {
    const steps = headSteps([
      pour(0, 40),
      pour(10, 14),
      pour(10, 17),
      pour(10, 13),
      pour(20, 9),
      pour(20, 11),
      pour(40, 3),
    ]);
    const band = { lowMetres: 0.005, highMetres: 0.015 };
    const { smallest, everyPour } = smallestInBand(steps, band);
    expect([smallest?.dose, everyPour?.dose]).toEqual([10, 20]);
    expect(smallestInBand(steps, { highMetres: 0.001 })).toEqual({
      smallest: undefined,
      everyPour: undefined,
    });
  });

  it('the sides belong to the band, also where a unit was turned into another', () => {
    const band = { lowMetres: 0.5 * 0.01, highMetres: 15 * 0.001 };
    expect([5, 15].map((millimetres) => placeOf(millimetres * 1e-3, band))).toEqual(['in', 'in']);
    expect([placeOf(0.0049, band), placeOf(0.0151, band)]).toEqual(['under', 'over']);
    expect(placeOf(3, { lowMetres: 0.01 })).toBe('in');
  });

  it('more foam with more antifoam, told whether the pours overlap', () => {
    const steps = headSteps([
      pour(0, 40),
      pour(10, 20),
      pour(10, 24),
      pour(20, 23),
      pour(20, 25),
      pour(40, 30),
    ]);
    expect(rises(steps).map(({ from, to, isClear }) => [from.dose, to.dose, isClear])).toEqual([
      [10, 20, false],
      [20, 40, true],
    ]);
    expect(rises(headSteps([pour(0, 40), pour(10, 40), pour(20, 3)]))).toEqual([]);
  });

  it('law: the order of the pours does not matter, and the mean lies between least and greatest', () => {
    for (let turn = 0; turn < 50; turn += 1) {
      const random = seeded(turn);
      const pours = Array.from({ length: 12 }, () => pour(10 * Math.floor(4 * random()), 1 + 50 * random()));
      const steps = headSteps(pours);
      expect(headSteps([...pours].reverse()).map(({ lowMetres }) => lowMetres)).toEqual(
        steps.map(({ lowMetres }) => lowMetres),
      );
      expect(steps.reduce((sum, { pours: count }) => sum + count, 0)).toBe(12);
      for (const { lowMetres, meanMetres, highMetres } of steps) {
        expect(meanMetres).toBeGreaterThanOrEqual(lowMetres - 1e-15);
        expect(meanMetres).toBeLessThanOrEqual(highMetres + 1e-15);
      }
    }
  });
});
