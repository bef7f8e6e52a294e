import { describe, expect, it } from 'vitest';
import { bottlePressure } from '../../../src/calc/solution/bottle.ts';
import { carbonDioxideMolality, secondVirialAt } from '../../../src/calc/solution/carbon-dioxide.ts';
import {
  carbonationAtGauge,
  carbonationAtPartial,
  carbonationAtVolumes,
  carbonationShareInSugar,
  volumesForThrow,
} from '../../../src/calc/solution/carbonation.ts';
import { waterVapourPascal } from '../../../src/calc/solution/vapour-pressure.ts';
import { answered, celsius, misses, numbersOf } from './support.ts';

const rows = (name: string) => numbersOf('solution-carbon-dioxide', name);
const atmosphere = 101325;

const molality = (degrees: number, pascal: number): number =>
  answered(carbonDioxideMolality({ temperatureKelvin: celsius(degrees), partialPressurePascal: pascal }));

const volumesAt = (degrees: number, pascal: number): number =>
  answered(carbonationAtPartial({ temperatureKelvin: celsius(degrees), partialPressurePascal: pascal }))
    .volumes;

describe('published: CO2 in water', () => {
  it('published: CRC Handbook mole fractions, 5 to 50 C, 5 to 100 kPa, within 1.5 %', () => {
    const off = misses(
      rows('moleFractions'),
      ([degrees = 0, kilopascal = 0, printed = 0]) => {
        const found = molality(degrees, kilopascal * 1000);
        return { printed, value: (1000 * found) / (found + 55.5084) };
      },
      0.015,
      true,
    );
    expect(off).toEqual([]);
  });

  it('published: Bunsen coefficients of Murray and Riley 1971, and of the equation of Weiss 1974, within 1.5 %', () => {
    const off = misses(
      [...rows('bunsenMeasured'), ...rows('bunsenEquation')],
      ([degrees = 0, printed = 0]) => ({ printed, value: volumesAt(degrees, atmosphere) }),
      0.015,
      true,
    );
    expect(off).toEqual([]);
  });

  it('published: Findlay and co-workers 1910 to 1913, Ostwald coefficient at 25 C, within 1.5 %', () => {
    const off = misses(
      rows('findlay'),
      ([kilopascal = 0, printed = 0]) => {
        const pascal = kilopascal * 1000;
        const litresPerMole =
          (8.314462618 * celsius(25) * 1000) / pascal + secondVirialAt(celsius(25)) / 1000;
        return { printed, value: molality(25, pascal) * 0.99704 * litresPerMole };
      },
      0.015,
      true,
    );
    expect(off).toEqual([]);
  });

  it('published: mass in water at 1 atm in all, Frey 1958, 0 to 40 C, within 1.5 %', () => {
    const off = misses(
      rows('massAtOneAtmosphere').filter(([degrees = 0]) => degrees <= 40),
      ([degrees = 0, printed = 0]) => ({
        printed,
        value: molality(degrees, atmosphere - waterVapourPascal(celsius(degrees))) * 4.40095,
      }),
      0.015,
      true,
    );
    expect(off).toEqual([]);
  });

  it('pinned: its row for 60 C, printed with two digits, comes out 3.0 % high, as the equation of Carroll and others does', () => {
    const found = molality(60, atmosphere - waterVapourPascal(celsius(60))) * 4.40095;
    expect(found / 0.058 - 1).toBeCloseTo(0.03, 2);
  });

  it('published: Kritschewsky and others 1935 at 20 C, 5 to 15 bar within 4 %; 29 bar too', () => {
    const off = misses(
      rows('highPressure').filter(([degrees]) => degrees === 20),
      ([, bar = 0, printed = 0]) => ({ printed, value: volumesAt(20, bar * 1e5) }),
      0.04,
      true,
    );
    expect(off).toEqual([]);
  });

  it('published: grid worked from Weiss 1974 with fugacity, 0 to 26.7 C, 0 to 60 psig, within 1.5 %', () => {
    const off = misses(
      rows('gaugeGrid'),
      ([degrees = 0, psig = 0, printed = 0]) => ({
        printed,
        value: volumesAt(degrees, (psig + 14.696) * 6894.757),
      }),
      0.015,
      true,
    );
    expect(off).toEqual([]);
  });

  it('published: water vapour, IAPWS, 3169.8 Pa at 25 C and 101.42 kPa at 100 C', () => {
    expect(waterVapourPascal(celsius(25))).toBeCloseTo(3169.8, 0);
    expect(waterVapourPascal(celsius(100)) / 1000).toBeCloseTo(101.42, 2);
  });
});

