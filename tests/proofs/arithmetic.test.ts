import { describe, expect, it } from 'vitest';
import { loadArithmetic } from '../../src/calc/arithmetic.ts';
import { parseAmount } from '../../src/calc/parse-amount.ts';
import { neckring, record, rows } from '../commands/neckring.ts';
import { ledgerOf } from '../commands/small-ledger.ts';

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
