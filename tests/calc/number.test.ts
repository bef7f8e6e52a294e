import fc from 'fast-check';
import { expect, test } from 'vitest';
import { isBareNumber, parseNumber } from '../../src/calc/number.ts';

test.each([
  ['2', 2],
  ['2.5', 2.5],
  ['.5', 0.5],
  ['007', 7],
  ['2.5e3', 2500],
  ['1E-3', 0.001],
  ['1e+2', 100],
  ['  3.20 ', 3.2],
])('parseNumber(%j) is %d', (text, value) => {
  expect(parseNumber(text)).toEqual({ ok: true, value });
});

test('a sign is read only where it is asked for, and -0 is 0', () => {
  expect(parseNumber('-2.5', { signed: true })).toEqual({ ok: true, value: -2.5 });
  expect(parseNumber('+2.5', { signed: true })).toEqual({ ok: true, value: 2.5 });
  expect(parseNumber('-0', { signed: true })).toEqual({ ok: true, value: 0 });
});

test.each([
  ['', 'no-number', 'there is no number', 'write digits, such as 2.5'],
  ['-2', 'signed-number', '"-2" has a sign', 'write 2'],
  ['2,5', 'decimal-comma', '"2,5" has a comma where the decimal point belongs', 'write 2.5'],
  ['0,500', 'decimal-comma', '"0,500" has a comma where the decimal point belongs', 'write 0.500'],
  ['1.000,5', 'decimal-comma', '"1.000,5" has a comma where the decimal point belongs', 'write 1000.5'],
  ['1,000', 'thousands-comma', '"1,000" has a comma in it', 'write 1000 (or 1.000 for a decimal comma)'],
  ['1,000,000', 'thousands-comma', '"1,000,000" has a comma in it', 'write 1000000'],
  ['1,000.5', 'thousands-comma', '"1,000.5" has a comma in it', 'write 1000.5'],
  ['NaN', 'not-finite', '"NaN" is not an ordinary number', 'write it in digits, such as 2.5'],
  ['Infinity', 'not-finite', '"Infinity" is not an ordinary number', 'write it in digits, such as 2.5'],
  ['1e999', 'not-finite', '"1e999" is not an ordinary number', 'write it in digits, such as 2.5'],
  ['5.', 'not-a-number', '"5." ends in a point', 'write 5'],
  [
    '0x10',
    'not-a-number',
    '"0x10" is not a number',
    'write digits with a decimal point, such as 2.5 or 1.2e-3',
  ],
  ['1e', 'not-a-number', '"1e" is not a number', 'write digits with a decimal point, such as 2.5 or 1.2e-3'],
  [
    '1 000',
    'not-a-number',
    '"1 000" is not a number',
    'write digits with a decimal point, such as 2.5 or 1.2e-3',
  ],
  ['٣', 'not-a-number', '"٣" is not a number', 'write digits with a decimal point, such as 2.5 or 1.2e-3'],
])('parseNumber(%j) is refused: %s', (text, code, message, hint) => {
  expect(parseNumber(text)).toMatchObject({
    ok: false,
    fault: { code, message, hint, start: 0, end: text.length },
  });
});

test('the span of a fault is counted in the text as given', () => {
  expect(parseNumber('  x ')).toMatchObject({ fault: { start: 2, end: 3 } });
});

test('law: every number that can be meant, written out, is read as itself', () => {
  fc.assert(
    fc.property(fc.double({ min: 1e-30, max: 1e30, noNaN: true }), (value) => {
      expect(parseNumber(String(value))).toEqual({ ok: true, value });
    }),
  );
});

test.each(['1e31', '1e308', '1e-31', '5e-324'])('%s can not be meant', (typed) => {
  expect(parseNumber(typed)).toMatchObject({ ok: false, fault: { code: 'not-ordinary' } });
});

test('isBareNumber takes commas, so that the joined amount gets its own fault', () => {
  expect(['50', '-4', '2,5', '1,000'].map(isBareNumber)).toEqual([true, true, true, true]);
  expect(['50g', 'g', '', '1:2', '--x'].map(isBareNumber)).toEqual([false, false, false, false, false]);
});