describe('law: gauge, volumes, bottles', () => {
  it('law: volumes from a gauge pressure give the pressure again', () => {
    for (const degrees of [0, 4, 15, 30, 45, 60]) {
      for (const bar of [0, 1.5, 4, 12]) {
        const temperatureKelvin = celsius(degrees);
        const there = answered(carbonationAtGauge({ gaugePressurePascal: bar * 1e5, temperatureKelvin }));
        const back = answered(carbonationAtVolumes({ volumes: there.volumes, temperatureKelvin }));
        expect(back.gaugePressurePascal / 1e5).toBeCloseTo(bar, 8);
        expect(there.gramsPerLitre / there.volumes).toBeCloseTo(1.977, 3);
      }
    }
  });

  it('law: a bottle that is not warmed stands as it was closed; warmed it stands higher, with a small headspace highest', () => {
    const closed = { volumes: 3.5, closedKelvin: celsius(4), headspaceFraction: 0.05 };
    const still = answered(bottlePressure({ ...closed, warmedKelvin: celsius(4) }));
    const start = answered(carbonationAtVolumes({ volumes: 3.5, temperatureKelvin: celsius(4) }));
    expect(still.gaugePressurePascal).toBeCloseTo(start.gaugePressurePascal, 3);
    const warm = answered(bottlePressure({ ...closed, warmedKelvin: celsius(40) }));
    const tight = answered(bottlePressure({ ...closed, headspaceFraction: 0.02, warmedKelvin: celsius(40) }));
    expect(warm.gaugePressurePascal).toBeGreaterThan(3 * start.gaugePressurePascal);
    expect(tight.gaugePressurePascal).toBeGreaterThan(warm.gaugePressurePascal);
    const open = answered(carbonationAtVolumes({ volumes: 3.5, temperatureKelvin: celsius(40) }));
    expect(warm.gaugePressurePascal).toBeLessThan(open.gaugePressurePascal);
  });

  it('law: the second virial coefficient does not jump where its source changes', () => {
    expect(Math.abs(secondVirialAt(320) - secondVirialAt(320.001))).toBeLessThan(0.3);
  });

  it('law: the water of a throw carries all of the CO2', () => {
    expect(answered(volumesForThrow({ volumes: 3.5, waterParts: 4 })) * 0.8).toBeCloseTo(3.5, 12);
  });

  it('refuses a pressure below vacuum, a full bottle, more sugar than was measured, a throw without water', () => {
    const temperatureKelvin = celsius(4);
    expect(carbonationAtGauge({ gaugePressurePascal: -1.2e5, temperatureKelvin })).toMatchObject({
      ok: false,
      fault: { code: 'below-vacuum' },
    });
    const bottle = { volumes: 3.5, closedKelvin: celsius(4), warmedKelvin: celsius(40) };
    expect(bottlePressure({ ...bottle, headspaceFraction: 0.004 })).toMatchObject({
      ok: false,
      fault: { code: 'no-headspace' },
    });
    expect(
      carbonationAtPartial({ partialPressurePascal: 1e5, temperatureKelvin: celsius(80) }),
    ).toMatchObject({
      ok: false,
      fault: { code: 'outside-range' },
    });
    expect(carbonationShareInSugar({ sugarGramsPerMillilitre: 0.4 })).toMatchObject({ ok: false });
    expect(volumesForThrow({ volumes: 3, waterParts: 0 })).toMatchObject({ ok: false });
  });
});
