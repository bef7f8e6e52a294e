import { describe, expect, it } from 'vitest';
import { type CsvTable, decodeCsv, largestCsvBytes, readCsv } from '../../../src/ledger/csv/csv-read.ts';
import { isProblemError } from '../../../src/problem.ts';

const texts = ({ head, rows }: CsvTable): readonly (readonly string[])[] =>
  [head, ...rows].map((cells) => cells.map(({ text }) => text));

function codeOf(action: () => unknown): string | undefined {
  try {
    action();
  } catch (thrown) {
    if (!isProblemError(thrown)) throw thrown;
    return thrown.problems[0]?.code;
  }
  return undefined;
}

describe('published: RFC 4180, section 2, as it is read', () => {
  it.each([
    ['rule 1', 'aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n'],
    ['rule 2, no line end after the last record', 'aaa,bbb,ccc\r\nzzz,yyy,xxx'],
    ['rule 5', '"aaa","bbb","ccc"\r\nzzz,yyy,xxx'],
  ])('%s', (_, text) => {
    expect(texts(readCsv('a.csv', text))).toEqual([
      ['aaa', 'bbb', 'ccc'],
      ['zzz', 'yyy', 'xxx'],
    ]);
  });

  it('rule 6 and 7: line ends and doubled quotes inside quotes', () => {
    expect(texts(readCsv('a.csv', '"aaa","b\r\nbb","c""c"\r\nzzz,yyy,xxx'))).toEqual([
      ['aaa', 'b\r\nbb', 'c"c'],
      ['zzz', 'yyy', 'xxx'],
    ]);
  });
});

describe('as spreadsheets write it', () => {
  it.each([
    ['LF', 'a,b\n1,2\n'],
    ['CR', 'a,b\r1,2\r'],
    ['a byte order mark', '\ufeffa,b\r\n1,2\r\n'],
    ['semicolons', 'a;b\r\n1;2\r\n'],
    ['tabs', 'a\tb\r\n1\t2\r\n'],
    ['empty lines', '\r\na,b\r\n\r\n1,2\r\n,\r\n'],
  ])('%s', (_, text) => {
    expect(texts(readCsv('a.csv', text))).toEqual([
      ['a', 'b'],
      ['1', '2'],
    ]);
  });

  it('the separator is the sign that stands most often in the head, outside quotes; it can be told', () => {
    expect(readCsv('a.csv', '"a,b,c,d";e;f\n').separator).toBe(';');
    expect(texts(readCsv('a.csv', 'a;b\n', ','))).toEqual([['a;b']]);
  });

  it('an empty cell at the end counts', () => {
    expect(texts(readCsv('a.csv', 'a,b,\n1,,'))).toEqual([
      ['a', 'b', ''],
      ['1', '', ''],
    ]);
  });

  it('a cell knows its place', () => {
    const { source, rows } = readCsv('a.csv', 'a,b\n"x\ny",2\n3,"4"\n');
    const cell = rows[1]?.[1];
    expect(cell && source.placeAt(cell)).toMatchObject({ file: 'a.csv', line: 4, column: 3, length: 3 });
  });
});

describe('refuses', () => {
  it.each([
    ['nothing', '', 'empty'],
    ['blank lines alone', '\r\n , \r\n', 'empty'],
    ['a quote that is not closed', 'a,b\n1,"2\n3,4\n', 'open-quote'],
    ['text after a closing quote', 'a,b\n"1"x,2\n', 'after-quote'],
    ['NUL', 'a,b\n1,\0\n', 'nul'],
    ['100,000 columns', `${'a,'.repeat(100_000)}\n`, 'too-many-columns'],
  ])('%s', (_, text, code) => {
    expect(codeOf(() => readCsv('a.csv', text))).toBe(code);
  });

  it('what is not UTF-8, at its line', () => {
    expect(codeOf(() => decodeCsv('a.csv', new Uint8Array([97, 10, 0xe9, 10])))).toBe('not-utf-8');
    expect(codeOf(() => decodeCsv('a.csv', new Uint8Array([0xff, 0xfe, 97, 0])))).toBe('utf-16');
  });

  it('a file by its size, before it is read', () => {
    expect(codeOf(() => decodeCsv('a.csv', new Uint8Array(largestCsvBytes + 1)))).toBe('file-too-large');
  });
});

describe('law: any text is read or refused, and quickly', () => {
  it('signs at random', () => {
    const signs = [
      '"',
      '""',
      ',',
      ';',
      '\t',
      '\n',
      '\r',
      '\r\n',
      'a',
      '1,5',
      '=',
      '\0',
      '\u0007',
      '\u202e',
      '\ufeff',
    ];
    let seed = 11;
    const next = (below: number): number => {
      seed = (seed * 48271) % 2147483647;
      return seed % below;
    };
    let read = 0;
    for (let turn = 0; turn < 2000; turn += 1) {
      const text = Array.from({ length: next(40) }, () => signs[next(signs.length)]).join('');
      const code = codeOf(() => {
        const table = readCsv('a.csv', text);
        for (const { start, end } of [table.head, ...table.rows].flat())
          expect(start <= end && end <= text.length).toBe(true);
      });
      if (code === undefined) read += 1;
    }
    expect(read).toBeGreaterThan(100);
  });

  it.each([
    ['one huge cell', 'x'.repeat(largestCsvBytes - 1)],
    ['one huge quoted cell', `"${'""'.repeat(largestCsvBytes / 2 - 2)}"`],
    ['nothing but quotes', '"'.repeat(largestCsvBytes - 1)],
    ['nothing but line ends', '\n'.repeat(largestCsvBytes - 1)],
    ['nothing but separators and line ends', ',\n'.repeat(largestCsvBytes / 2 - 1)],
  ])('%s of 4 MiB in under 5 s', (_, text) => {
    const start = performance.now();
    codeOf(() => readCsv('a.csv', text));
    expect(performance.now() - start).toBeLessThan(5000);
  });
});
