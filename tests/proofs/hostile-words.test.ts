import { mkdir, open } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { loadArithmetic } from '../../src/calc/arithmetic.ts';
import { parseAmount } from '../../src/calc/parse-amount.ts';
import { exampleLedger, neckring, record, rows } from '../commands/neckring.ts';
import { ledgerOf, lisbonBench } from '../commands/small-ledger.ts';

/** What an evaluator would take, and arithmetic is not. */
const reachingOut: readonly string[] = [
  ...['import("fs")', 'import({a: 1})', 'eval("1")', 'evaluate("1")', 'parse("1")', 'createUnit("x")'],
  ...[
    'sqrt(4)',
    'sin(1)',
    'f(x) = x',
    'a = 3',
    'cross([1], [2])',
    '[1, 2; 3, 4]',
    '[1]',
    '{a: 1}',
    '{a: 1}.a',
  ],
  ...['e', 'pi', 'i', '2i', 'true', 'null', 'this', 'constructor', 'constructor("x")()', 'process.exit()'],
  ...[
    '2 kg',
    '2 m / s',
    '2 kg to',
    '5!',
    '2^3',
    '2**3',
    '9^9^9^9',
    '2 % 3',
    '7 mod 2',
    '1 == 1',
    '1 ? 2 : 3',
    '1 & 1',
  ],
  ...[
    '1; 2',
    '1, 2',
    '"a"',
    "'a'",
    '`1`',
    ['`$', '{1}`'].join(''),
    '#1',
    '1 # x',
    '1 // 2',
    '0x10',
    '0b1',
    '1_000',
    '\uff11',
    '\u221e',
  ],
  ...[
    'NaN',
    'Infinity',
    '-Infinity',
    '1e400',
    '1e999 - 1e999',
    '1e308 * 10',
    '0/0',
    '1/0',
    '1/(1 - 1)',
    '__proto__',
    'a.b',
    '1..2',
  ],
  ...[
    '(',
    ')',
    '()',
    '(1',
    '1)',
    '1 +',
    '* 2',
    '1 2',
    '+',
    `${'('.repeat(17)}1${')'.repeat(17)}`,
    '('.repeat(100_000),
    '1+'.repeat(50_000),
  ],
];

describe('arithmetic reaches nothing but arithmetic', () => {
  it.each(reachingOut.map((text) => [text.slice(0, 30), text]))(
    '%s: refused on a command line',
    async (_, text) => {
      for (const words of [
        ['emulsifier', '--oil', '4%', '--ratio', '1:3', `--batch=${text} g`],
        ['drops', '--target', '0.5 ppb', '--in', '6 L', '--stock', '10 ppm', `--drop=(${text}) g`],
      ]) {
        const ran = await neckring(words);
        expect([ran.code, ran.out]).toEqual([2, '']);
        expect(ran.err.trimEnd().split('\n')).toHaveLength(1);
      }
    },
  );

  it('refused in a file, each with its place, and all of them at once', async () => {
    const fit = reachingOut.filter((text) => text.length < 2000);
    const lines = fit.map((text) => `    - water: ${JSON.stringify(`${text} g`)}`);
    const folder = await ledgerOf({ 'trials/1.yaml': `trial: 1\nstages:\n  drink:\n${lines.join('\n')}\n` });
    const ran = await neckring(['check', '--json'], { folder });
    const problems = rows(record(JSON.parse(ran.out))['problems']);
    const places = new Set(problems.map(({ line }) => line));
    expect(fit.filter((_, at) => !places.has(at + 4))).toEqual([]);
  });

  it('leaves the next sum as it is', async () => {
    await loadArithmetic();
    for (const text of reachingOut) parseAmount(`${text} g`);
    const sum = parseAmount('(30 + 2.5) * 2 g');
    expect(sum.ok && sum.value.quantity).toMatchObject({ value: 65, unit: 'g' });
  });
});

const objectWords = ['__proto__', 'constructor', 'toString', 'hasOwnProperty', 'prototype', 'valueOf'];

/** A ledger in which nearly everything that has a name has this one. */
const namedLedger = (name: string): Promise<string> =>
  ledgerOf({
    'bench.yaml': `${lisbonBench}  tastes:\n    - ${name}\n  vessels:\n    - name: ${name}\n      volume: 1 L\n`,
    'ingredients.yaml': `ingredients:\n  ${name} stock:\n    contains:\n      cassis thiol: 2 ppm\n      propylene glycol: rest\n    drop: 0.021 g\n    aliases:\n      - ${name}\n`,
    'trials/1.yaml': `trial: 1\ntitle: ${name}\nmade: 2026-03-02T10:15+00:00\nseries: ${name}\nstages:\n  ${name} emulsion:\n    - sweet orange oil: 2 g\n    - polysorbate 80: 6 g\n    - ${name}: 1 g\n    - water: to 50 g\nsamples:\n  ${name}:\n    of: ${name} emulsion\nobservations:\n  - at: 2026-03-03T10:15+00:00\n    sample: ${name}\n    look: hazy\n    taste:\n      ${name}: 2\n    note: ${name}\n`,
    'trials/2.yaml': `trial: 2\nmade: 2026-03-02T10:20+00:00\nfrom: 1\nseries: ${name}\nstages:\n  ${name}:\n    - sweet orange oil: 1 g\n    - polysorbate 80: 6 g\n    - water: to 50 g\n  drink:\n    - ${name}: 1 g\n    - citric acid: 4.5 g/L\n    - water: to 1 L\n`,
    [`series/${name}.yaml`]: `series: ${name}\nvaries: oil per emulsifier\nsame:\n  - ${name}\n`,
    [`formulas/${name}.yaml`]: `formula: ${name}\nstages:\n  drink:\n    - ${name} stock: 1 g\n    - citric acid: 4.5 g/L\n    - water: to 1 L\naim:\n  ph: 2 to 4\n`,
    'notes.csv': `${name},Oil\n${name},2\n`,
    'map.yaml': `${name}: title\nOil: stages.${name}.sweet orange oil in g\n`,
  });

