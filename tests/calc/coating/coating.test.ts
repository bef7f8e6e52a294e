import { describe, expect, it } from 'vitest';
import { emulsifierToCover, smallestCovered } from '../../../src/calc/coating/coverage.ts';
import { placeOnMap } from '../../../src/calc/coating/ratio-map.ts';
import { micelleDiameter } from '../../../src/calc/coating/swollen-micelle.ts';

describe('coverage', () => {
  it('published: 2 mg/m2, 10 % of oil by volume, 10 g/L of emulsifier: 120 nm (McClements, Food Emulsions)', () => {
    expect(smallestCovered({ oilMillilitres: 100, surfaceLoad: 2, emulsifierGrams: 10 })).toBeCloseTo(
      120,
      10,
    );
    expect(emulsifierToCover({ oilMillilitres: 100, surfaceLoad: 2, diameterNanometres: 120 })).toBeCloseTo(
      10,
      10,
    );
  });

  it('law: it is the area of the droplets times the load', () => {
    const radius = 40e-9;
    const droplets = 1e-6 / ((4 / 3) * Math.PI * radius ** 3);
    const grams = droplets * 4 * Math.PI * radius ** 2 * 1.5e-3;
    expect(emulsifierToCover({ oilMillilitres: 1, surfaceLoad: 1.5, diameterNanometres: 80 })).toBeCloseTo(
      grams,
      10,
    );
  });
});

describe('what a ratio makes', () => {
  it.each([
    [10, '12.8'],
    [5, '15.5'],
    [2, '23.6'],
  ])(
    'published: %f parts of emulsifier to one of limonene: %s nm (Tanford; Israelachvili; core of Bester-Rogac 2007)',
    (emulsifierPerOil, printed) => {
      const diameter = micelleDiameter({ emulsifierPerOil, carbons: 17, molarMass: 1310 });
      expect(diameter.toFixed(1)).toBe(printed);
    },
  );

  it.each([
    [0.5, 'emulsion', false],
    [0.9, 'emulsion', true],
    [1.4, 'nano', false],
    [1.9, 'nano', true],
    [2.5, 'micro', true],
    [4, 'micro', false],
  ])(
    'published: %f parts lie in "%s" (Rao and McClements 2011: borders 1 and 2, 30 %)',
    (ratio, kind, isNearBoundary) => {
      expect(placeOnMap(ratio)).toMatchObject({ kind, isNearBoundary });
    },
  );
});
