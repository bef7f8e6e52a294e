import { describe, expect, it } from 'vitest';
import { impossibleReading } from '../../src/calc/reading-range.ts';

// Brix is g of sugar in 100 g of solution, so it can't be above 100; the ends of pH are common practice, no source.
describe('readings that can be', () => {
  it.each([
    ['brix', -5],
    ['brix', 0],
    ['brix', 100],
    ['ph', 0],
    ['ph', 14.9],
    ['mass', 1e6],
  ])('%s %d is', (name, value) => expect(impossibleReading(name, value)).toBe(undefined));

  it.each([
    ['brix', 900, '(90?)'],
    ['brix', 182, '(18.2?)'],
    ['brix', -5.1, 'check the decimal point, and'],
    ['ph', 15, '(1.5?)'],
    ['ph', 305, '(3.05?)'],
    ['ph', -1, 'check the decimal point, and'],
  ])('%s %d is not, and the mend is shown', (name, value, mend) => {
    const fault = impossibleReading(name, value);
    expect(fault?.message).toContain(` ${value} can't be`);
    expect(fault?.hint).toContain(mend);
  });
});
