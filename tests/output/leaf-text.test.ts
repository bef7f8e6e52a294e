import { expect, it } from 'vitest';
import { leafText } from '../../src/output/leaf-text.ts';

it.each([
  [40, 'g', '40.00 g'],
  [0.002, 'g', '0.002000 g'],
  [3e-6, 'g', '3.000 ug'],
  [5.04e-7, 'g', '0.5040 ug'],
  [2e-8, 'g', '20.00 ng'],
  [0, 'g', '0 g'],
  [3e-6, 'g/L', '0.000003000 g/L'],
  [null, 'g', '-'],
])('%d %s reads %s', (value, unit, text) => {
  expect(leafText({ value, unit })).toBe(text);
});
