import { describe, expect, it } from 'vitest';
import { acidEaten, alkalinityPortion } from '../../../src/calc/solution/alkalinity.ts';
import { drinkAcidity } from '../../../src/calc/solution/drink.ts';
import {
  acidFromEquivalents,
  acidFromTitration,
  titratableEquivalents,
} from '../../../src/calc/solution/titration.ts';
import { answered, celsius, numbersOf, tableOf } from './support.ts';

const at25 = celsius(25);
const grams = (substance: string, value: number) => ({ substance, amount: { unit: 'g/L', value } }) as const;

describe('titratable acidity', () => {
  it('published: factors on citric acid at pH 8.1 to 8.2, to the digit printed', () => {
    for (const [acid, factor] of tableOf('solution-constants', 'equivalents').rows) {
      const found = answered(acidFromEquivalents({ equivalentsPerLitre: 1, acid: String(acid) }));
      const citric = answered(acidFromEquivalents({ equivalentsPerLitre: 1 }));
      expect(Math.abs(found / citric - Number(factor)), String(acid)).toBeLessThan(6e-4);
    }
  });

  it('law: an acid alone is found again, but for what has not yet split at the end point', () => {
    const found = answered(drinkAcidity({ portions: [grams('citric acid', 4.5)], temperatureKelvin: at25 }));
    expect(found.titratableAsCitric).toBeGreaterThan(4.5 * 0.997);
    expect(found.titratableAsCitric).toBeLessThan(4.5);
  });

  it('law: phosphoric acid gives off about 1.9 protons up to pH 8.2 (equivalent weights of the citrus trade)', () => {
    const component = { substance: 'phosphoric acid', molesPerKilogramWater: 0.005 };
    const base = titratableEquivalents({
      components: [component],
      temperatureKelvin: at25,
      endPoint: 8.2,
    });
    expect(answered(base) / 0.005).toBeCloseTo(1.9, 1);
  });

  it('law: the salt of the acid and dissolved CO2 add almost nothing', () => {
    const alone = drinkAcidity({ portions: [grams('citric acid', 4.5)], temperatureKelvin: at25 });
    const both = drinkAcidity({
      portions: [
        grams('citric acid', 4.5),
        grams('trisodium citrate dihydrate', 1),
        grams('carbon dioxide', 7),
      ],
      temperatureKelvin: at25,
    });
    expect(answered(both).titratableAsCitric).toBeCloseTo(answered(alone).titratableAsCitric, 1);
    expect(answered(both).sodiumMilligramsPer100Millilitres).toBeCloseTo((100 * 3 * 22.99) / 294.098, 3);
  });

  it('law: alkalinity takes off the acidity that it is said to eat', () => {
    const water = { milligramsPerLitreAsCalciumCarbonate: 120, waterShare: 0.8 };
    const pure = drinkAcidity({ portions: [grams('citric acid', 4.5)], temperatureKelvin: at25 });
    const hard = drinkAcidity({
      portions: [grams('citric acid', 4.5), alkalinityPortion(water)],
      temperatureKelvin: at25,
    });
    const lost = answered(pure).titratableAsCitric - answered(hard).titratableAsCitric;
    expect(lost).toBeCloseTo(acidEaten(water), 3);
  });

  it('law: the burette and the balance say the same', () => {
    const found = answered(
      acidFromTitration({ baseMolesPerLitre: 0.1, usedMillilitres: 7.8, sampleMillilitres: 10 }),
    );
    expect(found.gramsPerLitre).toBeCloseTo(0.078 * 64.041, 3);
  });

  it('published: molar masses, to 0.01 g/mol', async () => {
    const { gramsPerMole } = await import('../../../src/calc/solution/substance.ts');
    for (const [name, printed] of tableOf('solution-constants', 'molarMasses').rows) {
      const found = gramsPerMole(String(name)) ?? Number.NaN;
      expect(Math.abs(found - Number(printed)), `${name}: ${found}`).toBeLessThan(0.011);
    }
  });

  it('published: ionic product of water, Marshall and Franck 1981, to 0.0015', async () => {
    const { waterConstants } = await import('../../../src/calc/solution/water-constants.ts');
    for (const [degrees = 0, printed = 0] of numbersOf('solution-constants', 'pkw')) {
      const { pkw } = answered(waterConstants({ temperatureKelvin: celsius(degrees) }));
      expect(Math.abs(pkw - printed), `${degrees} C: ${pkw}`).toBeLessThan(0.0015);
    }
  });

  it('refuses a sample of nothing and an acid without protons to count', () => {
    const none = acidFromTitration({ baseMolesPerLitre: 0.1, usedMillilitres: 5, sampleMillilitres: 0 });
    expect(none).toMatchObject({ ok: false, fault: { code: 'no-sample' } });
    expect(acidFromEquivalents({ equivalentsPerLitre: 1, acid: 'sugar' })).toMatchObject({ ok: false });
  });
});
