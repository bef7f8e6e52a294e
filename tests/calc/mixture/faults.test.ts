import { describe, expect, it } from 'vitest';
import { amountCases } from './amount-fault-cases.ts';
import { resolve } from './bench.ts';
import { stageCases } from './stage-fault-cases.ts';

describe('resolveMixture on stages that can not be solved', () => {
  it.each([...amountCases, ...stageCases])(
    'names $code in $stage: $says',
    ({ code, stages, stage, item, says, hint = '' }) => {
      const { mixture, faults } = resolve(stages);
      expect(mixture).toBe(undefined);
      expect(faults).toHaveLength(1);
      const [fault] = faults;
      expect(fault).toMatchObject({ code, stage, severity: 'error' });
      expect(fault?.item).toBe(item);
      expect(fault?.message).toContain(says);
      expect(fault?.hint).toContain(hint);
    },
  );

  it('reports the faults of every stage at once, and not those that follow from another', () => {
    const { faults } = resolve({
      base: [
        ['sucrose', '60 g'],
        ['water', 'to 50 g'],
      ],
      other: [
        ['sucrose', '60 %'],
        ['ethanol', '50 %'],
        ['water', '1 g'],
      ],
      drink: [
        ['base', '200 g'],
        ['water', 'to 100 g'],
      ],
    });
    expect(faults.map(({ code, stage }) => `${stage}: ${code}`)).toEqual([
      'base: over-total',
      'other: shares-over',
    ]);
  });

  it('warns where more of a stage is used than was made, at the item that goes beyond it', () => {
    const { mixture, faults } = resolve({
      base: [['water', '50 g']],
      drink: [
        ['base', '30 g'],
        ['sucrose', '1 g'],
        ['base', '30 g'],
      ],
    });
    expect(mixture?.drink?.massGrams).toBe(61);
    expect(faults).toEqual([
      {
        code: 'more-than-made',
        severity: 'warning',
        message: 'drink takes 60 g of base, and 50 g of it was made',
        hint: 'make more base, or use less',
        stage: 'drink',
        item: 2,
      },
    ]);
  });

  it('says so where weighed amounts went beyond what the stage is made up to', () => {
    const { faults } = resolve({
      stage: [
        ['sucrose', '2 g', { weighedGrams: 52 }],
        ['water', 'to 50 g'],
      ],
    });
    expect(faults[0]).toMatchObject({
      code: 'over-total',
      item: 1,
      hint: 'say what was weighed of water, such as weighed: 0 g',
    });
  });
});
