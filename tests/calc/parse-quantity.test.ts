import { beforeAll, expect, test } from 'vitest';
import { loadArithmetic } from '../../src/calc/arithmetic.ts';
import { parseQuantity } from '../../src/calc/parse-quantity.ts';
import type { Dimension } from '../../src/calc/quantity.ts';

beforeAll(loadArithmetic);

test('example: 4.5 g/l is 4.5 g/L, inner 0.0045', () => {
  expect(parseQuantity('4.5 g/l')).toEqual({
    ok: true,
    value: { value: 4.5, unit: 'g/L', dimension: 'mass per volume', inner: 0.0045, written: '4.5 g/l' },
  });
});

test.each([
  ['2g', 2, 'g', 2],
  ['  2.03   g ', 2.03, 'g', 2.03],
  ['0 g', 0, 'g', 0],
  ['-0 g', 0, 'g', 0],
  ['250 ppm', 250, 'ppm', 0.00025],
  ['1 ppb', 1, 'ppb', 1e-9],
  ['1 ppt', 1, 'ppt', 1e-12],
  ['4%', 4, '%', 0.04],
  ['4 % w/v', 4, '% w/v', 0.04],
  ['50 mg', 50, 'mg', 0.05],
  ['3 drops', 3, 'drops', 3],
  ['1 drop', 1, 'drops', 1],
  ['1 part', 1, 'parts', 1],
  ['20 mmol/L', 20, 'mmol/L', 0.00002],
  ['20 C', 20, 'C', 293.15],
  ['20°C', 20, 'C', 293.15],
  ['-2 C', -2, 'C', 271.15],
  ['+4 C', 4, 'C', 277.15],
  ['7 days', 7, 'd', 604800],
  ['-0.2 bar', -0.2, 'bar', -20000],
  ['120 mg/L as CaCO3', 120, 'mg/L as CaCO3', 120],
  ['1e-3 kg', 0.001, 'kg', 1],
  ['(30 + 2.5) g', 32.5, 'g', 32.5],
  ['1/2 L', 0.5, 'L', 500],
  ['42EUR/kg', 42, 'EUR/kg', 0.042],
])('%j is %d %s, inner %d', (text, value, unit, inner) => {
  expect(parseQuantity(text)).toMatchObject({
    ok: true,
    value: { value, unit, inner, written: text.trim() },
  });
});

const firstWrite = 'write a number and a unit, such as 2.5 g';
const onlyNumbers = 'use digits, + - * / and parentheses only';
const anyUnit = 'use a unit such as g, mL, %, ppm or g/L';
const ounces = 'write 2 oz av or 2 US fl oz or 2 imp fl oz';

