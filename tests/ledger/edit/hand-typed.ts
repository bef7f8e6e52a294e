/** Trial files as people type them, in every style that the ledger takes, with what they say. */

import fc from 'fast-check';

const pick = <T>(...values: readonly T[]): fc.Arbitrary<T> => fc.constantFrom(...values);

const comment = pick('', '', '', '  # as usual', ' #', '\t# tab');
const inlineText = pick(
  'clear',
  'clear, ring',
  '"clear"',
  "'it''s hazy'",
  '0.030',
  '007',
  '2.50',
  'two - three',
  '~',
);

/** The value of a fact, and the lines under it where it has any; `at` is the column of its key. */
const value = (at: number): fc.Arbitrary<string> => {
  const margin = ' '.repeat(at + 2);
  return fc.oneof(
    { weight: 6, arbitrary: fc.tuple(inlineText, comment).map(([text, rest]) => ` ${text}${rest}\n`) },
    { weight: 1, arbitrary: comment.map((rest) => `${rest}\n`) },
    pick(
      ` |\n${margin}two\n\n${margin}- lines: #1\n`,
      ` >-\n${margin}folded\n${margin}text\n`,
      ` |+\n${margin}kept\n\n\n`,
      ` >\n${margin}folded\n\n`,
      ` two\n${margin}lines # so\n`,
      ` [clear,  ring]\n`,
      ` [\n${margin}clear, # first\n${margin}ring\n${margin}]\n`,
      ` { bright: 3 }\n`,
      `\n${margin}- clear\n${margin}# and\n${margin}- ring\n`,
      `\n${margin}bright: 3\n`,
    ),
  );
};

const gap = (column: number): fc.Arbitrary<string> =>
  pick(
    '',
    '',
    '',
    '\n',
    `${' '.repeat(column)}# between\n`,
    `\n${' '.repeat(column)}# after a gap\n`,
    '# at the margin\n',
  );

function blockEntry(column: number, inset: number): fc.Arbitrary<string> {
  const at = column + inset;
  const dash = `${' '.repeat(column)}-${' '.repeat(inset - 1)}`;
  return fc
    .tuple(value(at), fc.array(value(at), { maxLength: 2 }), gap(column), fc.boolean())
    .map(([first, more, after, isLow]) => {
      const head = isLow ? `${' '.repeat(column)}-\n${' '.repeat(at)}` : dash;
      const rest = more.map((text, index) => `${' '.repeat(at)}fact ${index}:${text}`);
      return `${head}at:${first}${rest.join('')}${after}`;
    });
}

const flowEntry = pick('{ at: 1, look: clear }', '{at: 2.0,  look: "clear, ring"}', 'at: 3');

const blockList = fc
  .tuple(pick(0, 2, 4), pick(2, 2, 4))
  .chain(([column, inset]) =>
    fc.tuple(comment, gap(column), fc.array(blockEntry(column, inset), { minLength: 1, maxLength: 4 })),
  )
  .map(([rest, before, entries]) => `${rest}\n${before}${entries.join('')}`);

const list = fc.oneof(
  { weight: 5, arbitrary: blockList },
  { weight: 1, arbitrary: fc.tuple(comment, gap(2)).map(([rest, after]) => `${rest}\n${after}`) },
  { weight: 1, arbitrary: comment.map((rest) => ` []${rest}\n`) },
  {
    weight: 1,
    arbitrary: fc
      .tuple(fc.array(flowEntry, { minLength: 1, maxLength: 3 }), comment)
      .map(([entries, rest]) => ` [${entries.join(', ')}]${rest}\n`),
  },
  {
    weight: 1,
    arbitrary: fc
      .tuple(fc.array(flowEntry, { minLength: 1, maxLength: 3 }), pick('', ','), pick('', '  # last'))
      .map(([entries, comma, rest]) => ` [\n    ${entries.join(', # one\n    ')}${comma}${rest}\n  ]\n`),
  },
);

const stages = pick(
  'stages:\n  emulsion:\n    items:\n      - orange oil: 2 g   # planned\n        lot: 2231\n      - water: to 50 g\n',
  'stages:\n  drink:\n  - cassis: 1 g\n  # gently\n  - water: 1 L\n',
  'stages:\n    drink: [cardamom: 1 g, { water: 1 L }]\n',
);

const between = pick('', '', '\n', '# a heading\n', '\n# a heading\n');

/** A trial with or without observations and results, with any line ends. */
export const handTyped: fc.Arbitrary<string> = fc
  .record({
    title: value(0),
    stages,
    observations: fc.option(list, { nil: undefined }),
    results: fc.option(list, { nil: undefined }),
    gaps: fc.tuple(between, between, between, between),
    isOpen: fc.boolean(),
    newline: pick('\n', '\n', '\r\n'),
    mark: pick('', '', '\ufeff'),
  })
  .map((parts) => {
    const lists = [
      parts.observations === undefined ? '' : `${parts.gaps[1]}observations:${parts.observations}`,
      parts.results === undefined ? '' : `${parts.gaps[2]}results:${parts.results}`,
    ];
    const text = `trial: 14\ntitle:${parts.title}${parts.gaps[0]}${parts.stages}${lists.join('')}${parts.gaps[3]}`;
    const ended = parts.isOpen ? text.replace(/\n+$/, '') : text;
    return parts.mark + ended.replaceAll('\n', parts.newline);
  });
