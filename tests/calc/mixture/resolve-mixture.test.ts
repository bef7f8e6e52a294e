import { describe, expect, it } from 'vitest';
import { inDrink } from '../../../src/calc/mixture/in-drink.ts';
import { oilPerEmulsifier } from '../../../src/calc/mixture/oil-per-emulsifier.ts';
import { gramsOf, resolve, solved, stageNamed } from './bench.ts';

describe('resolveMixture', () => {
  const emulsion = [
    ['sweet orange oil', '2 g'],
    ['polysorbate 80', '6 g'],
    ['propylene glycol', '6 g'],
    ['water', 'to 50 g'],
  ] as const;

  it('makes up, carries an emulsion into the drink, and says how much of it went there', () => {
    const stages = solved({
      emulsion,
      drink: [
        ['emulsion', '1.2 g'],
        ['water', 'to 1 kg'],
      ],
    });
    expect(gramsOf(stageNamed(stages, 'emulsion'), 'water')).toBe(36);
    expect(stageNamed(stages, 'emulsion').shareInDrink).toBeCloseTo(1.2 / 50, 15);
    expect(stageNamed(stages, 'drink').shareInDrink).toBe(1);
    const oil = stageNamed(stages, 'drink').substances.find((one) => one.role === 'oil');
    expect(oil?.massFraction).toBeCloseTo((1.2 * 2) / 50 / 1000, 15);
  });

  it('counts shares and masses without a make-up line as parts of their sum', () => {
    const [stage] = solved({
      stage: [
        ['sucrose', '10 %'],
        ['citric acid', '2 %'],
        ['water', '44 g'],
      ],
    });
    expect(stage?.items.map((item) => item.massGrams)).toEqual(
      [5, 1, 44].map((grams) => expect.closeTo(grams, 12)),
    );
  });

  it('counts drops by the drop of the ingredient, else by that of the bench', () => {
    const typed = {
      stage: [
        ['cassis stock', '10 drops'],
        ['propylene glycol', '10 drops'],
        ['water', '1 kg'],
      ],
    } as const;
    const [stage] = solved(typed, { dropGrams: 0.03 });
    expect(stage?.items.slice(0, 2).map((item) => item.massGrams)).toEqual(
      [0.21, 0.3].map((one) => expect.closeTo(one, 12)),
    );
  });

  it('counts mol/kg by the water in the stage, that of an earlier stage included', () => {
    const stages = solved({
      brine: [
        ['sucrose', '50 g'],
        ['water', '50 g'],
      ],
      stage: [
        ['brine', '100 g'],
        ['sodium chloride', '2 mol/kg'],
        ['water', '950 g'],
      ],
    });
    expect(gramsOf(stageNamed(stages, 'stage'), 'sodium chloride')).toBeCloseTo(2 * 58.44, 10);
  });

  it('measures a stage out by its measured density where there is one', () => {
    const stages = solved({
      base: { items: [['water', '200 g']], density: 1.25 },
      drink: [
        ['base', '80 mL'],
        ['water', '900 g'],
      ],
    });
    expect(gramsOf(stageNamed(stages, 'drink'), 'base')).toBeCloseTo(100, 12);
    expect(stageNamed(stages, 'base').densityFrom).toEqual({ measured: true, words: 'measured' });
    expect(stageNamed(stages, 'base').volumeMillilitres).toBeCloseTo(160, 12);
  });

  it('takes a stage of another trial', () => {
    const from = stageNamed(solved({ emulsion }), 'emulsion');
    const stages = solved({
      drink: [
        ['emulsion of 14', '5 g', { from }],
        ['water', 'to 1 kg'],
      ],
    });
    const oil = stageNamed(stages, 'drink').substances.find((one) => one.role === 'oil');
    expect(oil?.massGrams).toBeCloseTo(0.2, 14);
  });

  it('solves what is asked for in the drink through two stages', () => {
    const stages = solved({
      emulsion: [
        ['cassis thiol', '1 ppb in drink'],
        ['sweet orange oil', '60 mg/L in drink'],
        ['water', 'to 50 g'],
      ],
      syrup: [
        ['emulsion', '20 g'],
        ['sucrose', '60 %'],
        ['water', 'to 1 L'],
      ],
      drink: [
        ['syrup', '20 % v/v'],
        ['water', 'to 2 L'],
      ],
    });
    const drink = stageNamed(stages, 'drink');
    const found = (name: string) => drink.substances.find((one) => one.name === name);
    expect(found('4-methoxy-2-methyl-2-butanethiol')?.massFraction).toBeCloseTo(1e-9, 20);
    expect(found('sweet orange oil')?.gramsPerLitre).toBeCloseTo(0.06, 12);
  });

  it('uses what was weighed; shares stay as planned and the make-up line adapts', () => {
    const [stage] = solved({
      stage: [
        ['sweet orange oil', '4 %', { weighedGrams: 2.03 }],
        ['polysorbate 80', '12 %'],
        ['water', 'to 50 g'],
      ],
    });
    expect(stage?.items.map((item) => item.massGrams)).toEqual(
      [2.03, 6, 41.97].map((one) => expect.closeTo(one, 12)),
    );
    expect(stage?.items.map((item) => item.plannedGrams)).toEqual(
      [2, 6, 42].map((one) => expect.closeTo(one, 12)),
    );
    expect(stage?.items.map((item) => item.weighed)).toEqual([true, false, false]);
    const [over] = solved({
      stage: [
        ['sweet orange oil', '4 %'],
        ['water', 'to 50 g', { weighedGrams: 53 }],
      ],
    });
    expect(over?.items.map((item) => item.massGrams)).toEqual([2, 53]);
    expect(over?.massGrams).toBe(55);
  });

  it('needs no density for a volume that was weighed', () => {
    const [stage] = solved({
      stage: [
        ['sucrose', '3 mL', { weighedGrams: 2.5 }],
        ['water', '10 g'],
      ],
    });
    expect(stage?.items[0]).toMatchObject({ massGrams: 2.5, plannedGrams: 2.5, weighed: true });
  });

  it('lets an item play another role, with all that it brings', () => {
    const [stage] = solved({
      stage: [
        ['cassis stock', '1 g', { role: 'oil' }],
        ['propylene glycol', '2 g'],
        ['polysorbate 80', '3 g'],
      ],
    });
    expect(stage?.substances.map(({ name, role }) => `${name}: ${role}`)).toEqual([
      '4-methoxy-2-methyl-2-butanethiol: oil',
      'propylene glycol: oil',
      'propylene glycol: carrier',
      'polysorbate 80: emulsifier',
    ]);
  });

  it('finds oil per emulsifier where both first meet', () => {
    const { mixture } = resolve({
      oils: [
        ['sweet orange oil', '10 g'],
        ['propylene glycol', '10 g'],
      ],
      emulsion: [
        ['oils', '4 g'],
        ['polysorbate 80', '6 g'],
        ['water', 'to 50 g'],
      ],
      drink: [
        ['emulsion', '1 g'],
        ['water', 'to 1 L'],
      ],
    });
    const found = mixture && oilPerEmulsifier(mixture);
    expect(found).toMatchObject({ stage: 'emulsion', oilGrams: 2, emulsifierGrams: 6, emulsifierPerOil: 3 });
    expect(found?.oilPerEmulsifier).toBeCloseTo(1 / 3, 15);
  });

  it('adds up a role in the drink', () => {
    const { mixture } = resolve({
      drink: [
        ['polysorbate 80', '30 mg/L'],
        ['water', 'to 2 L'],
      ],
    });
    const found = mixture && inDrink(mixture, { role: 'emulsifier' });
    expect(found?.milligramsPerLitre).toBeCloseTo(30, 10);
    expect(found?.massGrams).toBeCloseTo(0.06, 12);
    const none = resolve({ syrup: [['water', '1 g']] }).mixture;
    expect(none && inDrink(none, { role: 'oil' })).toBe(undefined);
  });

  it.each([
    [
      [
        ['sucrose', '88 g'],
        ['water', '12 g'],
      ],
      'does not reach 88 % of sucrose at 20 C',
    ],
    [
      [
        ['cassis thiol', '1 g'],
        ['water', '12 g'],
      ],
      'no density known for 4-methoxy-2-methyl-2-butanethiol, taken as 1 g/mL',
    ],
    [
      [
        ['ethanol', '1 g'],
        ['sucrose', '1 g'],
        ['water', '12 g'],
      ],
      'estimate: sugar-water by ICUMSA, rest by added volumes; that ethanol',
    ],
    [[['water', '12 g']], 'estimate: water at the temperature of the bench'],
  ] as const)('says what the density rests on: %j', (items, words) => {
    expect(solved({ stage: items })[0]?.densityFrom.words).toContain(words);
  });
});
