import { expect, test } from 'vitest';
import { parseRatio, parseThrow } from '../../src/calc/ratio.ts';

test.each([
  ['1:2', 1, 2],
  ['1 : 2', 1, 2],
  ['1 to 2', 1, 2],
  ['1:2.5', 1, 2.5],
  [' 3:1 ', 3, 1],
])('parseRatio(%j) is %d to %d', (text, left, right) => {
  expect(parseRatio(text)).toEqual({ ok: true, value: { left, right } });
});

test.each([
  ['', 'not-a-ratio', '"" is not a ratio', 'write two numbers with a colon, such as 1:2'],
  ['1', 'not-a-ratio', '"1" is not a ratio', 'write two numbers with a colon, such as 1:2'],
  ['1:2:3', 'not-a-ratio', '"1:2:3" is not a ratio', 'write two numbers with a colon, such as 1:2'],
  ['1/2', 'not-a-ratio', '"1/2" is not a ratio', 'write 1:2'],
  ['1:0', 'not-a-ratio', '"1:0" has a side that is 0', 'both sides are above 0, such as 1:2'],
  ['1:-2', 'signed-number', '"-2" has a sign in "1:-2"', 'write 2'],
  ['1,5:2', 'decimal-comma', '"1,5" has a comma where the decimal point belongs in "1,5:2"', 'write 1.5'],
  [
    '1:x',
    'not-a-number',
    '"x" is not a number in "1:x"',
    'write digits with a decimal point, such as 2.5 or 1.2e-3',
  ],
])('parseRatio(%j) is refused: %s', (text, code, message, hint) => {
  expect(parseRatio(text)).toMatchObject({ ok: false, fault: { code, message, hint } });
});

test.each([
  ['1+4', 1, 4, '1+4'],
  ['4', 1, 4, '1+4'],
  ['1 + 4', 1, 4, '1+4'],
  ['5.5', 1, 5.5, '1+5.5'],
  ['2+7', 2, 7, '2+7'],
])('parseThrow(%j) is %d of syrup and %d of water', (text, syrupParts, waterParts, written) => {
  expect(parseThrow(text)).toEqual({ ok: true, value: { syrupParts, waterParts, written } });
});

const bothReadings = 'write 1+5 (1 of syrup and 5 of water) or 1+4 (1 of syrup in 5 of drink)';

test.each([
  ['1:5', 'doubtful-throw', '"1:5" may be read in two ways', bothReadings],
  ['1 to 5', 'doubtful-throw', '"1 to 5" may be read in two ways', bothReadings],
  ['1/5', 'doubtful-throw', '"1/5" may be read in two ways', bothReadings],
  ['5:1', 'not-a-throw', '"5:1" is not a throw', 'write 5+1 (5 of syrup and 1 of water)'],
  ['1+0', 'not-a-throw', '"1+0" has a side that is 0', 'both sides are above 0, such as 1+4'],
  ['1+4+2', 'not-a-throw', '"1+4+2" is not a throw', 'write the parts of syrup and of water, such as 1+4'],
  ['1+', 'not-a-throw', '"1+" is not a throw', 'write the parts of syrup and of water, such as 1+4'],
  ['', 'not-a-throw', '"" is not a throw', 'write the parts of syrup and of water, such as 1+4'],
  ['1,5', 'decimal-comma', '"1,5" has a comma where the decimal point belongs', 'write 1.5'],
])('parseThrow(%j) is refused: %s', (text, code, message, hint) => {
  expect(parseThrow(text)).toMatchObject({ ok: false, fault: { code, message, hint } });
});
