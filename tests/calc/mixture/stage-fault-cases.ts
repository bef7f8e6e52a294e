/** Stages that can not be solved together, and what is said of them. */

import type { FaultCase } from './amount-fault-cases.ts';

const drink = [
  ['syrup', '200 g'],
  ['water', 'to 1 L'],
] as const;

export const stageCases: readonly FaultCase[] = [
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
