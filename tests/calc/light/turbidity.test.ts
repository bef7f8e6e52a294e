import { describe, expect, it } from 'vitest';
import { calibrate } from '../../../src/calc/light/calibration.ts';
import { impliedSizes, largestBelow, peakOf, sizeCurve } from '../../../src/calc/light/droplet-of-haze.ts';
import { lookOf } from '../../../src/calc/light/look.ts';
import { mixedIndex } from '../../../src/calc/light/medium-index.ts';
import { type Dispersion, type Scattered, turbidity } from '../../../src/calc/light/turbidity.ts';
import published from '../../fixtures/published/droplets-in-light.json' with { type: 'json' };
import { agreesWithPrint } from '../../support/printed.ts';

const limonene: Dispersion = {
  volumeFraction: 1e-4,
  oilIndex: 1.4727,
  mediumIndex: 1.333,
  wavelengthNanometres: 550,
};

function of(dispersion: Dispersion, diameterNanometres: number, spread = 0): Scattered {
  const result = turbidity(dispersion, { diameterNanometres, spread });
  if (!result.ok) throw new Error(result.fault.message);
  return result.value;
}

describe('turbidity', () => {
  it.each(published.turbidity.rows)(
    'published: $id, $nanometres nm, Mie at 40 digits, to the printed digits',
    (row) => {
      const { turbidity: tau, toTheSide, ntu } = of(limonene, row.nanometres);
      for (const [value, printed] of [
        [tau, row.tau],
        [toTheSide / tau, row.p90],
        [ntu, row.ntu],
      ] as const)
        expect([row.id, value, printed, agreesWithPrint(value, printed)]).toEqual([
          row.id,
          value,
          printed,
          true,
        ]);
    },
  );

  it.each(published.sugar.rows)(
    'published: $id, in sucrose of index $index, to the printed digits',
    (row) => {
      const { turbidity: tau } = of({ ...limonene, volumeFraction: 1e-3, mediumIndex: row.index }, 100);
      expect([tau, agreesWithPrint(tau, row.tau)]).toEqual([tau, true]);
    },
  );

  it('law: small droplets go with the cube of their size and the dose, and with the fourth power of the wavelength', () => {
    expect(of(limonene, 10).turbidity / of(limonene, 5).turbidity).toBeCloseTo(8, 1);
    expect(of({ ...limonene, volumeFraction: 3e-4 }, 40).turbidity / of(limonene, 40).turbidity).toBeCloseTo(
      3,
      10,
    );
    expect(
      of({ ...limonene, wavelengthNanometres: 440 }, 5).turbidity / of(limonene, 5).turbidity,
    ).toBeCloseTo((550 / 440) ** 4, 2);
  });

  it('law: against one size, a lognormal of the same z-average scatters exp(-3 sigma^2) of the light (moments)', () => {
    for (const spread of [0.05, 0.2])
      expect(of(limonene, 4).turbidity / of(limonene, 4, spread).turbidity).toBeCloseTo(
        Math.exp(3 * spread),
        2,
      );
  });

  it('law: an infra-red meter sees 5 to 6 times less of droplets under 100 nm', () => {
    for (const size of [20, 60, 90]) {
      const ratio =
        of(limonene, size).toTheSide / of({ ...limonene, wavelengthNanometres: 860 }, size).toTheSide;
      expect([size, ratio > 5 && ratio < 6.2]).toEqual([size, true]);
    }
  });

  it.each([
    [0, 'a droplet has a size'],
    [-5, 'a droplet has a size'],
    [1.1e6, 'no emulsion'],
  ])('refuses droplets of %f nm', (size, words) => {
    const result = turbidity(limonene, { diameterNanometres: size, spread: 0 });
    expect(!result.ok && result.fault.message).toContain(words);
  });
});

