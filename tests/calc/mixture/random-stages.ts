/** Random stages that can be solved: a chain of one to five, the last of them the drink. */

import fc from 'fast-check';
import type { TypedItem, TypedStages } from './bench.ts';

/** How much, in a unit; `grows` where a batch of k times the size needs k times as much. */
interface Part {
  readonly name: string;
  readonly value: number;
  readonly unit: string;
  readonly lead?: string;
  readonly tail?: string;
  readonly grows: boolean;
}

export interface RandomStage {
  readonly parts: readonly Part[];
  readonly makes?: { readonly value: number; readonly unit: string };
  readonly density?: number;
}

export interface Asked {
  readonly substance: string;
  readonly value: number;
  readonly unit: 'g/L' | 'ppm';
}

export interface RandomTrial {
  readonly stages: readonly RandomStage[];
  /** What the drink must hold, each asked for in one stage and used nowhere else. */
  readonly asked: readonly Asked[];
}

const between = (low: number, high: number): fc.Arbitrary<number> =>
  fc.integer({ min: 0, max: 1000 }).map((step) => low + ((high - low) * step) / 1000);

const grown = (name: string, unit: string, range: readonly [number, number]): fc.Arbitrary<Part> =>
  between(...range).map((value) => ({ name, value, unit, grows: true }));

const relative = (name: string, unit: string, range: readonly [number, number]): fc.Arbitrary<Part> =>
  between(...range).map((value) => ({ name, value, unit, grows: false }));

/** Small beside 300 g of stage; every kind of amount. */
const sideItems: readonly fc.Arbitrary<Part>[] = [
  fc.oneof(
    grown('sucrose', 'g', [1, 60]),
    relative('sucrose', 'g/L', [1, 200]),
    relative('sucrose', '%', [1, 25]),
  ),
  fc.oneof(grown('sweet orange oil', 'mL', [0.1, 5]), relative('sweet orange oil', '% v/v', [0.1, 3])),
  fc.oneof(grown('polysorbate 80', 'g', [0.1, 9]), relative('polysorbate 80', '% w/v', [0.1, 4])),
  fc.oneof(relative('propylene glycol', '%', [0.1, 8]), relative('propylene glycol', 'mL/L', [1, 60])),
  fc.oneof(grown('cassis stock', 'drops', [1, 20]), relative('cassis stock', 'ppb', [1, 900])),
  fc.oneof(relative('ethanol', 'mol/L', [0.01, 0.8]), relative('cassis stock in water', 'mL/L', [0.1, 9])),
];

const previous = (name: string): fc.Arbitrary<Part> =>
  fc.oneof(
    grown(name, 'g', [60, 110]),
    grown(name, 'mL', [60, 90]),
    relative(name, '%', [20, 35]),
    relative(name, 'g/L', [200, 350]),
  );

const ending = fc.oneof(
  fc.record({ value: between(300, 500), unit: fc.constant('g'), lead: fc.constant('to ') }),
  fc.record({ value: between(320, 500), unit: fc.constant('mL'), lead: fc.constant('to ') }),
  fc.record({ value: between(150, 300), unit: fc.constant('g'), lead: fc.constant('') }),
);

const openStage = (used: string | undefined): fc.Arbitrary<RandomStage> =>
  fc
    .record({
      side: fc
        .subarray([0, 1, 2, 3, 4, 5], { maxLength: 4 })
        .chain((chosen) =>
          fc.tuple(...chosen.map((index) => sideItems[index] ?? grown('sucrose', 'g', [1, 2]))),
        ),
      used: used === undefined ? fc.constant([]) : fc.tuple(previous(used)),
      water: ending.map((end): Part => ({ name: 'water', grows: true, ...end })),
      salty: fc.option(relative('potassium citrate', 'mol/kg', [0.01, 0.4]), { nil: undefined }),
      density: fc.option(between(1, 1.2), { nil: undefined, freq: 5 }),
    })
    .map(({ side, used: earlier, water, salty, density }) => ({
      parts: [...side, ...earlier, ...(salty ? [salty] : []), water],
      ...(density === undefined ? {} : { density }),
    }));