const onNames = (name: string): readonly (readonly string[])[] => [
  ...[
    ['check'],
    ['list'],
    ['show', '1'],
    ['show', '2'],
    ['series', name],
    ['drink', name],
    ['drink', '2'],
    ['due', '--all'],
  ],
  ...[['why', '1'], ['uses', name], ['compare', '1', '2'], ['reckon', '1', '2'], ['stocks'], ['cost', name]],
  ...[
    ['give', name],
    ['give', name, '--as', 'yaml', '--with', 'all'],
    ['export', 'compositions', '1'],
    ['export', 'observations', name],
  ],
  ...[
    ['scale', name, '--to', '20 L drink'],
    ['ladder', '1', '--rungs', '1:4, 1:3', '--series', name, '--write'],
    ['next', name],
  ],
  ...[
    ['observe', '1', '--sample', name, '--taste', `${name}=3`],
    ['look', '1', 'clear', '--sample', name, '--note', name],
  ],
  ...[
    ['decide', name, name],
    ['import', 'notes.csv', '--map', 'map.yaml'],
    ['new', '--title', name, '--stage', name, '--item', `2 g ${name}`],
  ],
  ...[
    ['batch', 'record', name, '--to', '20 L drink', '--name', name],
    ['batch'],
    ['show', name],
    ['weigh', '1', name, '1.01'],
    ['end', '1', '--sample', name, '--why', name],
  ],
  ...[
    ['swap', name, '--out', `${name} stock`, '--in', 'cassis thiol'],
    ['dilute', '--of', `${name} stock`, '--to', '1 ppb', '--in', '1 kg', '--balance', '0.01 g up to 600 g'],
  ],
  ...[['ingredient', name], [name], [`--${name}`], ['help', name], ['new', `--${name}`]],
];

describe('names that every object has are names like others', () => {
  it.each(objectWords)(
    'law: %s behaves as "zeta" does, in every command',
    async (name) => {
      const [named, plain] = [await namedLedger(name), await namedLedger('zeta')];
      const plainLines = onNames('zeta');
      for (const [at, words] of onNames(name).entries()) {
        const ran = await neckring(words, { folder: named });
        const other = await neckring(plainLines[at] ?? [], { folder: plain });
        expect([words, ran.code, ran.err.includes('defect')]).toEqual([words, other.code, false]);
        // Marks of answers, widths, carets and the order of names follow the letters of a name; the words do not.
        const wordsOf = (text: string): readonly string[] =>
          text
            .replaceAll('\\_', '_')
            .toLowerCase()
            .replaceAll(name.toLowerCase(), 'zeta')
            .replace(new RegExp(`${name.toLowerCase().slice(0, 8)}\\w*…`, 'g'), 'zeta')
            .replaceAll(name.toLowerCase().replaceAll('_', ''), 'zeta')
            .split(/[0-9a-f]{8}|[\s|^-]+/)
            .sort();
        expect([words, wordsOf(ran.out)]).toEqual([words, wordsOf(other.out)]);
      }
      expect([Object.getPrototypeOf({}), Object.keys(Object.prototype)]).toEqual([Object.prototype, []]);
    },
    60_000,
  );
});

/** More than any program could read into memory: the length is written down, the bytes are never there. */
async function hugeFile(path: string): Promise<void> {
  await mkdir(dirname(path), { recursive: true });
  const handle = await open(path, 'w');
  await handle.truncate(100 * 2 ** 30);
  await handle.close();
}

const huge: readonly (readonly [file: string, ...lines: (readonly string[])[]])[] = [
  [
    'trials/0014-orange-1-to-2.5.yaml',
    ['show', '14'],
    ['observe', '14', '--look', 'clear'],
    ['list'],
    ['check'],
    ['due'],
  ],
  ['series/orange-ladder.yaml', ['check'], ['series', 'orange ladder']],
  ['formulas/orange-cardamom.yaml', ['check'], ['drink', 'orange cardamom'], ['give', 'orange cardamom']],
  ['batches/first.yaml', ['show', 'first'], ['batch'], ['check']],
  ['bench.yaml', ['check'], ['list'], ['show', '13']],
  ['ingredients.yaml', ['drink', '17'], ['stocks'], ['check']],
  ['notes.csv', ['import', 'notes.csv', '--map', 'bench.yaml']],
  ['map.yaml', ['import', 'series/orange-ladder.yaml', '--map', 'map.yaml']],
  ['gift.yaml', ['take', 'gift.yaml']],
  ['../seen.jpg', ['observe', '14', '--photo', '../seen.jpg']],
  [
    'other.yaml',
    ['merge-driver', 'bench.yaml', 'other.yaml', 'bench.yaml', '--path', 'trials/0014.yaml', '--plan'],
  ],
  ['other.yaml', ['diff-driver', 'other.yaml', '--text']],
];

describe('files of 100 GB, refused by their size and unread', () => {
  it.each(huge.map(([file, ...lines]) => [file, lines] as const))('%s', async (file, lines) => {
    const folder = await exampleLedger();
    await hugeFile(join(folder, file));
    for (const words of lines) {
      const ran = await neckring(words, { folder });
      expect([words, ran.code === 70]).toEqual([words, false]);
      // Commands that do without the file go on; those that need it say what is wrong with it.
      if (words[0] === 'check' || words === lines[0])
        expect([words, `${ran.out}${ran.err}`]).toEqual([
          words,
          expect.stringMatching(/too large|is 107374 MB/),
        ]);
    }
  });
});
