import { expect, test } from 'vitest';
import { parseRange } from '../../src/calc/range.ts';

const plain = (value: number) => ({ value, unit: '', dimension: 'number', inner: value });
const gramsPerLitre = (value: number) => ({ value, unit: 'g/L', dimension: 'mass per volume' });

test.each([
  ['2.9 to 3.2', { low: plain(2.9), high: plain(3.2) }],
  ['at least 2.9', { low: plain(2.9) }],
  ['At most 3.2', { high: plain(3.2) }],
  ['3.0', { exact: plain(3) }],
  ['3 to 3', { low: plain(3), high: plain(3) }],
  ['4.3 to 4.7 g/L', { low: gramsPerLitre(4.3), high: gramsPerLitre(4.7) }],
  ['4.3 g/l to 4.7 g/l', { low: gramsPerLitre(4.3), high: gramsPerLitre(4.7) }],
  ['400 mg/L to 0.6 g/L', { low: { value: 400, unit: 'mg/L' }, high: gramsPerLitre(0.6) }],
  ['at most 4 g/L', { high: gramsPerLitre(4) }],
  ['330 mL', { exact: { value: 330, unit: 'mL', inner: 330 } }],
  ['-18 C', { exact: { value: -18, unit: 'C' } }],
  ['-2 to 4 C', { low: { value: -2, unit: 'C' }, high: { value: 4, unit: 'C' } }],
  ['2e-3 g', { exact: { value: 0.002, unit: 'g' } }],
])('%j', (text, sides) => {
  const range = parseRange(text);
  expect(range).toMatchObject({ ok: true, value: { ...sides, written: text } });
  expect(range.ok && Object.keys(range.value).sort()).toEqual([...Object.keys(sides), 'written'].sort());
});

const words = 'write 2.9 to 3.2, at least 2.9 or at most 3.2, with the unit after it';

test.each([
  ['3.2 to 2.9', 'reversed-range', '"3.2 to 2.9" runs from high to low', 'write 2.9 to 3.2'],
  ['4.7 to 4.3 g/L', 'reversed-range', '"4.7 to 4.3 g/L" runs from high to low', 'write 4.3 to 4.7 g/L'],
  ['2.9-3.2', 'not-a-range', '"2.9-3.2" has a dash for "to"', 'write 2.9 to 3.2'],
  ['4.3–4.7 g/L', 'not-a-range', '"4.3–4.7 g/L" has a dash for "to"', 'write 4.3 to 4.7 g/L'],
  ['4.3 g/L - 4.7 g/L', 'not-a-range', '"4.3 g/L - 4.7 g/L" has a dash for "to"', 'write 4.3 g/L to 4.7 g/L'],
  ['>= 2.9', 'not-a-range', '">= 2.9" has a sign for words', 'write at least 2.9'],
  ['<3', 'not-a-range', '"<3" has a sign for words', 'write at most 3'],
  ['3 ± 0.1', 'not-a-range', '"3 ± 0.1" has a ± in it', 'write both ends, such as 2.9 to 3.2'],
  [
    '1 g to 2 mL',
    'not-a-range',
    '"1 g to 2 mL" has sides of different kinds',
    'give both sides in units of one kind',
  ],
  ['1 to 2 to 3', 'not-a-range', '"1 to 2 to 3" says "to" twice', 'write two figures, such as 2.9 to 3.2'],
  ['clear', 'not-a-range', '"clear" is not a range', words],
  ['', 'no-range', 'there is no figure', 'write one, such as 2.9 to 3.2'],
  ['2,9 to 3,2', 'decimal-comma', '"2,9" has a comma where the decimal point belongs', 'write 2.9'],
  ['4.3 to 4.7 g/l/l', 'unknown-unit', '"g/l/l" is not a unit', 'use a unit such as g, mL, %, ppm or g/L'],
])('%j is refused: %s', (text, code, message, hint) => {
  expect(parseRange(text)).toMatchObject({ ok: false, fault: { code, message, hint } });
});

test('the kinds that are wanted decide whether a unit may, must or must not stand', () => {
  expect(parseRange('3.0', ['number']).ok).toBe(true);
  expect(parseRange('4 g/L', ['number'])).toMatchObject({
    fault: { code: 'wrong-kind', message: '"4 g/L" has a unit', hint: 'write the number alone: 4' },
  });
  expect(parseRange('4', ['mass per volume'])).toMatchObject({
    fault: { code: 'no-unit', hint: 'write 4 g/L' },
  });
  expect(parseRange('4 vol', ['mass per volume'])).toMatchObject({ fault: { code: 'wrong-kind' } });
  expect(parseRange('4 to 5', ['number', 'mass per volume']).ok).toBe(true);
  expect(parseRange('4 to 5 g/L', ['number', 'mass per volume']).ok).toBe(true);
});

test('offsets are counted in the whole text', () => {
  expect(parseRange(' 4.3 to 4.7 xyz')).toMatchObject({ fault: { start: 12, end: 15 } });
  expect(parseRange('at least 4 xyz')).toMatchObject({ fault: { start: 11, end: 14 } });
});
