import { describe, expect, it } from 'vitest';
import { edit } from '../../../src/ledger/edit.ts';
import { setKey, setScalar } from '../../../src/ledger/edit-map.ts';
import type { FactValue } from '../../../src/ledger/fact-text.ts';

describe('setScalar', () => {
  it.each([
    ['a: 1  # one\nb: 2\n', 'x', 'a: x  # one\nb: 2\n'],
    ["a:   '1'\n", 'x: y', 'a:   "x: y"\n'],
    ['a:\nb: 2\n', 'x', 'a: x\nb: 2\n'],
    ['a:', 'x', 'a: x'],
    ['a: |\n  one\n  two\n\nb: 2\n', 'x', 'a: x\n\nb: 2\n'],
    ['a: |\r\n  one\r\nb: 2\r\n', 'x\ny', 'a: |-\r\n  x\r\n  y\r\nb: 2\r\n'],
    ['a: 1\nb: 2\n', 'x\ny\n', 'a: |\n  x\n  y\nb: 2\n'],
    ['a: 1  # one\n', 'x\ny', 'a: "x\\ny"  # one\n'],
    ['a: one\n  two # so\nb: 2\n', 'x', 'a: x # so\nb: 2\n'],
    ['a: 1\n', '', 'a: ""\n'],
  ])('%j', (from, text, to) => {
    expect(edit('t.yaml', from, setScalar(['a'], text))).toMatchObject({ ok: true, text: to });
  });

  it('quotes what braces would break', () => {
    expect(edit('t.yaml', 'a: { b: 1, c: [2] }\n', setScalar(['a', 'b'], 'x, y'))).toMatchObject({
      text: 'a: { b: "x, y", c: [2] }\n',
    });
    expect(edit('t.yaml', 'a: { b: 1, c: [2] }\n', setScalar(['a', 'c', 0], '3'))).toMatchObject({
      text: 'a: { b: 1, c: [3] }\n',
    });
  });

  it('refuses a place where no text stands', () => {
    for (const path of [['b'], ['a'], ['a', 'b', 'c']]) {
      expect(edit('t.yaml', 'a: { b: 1 }\n', setScalar(path, 'x'))).toMatchObject({
        problems: [{ code: 'no-such-fact' }],
      });
    }
  });
});

interface Row {
  readonly what: string;
  readonly from: string;
  readonly path: readonly string[];
  readonly value: FactValue;
  readonly to: string;
}

const rows: readonly Row[] = [
  {
    what: 'a new map at the end',
    from: 'series: x\n# end\n',
    path: ['decided'],
    value: '3',
    to: 'series: x\n# end\ndecided:\n  k: 3\n',
  },
  {
    what: 'into a map, before a comment that is indented less, after one that is not',
    from: 'decided:\n  text: y\n  # because\n# end\nsame: z\n',
    path: ['decided'],
    value: '3',
    to: 'decided:\n  text: y\n  # because\n  k: 3\n# end\nsame: z\n',
  },
  {
    what: 'under a key with nothing after it',
    from: 'decided:   # when done\n  # soon\nsame: z\n',
    path: ['decided'],
    value: '3',
    to: 'decided:   # when done\n  # soon\n  k: 3\nsame: z\n',
  },
  {
    what: 'in place of its text',
    from: 'decided:\n  k: 2 # x\n',
    path: ['decided'],
    value: '3',
    to: 'decided:\n  k: 3 # x\n',
  },
  {
    what: 'into braces',
    from: 'decided: { text: y }\n',
    path: ['decided'],
    value: 'a, b',
    to: 'decided: { text: y, k: "a, b" }\n',
  },
  {
    what: 'into empty braces',
    from: 'decided: {}\n',
    path: ['decided'],
    value: '3',
    to: 'decided: { k: 3 }\n',
  },
  {
    what: 'two maps down',
    from: 'a:\n    b: 1\n',
    path: ['a', 'c'],
    value: '3',
    to: 'a:\n    b: 1\n    c:\n      k: 3\n',
  },
  {
    what: 'facts under a key with nothing after it',
    from: 'k:\nb: 1\n',
    path: [],
    value: [
      ['x', '1'],
      ['y', '2'],
    ],
    to: 'k:\n  x: 1\n  y: 2\nb: 1\n',
  },
  {
    what: 'at the top, in CRLF',
    from: 'a: 1\r\nresults: []\r\n',
    path: [],
    value: '3',
    to: 'a: 1\r\nk: 3\r\nresults: []\r\n',
  },
];

describe('setKey', () => {
  it.each(rows)('$what', ({ from, path, value, to }) => {
    expect(edit('t.yaml', from, setKey(path, 'k', value, ['results']))).toMatchObject({ ok: true, text: to });
  });

  it.each([
    ['through a text', 'decided: yes\n', ['decided'], 'not-a-map'],
    ['through a list', 'decided:\n  - k: 1\n', ['decided'], 'not-a-map'],
    ['over more than a text', 'k:\n  - 1\n', [], 'key-exists'],
  ])('refuses to write %s', (_what, from, path, code) => {
    expect(edit('t.yaml', from, setKey(path, 'k', '3'))).toMatchObject({ ok: false, problems: [{ code }] });
  });
});
