import { beforeAll, expect, test } from 'vitest';
import { loadArithmetic } from '../../src/calc/arithmetic.ts';
import { parseItemText } from '../../src/calc/item-text.ts';

beforeAll(loadArithmetic);

const names = ['polysorbate 80', 'sweet orange oil', 'cardamom oil', '2-phenylethanol', '2,3-butanedione'];
const isKnown = (name: string): boolean => names.includes(name);

test.each([
  ['2 g polysorbate 80', 'polysorbate 80', 2, 'g', undefined],
  ['2g polysorbate 80', 'polysorbate 80', 2, 'g', undefined],
  ['2 g polysorbate 80 @ 15', 'polysorbate 80', 2, 'g', 15],
  ['2 g blossom wax @ 10.5', 'blossom wax', 2, 'g', 10.5],
  ['3 parts sweet orange oil', 'sweet orange oil', 3, 'parts', undefined],
  ['1 US fl oz cardamom oil', 'cardamom oil', 1, 'US fl oz', undefined],
  ['2 % w/v citric acid', 'citric acid', 2, '% w/v', undefined],
  ['60 mg/L cardamom oil', 'cardamom oil', 60, 'mg/L', undefined],
  ['(1 + 2) g cardamom oil', 'cardamom oil', 3, 'g', undefined],
  ['2 g 2-phenylethanol', '2-phenylethanol', 2, 'g', undefined],
  ['polysorbate 80 2 g', 'polysorbate 80', 2, 'g', undefined],
  ['polysorbate 80 2 g @ 15', 'polysorbate 80', 2, 'g', 15],
  ['2-phenylethanol 2 g', '2-phenylethanol', 2, 'g', undefined],
  ['2,3-butanedione 1 ppm', '2,3-butanedione', 1, 'ppm', undefined],
])('%j is %s', (text, name, value, unit, at) => {
  expect(parseItemText(text, isKnown)).toMatchObject({
    ok: true,
    value: { name, quantity: { value, unit }, value: at },
  });
});

test.each([
  ['', 'no-amount', 'there is no item', 'write an amount and a name, such as "2 g orange oil"'],
  [
    'cardamom oil',
    'no-amount',
    '"cardamom oil" does not begin with an amount',
    'write the amount first: "2 g cardamom oil"',
  ],
  [
    'moss oil 2 g',
    'no-amount',
    '"moss oil 2 g" does not begin with an amount',
    'write the amount first: "2 g moss oil"',
  ],
  [
    'polysorbate 80 g',
    'no-amount',
    '"polysorbate 80 g" does not begin with an amount',
    'write the amount first: "80 g polysorbate"',
  ],
  ['2 g', 'no-name', '"2 g" names nothing', 'write "2 g NAME"'],
  ['2 polysorbate 80', 'no-unit', '"2" has no unit', 'write "2 g polysorbate 80"'],
  [
    '2 oz cardamom oil',
    'doubtful-unit',
    '"oz" is not the same everywhere',
    'write 2 oz av or 2 US fl oz or 2 imp fl oz',
  ],
  ['2 Kg cardamom oil', 'unknown-unit', '"Kg" is not a unit', 'write 2 kg, if that is meant'],
  ['-2 g cardamom oil', 'negative-amount', '"-2 g" is negative', 'write 2 g'],
  [
    '2,5 g cardamom oil',
    'decimal-comma',
    '"2,5" has a comma where the decimal point belongs',
    'write 2.5 g cardamom oil',
  ],
  [
    '2 g moss oil @15',
    'at-sign',
    '"@15" needs a space on each side of @ and a number after it',
    'write "2 g moss oil @ 15"',
  ],
  ['2 g oil @ 1 @ 2', 'at-sign', '"2 g oil @ 1 @ 2" has two @', 'write one, last: "2 g NAME @ 15"'],
  ['2 g oil @ 15 moss', 'at-sign', '"moss" stands after the value', 'write "2 g oil moss @ 15"'],
  [
    '2 g oil @ x',
    'not-a-number',
    '"x" is not a number',
    'write digits with a decimal point, such as 2.5 or 1.2e-3',
  ],
])('%j is refused: %s', (text, code, message, hint) => {
  expect(parseItemText(text, isKnown)).toMatchObject({ ok: false, fault: { code, message, hint } });
});

test.each([
  ['polysorbate 80', 'polysorbate 80'],
  ['2-phenylethanol', '2-phenylethanol'],
  ['3-nonanone', '3-nonanone'],
  ['moss oil', 'moss oil'],
])('where the amount is optional %j is a name', (text, name) => {
  expect(parseItemText(text, isKnown, { amount: 'optional' })).toEqual({
    ok: true,
    value: { name, quantity: undefined, value: undefined },
  });
});

test('where the amount is optional a value and an amount are still read, and a broken amount is refused', () => {
  expect(parseItemText('moss oil @ 12', isKnown, { amount: 'optional' })).toMatchObject({
    ok: true,
    value: { name: 'moss oil', value: 12 },
  });
  expect(parseItemText('2 g moss oil', isKnown, { amount: 'optional' })).toMatchObject({
    ok: true,
    value: { name: 'moss oil', quantity: { inner: 2 } },
  });
  expect(parseItemText('2 moss oil', isKnown, { amount: 'optional' })).toMatchObject({
    ok: false,
    fault: { code: 'unknown-unit' },
  });
});

test('offsets are counted in the whole text', () => {
  expect(parseItemText(' 2 Kg cardamom oil', isKnown)).toMatchObject({ fault: { start: 3, end: 5 } });
});
