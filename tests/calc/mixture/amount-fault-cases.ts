/** Amounts that can not be solved, and what is said of them. */

import type { TypedStages } from './bench.ts';

export interface FaultCase {
  readonly code: string;
  readonly stages: TypedStages;
  readonly stage: string;
  readonly item?: number;
  readonly says: string;
  readonly hint?: string;
}

export const amountCases: readonly FaultCase[] = [
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
];
