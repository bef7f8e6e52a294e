/** A trial as a test knows it: facts with names, random edits of them, and its text typed out. */

import fc from 'fast-check';

export interface Item {
  readonly name: string;
  readonly lead: readonly string[];
  readonly amount: string;
  readonly comment: string;
  /** `weighed`, `lot`, `note` in the order in which they were written down. */
  readonly facts: readonly (readonly [string, string])[];
  /** Of one that was added: behind which of the items that were there. */
  readonly behind?: number;
}

export interface Entry {
  readonly time: number;
  readonly lead: readonly string[];
  readonly facts: readonly (readonly [string, string])[];
}

export interface Notebook {
  readonly heads: readonly (readonly [string, string])[];
  readonly stages: readonly (readonly Item[])[];
  readonly cover: string;
  readonly observations: readonly Entry[];
  readonly results: readonly Entry[];
}

export const names = [
  'sweet orange oil',
  'polysorbate 80',
  'propylene glycol',
  'sucrose',
  'citric acid',
  'ethanol',
];

/** What each of two people adds. */
const added: Readonly<Record<string, readonly string[]>> = {
  a: ['malic acid', 'tartaric acid', 'lactic acid', 'ascorbic acid'],
  b: ['sodium benzoate', 'potassium sorbate', 'vanillin', 'maltol'],
};

export const timeText = (minutes: number): string =>
  `${new Date(Date.UTC(2026, 2, 3) + minutes * 60_000).toISOString().slice(0, 16)}+00:00`;

const indented = (lines: readonly string[], by: number): readonly string[] =>
  lines.map((line) => `${' '.repeat(by)}${line}`);

const itemLines = ({ name, lead, amount, comment, facts }: Item): readonly string[] => [
  ...indented(lead, 6),
  `      - ${name}: ${amount}${comment && `   # ${comment}`}`,
  ...facts.map(([key, text]) => `        ${key}: ${text}`),
];

const entryLines = ({ time, lead, facts }: Entry): readonly string[] => [
  ...indented(lead, 2),
  `  - at: ${timeText(time)}`,
  ...facts.map(([key, text]) => `    ${key}: ${text}`),
];

/** The text of a notebook page. */
export function typedOut({ heads, stages, cover, observations, results }: Notebook): string {
  const lines = [
    '# kept in the drawer',
    '',
    'trial: 1',
    ...heads.map(([key, text]) => `${key}: ${text}`),
    '',
    '# as it was made',
    'stages:',
    ...stages.flatMap((items, index) => [
      `  stage ${index + 1}:   # number ${index + 1}`,
      '    items:',
      ...items.flatMap(itemLines),
      '      - water: to 900 g',
      '      # nothing after the water',
    ]),
    'samples:',
    '  beaker:',
    `    of: stage ${stages.length}`,
    `    cover: ${cover}`,
    '',
    'observations:   # by eye',
    '  # first light',
    '',
    ...observations.flatMap(entryLines),
    '  # so far',
    'results:',
    ...results.flatMap(entryLines),
    '',
    '# end',
  ];
  return `${lines.join('\n')}\n`;
}

const amount = fc.integer({ min: 1, max: 40 }).map((grams) => `${grams} g`);
const remark = fc.constantFrom('from the new bottle', 'slowly', 'at last', "it's cold");
const lead = fc.oneof(fc.constant([]), fc.constant(['# stirred by hand']));

const itemNamed = (name: string): fc.Arbitrary<Item> =>
  fc.record({
    name: fc.constant(name),
    lead,
    amount,
    comment: fc.oneof(fc.constant(''), remark),
    facts: fc.oneof(
      fc.constant([]),
      amount.map((text): [string, string][] => [['weighed', text]]),
    ),
  });

const observation = (time: number): fc.Arbitrary<Entry> =>
  fc.record({
    time: fc.constant(time),
    lead,
    facts: fc.constantFrom<[string, string][]>(
      [['look', 'clear']],
      [
        ['look', 'hazy'],
        ['note', 'a film on the glass'],
      ],
      [
        ['sample', 'beaker'],
        ['look', 'clear, ring'],
      ],
    ),
  });

const answer = (time: number): fc.Arbitrary<Entry> =>
  fc.record({
    time: fc.constant(time),
    lead: fc.constant([]),
    facts: fc.integer({ min: 10, max: 14 }).map((value): [string, string][] => [
      ['calculator', 'hlb'],
      ['of', '5c1e09aa'],
      ['required HLB', `${value}.${time}`],
    ]),
  });

const several = <T>(count: number, make: (index: number) => fc.Arbitrary<T>): fc.Arbitrary<T[]> =>
  fc
    .integer({ min: 1, max: count })
    .chain((size) => fc.tuple(...Array.from({ length: size }, (_, at) => make(at))));

/** Any notebook page; times of what stands in it are whole hours. */
export const notebooks: fc.Arbitrary<Notebook> = fc.record({
  heads: fc.subarray<readonly [string, string]>(
    [
      ['title', 'sweet orange'],
      ['why', 'does it hold?'],
      ['note', '"made hot: quickly"'],
    ],
    { minLength: 1 },
  ),
  stages: several(2, () => several(5, (at) => itemNamed(names[at] ?? 'ethanol'))),
  cover: fc.constant('film'),
  observations: several(4, (at) => observation(at * 60)),
  results: several(3, (at) => answer(at * 60)),
});

/** One thing that a person does to a page. */
export type Doing = (page: Notebook, side: string) => Notebook;

