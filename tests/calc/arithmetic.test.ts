import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  arithmeticFault,
  arithmeticLength,
  loadArithmetic,
  parseArithmetic,
} from '../../src/calc/arithmetic.ts';
import { parseItemText } from '../../src/calc/item-text.ts';
import { parseAmount } from '../../src/calc/parse-amount.ts';
import { parseQuantity } from '../../src/calc/parse-quantity.ts';
import { parseRange } from '../../src/calc/range.ts';

test('before it is loaded every parser says so, and what is wrong in itself is said at once', async () => {
  const notLoaded = { ok: false, fault: { code: 'arithmetic-not-loaded' } };
  expect(parseQuantity('3 * 1.5 g')).toMatchObject(notLoaded);
  expect(parseAmount('to 2 * 25 g')).toMatchObject(notLoaded);
  expect(parseRange('2 * 1 g to 3 g')).toMatchObject(notLoaded);
  expect(parseItemText('(1 + 2) g orange oil', () => true)).toMatchObject(notLoaded);
  expect(parseItemText('orange oil 3 * 2 g', (name) => name === 'orange oil')).toMatchObject(notLoaded);
  expect(parseQuantity('3 * * 2 g')).toMatchObject({ fault: { code: 'bad-arithmetic' } });
  await loadArithmetic();
  expect(parseQuantity('3 * 1.5 g')).toMatchObject({ ok: true, value: { value: 4.5, unit: 'g' } });
});

test.each([
  ['3 * 1.5', 4.5],
  ['(30 + 2.5)', 32.5],
  ['(30 + 2.5) * 2', 65],
  ['1 + 2 * 3', 7],
  ['7 - 2 - 1', 4],
  ['12 / 2 / 3', 2],
  ['1/4', 0.25],
  ['2 * -3', -6],
  ['--2', 2],
  ['1e3 - .5', 999.5],
  ['((((((((((((((((1))))))))))))))))', 1],
])('law: %s is %d', async (expression, value) => {
  await loadArithmetic();
  expect(parseArithmetic(expression)).toEqual({ ok: true, value });
});

test.each([
  ['1 +', 0, 3, 'the arithmetic ends without a number'],
  ['* 2', 0, 1, '"*" has no number before it'],
  ['2 ** 3', 3, 4, '"*" has no number before it'],
  ['2 // 3', 3, 4, '"/" has no number before it'],
  ['1 000', 2, 5, '"000" follows a number with nothing between'],
  ['2 (3)', 2, 3, '"(" follows a number with nothing between'],
  ['(2)(3)', 3, 4, '"(" follows a number with nothing between'],
  ['(2', 0, 2, 'a parenthesis is not closed'],
  ['2)', 1, 2, '")" comes too soon'],
  ['()', 1, 2, '")" comes too soon'],
  ['2 ^ 3', 2, 3, `"^" can't stand in arithmetic`],
  ['sqrt(4)', 0, 1, `"s" can't stand in arithmetic`],
  ['1; 2', 1, 2, `";" can't stand in arithmetic`],
  ['2!', 1, 2, `"!" can't stand in arithmetic`],
  ['x = 2', 0, 1, `"x" can't stand in arithmetic`],
  ['5 %', 2, 3, `"%" can't stand in arithmetic`],
  ['(((((((((((((((((1)))))))))))))))))', 16, 17, 'the parentheses are too deep'],
  [`${'1+'.repeat(100)}1`, 0, 201, 'the arithmetic is 201 characters long'],
])('%s is refused from %i to %i before it is evaluated: %s', (expression, start, end, message) => {
  expect(arithmeticFault(expression)).toMatchObject({
    ok: false,
    fault: { code: 'bad-arithmetic', message, start, end },
  });
});

test('division by zero and overflow are no finite number', async () => {
  await loadArithmetic();
  const fault = {
    code: 'not-finite',
    message: '"1/0" comes to no number',
    hint: 'write a divisor that is not 0, nor next to it',
  };
  expect(parseArithmetic('1/0')).toMatchObject({ ok: false, fault });
  expect(parseArithmetic('0/0')).toMatchObject({ ok: false, fault: { code: 'not-finite' } });
  expect(parseArithmetic('1e308 * 10')).toMatchObject({ ok: false, fault: { code: 'not-finite' } });
});

test('arithmetic ends where the unit begins', () => {
  expect(['3 * 1.5 g', '(30 + 2.5) g/L', '2e3 g', '2 e', '42EUR/kg', 'g 5'].map(arithmeticLength)).toEqual([
    7, 10, 3, 1, 2, 0,
  ]);
});

test('law: sums, differences and products of whole numbers agree with the language', async () => {
  await loadArithmetic();
  const whole = fc.integer({ min: 0, max: 1000 });
  fc.assert(
    fc.property(whole, whole, whole, (one, two, three) => {
      expect(parseArithmetic(`(${one} + ${two}) * ${three} - ${two}`)).toEqual({
        ok: true,
        value: (one + two) * three - two,
      });
    }),
    { numRuns: 50 },
  );
});

test('law: text of any signs and digits is evaluated or refused, never thrown', async () => {
  await loadArithmetic();
  const letters = fc.constantFrom('1', '2.5', '+', '-', '*', '/', '(', ')', ' ', 'e', '.', ',', '^', 'i');
  fc.assert(
    fc.property(fc.array(letters, { maxLength: 30 }), (parts) => {
      const result = parseArithmetic(parts.join(''));
      expect(result.ok ? Number.isFinite(result.value) : result.fault.hint.length > 0).toBe(true);
    }),
    { numRuns: 300 },
  );
});
