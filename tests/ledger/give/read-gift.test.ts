import { describe, expect, it } from 'vitest';
import { type Plain, plainOf } from '../../../src/ledger/edit-facts.ts';
import { renamedIn, withoutLot } from '../../../src/ledger/give/passed-names.ts';
import { plainText } from '../../../src/ledger/give/plain-lines.ts';
import { readGift } from '../../../src/ledger/give/read-gift.ts';
import { parseDocument } from '../../../src/ledger/parse.ts';

const gift = `# A recipe passed on with neckring. In another ledger, neckring take FILE brings it in.
given: 1
what: formula x
temperature: 20 C
ingredients:
  stock:
    contains:
      cassis thiol: 2 ppm
      propylene glycol: rest
    drop: 0.021 g
trials:
  - trial: 13
    title: "one: to three"
    stages:
      emulsion:
        process:
          - do: warm
            to: 60 C
        items:
          - sweet orange oil: 2 g
            weighed: 2.01 g
          - water: to 50 g
formulas:
  - formula: x
    stages:
      drink:
        - emulsion of 13: 1.5 g
        - stock: 12 drops
        - water: to 1 L
    aim:
      ph: 2.9 to 3.2
comes to:
  trial 13:
    emulsion:
      sweet orange oil: 2.01 g
`;

describe('a given recipe', () => {
  it('is read by the readers of the ledger', () => {
    const { card, problems } = readGift('g.yaml', gift, {});
    expect(problems).toEqual([]);
    expect(card?.trials[0]?.card).toMatchObject({ number: 13, title: 'one: to three' });
    expect(card?.formulas[0]?.card.aims).toHaveLength(1);
    expect(card?.comesTo).toEqual([
      { of: 'trial 13', stage: 'emulsion', substance: 'sweet orange oil', grams: 2.01 },
    ]);
  });

  it('law: whatever is changed in it, it is read or every problem says where', () => {
    const signs = [
      '\n',
      ' ',
      '  ',
      ':',
      '- ',
      '"',
      "'",
      '{',
      '}',
      '[',
      '&a',
      '*a',
      '!x',
      '<<: ',
      '#',
      '|',
      '\0',
      '\u001b',
      '\u202e',
      '\t',
      '9e999',
      'é',
      '__proto__',
    ];
    let seed = 3;
    const next = (below: number): number => {
      seed = (seed * 48271) % 2147483647;
      return seed % below;
    };
    let refused = 0;
    for (let turn = 0; turn < 1500; turn += 1) {
      let text = gift;
      for (let change = 0; change <= next(3); change += 1) {
        const at = next(text.length);
        text = text.slice(0, at) + (signs[next(signs.length)] ?? '') + text.slice(at + next(6));
      }
      const { card, problems } = readGift('g.yaml', text, {});
      const errors = problems.filter(({ severity }) => severity === 'error');
      expect(card === undefined).toBe(errors.length > 0);
      for (const { place } of errors) expect((place?.line ?? 0) > 0 && (place?.column ?? 0) > 0).toBe(true);
      if (!card) refused += 1;
    }
    expect(refused).toBeGreaterThan(300);
  });
});

describe('law: facts that are written read back', () => {
  it.each<[string, Plain]>([
    [
      'texts',
      {
        map: [
          ['a: b', '- c'],
          ['d', ''],
          ['e', 'x\ny\n'],
          ['f', '\u001b'],
        ],
      },
    ],
    [
      'lists',
      {
        map: [
          ['a', { list: ['x', '- y', 'p\nq'] }],
          ['b', { list: [] }],
        ],
      },
    ],
    [
      'maps in lists',
      {
        map: [
          [
            'a',
            {
              list: [
                {
                  map: [
                    ['b', '1'],
                    ['c', { map: [['d', 'x # y']] }],
                  ],
                },
                { map: [] },
              ],
            },
          ],
        ],
      },
    ],
    ['empty maps', { map: [['a', { map: [] }]] }],
  ])('%s', (_, plain) => {
    const facts = typeof plain === 'object' && 'map' in plain ? plain.map : [];
    const { root, problems } = parseDocument('a.yaml', plainText(facts));
    expect(problems).toEqual([]);
    expect(plainOf(root)).toEqual(plain);
  });
});

describe('names without their lots', () => {
  it.each([
    ['orange oil lot 2231', '2231', 'orange oil'],
    ['orange oil 2231', '2231', 'orange oil'],
    ['orange oil, lot A/7', 'A/7', 'orange oil'],
    ['orange oil (lot 7)', undefined, 'orange oil'],
    ['lot 7', '7', 'lot'],
    ['polysorbate 80', '12', 'polysorbate 80'],
    ['allotment oil', undefined, 'allotment oil'],
  ])('%s', (name, lot, plain) => {
    expect(withoutLot(name, lot)).toBe(plain);
  });

  it('are put into sentences, whole words alone', () => {
    const names = new Map([
      ['oil lot 1', 'oil'],
      ['a.c', 'x'],
    ]);
    expect(renamedIn('Oil lot 1 and boil lot 1, abc', names)).toBe('oil and boil lot 1, abc');
  });
});
