import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isMap, isScalar, isSeq, parseDocument } from 'yaml';
import { keyText, plainOrQuoted } from '../../../src/ledger/yaml-text.ts';

function readBack(document: string): readonly unknown[] {
  const read = parseDocument(document, { schema: 'failsafe', version: '1.2', logLevel: 'silent' });
  expect(read.errors).toEqual([]);
  if (!isMap(read.contents)) return [];
  return read.contents.items.flatMap(({ key, value }) => [
    isScalar(key) ? key.value : key,
    ...(isScalar(value)
      ? [value.value]
      : isSeq(value)
        ? value.items.map((item) => (isScalar(item) ? item.value : item))
        : []),
  ]);
}

describe('plainOrQuoted', () => {
  it.each([
    ['faint smell only', 'faint smell only'],
    ['0.030 g', '0.030 g'],
    ['-5 C', '-5 C'],
    ['no', 'no'],
    ['clear, ring', 'clear, ring'],
    ['2026-03-02T10:15+00:00', '2026-03-02T10:15+00:00'],
    ['', '""'],
    ['held: 3 d', '"held: 3 d"'],
    ['ends in a colon:', '"ends in a colon:"'],
    ['lot #7', '"lot #7"'],
    ['lot#7', 'lot#7'],
    ['- a bullet', '"- a bullet"'],
    ['? a question', '"? a question"'],
    ['@ noon', '"@ noon"'],
    ['% of it', '"% of it"'],
    ['*bold*', '"*bold*"'],
    ['[a]', '"[a]"'],
    ['{a}', '"{a}"'],
    [', so', '", so"'],
    ['said "clear"', 'said "clear"'],
    ['"clear"', `'"clear"'`],
    [`"it's"`, `"\\"it's\\""`],
    ['---', '"---"'],
    [' lead', '" lead"'],
    ['trail ', '"trail "'],
    ['a\tb', '"a\\tb"'],
    ['a\u0000b\u001b[2J', '"a\\x00b\\x1b[2J"'],
    ['\ufeffa', '"\\ufeffa"'],
    ['a\u2028b', '"a\\u2028b"'],
    ['a\u202eb', '"a\\u202eb"'],
    ['first\nsecond', '|-\n    first\n    second'],
    ['first\n\nsecond: #x\n', '|\n    first\n\n    second: #x'],
    [' first\nsecond', '" first\\nsecond"'],
    ['first\nsecond\n\n', '"first\\nsecond\\n\\n"'],
    ['first \nsecond', '"first \\nsecond"'],
    ['a\r\nb', '"a\\r\\nb"'],
  ])('writes %j as %j', (text, written) => {
    expect(plainOrQuoted(text, 4)).toBe(written);
  });

  const anyText = fc.oneof(
    fc.string({ unit: 'binary' }),
    fc.string({ unit: 'grapheme' }),
    fc.string({
      unit: fc.constantFrom(...'ab 0:#-?@%*&!|>\'"[]{},\\\n\r\t~=<`.\u0085\u00a0\ufeff\u2028\u202e\u0007'),
    }),
  );

  // Source: YAML 1.2.2, chapters 7.3 and 8.1, as read by the yaml library.
  it('law: any text reads back letter for letter, in a map and in a list, whatever stands around it', () => {
    fc.assert(
      fc.property(anyText, anyText, (text, other) => {
        const document = `${keyText(other)}: ${plainOrQuoted(text, 2)}\nlist:\n  - ${plainOrQuoted(text, 4)}\nend: x\n`;
        fc.pre(other !== 'list' && other !== 'end');
        expect(readBack(document)).toEqual([other, text, 'list', text, 'end', 'x']);
      }),
      { numRuns: 3000 },
    );
  });

  it('law: what is written never holds a raw control character but the line feed of a block', () => {
    fc.assert(
      fc.property(anyText, (text) => {
        expect(plainOrQuoted(text, 2)).not.toMatch(
          /[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u2028\u2029\ufeff]/,
        );
      }),
    );
  });
});
