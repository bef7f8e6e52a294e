import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { ResolvedStage } from '../../../src/calc/mixture/picture.ts';
import { sum } from '../../../src/calc/sum.ts';
import { gramsOf, solved, stageNamed } from './bench.ts';
import { type RandomTrial, randomTrial, typedTrial } from './random-stages.ts';

const runs = { numRuns: 300 };

const itemsByName = (stages: readonly ResolvedStage[]): ReadonlyMap<string, number> =>
  new Map(
    stages.flatMap(({ name, items }) => items.map((item) => [`${name}: ${item.name}`, item.massGrams])),
  );

function expectClose(found: number, wanted: number, relative: number): void {
  expect(Math.abs(found - wanted)).toBeLessThanOrEqual(relative * Math.abs(wanted));
}

const holds = (law: (trial: RandomTrial, stages: readonly ResolvedStage[]) => void): void =>
  fc.assert(
    fc.property(randomTrial, (trial) => law(trial, solved(typedTrial(trial), { dropGrams: 0.03 }))),
    runs,
  );

describe('resolveMixture over random stages', () => {
  it('law: items and substances each add up to the mass of their stage within 1e-12', () => {
    holds((_, stages) => {
      for (const { massGrams, items, substances } of stages) {
        expect(massGrams).toBeGreaterThan(0);
        expectClose(sum(items.map((item) => item.massGrams)), massGrams, 1e-12);
        expectClose(sum(substances.map((one) => one.massGrams)), massGrams, 1e-12);
        expectClose(sum(substances.map((one) => one.massFraction)), 1, 1e-12);
        expect(items.every((item) => item.massGrams >= 0 && Number.isFinite(item.massGrams))).toBe(true);
      }
    });
  });

  it('law: what is made up comes to what was written', () => {
    holds((trial, stages) => {
      for (const [index, { parts, makes }] of trial.stages.entries()) {
        const stage = stages[index];
        const total = makes ?? parts.find(({ lead }) => lead === 'to ');
        if (!total || !stage) continue;
        expectClose(total.unit === 'g' ? stage.massGrams : stage.volumeMillilitres, total.value, 1e-10);
      }
    });
  });

  it('law: shares and concentrations are those of the stage', () => {
    holds((trial, stages) => {
      for (const [index, { parts, makes }] of trial.stages.entries()) {
        const stage = stages[index];
        for (const { name, value, unit, tail } of makes || !stage ? [] : parts) {
          if (tail || !stage) continue;
          const grams = gramsOf(stage, name);
          if (unit === '%') expectClose(grams / stage.massGrams, value / 100, 1e-9);
          if (unit === 'ppb') expectClose(grams / stage.massGrams, value * 1e-9, 1e-9);
          if (unit === 'g/L') expectClose((grams / stage.volumeMillilitres) * 1000, value, 1e-9);
          if (unit === '% w/v') expectClose(grams / stage.volumeMillilitres, value / 100, 1e-9);
          if (unit === 'mol/L') expectClose((grams / 46.068 / stage.volumeMillilitres) * 1000, value, 1e-9);
          if (unit === 'mol/kg') {
            const water = sum(
              stage.substances.filter((one) => one.role === 'water').map((one) => one.massGrams),
            );
            expectClose(grams / 306.39 / (water / 1000), value, 1e-9);
          }
        }
      }
    });
  });

  it('law: the order of items does not change a mass', () => {
    holds((trial, stages) => {
      const reversed = itemsByName(solved(typedTrial(trial, { reversed: true }), { dropGrams: 0.03 }));
      for (const [name, grams] of itemsByName(stages)) expectClose(reversed.get(name) ?? 0, grams, 1e-9);
    });
  });

  it('law: all amounts that have a size, k times as large, give all masses k times as large', () => {
    fc.assert(
      fc.property(randomTrial, fc.constantFrom(0.01, 3, 250), (trial, times) => {
        const larger = itemsByName(solved(typedTrial(trial, { times }), { dropGrams: 0.03 }));
        for (const [name, grams] of itemsByName(solved(typedTrial(trial), { dropGrams: 0.03 }))) {
          expectClose(larger.get(name) ?? 0, grams * times, 1e-9);
        }
      }),
      runs,
    );
  });

  it('law: the drink holds what is asked for in the drink', () => {
    let asked = 0;
    holds((trial, stages) => {
      const drink = stageNamed(stages, 'drink');
      for (const { substance, value, unit } of trial.asked) {
        const found = drink.substances.find((one) => one.name === substance);
        expectClose(
          unit === 'g/L' ? (found?.gramsPerLitre ?? 0) : (found?.massFraction ?? 0) * 1e6,
          value,
          1e-9,
        );
        asked += 1;
      }
    });
    expect(asked).toBeGreaterThan(100);
  });

  it('law: what every stage hands to the drink, and what is put in there, adds up to the drink', () => {
    holds((trial, stages) => {
      const drink = stageNamed(stages, 'drink');
      const fresh = stages.flatMap(({ items, shareInDrink }) =>
        items.flatMap((item) => (item.source.kind === 'stage' ? [] : [item.massGrams * shareInDrink])),
      );
      expect(trial.stages.length).toBe(stages.length);
      expectClose(sum(fresh), drink.massGrams, 1e-10);
    });
  });

  it.each([
    [
      {
        syrup: [
          ['sucrose', '300 g/L in drink'],
          ['water', 'to 1 L'],
        ],
        drink: [
          ['syrup', '200 mL'],
          ['water', 'to 1 L'],
        ],
      },
      300,
    ],
    [
      {
        syrup: [
          ['sucrose', '215 g/L in drink'],
          ['water', 'to 1 L'],
        ],
        drink: [
          ['syrup', '20 %'],
          ['water', 'to 1 L'],
        ],
      },
      215,
    ],
    [
      {
        syrup: [
          ['sucrose', '700 g/L in drink'],
          ['water', '100 g'],
        ],
        drink: [
          ['syrup', '200 mL'],
          ['water', '20 g'],
        ],
      },
      700,
    ],
  ] as const)(
    'law: the drink holds what is asked for where almost all of a syrup is sugar: %j',
    (typed, asked) => {
      const sugar = stageNamed(solved(typed), 'drink').substances.find((one) => one.name === 'sucrose');
      expectClose(sugar?.gramsPerLitre ?? 0, asked, 1e-9);
    },
  );
});
