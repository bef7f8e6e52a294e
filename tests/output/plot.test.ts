import { describe, expect, it } from 'vitest';
import { plotLines, roundTicks } from '../../src/output/plot.ts';

const plot = {
  low: 0.1,
  high: 1,
  chanceAt: (value: number) => (value < 0.3 ? 1 : 0),
  rows: [
    { label: 'held', mark: 'o', values: [0.1, 0.2, 0.2] },
    { label: 'failed', mark: 'x', values: [1] },
  ],
  ticks: [
    { value: 0.1, text: '0.1' },
    { value: 1, text: '1' },
  ],
  width: 50,
};

describe('the plot of a chance', () => {
  const lines = plotLines(plot);

  it('is plain ASCII, no wider than asked', () => {
    for (const line of lines) {
      expect(line).toMatch(/^[\x20-\x7e]*$/);
      expect(line.length).toBeLessThanOrEqual(plot.width);
    }
  });

  it('law: the curve stands once in every column', () => {
    const cells = lines.filter((line) => line.includes('*')).join('');
    expect(cells.split('*').length - 1).toBe(plot.width - 10);
  });

  it('marks stand at their places, several in one as their number', () => {
    const held = lines.find((line) => line.includes('held')) ?? '';
    const failed = lines.find((line) => line.includes('failed')) ?? '';
    // 0.2 lies at log10(2) = 0.301 of the way over 39 steps: the twelfth, after 9 signs of the margin.
    expect([held.indexOf('o'), held.indexOf('2'), failed.lastIndexOf('x')]).toEqual([9, 9 + 12, 9 + 39]);
  });

  it('round values for the axis', () => {
    expect(roundTicks(0.9, 11)).toEqual([1, 2, 5, 10]);
    expect(roundTicks(2.1, 6)).toEqual([2.5, 3, 4, 5, 6]);
  });
});