test.each([
  ['', 'no-amount', 'there is no amount', firstWrite],
  ['a pinch', 'no-amount', '"a pinch" does not begin with a number', firstWrite],
  ['2', 'no-unit', '"2" has no unit', 'write 2 g or 2 mL or 2 %'],
  ['2,5 g', 'decimal-comma', '"2,5" has a comma where the decimal point belongs', 'write 2.5 g'],
  [
    '1,000 g',
    'thousands-comma',
    '"1,000" has a comma in it',
    'write 1000 g (or 1.000 g for a decimal comma)',
  ],
  [
    '1 000 g',
    'bad-arithmetic',
    '"000" follows a number with nothing between',
    'write 1000 without the space',
  ],
  ['-2 g', 'negative-amount', '"-2 g" is negative', 'write 2 g'],
  ['5 - 10 g', 'negative-amount', '"5 - 10 g" is negative', 'an amount is 0 or more'],
  ['-300 C', 'below-absolute-zero', '"-300 C" is below absolute zero', 'nothing is colder than -273.15 C'],
  ['-1 K', 'below-absolute-zero', '"-1 K" is below absolute zero', 'nothing is colder than -273.15 C'],
  ['NaN g', 'not-finite', '"NaN g" is not an ordinary number', 'write it in digits, such as 2.5'],
  ['1e999 g', 'not-finite', '"1e999" is not an ordinary number', 'write it in digits, such as 2.5'],
  ['1e306 kg', 'not-ordinary', '"1e306" is too large to be meant', 'check its zeros and its e: 2e3 is 2000'],
  [
    '1e-25 ug',
    'not-ordinary',
    '"1e-25 ug" is too small to be meant',
    'check its zeros and its e: 2e3 is 2000',
  ],
  ['1/0 g', 'not-finite', '"1/0" comes to no number', 'write a divisor that is not 0, nor next to it'],
  ['0x10 g', 'not-a-number', '"0x10 g" is not a number in digits', 'write it in digits, such as 16 g'],
  ['5. g', 'not-a-number', '"5." ends in a point', 'write 5 g'],
  ['3 x 2 g', 'bad-arithmetic', `"x" can't stand in a number`, onlyNumbers],
  ['10 − 3 g', 'bad-arithmetic', `"−" can't stand in a number`, onlyNumbers],
  ['1_000 g', 'bad-arithmetic', `"_" can't stand in a number`, onlyNumbers],
  ['g 5', 'unit-first', '"g 5" has the unit before the number', 'write 5 g'],
  ['US fl oz 5', 'unit-first', '"US fl oz 5" has the unit before the number', 'write 5 US fl oz'],
  ['€42/kg', 'unit-first', '"€42/kg" has the currency first', 'write 42 EUR/kg'],
  ['EUR 42/kg', 'unit-first', '"EUR 42/kg" has the currency first', 'write 42 EUR/kg'],
  ['300 g 5', 'after-unit', '"5" stands after the unit', 'write 300 g alone'],
  ['2 g each', 'after-unit', '"each" stands after the unit', 'write 2 g alone'],
  [
    '3 g + 2 g',
    'after-unit',
    '"+ 2 g" stands after the unit',
    'do the arithmetic before the unit: (3 + 2) g',
  ],
  ['2 oz', 'doubtful-unit', '"oz" is not the same everywhere', ounces],
  ['2 oz.', 'doubtful-unit', '"oz." is not the same everywhere', ounces],
  ['2 floz', 'doubtful-unit', '"floz" is not the same everywhere', 'write 2 US fl oz or 2 imp fl oz'],
  ['2 fl oz', 'doubtful-unit', '"fl oz" is not the same everywhere', 'write 2 US fl oz or 2 imp fl oz'],
  ['2 tsp', 'doubtful-unit', '"tsp" is not the same everywhere', 'write 2 US tsp or 2 metric tsp'],
  ['2 tbsp', 'doubtful-unit', '"tbsp" is not the same everywhere', 'write 2 US tbsp or 2 metric tbsp'],
  ['2 cups', 'doubtful-unit', '"cups" is not the same everywhere', 'write 2 US cup or 2 metric cup'],
  ['2 gal', 'doubtful-unit', '"gal" is not the same everywhere', 'write 2 US gal or 2 imp gal'],
  ['2 pint', 'doubtful-unit', '"pint" is not the same everywhere', 'write 2 US pint or 2 imp pint'],
  ['2 qt', 'doubtful-unit', '"qt" is not the same everywhere', 'write 2 US qt or 2 imp qt'],
  ['2 Kg', 'unknown-unit', '"Kg" is not a unit', 'write 2 kg, if that is meant'],
  ['2 PPM', 'unknown-unit', '"PPM" is not a unit', 'write 2 ppm, if that is meant'],
  ['2 gramms', 'unknown-unit', '"gramms" is not a unit', 'write 2 g, if that is meant'],
  ['2 M', 'unknown-unit', '"M" is not a unit', 'write 2 mol/L, if that is meant'],
  ['42 eur/kg', 'unknown-unit', '"eur/kg" is not a unit', 'write 42 EUR/kg, if that is meant'],
  ['5 g/100 mL', 'unknown-unit', '"g/100 mL" is not a unit', 'write 5 % w/v, if that is meant'],
  [
    '2 ppm as CaCO3',
    'unknown-unit',
    '"ppm as CaCO3" is not a unit',
    'write 2 mg/L as CaCO3, if that is meant',
  ],
  ['2 months', 'unknown-unit', '"months" has no fixed length', 'count it in days, such as 30 d'],
  ['2 splashes', 'unknown-unit', '"splashes" is not a unit', anyUnit],
])('%j is refused: %s', (text, code, message, hint) => {
  expect(parseQuantity(text)).toMatchObject({ ok: false, fault: { code, message, hint } });
});

const onlyMass: readonly Dimension[] = ['mass'];
const massOrVolume: readonly Dimension[] = ['mass', 'volume'];

test.each([
  ['5 mL', onlyMass, 'wrong-kind', '"5 mL" is a volume', 'give a mass, such as 2.5 g'],
  ['20 C', massOrVolume, 'wrong-kind', '"20 C" is a temperature', 'give a mass or a volume, such as 2.5 g'],
  ['5', massOrVolume, 'no-unit', '"5" has no unit', 'write 5 g or 5 mL'],
])('%j where %j is wanted is refused: %s', (text, accepted, code, message, hint) => {
  expect(parseQuantity(text, accepted)).toMatchObject({ ok: false, fault: { code, message, hint } });
});

test.each([
  [' 2 Kg ', 3, 5],
  [' 2 g each', 5, 9],
  [' 1,000 g', 1, 6],
  [' 2 ** 3 g', 4, 5],
  [' 5 mL', 1, 5],
])('the fault of %j stands from %i to %i', (text, start, end) => {
  expect(parseQuantity(text, onlyMass)).toMatchObject({ ok: false, fault: { start, end } });
});
