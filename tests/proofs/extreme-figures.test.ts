import { describe, expect, it } from 'vitest';
import type { CommandSpec } from '../../src/commands/command.ts';
import { allCommands } from '../../src/commands/families.ts';
import { exampleFor } from '../commands/example-files.ts';
import { neckring, record } from '../commands/neckring.ts';
import { ledgerOf } from '../commands/small-ledger.ts';

/** What no figure may be printed as; `[object` is a text that was never made one. */
const nonsense = /.{0,60}(?:\bNaN\b|\bInfinity\b|\bundefined\b|\[object).{0,20}/;

const isThorough = Number(process.env['NECKRING_ROUNDS'] ?? 0) >= 50;
/** The ends of what is taken as a number, the ends of the doubles, and slips of the finger. */
const figures = isThorough
  ? ['5e-324', '1e-300', '1e-29', '1e-12', '1e-9', '0', '1e12', '1e29', '1e300', '1.7e308']
  : ['1e-29', '0', '1e29', '1.7e308'];

/** The words of a line as a shell splits them; only double quotes are used. */
const wordsOf = (line: string): readonly string[] =>
  [...line.matchAll(/"([^"]*)"|(\S+)/g)].map(([, quoted, bare]) => quoted ?? bare ?? '');

const number = /(?<![\w.-])\d+(?:\.\d+)?(?!\w*-)/g;

/** The line with one of its numbers after the other replaced. */
function* spoiltLines(words: readonly string[], figure: string): Generator<readonly string[]> {
  for (const [at, word] of words.entries())
    for (const match of word.matchAll(number)) {
      const spoilt = word.slice(0, match.index) + figure + word.slice(match.index + match[0].length);
      yield words.with(at, spoilt);
    }
}

/** The keys of leaves without a figure: JSON has no other way to write NaN. */
function* emptyLeaves(value: unknown, key = ''): Generator<string> {
  if (typeof value !== 'object' || value === null) return;
  if ('value' in value && 'unit' in value) {
    if (value.value === null) yield key;
    return;
  }
  for (const [name, inner] of Object.entries(value)) yield* emptyLeaves(inner, name);
}

/** Where there may be no figure: too little oil to be seen, no published intake, a bottle without carbonation. */
const mayBeEmpty: ReadonlySet<string> = new Set([
  ...['largestClearDiameter', 'largestClearLow', 'largestClearHigh'],
  ...['serving', 'day', 'perBodyMass', 'figure', 'share'],
  ...[
    'carbonation',
    'waterCarbonation',
    'waterCarbonDioxide',
    'waterPressure',
    'drinkPressure',
    'temperature',
  ],
]);

const reckoning: ReadonlySet<string> = new Set(
  'dilute dropper cost scale drink swap correct labels'.split(' '),
);
const isReckoning = ({ group, name }: CommandSpec): boolean => group === 'Calculate' || reckoning.has(name);

const specs = (await allCommands()).filter(isReckoning);

describe('figures at the ends of what a number can be', () => {
  it.each(specs.map((spec) => [spec.name, spec.examples] as const))(
    'law: %s: each answer is finite, or the line is refused; never NaN, Infinity or a defect',
    async (_, examples) => {
      const folder = await exampleFor('');
      for (const { line } of examples) {
        const words = wordsOf(line);
        const plain = await neckring([...words, '--json'], { folder });
        const empty = new Set([...mayBeEmpty, ...emptyLeaves(record(JSON.parse(plain.out))['found'])]);
        for (const spoilt of figures.flatMap((figure) => [...spoiltLines(words, figure)])) {
          const page = await neckring([...spoilt, '--explain'], { folder });
          const json = await neckring([...spoilt, '--json'], { folder });
          const odd = nonsense.exec(`${page.out}\n${page.err}\n${json.out}`)?.[0];
          expect([spoilt, page.code <= 2, json.code <= 2, odd]).toEqual([spoilt, true, true, undefined]);
          const lost = [...emptyLeaves(record(JSON.parse(json.out))['found'])].filter(
            (key) => !empty.has(key),
          );
          expect([spoilt, lost]).toEqual([spoilt, []]);
        }
      }
    },
    120_000,
  );

  it.each(['1e31 g', '1e-31 g', '1.7e308 t', '(1e20 * 1e20) g', '1e-300 ppm'])(
    'in a file %s is told at its line and column',
    async (typed) => {
      const folder = await ledgerOf({
        'trials/1.yaml': `trial: 1\nstages:\n  drink:\n    - water: 1 L\n    - sucrose: ${typed}\n`,
      });
      for (const words of [['check'], ['show', '1'], ['drink', '1'], ['reckon', '1']]) {
        const ran = await neckring(words, { folder });
        const said = `${ran.out}${ran.err}`;
        expect([words, ran.code === 1 || ran.code === 2]).toEqual([words, true]);
        expect([words, said]).toEqual([
          words,
          expect.stringMatching(
            /trials\/1\.yaml:5:16: "[^"]+" is (?:too (?:large|small) to be meant|not an ordinary number)/,
          ),
        ]);
      }
    },
  );
});
