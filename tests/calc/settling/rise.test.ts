import { describe, expect, it } from 'vitest';
import { spun } from '../../../src/calc/settling/centrifuge.ts';
import { densityMatch } from '../../../src/calc/settling/density-match.ts';
import { inhibitorMoleFraction } from '../../../src/calc/settling/ripening.ts';
import { diameterToRise, hinderedFactor, type Rise, riseOf } from '../../../src/calc/settling/rise.ts';
import { sugarWaterViscosity, waterViscosityAt } from '../../../src/calc/settling/viscosity.ts';
import published from '../../fixtures/published/droplets-in-light.json' with { type: 'json' };
import { agreesWithPrint } from '../../support/printed.ts';

const dayMillimetres = 86_400 * 1000;

function rise(diameterMetres: number, densityDifference: number, viscosity: number): Rise {
  const result = riseOf({
    diameterMetres,
    densityDifference,
    viscosityPascalSeconds: viscosity / 1000,
    temperatureKelvin: 298.15,
    volumeFraction: 0,
  });
  if (!result.ok) throw new Error(result.fault.message);
  return result.value;
}

describe('rise', () => {
  it('published: r 1 um, 90 kg/m3, 1 mPa s rises about 17 mm a day (McClements, Food Emulsions, ch. 7; 16.95 with g 9.80665)', () => {
    expect(agreesWithPrint(rise(2e-6, 90, 1).velocity * dayMillimetres, '16.95')).toBe(true);
  });

  it.each(published.rising.rows)(
    'published: $id, $nanometres nm of citrus oil, to the printed digits',
    (row) => {
      const { velocity, diffusivity, scaleHeight = Number.NaN } = rise(row.nanometres * 1e-9, 155, 0.89);
      for (const [value, printed] of [
        [velocity * dayMillimetres, row.rise],
        [0.1 / velocity / 86_400, row.days],
        [scaleHeight * 1000, row.scaleHeight],
        [diffusivity, row.diffusivity],
      ] as const)
        expect([row.id, value, printed, agreesWithPrint(value, printed)]).toEqual([
          row.id,
          value,
          printed,
          true,
        ]);
    },
  );

  it('published: hindered at 1 and 5 % by volume, 0.95434 and 0.78780 (Richardson and Zaki 1954)', () => {
    expect([hinderedFactor(0.01), hinderedFactor(0.05)].map((one) => one.toFixed(5))).toEqual([
      '0.95434',
      '0.78780',
    ]);
  });

  it('law: Pe is the radius over the scale height, and a denser oil sinks', () => {
    const { peclet, scaleHeight = Number.NaN } = rise(3e-7, 155, 0.89);
    expect(peclet).toBeCloseTo(1.5e-7 / scaleHeight, 10);
    expect(rise(3e-7, -155, 0.89).velocity).toBeCloseTo(-rise(3e-7, 155, 0.89).velocity, 20);
    expect(rise(3e-7, 0, 0.89).scaleHeight).toBe(undefined);
  });

  it('law: the droplet that rises a height in a time does so', () => {
    const diameter =
      diameterToRise({
        heightMetres: 0.06,
        seconds: 4 * 86_400,
        densityDifference: 155,
        viscosityPascalSeconds: 0.00089,
      }) ?? 0;
    expect(rise(diameter, 155, 0.89).velocity * 4 * 86_400).toBeCloseTo(0.06, 10);
  });

  it('refuses droplets that are no creeping flow, and crowds', () => {
    const base = { densityDifference: 155, viscosityPascalSeconds: 0.001, temperatureKelvin: 298.15 };
    expect(riseOf({ ...base, diameterMetres: 5e-4, volumeFraction: 0 }).ok).toBe(false);
    expect(riseOf({ ...base, diameterMetres: 5e-7, volumeFraction: 0.4 }).ok).toBe(false);
  });
});

describe('weighing an oil down', () => {
  it.each([
    [0.92, 1.08, '0.528', 'soybean oil, ester gum; 55 % measured, Chanamai and McClements 2000'],
    [0.845, 1.08, '0.705', 'orange oil, ester gum'],
    [0.845, 1.146, '0.584', 'orange oil, sucrose acetate isobutyrate'],
    [0.845, 1.33, '0.420', 'orange oil, brominated vegetable oil'],
  ])('published: %f g/mL with %f to 0.998: %s of the oil phase (%s)', (oil, agent, printed) => {
    const result = densityMatch({ oil, target: 0.998, agent });
    expect(result.ok && agreesWithPrint(result.value, printed)).toBe(true);
  });

  it('refuses what is no heavier than the drink', () => {
    expect(densityMatch({ oil: 0.845, target: 1.04, agent: 1.03 }).ok).toBe(false);
    expect(densityMatch({ oil: 1.05, target: 1.04, agent: 1.08 }).ok).toBe(false);
  });
});

describe('beside', () => {
  it('published: 3750 rpm, 10 cm, 5 h: 1572 times gravity, 328 days (Becher; Lachman: about a year)', () => {
    const { relativeForce, gravitySeconds } = spun({ rpm: 3750, radiusMetres: 0.1, seconds: 5 * 3600 });
    expect([relativeForce.toFixed(0), (gravitySeconds / 86_400).toFixed(0)]).toEqual(['1572', '328']);
  });

  it('published: about 0.9 mol % of an insoluble oil at 100 nm (Kabalnov, for limonene at 5 mN/m)', () => {
    const fraction = inhibitorMoleFraction({ diameterMetres: 100e-9, temperatureKelvin: 298.15 });
    expect((fraction * 100).toFixed(1)).toBe('0.9');
  });

  it.each([
    [20, 0, '1.002'],
    [25, 0, '0.890'],
    [20, 0.1, '1.336'],
    [20, 0.2, '1.945'],
    [20, 0.3, '3.187'],
    [20, 0.4, '6.162'],
  ])(
    'published: viscosity at %f C with %f of sucrose is %s mPa s (IAPWS, CRC Handbook), within 0.2 and 4 %',
    (celsius, massFraction, printed) => {
      const temperatureKelvin = celsius + 273.15;
      const result = sugarWaterViscosity({ massFraction, temperatureKelvin });
      const off = result.ok ? Math.abs(result.value / Number(printed) - 1) : Number.NaN;
      expect(off).toBeLessThan(massFraction === 0 ? 0.002 : 0.04);
    },
  );

  it('refuses a temperature outside the properties of water', () => {
    expect([-5, 60].map((celsius) => waterViscosityAt({ temperatureKelvin: celsius + 273.15 }).ok)).toEqual([
      false,
      false,
    ]);
  });
});
