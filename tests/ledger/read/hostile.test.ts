import { describe, expect, it } from 'vitest';
import { decodeFile, guardText, largestBytes } from '../../../src/ledger/guard.ts';
import { readText } from '../../../src/ledger/open-file.ts';
import { readTrialCard } from '../../../src/ledger/read-trial.ts';
import type { Problem } from '../../../src/problem.ts';

const head = 'trial: 14\nstages:\n  emulsion:\n    - water: 20 g\n';

interface Timed {
  readonly problems: readonly Problem[];
  readonly milliseconds: number;
}

function timed(text: string): Timed {
  const start = performance.now();
  const { problems } = readText('trials/0014.yaml', text, (document) => readTrialCard(document, {}));
  return { problems, milliseconds: performance.now() - start };
}

const lines = (count: number, line: (index: number) => string): string =>
  Array.from({ length: count }, (_, index) => line(index)).join('\n');

/** Seen to hang the library or to end the process from inside, and their like. */
const hostile: Readonly<Record<string, string>> = {
  'thousands of [': '['.repeat(4000),
  'thousands of [ over lines': lines(200, () => '['.repeat(100)),
  'thousands of { after a key': `${head}note: ${'{'.repeat(3000)}`,
  'brackets opened line by line at the head': lines(5000, () => '['),
  'brackets opened line by line as items': lines(5000, () => '- ['),
  'brackets after keys, each further in': lines(60, (index) => `${' '.repeat(index)}a: [`),
  'question marks': '? '.repeat(300),
  'question marks over lines': lines(300, (index) => `${' '.repeat(index)}? a`),
  dashes: '- '.repeat(2000),
  'dashes after a key': `a: ${'- '.repeat(2000)}x`,
  'colons in a row': ': '.repeat(2000),
  'keys in a row': lines(1, () => 'a: '.repeat(1300)),
  'keys in a row, many lines of them': lines(60, () => 'a: '.repeat(1300)),
  'closing brackets': '}'.repeat(4000),
  'closing brackets over lines': lines(60, () => '}'.repeat(4000)),
  'closing brackets after keys': lines(20_000, () => 'a: }'),
  'double quotes': '"'.repeat(4000),
  'double quotes over lines': lines(60, () => '"'.repeat(4000)),
  'double quotes after keys': lines(30_000, () => 'a: "'),
  'single quotes': lines(60, () => "'".repeat(4001)),
  'tabs at the head': lines(20_000, () => '\ta: b'),
  'stray signs': lines(20_000, () => 'a: @b'),
  'colons inside text': lines(10_000, () => 'a: b: c'),
  'twice the same key': lines(40_000, () => 'a: b'),
  'forty thousand keys': lines(40_000, (index) => `k${index}:`),
  'forty thousand unknown keys after a good head': head + lines(20_000, (index) => `k${index}: x`),
  'forty thousand items': `${head}observations:\n${lines(40_000, () => '- a')}`,
  'items without amounts': `trial: 14\nstages:\n  emulsion:\n${lines(15_000, () => '    - water:')}`,
  'staircase of keys': lines(200, (index) => `${' '.repeat(index)}a:`),
  'anchors and aliases': `a: &a [x]\n${lines(5000, (index) => `b${index}: &b${index} [*a, *a]`)}`,
  tags: lines(10_000, () => 'a: !!binary x'),
  directives: lines(10_000, () => '%YAML 1.2'),
  documents: lines(20_000, () => '---'),
  'document ends': lines(20_000, () => '...'),
  'block scalars': lines(20_000, () => 'a: |'),
  'long text of digits': `trial: ${'9'.repeat(4000)}\n`,
  'a long amount': `trial: 14\nstages:\n  emulsion:\n    - water: ${'(1+'.repeat(1000)} g\n`,
  'carriage returns alone': 'a: b\r'.repeat(800),
  'conflict markers': lines(20_000, () => '<<<<<<< x'),
  'a line of 5,000': `note: ${'x'.repeat(5000)}`,
  'NUL in a value': `${head}note: a\0b`,
  'replacement characters': lines(20_000, () => '\ufffd: \ufffd'),
  'lone surrogates': lines(20_000, () => '\ud800: \ud800'),
};