describe('back from haze to droplets', () => {
  const curve = sizeCurve(limonene, 0);

  it('law: the size that made a reading is among those that it implies, both sides of the peak', () => {
    expect(peakOf(curve)).toBeGreaterThan(190);
    expect(peakOf(curve)).toBeLessThan(260);
    for (const size of [20, 60, 140, 300]) {
      const { ntu } = of(limonene, size);
      const sizes = impliedSizes(curve, ntu, { low: 0.5, high: 2 });
      const nearest = sizes.map((one) => Math.abs(one.diameterNanometres / size - 1));
      expect([size, Math.min(...nearest) < (size < 200 ? 1e-3 : 0.1)]).toEqual([size, true]);
      for (const one of sizes) {
        expect(one.lowNanometres).toBeLessThanOrEqual(one.diameterNanometres);
        expect(one.highNanometres).toBeGreaterThanOrEqual(one.diameterNanometres);
      }
    }
    expect(impliedSizes(curve, 60, { low: 0.5, high: 2 }).map(({ branch }) => branch)).toEqual([
      'small',
      'large',
    ]);
    expect(impliedSizes(curve, 5000, { low: 0.5, high: 2 })).toEqual([]);
  });

  it('law: the points of a curve are what each size gives alone, narrow spread or wide', () => {
    for (const spread of [0.002, 0.05, 0.15, 0.4]) {
      const { points, at } = sizeCurve(limonene, spread);
      for (const { diameterNanometres, ntu } of [points[10], points[90], points[150]].flatMap(
        (one) => one ?? [],
      ))
        expect([spread, ntu / at(diameterNanometres).ntu]).toEqual([spread, expect.closeTo(1, 2)]);
    }
  });

  it('law: the largest unseen droplet reads just what is seen, and shrinks with the cube root of the dose', () => {
    const largest = largestBelow(curve, 0.5) ?? Number.NaN;
    expect(of(limonene, largest).ntu).toBeCloseTo(0.5, 4);
    const eightfold = largestBelow(sizeCurve({ ...limonene, volumeFraction: 8e-4 }, 0), 0.5) ?? Number.NaN;
    expect(largest / eightfold).toBeCloseTo(2, 1);
    expect(largestBelow(sizeCurve({ ...limonene, volumeFraction: 1e-9 }, 0), 0.5)).toBe(undefined);
    expect(largestBelow(sizeCurve({ ...limonene, volumeFraction: 0.5 }, 0), 0.5)).toBe(0);
  });
});

describe('what is seen', () => {
  it('published: bands after Carrasco and Siebert 1999, Ph. Eur. 2.2.1 (3 NTU) and WHO 2017 (from 4 NTU)', () => {
    expect([0.3, 0.8, 3.5, 10, 30].map((ntu) => lookOf(ntu).look)).toEqual([
      'clear',
      'clear on white, faint on black',
      'clear on white, hazy on black',
      'hazy',
      'cloudy',
    ]);
  });
});

describe('own meter', () => {
  it('law: readings in proportion give their factor, and the least band', () => {
    const result = calibrate([1, 2, 5].map((modelled) => ({ modelled, measured: 1.6 * modelled })));
    expect(result.ok && [result.value.factor, result.value.high]).toEqual([
      expect.closeTo(1.6, 12),
      expect.closeTo(1.1, 12),
    ]);
  });

  it('law: the band is that of the next reading, t s sqrt(1 + 1/n), by hand for n = 3', () => {
    const result = calibrate([0.8, 1, 1.25].map((measured) => ({ modelled: 1, measured })));
    // ln 0.8, 0, ln 1.25: mean 0, s = 0.223144; 4.303 x 0.223144 x sqrt(4/3) = 1.10872
    expect(result.ok && [result.value.factor, Math.log(result.value.high)]).toEqual([
      expect.closeTo(1, 10),
      expect.closeTo(1.10872, 4),
    ]);
  });

  it('refuses fewer than three, and readings of nothing', () => {
    const two = calibrate([
      { modelled: 1, measured: 1 },
      { modelled: 2, measured: 2 },
    ]);
    expect(!two.ok && two.fault.code).toBe('too-few');
    const none = calibrate([0, 1, 2].map((measured) => ({ modelled: 1, measured })));
    expect(!none.ok && none.fault.code).toBe('not-positive');
  });
});

describe('index of mixtures', () => {
  // The room that glycerol takes in water: 0.774 mL/g, from the density of its 5 % solution (CRC Handbook).
  it.each([
    [0.2, 1.3575],
    [0.4, 1.3841],
    [0.5, 1.3981],
    [0.6, 1.4129],
  ])(
    'published: glycerol %f by mass has index %f (CRC Handbook, from memory), within 0.002',
    (w, printed) => {
      const index = mixedIndex([
        { index: 1.33299, volume: (1 - w) / 0.9982 },
        { index: 1.4746, volume: w / 1.2613, room: w * 0.774 },
      ]);
      expect(Math.abs(index - printed)).toBeLessThan(0.002);
    },
  );
});
