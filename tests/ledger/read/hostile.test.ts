import { describe, expect, it } from 'vitest';
import { decodeFile, guardText, largestBytes } from '../../../src/ledger/guard.ts';
import { readText } from '../../../src/ledger/open-file.ts';
import { readTrialCard } from '../../../src/ledger/read-trial.ts';
import type { Problem } from '../../../src/problem.ts';
import { head, hostileTexts, largeTexts, lines } from './hostile-texts.ts';

interface Timed {
  readonly problems: readonly Problem[];
  readonly milliseconds: number;
}

function timed(text: string): Timed {
  const start = performance.now();
  const { problems } = readText('trials/0014.yaml', text, (document) => readTrialCard(document, {}));
  return { problems, milliseconds: performance.now() - start };
}

/**
 * Each must come back with a place. The bound tells a hang, which takes minutes, from a file that is read to its
 * end, on a machine that does other things at the same time; `tests/bench/hostile.mjs` measures.
 */
const hangMilliseconds = 5_000;

describe('hostile texts', () => {
  it.each(Object.entries(hostileTexts))('%s: refused with a place, at once', (_, text) => {
    const { problems, milliseconds } = timed(text);
    expect(problems[0]?.place?.line).toBeGreaterThan(0);
    expect(problems[0]?.place?.column).toBeGreaterThan(0);
    expect(problems.every((problem) => problem.place !== undefined)).toBe(true);
    expect(milliseconds).toBeLessThan(hangMilliseconds);
  });

  it.each(Object.entries(largeTexts))('%s: read to the end', (_, text) => {
    expect(timed(text).problems).toEqual([]);
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
