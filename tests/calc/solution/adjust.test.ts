import { describe, expect, it } from 'vitest';
import { doseForPh } from '../../../src/calc/solution/adjust.ts';
import { acidAndSalt, raisePh } from '../../../src/calc/solution/adjust-pair.ts';
import type { Portion } from '../../../src/calc/solution/dissolve.ts';
import { type DrinkGiven, drinkAcidity } from '../../../src/calc/solution/drink.ts';
import { swapAcid } from '../../../src/calc/solution/swap-acid.ts';
import { answered, celsius } from './support.ts';

const water: DrinkGiven = { portions: [], temperatureKelvin: celsius(25) };
const grams = (substance: string, value: number): Portion => ({
  substance,
  amount: { unit: 'g/L', value },
});

/** Numerical Recipes' quick linear congruence; the drinks are the same in every run. */
function dice(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

const pairs = [
  ['citric acid', 'trisodium citrate dihydrate'],
  ['malic acid', 'disodium malate'],
  ['tartaric acid', 'potassium sodium tartrate tetrahydrate'],
  ['phosphoric acid', 'sodium dihydrogen phosphate'],
  ['lactic acid', 'sodium lactate'],
] as const;

describe('law: what is solved backwards comes out forwards', () => {
  it('law: acid and salt of 200 random drinks are found again from acidity and pH', () => {
    const random = dice(20260301);
    for (let count = 0; count < 200; count += 1) {
      const [acid, salt] = pairs[count % pairs.length] ?? pairs[0];
      const acidGrams = 0.5 + 6 * random();
      const saltGrams = 0.05 + 2 * random();
      const base: DrinkGiven = {
        portions: [
          grams('sucrose', 130 * random()),
          grams('potassium sorbate', 0.3 * random()),
          grams('ascorbic acid', 0.3 * random()),
          grams('calcium bicarbonate', 0.2 * random()),
        ],
        temperatureKelvin: celsius(5 + 30 * random()),
      };
      const made = answered(
        drinkAcidity({
          ...base,
          portions: [...base.portions, grams(acid, acidGrams), grams(salt, saltGrams)],
        }),
      );
      const found = answered(acidAndSalt({ base, acid, salt, ph: made.ph, titratable: made.titratable }));
      expect(found.possible).toBe(true);
      if (!found.possible) continue;
      expect(found.doses[0]?.gramsPerLitre).toBeCloseTo(acidGrams, 4);
      expect(found.doses[1]?.gramsPerLitre).toBeCloseTo(saltGrams, 4);
    }
  });

  it('law: the dose for a pH has that pH, for acids, salts and bases', () => {
    const lemonless = { ...water, portions: [grams('citric acid', 4.5), grams('sucrose', 100)] };
    for (const [substance, ph] of [
      ['citric acid', 2.2],
      ['phosphoric acid 85 %', 2],
      ['trisodium citrate dihydrate', 3.1],
      ['sodium bicarbonate', 3.4],
      ['potassium hydroxide', 6],
    ] as const) {
      const found = answered(doseForPh({ base: lemonless, substance, ph }));
      expect(found.possible, substance).toBe(true);
      if (found.possible) expect(found.drink.ph).toBeCloseTo(ph, 6);
    }
  });

  it('law: raising the pH keeps the sourness and the swap of acids keeps it too', () => {
    const before = answered(drinkAcidity({ ...water, portions: [grams('citric acid', 4.5)] }));
    const raised = answered(
      raisePh({
        base: water,
        acid: 'citric acid',
        gramsPerLitre: 4.5,
        salt: 'trisodium citrate dihydrate',
        ph: 3,
      }),
    );
    const swapped = answered(
      swapAcid({ base: water, from: { substance: 'citric acid', gramsPerLitre: 4.5 }, to: 'malic acid' }),
    );
    for (const answer of [raised, swapped]) {
      expect(answer.possible).toBe(true);
      if (answer.possible) expect(answer.drink.sourness).toBeCloseTo(before.sourness, 8);
    }
  });
});

describe('what no mixture can do', () => {
  it('says so below the pH of the acid alone, with the acid alone as the nearest', () => {
    const found = answered(
      acidAndSalt({
        base: water,
        acid: 'citric acid',
        salt: 'trisodium citrate dihydrate',
        ph: 2,
        titratable: 4.5,
      }),
    );
    expect(found).toMatchObject({ possible: false });
    if (found.possible) return;
    expect(found.nearest.doses[1]?.gramsPerLitre).toBe(0);
    expect(found.nearest.drink.titratable).toBeCloseTo(4.5, 6);
  });

  it('says so above what the salt reaches, and for an acid that would raise the pH', () => {
    const high = acidAndSalt({
      base: water,
      acid: 'citric acid',
      salt: 'trisodium citrate dihydrate',
      ph: 8,
      titratable: 4.5,
    });
    expect(answered(high)).toMatchObject({ possible: false });
    expect(answered(doseForPh({ base: water, substance: 'citric acid', ph: 7.5 }))).toMatchObject({
      possible: false,
      nearest: { doses: [] },
    });
  });

  it('says so where the drink is already more acid than asked for', () => {
    const found = acidAndSalt({
      base: { ...water, portions: [grams('malic acid', 6)] },
      acid: 'citric acid',
      salt: 'trisodium citrate dihydrate',
      ph: 3,
      titratable: 2,
    });
    expect(answered(found)).toMatchObject({ possible: false });
  });

  it('pinned: 1.36 g of citric acid tastes as 0.81 g of fumaric acid by the relation, where the trade says 0.91 g (Food Additives Data Book 2003)', () => {
    const found = answered(
      swapAcid({ base: water, from: { substance: 'citric acid', gramsPerLitre: 1.36 }, to: 'fumaric acid' }),
    );
    expect(found.possible && found.doses[0]?.gramsPerLitre).toBeCloseTo(0.81, 2);
  });
});
