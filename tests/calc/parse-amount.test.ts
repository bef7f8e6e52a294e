import { expect, test } from 'vitest';
import { amountKinds, concentrationKinds, parseAmount } from '../../src/calc/parse-amount.ts';
import { kindWords } from '../../src/calc/unit-faults.ts';

test('example: to 50 g makes up', () => {
  expect(parseAmount('to 50 g')).toMatchObject({
    ok: true,
    value: {
      quantity: { value: 50, unit: 'g', written: '50 g' },
      makeUp: true,
      inDrink: false,
      written: 'to 50 g',
    },
  });
});

test.each(amountKinds)('an item may use a %s', (kind) => {
  const text = kindWords[kind].example;
  expect(parseAmount(text)).toMatchObject({
    ok: true,
    value: { quantity: { dimension: kind }, makeUp: false, inDrink: false, written: text },
  });
});

test.each(concentrationKinds)('a %s may be counted in the drink', (kind) => {
  const text = `${kindWords[kind].example}  in drink`;
  expect(parseAmount(text)).toMatchObject({
    ok: true,
    value: { quantity: { dimension: kind }, inDrink: true },
  });
});

test.each(['to 1L', 'TO 1 L', ' to  1 l '])('%j makes up to a litre', (text) => {
  expect(parseAmount(text)).toMatchObject({ ok: true, value: { makeUp: true, quantity: { inner: 1000 } } });
});

const plain = 'give an amount, such as 2 g, 3 drops, 4 % or 4.5 g/L';
const inDrink = '"in drink" goes after a share or concentration, such as 4.5 g/L in drink';

test.each([
  ['@ 2 g', 'amount-mark', '"@ 2 g" begins with @', 'write the amount without it: 2 g'],
  ['* 2 g', 'amount-mark', '"* 2 g" begins with *', 'write the amount without it: 2 g'],
  ['%4', 'amount-mark', '"%4" begins with %', 'write 4 %'],
  ['% 4', 'amount-mark', '"% 4" begins with %', 'write 4 %'],
  ['% w/v', 'amount-mark', '"% w/v" begins with %', 'write the number first, such as 4 %'],
  ['- 2 g', 'negative-amount', '"- 2 g" is negative', 'write 2 g'],
  ['-2 g', 'negative-amount', '"-2 g" is negative', 'write 2 g'],
  ['g 5', 'unit-first', '"g 5" has the unit before the number', 'write 5 g'],
  ['25 C', 'wrong-kind', '"25 C" is a temperature', plain],
  ['42 EUR/kg', 'wrong-kind', '"42 EUR/kg" is a price per mass', plain],
  ['to 4 %', 'wrong-kind', '"4 %" is a share by mass', 'make up to a mass or a volume, such as to 50 g'],
  ['2 g in drink', 'wrong-kind', '"2 g" is a mass', inDrink],
  [
    'to 5 g in drink',
    'wrong-kind',
    '"to 5 g in drink" both makes up and counts in the drink',
    'write "to 50 g" or "4.5 g/L in drink"',
  ],
  ['to', 'no-amount', '"to" does not begin with a number', 'say how much to make up to, such as to 50 g'],
  ['q.s. 50 g', 'no-amount', '"q.s. 50 g" does not begin with a number', 'write to 50 g'],
  ['up to 50 g', 'no-amount', '"up to 50 g" does not begin with a number', 'write to 50 g'],
  ['', 'no-amount', 'there is no amount', 'write a number and a unit, such as 2.5 g'],
])('%j is refused: %s', (text, code, message, hint) => {
  expect(parseAmount(text)).toMatchObject({ ok: false, fault: { code, message, hint } });
});

test('offsets are counted in the whole text', () => {
  expect(parseAmount(' to 5 Kg')).toMatchObject({ fault: { start: 6, end: 8 } });
  expect(parseAmount('4 g/K in drink')).toMatchObject({ fault: { start: 2, end: 5 } });
});
