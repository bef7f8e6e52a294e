import { describe, expect, it } from 'vitest';
import {
  listParts,
  parseRungAmounts,
  parseRungNumber,
  parseRungRatio,
  rangeEnds,
} from '../../../src/calc/rungs/read-rungs.ts';

describe('rungs as typed', () => {
  it.each([
    ['1:4', false, 0.25],
    ['1 : 2.5', false, 0.4],
    ['2:1', false, 2],
    ['1 to 4', false, 0.25],
    ['0.25', false, 0.25],
    [' .5 ', false, 0.5],
    ['4', true, 0.25],
    ['4:1', true, 0.25],
  ])('%s (turned: %s) is %f', (text, isTurned, ratio) => {
    expect(parseRungRatio(text, isTurned)).toEqual({ ok: true, value: ratio });
  });

  it.each([
    ['0', '"0" is no ratio'],
    ['-1', '"-1" has a sign'],
    ['1:0', '"1:0" has a side that is 0'],
    ['1:2:3', '"1:2:3" is not a ratio'],
    ['half', '"half" is not a ratio'],
    ['1/4', '"1/4" is not a ratio'],
    ['', '"" is not a ratio'],
    ['NaN', '"NaN" is not a ratio'],
    ['1e999', '"1e999" is not an ordinary number'],
  ])('%s is refused', (text, message) => {
    expect(parseRungRatio(text, false)).toMatchObject({ ok: false, fault: { message } });
  });

  it('a list has commas, or blanks between ratios; nothing may be empty', () => {
    expect(listParts('1:4, 1:3,1:2')).toMatchObject({ value: ['1:4', '1:3', '1:2'] });
    expect(listParts('1:4 1:3  1:2')).toMatchObject({ value: ['1:4', '1:3', '1:2'] });
    expect(listParts('1:4,,1:2')).toMatchObject({ fault: { message: 'rung 2 of "1:4,,1:2" is empty' } });
    expect(listParts(' ')).toMatchObject({ fault: { message: 'there are no rungs' } });
  });

  it('a range has two ends', () => {
    expect(rangeEnds('1:4 to 1:1')).toMatchObject({ value: ['1:4', '1:1'] });
    expect(rangeEnds('1:4')).toMatchObject({ fault: { code: 'not-a-range' } });
    expect(rangeEnds('1 to 2 to 3')).toMatchObject({ fault: { code: 'not-a-range' } });
  });

  it('amounts are of one kind; a unit at the end is that of all', () => {
    const written = (parts: readonly string[]) => {
      const amounts = parseRungAmounts(parts);
      return amounts.ok ? amounts.value.map((one) => one.written) : amounts.fault.message;
    };
    expect(written(['4', '6', '8 g'])).toEqual(['4 g', '6 g', '8 g']);
    expect(written(['200 mg', '4 g'])).toEqual(['200 mg', '4 g']);
    expect(written(['2 g', '4 %'])).toBe('"2 g" and "4 %" are of two kinds');
    expect(written(['2', '4'])).toBe('"2" has no unit');
    expect(written(['to 50 g', '4 g'])).toBe('"to 50 g" makes the stage up');
    expect(written(['-2 g', '4 g'])).toBe('"-2 g" is negative');
  });

  it('a number is above 0', () => {
    expect(parseRungNumber('12')).toEqual({ ok: true, value: 12 });
    expect(parseRungNumber('0')).toMatchObject({ fault: { message: '"0" is not above 0' } });
  });
});
