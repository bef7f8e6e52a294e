import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Mixture } from '../../../src/calc/mixture/picture.ts';
import type { BatchStage } from '../../../src/calc/scaling/batch-stages.ts';
import { fillingOf } from '../../../src/calc/scaling/fill.ts';
import { finishedSyrup } from '../../../src/calc/scaling/finished-syrup.ts';
import { mixtureOfStages } from '../../../src/calc/scaling/re-resolve.ts';
import { strongerSyrup } from '../../../src/calc/scaling/stronger.ts';
import { benchKelvin, designOf } from './batch-bench.ts';

const design = designOf({
  emulsion: [
    ['sweet orange oil', '2 g'],
    ['polysorbate 80', '6 g'],
    ['water', 'to 50 g'],
  ],
  syrup: [
    ['sucrose', '90 g'],
    ['citric acid', '4.5 g/L in drink'],
    ['emulsion', '1.5 g'],
    ['water', 'to 200 mL'],
  ],
  drink: [
    ['syrup', '200 mL'],
    ['cassis stock', '12 drops'],
    ['water', 'to 1 L'],
  ],
});

function sameDrink(one: Mixture, other: Mixture): void {
  for (const wanted of one.drink?.substances ?? []) {
    const found = other.drink?.substances.find(
      ({ name, role }) => name === wanted.name && role === wanted.role,
    );
    expect(Math.abs((found?.massFraction ?? 0) / wanted.massFraction - 1)).toBeLessThan(1e-11);
  }
}

const millilitresOf = (mixture: Mixture, name: string): number =>
  mixture.stages.find((stage) => stage.name === name)?.volumeMillilitres ?? 0;

const stronger = (stages: readonly BatchStage[], strength: number) =>
  strongerSyrup({ stages, strength, temperatureKelvin: benchKelvin });

describe('strongerSyrup', () => {
  it('law: conservation of mass: the drink holds the same of everything, the syrup is 1 / strength as large', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.3, max: 2.5, noNaN: true }), (strength) => {
        const made = stronger(design.stages, strength);
        if (!made.ok) throw new Error(made.fault.message);
        const mixture = mixtureOfStages(made.value.stages, benchKelvin);
        sameDrink(design.mixture, mixture);
        const ratio = millilitresOf(design.mixture, 'syrup') / millilitresOf(mixture, 'syrup');
        expect(Math.abs(ratio / strength - 1)).toBeLessThan(1e-9);
        expect(mixture.drink?.massGrams).toBeCloseTo(design.mixture.drink?.massGrams ?? 0, 8);
      }),
      { numRuns: 60 },
    );
  });

  it('refuses more strength than the water in the syrup allows, and says how much it does', () => {
    const refused = stronger(design.stages, 9);
    expect(refused).toMatchObject({ ok: false, fault: { code: 'too-strong' } });
    const most = Number(/--strength (\d+\.?\d*)/.exec(refused.ok ? '' : refused.fault.hint)?.[1]);
    expect(stronger(design.stages, most).ok).toBe(true);
  });

  it.each([
    [0, 'not-positive'],
    [0.01, 'too-weak'],
  ])('refuses a strength of %d', (strength, code) => {
    expect(stronger(design.stages, strength)).toMatchObject({ ok: false, fault: { code } });
  });

  it('refuses a design without a syrup in a drink', () => {
    expect(stronger(design.stages.slice(0, 2), 1.2)).toMatchObject({
      ok: false,
      fault: { code: 'no-syrup' },
    });
  });
});

describe('finishedSyrup', () => {
  it('law: conservation of mass: dose and water are the drink', () => {
    const made = finishedSyrup(design.stages);
    expect(made).toMatchObject({ dose: 'finished syrup', water: 'water' });
    sameDrink(design.mixture, mixtureOfStages(made?.stages ?? [], benchKelvin));
  });

  it('leaves a drink of one syrup and water as it is', () => {
    const plain = designOf({
      syrup: [
        ['sucrose', '90 g'],
        ['water', 'to 200 mL'],
      ],
      drink: [
        ['syrup', '200 mL'],
        ['water', 'to 1 L'],
      ],
    });
    expect(finishedSyrup(plain.stages)).toEqual({ stages: plain.stages, dose: 'syrup', water: 'water' });
  });

  it('has nothing to say of a drink without water of its own', () => {
    const dry = designOf({ drink: [['sucrose', '1 g']] });
    expect(finishedSyrup(dry.stages)).toBe(undefined);
  });
});

describe('fillingOf', () => {
  /** 1+4 by volume where volumes add up: nothing in it but water. */
  const thrown = designOf({
    syrup: [['water', '100 g']],
    drink: [
      ['syrup', '20 g'],
      ['water', '80 g'],
    ],
  });
  const filled = (carbonDioxideVolumes: number | undefined) => {
    const made = fillingOf({
      mixture: thrown.mixture,
      millilitres: 330,
      carbonDioxideVolumes,
      waterKelvin: 277.15,
      benchKelvin,
    });
    if (!made.ok) throw new Error(made.fault.message);
    return made.value;
  };

  it('law: 330 mL at 1+4 are 66 and 264 mL, and 3.5 volumes need 3.5 x 5/4 = 4.375 in the water', () => {
    const made = filled(3.5);
    expect(made?.parts.map(({ millilitres }) => millilitres?.toFixed(6))).toEqual([
      '66.000000',
      '264.000000',
    ]);
    expect(made?.gas?.water.volumes).toBeCloseTo(4.375, 10);
    expect((made?.parts ?? []).reduce((sum, { grams }) => sum + grams, 0)).toBeCloseTo(made?.grams ?? 0, 10);
  });

  it('says nothing of gas where none is aimed at', () => {
    expect(filled(undefined)?.gas).toBe(undefined);
  });
});
