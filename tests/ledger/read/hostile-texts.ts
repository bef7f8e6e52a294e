/** Texts seen to hang a reader or to end its process from inside, and their like; each in the size that is let through. */

/** What is read of a trial before the hostile part of some texts. */
export const head = 'trial: 14\nstages:\n  emulsion:\n    - water: 20 g\n';

export const lines = (count: number, line: (index: number) => string): string =>
  Array.from({ length: count }, (_, index) => line(index)).join('\n');

/** As often as it goes into a file that is still read. */
const filling = (line: string): string => lines(Math.floor(262_100 / (line.length + 1)), () => line);

const nested: Readonly<Record<string, string>> = {
  'thousands of [': '['.repeat(4000),
  'thousands of [ over lines': lines(200, () => '['.repeat(100)),
  'thousands of { after a key': `${head}note: ${'{'.repeat(3000)}`,
  'brackets opened line by line at the head': lines(5000, () => '['),
  'brackets opened line by line as items': lines(5000, () => '- ['),
  'brackets after keys, each further in': lines(60, (index) => `${' '.repeat(index)}a: [`),
  'brackets as deep as they may be, thousands of times': lines(
    6000,
    (index) => `k${index}: ${'['.repeat(16)}${']'.repeat(16)}`,
  ),
  'question marks': '? '.repeat(300),
  'question marks over lines': lines(300, (index) => `${' '.repeat(index)}? a`),
  'question marks, as many in a row as may be': filling('? '.repeat(8)),
  'question marks, one a line': filling('?'),
  'question marks with keys': filling('? a'),
  'question marks with a mark below': lines(30, (index) => `${' '.repeat(index)}? ? ? ? ? ? ? a`),
  dashes: '- '.repeat(2000),
  'dashes after a key': `a: ${'- '.repeat(2000)}x`,
  'dashes, as many in a row as may be': filling('- - - - - - - -'),
  'colons in a row': ': '.repeat(2000),
  'staircase of keys': lines(200, (index) => `${' '.repeat(index)}a:`),
  'staircases up and down': lines(8000, (index) => `${' '.repeat(index % 31)}a${index}:`),
};

const floods: Readonly<Record<string, string>> = {
  'keys in a row': lines(1, () => 'a: '.repeat(1300)),
  'keys in a row, many lines of them': lines(60, () => 'a: '.repeat(1300)),
  'closing brackets': '}'.repeat(4000),
  'closing brackets over lines': lines(60, () => '}'.repeat(4000)),
  'closing brackets, one a line': filling('}'),
  'closing brackets after keys': lines(20_000, () => 'a: }'),
  'square closing brackets after keys': filling('a: ]'),
  'double quotes': '"'.repeat(4000),
  'double quotes over lines': lines(60, () => '"'.repeat(4000)),
  'double quotes, one a line': filling('"'),
  'double quotes, two a line': filling('""'),
  'double quotes after keys': lines(30_000, () => 'a: "'),
  'single quotes': lines(60, () => "'".repeat(4001)),
  'single quotes, one a line': filling("'"),
  'backslashes in quotes': lines(60, () => `"${'\\'.repeat(4000)}`),
  'commas after keys': filling('a: ,'),
  'commas in brackets': `a: [${lines(4000, () => ','.repeat(40))}]`,
  'words in one open bracket': `a: [${lines(40_000, () => 'b,')}`,
  'tabs at the head': lines(20_000, () => '\ta: b'),
  'stray signs': lines(20_000, () => 'a: @b'),
  'grave accents': filling('a: `'),
  'percent signs': filling('a: %'),
  'colons inside text': lines(10_000, () => 'a: b: c'),
  'decimal commas': lines(12_000, (index) => `k${index}: 2,5 g`),
  'decimal commas in brackets': `a: [${lines(12_000, () => '2,5 g,')}]`,
  'dashes that swallow a line': lines(8000, (index) => `k${index}: a\n  - b`),
  'lines that go on': `a: ${lines(60_000, () => ' b')}`,
  'comments and blanks': filling(' #'),
  'blank lines': filling(''),
  'carriage returns alone': 'a: b\r'.repeat(800),
  'carriage returns, one a line': filling('a:\r'),
  'block scalars': lines(20_000, () => 'a: |'),
  'block scalars of blanks': filling('a: >+'),
  'conflict markers': lines(20_000, () => '<<<<<<< x'),
  'replacement characters': lines(20_000, () => '\ufffd: \ufffd'),
  'lone surrogates': lines(20_000, () => '\ud800: \ud800'),
};

const many: Readonly<Record<string, string>> = {
  'twice the same key': lines(40_000, () => 'a: b'),
  'forty thousand keys': lines(40_000, (index) => `k${index}:`),
  'forty thousand keys with texts': lines(22_000, (index) => `k${index}: x`),
  'forty thousand keys in one bracket': `a: {${lines(30_000, (index) => `k${index},`)}}`,
  'forty thousand keys of an item': `${head}samples:\n  a:\n${lines(20_000, (index) => `    k${index}:`)}`,
  'forty thousand unknown keys after a good head': head + lines(20_000, (index) => `k${index}: x`),
  'forty thousand stages': `trial: 14\nstages:\n${lines(20_000, (index) => `  k${index}:`)}`,
  'forty thousand items': `${head}observations:\n${lines(40_000, () => '- a')}`,
  'items without amounts': `trial: 14\nstages:\n  emulsion:\n${lines(15_000, () => '    - water:')}`,
  'anchors and aliases': `a: &a [x]\n${lines(5000, (index) => `b${index}: &b${index} [*a, *a]`)}`,
  'a bomb of aliases': lines(30, (index) => `k${index}: &a${index} [${`*a${index - 1}, `.repeat(9)}x]`),
  'merge keys': lines(20_000, () => '<<: *a'),
  tags: lines(10_000, () => 'a: !!binary x'),
  directives: lines(10_000, () => '%YAML 1.2'),
  documents: lines(20_000, () => '---'),
  'document ends': lines(20_000, () => '...'),
};

const long: Readonly<Record<string, string>> = {
  'long text of digits': `trial: ${'9'.repeat(4000)}\n`,
  'a long amount': `trial: 14\nstages:\n  emulsion:\n    - water: ${'(1+'.repeat(1000)} g\n`,
  'a line of 5,000': `note: ${'x'.repeat(5000)}`,
  'long names, many of them': lines(64, (index) => `${'x'.repeat(2000)}${index}: ${'y'.repeat(2000)}`),
  'NUL in a value': `${head}note: a\0b`,
};

/** Nothing is wrong with them but that nobody types so much. */
export const largeTexts: Readonly<Record<string, string>> = {
  'thousands of observations': `${head}observations:\n${lines(
    5000,
    (index) => `  - at: 2026-03-03T09:10+00:00\n    note: n${index}`,
  )}`,
  'thousands of items': `trial: 14\nstages:\n  emulsion:\n${lines(9000, (index) => `    - oil ${index}: 1 g`)}`,
  'a thousand blank lines': head + '\n'.repeat(1000),
};

export const hostileTexts: Readonly<Record<string, string>> = { ...nested, ...floods, ...many, ...long };
