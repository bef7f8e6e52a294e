import { describe, expect, it } from 'vitest';
import { resolve, type TypedStages } from './bench.ts';

interface Case {
  readonly code: string;
  readonly stages: TypedStages;
  readonly stage: string;
  readonly item?: number;
  readonly says: string;
  readonly hint?: string;
}

const drink = [
  ['syrup', '200 g'],
  ['water', 'to 1 L'],
] as const;

const cases: readonly Case[] = [
  { code: 'no-items', stages: { stage: [] }, stage: 'stage', says: 'nothing goes into stage' },
  {
    code: 'no-density',
    stages: {
      stage: [
        ['water', '1 g'],
        ['sucrose', '3 mL'],
      ],
    },
    stage: 'stage',
    item: 1,
    says: '"3 mL" of sucrose',
    hint: 'density: 1.02 g/mL',
  },
  {
    code: 'no-drop-mass',
    stages: { stage: [['water', '3 drops']] },
    stage: 'stage',
    item: 0,
    says: '"3 drops" of water',
    hint: 'drop: 0.030 g',
  },
  {
    code: 'no-molar-mass',
    stages: {
      stage: [
        ['sucrose', '1 mol/L'],
        ['water', 'to 1 L'],
      ],
    },
    stage: 'stage',
    item: 0,
    says: 'sucrose is in moles',
  },
  {
    code: 'two-make-ups',
    stages: {
      stage: [
        ['water', 'to 50 g'],
        ['sucrose', '1 g'],
        ['ethanol', 'to 60 g'],
      ],
    },
    stage: 'stage',
    item: 2,
    says: '"ethanol: to 60 g" is the second line that makes stage up, after "water: to 50 g"',
  },
  {
    code: 'shares-over',
    stages: {
      stage: [
        ['sucrose', '60 %'],
        ['ethanol', '50 %'],
        ['water', '1 g'],
      ],
    },
    stage: 'stage',
    item: 1,
    says: '110 %',
  },
  {
    code: 'shares-over',
    stages: {
      stage: [
        ['sucrose', '60 %'],
        ['ethanol', '40 %'],
        ['water', '1 g'],
      ],
    },
    stage: 'stage',
    item: 1,
    says: 'no room for the rest',
  },
  {
    code: 'shares-over',
    stages: {
      stage: [
        ['sucrose', '60 %'],
        ['water', 'to 50 g'],
        ['ethanol', '50 %'],
      ],
    },
    stage: 'stage',
    item: 1,
    says: '110 %',
  },
  {
    code: 'shares-over',
    stages: {
      stage: {
        items: [
          ['sucrose', '60 %'],
          ['water', '50 %'],
        ],
        makes: '50 g',
      },
    },
    stage: 'stage',
    item: 1,
    says: '110 %',
  },
  {
    code: 'not-whole',
    stages: {
      stage: {
        items: [
          ['sucrose', '60 %'],
          ['water', '30 %'],
        ],
        makes: '50 g',
      },
    },
    stage: 'stage',
    item: 1,
    says: '90 %, not 100 %',
  },
  {
    code: 'over-total',
    stages: {
      stage: [
        ['sucrose', '40 g'],
        ['water', 'to 50 g'],
        ['ethanol', '12.5 g'],
      ],
    },
    stage: 'stage',
    item: 1,
    says: 'come to 52.5 g, and to 50 g is less',
    hint: 'at least 52.5 g',
  },
  {
    code: 'over-total',
    stages: {
      stage: [
        ['sucrose', '4 kg'],
        ['water', 'to 1 L'],
      ],
    },
    stage: 'stage',
    item: 1,
    says: 'come to 4000 g, and to 1 L is',
  },
  {
    code: 'no-total',
    stages: {
      stage: [
        ['sucrose', '60 %'],
        ['water', '40 %'],
      ],
    },
    stage: 'stage',
    says: 'nothing says how much',
    hint: 'add makes: 50 g',
  },
  {
    code: 'parts-mixed',
    stages: {
      stage: {
        items: [
          ['sucrose', '2 parts'],
          ['water', '40 g'],
        ],
        makes: '50 g',
      },
    },
    stage: 'stage',
    item: 1,
    says: '"water: 40 g"',
  },
  {
    code: 'parts-without-makes',
    stages: {
      stage: [
        ['sucrose', '2 parts'],
        ['water', '3 parts'],
      ],
    },
    stage: 'stage',
    item: 0,
    says: 'how much it makes',
    hint: 'makes: 50 g',
  },
  {
    code: 'unknown-stage',
    stages: { drink: [['nothing like it', '2 g']] },
    stage: 'drink',
    item: 0,
    says: 'nothing like it',
  },
  { code: 'own-stage', stages: { drink: [['drink', '2 g']] }, stage: 'drink', item: 0, says: 'uses itself' },
  {
    code: 'later-stage',
    stages: { drink, syrup: [['water', '2 g']] },
    stage: 'drink',
    item: 0,
    says: 'made after it',
    hint: 'move syrup above drink',
  },
  {
    code: 'no-drink',
    stages: {
      syrup: [
        ['citric acid', '4 g/L in drink'],
        ['water', 'to 1 L'],
      ],
    },
    stage: 'syrup',
    item: 0,
    says: 'no stage named drink',
  },
  {
    code: 'not-in-drink',
    stages: {
      syrup: [
        ['citric acid', '4 g/L in drink'],
        ['water', 'to 1 L'],
      ],
      drink: [['water', '1 L']],
    },
    stage: 'syrup',
    item: 0,
    says: 'syrup does not go into the drink',
  },
  {
    code: 'not-in-drink',
    stages: {
      syrup: [
        ['citric acid', '4 g/L in drink'],
        ['water', 'to 1 L'],
      ],
      drink: [
        ['syrup', '0 g'],
        ['water', '1 L'],
      ],
    },
    stage: 'syrup',
    item: 0,
    says: 'none of syrup',
  },
  {
    code: 'shares-over',
    stages: {
      syrup: [
        ['citric acid', '400 g/L in drink'],
        ['water', 'to 1 L'],
      ],
      drink,
    },
    stage: 'syrup',
    item: 1,
    says: 'come to 200 %',
    hint: 'use more syrup in the drink',
  },
  {
    code: 'makes-differs',
    stages: {
      stage: {
        items: [
          ['sucrose', '2 g'],
          ['water', '40 g'],
        ],
        makes: '50 g',
      },
    },
    stage: 'stage',
    says: 'come to 42 g, and it says that it makes 50 g',
  },
  { code: 'empty-stage', stages: { stage: [['water', '0 g']] }, stage: 'stage', says: 'comes to 0 g' },
  {
    code: 'wrong-kind',
    stages: { stage: { items: [['water', '2 g']], makes: '3 drops' } },
    stage: 'stage',
    says: '"3 drops"',
  },
];

describe('resolveMixture on stages that can not be solved', () => {
  it.each(cases)('names $code in $stage: $says', ({ code, stages, stage, item, says, hint = '' }) => {
    const { mixture, faults } = resolve(stages);
    expect(mixture).toBe(undefined);
    expect(faults).toHaveLength(1);
    const [fault] = faults;
    expect(fault).toMatchObject({ code, stage, severity: 'error' });
    expect(fault?.item).toBe(item);
    expect(fault?.message).toContain(says);
    expect(fault?.hint).toContain(hint);
  });

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
