import { describe, expect, it } from 'vitest';
import { readCsv } from '../../src/ledger/csv/csv-read.ts';
import { csvText } from '../../src/output/csv.ts';

// RFC 4180, section 2: CRLF after each record (rule 1), commas between fields (4), quotes around fields that
// hold line ends, quotes or commas (6), a quote inside doubled (7).
describe('published: RFC 4180, section 2', () => {
  it('rule 1, 3 and 4: a head line, commas, CRLF after every record', () => {
    const text = csvText({
      head: ['field_name', 'b', 'c'],
      rows: [
        ['aaa', 'bbb', 'ccc'],
        ['zzz', undefined, 'xxx'],
      ],
    });
    expect(text).toBe('field_name,b,c\r\naaa,bbb,ccc\r\nzzz,,xxx\r\n');
  });

  it('rule 6 and 7: quotes where a field holds a line end, a comma or a quote', () => {
    expect(csvText({ head: ['a'], rows: [['b\nbb'], ['c,c'], ['b"bb'], ['plain']] })).toBe(
      'a\r\n"b\nbb"\r\n"c,c"\r\n"b""bb"\r\nplain\r\n',
    );
  });
});

describe('texts that a spreadsheet would take for a formula', () => {
  // The signs: common practice, no source.
  it.each([['=1+1'], ['+1'], ['-5 C'], ['@name'], ['\t=1'], ['\r=1']])('%j gets an apostrophe', (text) => {
    expect(csvText({ head: ['a'], rows: [[text]] }).slice(3)).toMatch(/^"?'/u);
  });

  it('numbers never do', () => {
    expect(csvText({ head: ['a', 'b'], rows: [[-5, 1e-9]] })).toBe('a,b\r\n-5,1e-9\r\n');
  });

  it('a head is guarded as a cell is', () => {
    expect(csvText({ head: ['=a'], rows: [] })).toBe("'=a\r\n");
  });
});

it('shows control characters, and takes another separator and a mark', () => {
  const sheet = { head: ['a', 'b'], rows: [['\u001b[31mred', 'x;y']] };
  expect(csvText(sheet, { separator: ';', mark: true })).toBe('\ufeffa;b\r\n\u241b[31mred;"x;y"\r\n');
});

it('law: what is written reads back, whatever stands in the cells', () => {
  const pieces = ['a', 'é', '"', '""', ',', ';', '\n', ' ', 'x y', '0', "'", '\u{1f34a}'];
  let seed = 7;
  const next = (below: number): number => {
    seed = (seed * 48271) % 2147483647;
    return seed % below;
  };
  const cell = (): string => Array.from({ length: next(6) }, () => pieces[next(pieces.length)]).join('');
  for (let turn = 0; turn < 300; turn += 1) {
    const rows = Array.from({ length: 1 + next(4) }, () => ['r', cell(), cell()]);
    const text = csvText({ head: ['h', 'b', 'c'], rows });
    const read = readCsv('t.csv', text, ',').rows.map((cells) => cells.map((one) => one.text));
    expect(read).toEqual(rows.map((cells) => cells.map((one) => (one.startsWith('\n') ? `'${one}` : one))));
  }
});