/**
 * Each must come back with a place. The bound tells a hang, which takes minutes, from a file that is read to its
 * end; it is no measurement, and leaves room for a machine that does other things at the same time.
 */
const hangMilliseconds = 10_000;

describe('hostile texts', () => {
  it.each(Object.entries(hostile))('%s: refused with a place, at once', (_, text) => {
    const { problems, milliseconds } = timed(text);
    expect(problems[0]?.place?.line).toBeGreaterThan(0);
    expect(problems[0]?.place?.column).toBeGreaterThan(0);
    expect(problems.every((problem) => problem.place !== undefined)).toBe(true);
    expect(milliseconds).toBeLessThan(hangMilliseconds);
  });

  it('several such files in one process, one after the other', () => {
    const codes = Array.from({ length: 20 }, () => timed('['.repeat(4000)).problems[0]?.code);
    expect(new Set(codes)).toEqual(new Set(['too-deep']));
  });
});

const bytes = (...values: readonly number[]): Uint8Array => new Uint8Array(values);

describe('bytes', () => {
  it('refuses what is not UTF-8 at its line and column', () => {
    const decoded = decodeFile(
      'a.yaml',
      new Uint8Array([...Buffer.from('a: é\nb: '), 0xe9, ...Buffer.from('t\n')]),
    );
    const place = 'problem' in decoded ? decoded.problem.place : undefined;
    expect([place?.line, place?.column]).toEqual([2, 4]);
  });

  it('takes a replacement character that was typed', () => {
    expect(decodeFile('a.yaml', Buffer.from('a: \ufffd'))).toEqual({ text: 'a: \ufffd' });
  });

  it('keeps the byte order mark', () => {
    expect(decodeFile('a.yaml', bytes(0xef, 0xbb, 0xbf, 0x61))).toEqual({ text: '\ufeffa' });
  });

  it('refuses a file above 256 KiB, and not one of exactly 256 KiB', () => {
    const over = decodeFile('a.yaml', new Uint8Array(largestBytes + 1).fill(0x61));
    expect('problem' in over ? over.problem.code : '').toBe('file-too-large');
    expect('text' in decodeFile('a.yaml', new Uint8Array(largestBytes).fill(0x61))).toBe(true);
  });
});

/** What people do type must not be taken for an attack. */
describe('texts that only look odd', () => {
  const harmless: Readonly<Record<string, string>> = {
    'a ruler of dashes in a comment': `# ${'- '.repeat(40)}\n${head}`,
    'a ruler of brackets in a comment': `# ${'[ '.repeat(40)}\n${head}`,
    'brackets inside words': `${head}note: ${'f[x'.repeat(40)}\n`,
    'brackets opened and never closed, in many notes': `${head}observations:\n${lines(
      40,
      () => '  - at: 2026-03-03T09:10+00:00\n    note: seen (on [the left',
    )}\n`,
    'a literal block with deep text': `${head}note: |\n  one\n    - - two\n        [ three\n`,
    'a line of 4,096': `${head}note: ${'x'.repeat(4090)}\n`,
    'windows line ends': head.replaceAll('\n', '\r\n'),
    'a byte order mark': `\ufeff${head}`,
    'a byte order mark before a comment': `\ufeff# mine\r\n${head.replaceAll('\n', '\r\n')}`,
    'a first line of three dashes': `---\n${head}`,
    'no line end at the end': head.trimEnd(),
  };

  it.each(Object.entries(harmless))('%s', (_, text) => {
    expect(guardText('a.yaml', text)).toBeUndefined();
    expect(timed(text).problems).toEqual([]);
  });
});