/** Parts, or shares that come to the whole, with what they make. */
const closedStage = (used: string | undefined): fc.Arbitrary<RandomStage> =>
  fc
    .record({
      sugar: between(5, 50),
      earlier: between(20, 40),
      unit: fc.constantFrom('parts', '%'),
      makes: fc.oneof(
        fc.record({ value: between(200, 400), unit: fc.constant('g') }),
        fc.record({ value: between(200, 400), unit: fc.constant('mL') }),
      ),
    })
    .map(({ sugar, earlier, unit, makes }) => {
      const usedParts = used === undefined ? [] : [{ name: used, value: earlier, unit, grows: false }];
      const water = 100 - sugar - (used === undefined ? 0 : earlier);
      return {
        parts: [
          { name: 'sucrose', value: sugar, unit, grows: false },
          ...usedParts,
          { name: 'water', value: water, unit, grows: false },
        ],
        makes,
      };
    });

const stageName = (index: number, count: number): string =>
  index === count - 1 ? 'drink' : `stage ${index + 1}`;

/** Asked for in the drink, put into an open stage; small, since four stages may thin it by 600. */
const asking = fc.record({
  salt: fc.option(fc.record({ value: between(0.001, 0.05), place: fc.nat(4) }), { nil: undefined }),
  acid: fc.option(fc.record({ value: between(0.01, 40), place: fc.nat(4) }), { nil: undefined }),
});

export const randomTrial: fc.Arbitrary<RandomTrial> = fc
  .integer({ min: 1, max: 5 })
  .chain((count) =>
    fc.record({
      stages: fc.tuple(
        ...Array.from({ length: count }, (_, index) => {
          const used = index === 0 ? undefined : stageName(index - 1, count);
          return fc.oneof(
            { weight: 4, arbitrary: openStage(used) },
            { weight: 1, arbitrary: closedStage(used) },
          );
        }),
      ),
      asking,
    }),
  )
  .map(({ stages, asking: { salt, acid } }) => {
    const wanted: { readonly asked: Asked; readonly place: number }[] = [
      ...(salt
        ? [
            {
              asked: { substance: 'sodium chloride', value: salt.value, unit: 'g/L' as const },
              place: salt.place,
            },
          ]
        : []),
      ...(acid
        ? [
            {
              asked: { substance: 'citric acid', value: acid.value, unit: 'ppm' as const },
              place: acid.place,
            },
          ]
        : []),
    ].filter(({ place }) => stages[place] !== undefined && stages[place].makes === undefined);
    const withAsked = stages.map((stage, index) => ({
      ...stage,
      parts: [
        ...wanted
          .filter(({ place }) => place === index)
          .map(({ asked }) => ({ name: asked.substance, ...asked, tail: ' in drink', grows: false })),
        ...stage.parts,
      ],
    }));
    return { stages: withAsked, asked: wanted.map(({ asked }) => asked) };
  });

/** As typed, `times` as large, with the items in another order where one is given. */
export function typedTrial(
  { stages }: RandomTrial,
  { times = 1, reversed = false }: { readonly times?: number; readonly reversed?: boolean } = {},
): TypedStages {
  return Object.fromEntries(
    stages.map(({ parts, makes, density }, index) => {
      const items = parts.map(({ name, value, unit, lead = '', tail = '', grows }): TypedItem => {
        return [name, `${lead}${grows ? value * times : value} ${unit}${tail}`];
      });
      const stage = {
        items: reversed ? items.reverse() : items,
        ...(makes ? { makes: `${makes.value * times} ${makes.unit}` } : {}),
        ...(density === undefined ? {} : { density }),
      };
      return [stageName(index, stages.length), stage];
    }),
  );
}
