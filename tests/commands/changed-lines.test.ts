import { expect, it } from 'vitest';
import { changedLines } from '../../src/commands/land-text.ts';

it.each([
  ['a\nb\nc\n', 'a\nb\nc\n', []],
  ['a\nc\n', 'a\nb\nc\n', ['+ b']],
  ['a\nb\nc\n', 'a\nc\n', ['- b']],
  ['a\nb\nc\n', 'a\nB\nc\n', ['- b', '+ B']],
  ['one\ntwo\nthree\n', 'one\n  x\ntwo\n  y\nthree\n', ['+   x', '+   y']],
  ['a\r\nb\r\n', 'a\r\nx\r\nb\r\n', ['+ x']],
  ['', 'a', ['- ', '+ a']],
])('%j to %j', (before, after, lines) => {
  expect(changedLines(before, after)).toEqual(lines);
});