const at = <T>(list: readonly T[], index: number, change: (old: T) => T): readonly T[] =>
  list.map((one, place) => (place === index % Math.max(1, list.length) ? change(one) : one));

const withFact = (
  facts: readonly (readonly [string, string])[],
  key: string,
  text: string,
): readonly (readonly [string, string])[] =>
  facts.some(([known]) => known === key)
    ? facts.map(([known, old]) => [known, known === key ? text : old])
    : [...facts, [key, text]];

const inItem =
  (stage: number, item: number, change: (old: Item) => Item): Doing =>
  (page) => ({ ...page, stages: at(page.stages, stage, (items) => at(items, item, change)) });

const sorted = (entries: readonly Entry[]): readonly Entry[] =>
  [...entries].sort((left, right) => left.time - right.time);

const small = fc.nat({ max: 5 });

/** Items that can be taken out are those in even places; new ones come behind the others. */
export const doings: fc.Arbitrary<Doing> = fc.oneof(
  fc
    .tuple(small, small, amount)
    .map(([stage, item, text]) => inItem(stage, item, (old) => ({ ...old, amount: text }))),
  fc
    .tuple(small, small, remark)
    .map(([stage, item, text]) => inItem(stage, item, (old) => ({ ...old, comment: text }))),
  fc
    .tuple(small, small, fc.constantFrom('weighed', 'lot', 'note'), amount)
    .map(([stage, item, key, text]) =>
      inItem(stage, item, (old) => ({ ...old, facts: withFact(old.facts, key, text) })),
    ),
  fc
    .tuple(small, small, fc.constantFrom('# warm', '# cold'))
    .map(([stage, item, text]) => inItem(stage, item, (old) => ({ ...old, lead: [...old.lead, text] }))),
  fc.tuple(small, small).map(
    ([stage, item]): Doing =>
      (page) => ({
        ...page,
        stages: at(page.stages, stage, (items) => {
          const gone = items[item % items.length];
          const isOpen = gone && gone.behind === undefined && names.indexOf(gone.name) % 2 === 0;
          return isOpen ? items.filter((one) => one !== gone) : items;
        }),
      }),
  ),
  fc.tuple(small, small, amount).map(
    ([stage, behind, text]): Doing =>
      (page, side) => ({
        ...page,
        stages: at(page.stages, stage, (items) => {
          const place = items.findIndex((one) => one.name === names[behind % 2 === 0 ? 1 : 3]);
          if (place === -1) return items;
          const name = added[side]?.[(items.length + behind) % 4] ?? side;
          if (items.some((one) => one.name === name)) return items;
          return items.toSpliced(place + 1, 0, {
            ...{ name, lead: [], amount: text, comment: '', facts: [] },
            behind: names.indexOf(items[place]?.name ?? ''),
          });
        }),
      }),
  ),
  fc.tuple(fc.constantFrom('title', 'why', 'by', 'concluded'), fc.constantFrom('held', 'lost', 'odd')).map(
    ([key, text]): Doing =>
      (page) => {
        const isOpen = key === 'by' || key === 'concluded' || page.heads.some(([known]) => known === key);
        return isOpen ? { ...page, heads: withFact(page.heads, key, text) } : page;
      },
  ),
  fc.constantFrom('title', 'why').map(
    (key): Doing =>
      (page) => {
        const hasLater = page.heads.some(
          ([known]) => known === 'note' || (key === 'title' && known === 'why'),
        );
        return hasLater ? { ...page, heads: page.heads.filter(([known]) => known !== key) } : page;
      },
  ),
  fc.constantFrom('foil', 'lid', 'none').map(
    (cover): Doing =>
      (page) => ({ ...page, cover }),
  ),
  fc.tuple(fc.integer({ min: 1, max: 59 }), small, fc.constantFrom('clear', 'ring', 'broken'), lead).map(
    ([minute, hour, look, comments]): Doing =>
      (page, side) => {
        const time = hour * 60 + minute;
        if (page.observations.some((one) => one.time === time)) return page;
        const facts: Entry['facts'] =
          minute < 30
            ? [
                ['look', look],
                ['by', side],
              ]
            : [['look', look]];
        return { ...page, observations: sorted([...page.observations, { time, lead: comments, facts }]) };
      },
  ),
  fc.tuple(small, fc.constantFrom('look', 'note', 'smell'), fc.constantFrom('hazy', 'specks', 'gel')).map(
    ([index, key, text]): Doing =>
      (page) => ({
        ...page,
        observations: at(page.observations, index, (old) =>
          old.time % 60 === 0 ? { ...old, facts: withFact(old.facts, key, text) } : old,
        ),
      }),
  ),
  small.map(
    (index): Doing =>
      (page) => ({
        ...page,
        observations: page.observations.filter(
          (one, place) =>
            page.observations.length === 1 || one.time % 60 !== 0 || place !== index || place === 0,
        ),
      }),
  ),
  fc.tuple(fc.integer({ min: 1, max: 59 }), small, fc.integer({ min: 1, max: 3 })).map(
    ([minute, hour, value]): Doing =>
      (page) => {
        const time = hour * 60 + minute;
        const facts: Entry['facts'] = [
          ['calculator', 'hlb'],
          ['of', '0a1b2c3d'],
          ['required HLB', `${value}`],
        ];
        const isThere = page.results.some((one) => one.time === time || one.facts[2]?.[1] === `${value}`);
        return isThere ? page : { ...page, results: sorted([...page.results, { time, lead: [], facts }]) };
      },
  ),
);
