import { describe, expect, it } from 'vitest';
import { smallPlot } from '../../src/output/small-plot.ts';

const textOf = (value: number): string => String(value);

describe('smallPlot', () => {
  it('sets the highest value at the top and leaves gaps', () => {
    expect(smallPlot({ values: [1, undefined, 3, 2], textOf, width: 13, height: 3 })).toEqual([
      '3 |     *',
      '  |       *',
      '1 | *',
      '  +--------',
    ]);
  });

  it('is one line where nothing changes, and none where there is nothing', () => {
    expect(smallPlot({ values: [2, 2], textOf, width: 20 })).toHaveLength(2);
    expect(smallPlot({ values: [undefined], textOf, width: 20 })).toEqual([]);
  });

  it('law: no line is wider than what there is, however many values', () => {
    const values = Array.from({ length: 500 }, (_, at) => Math.sin(at));
    for (const line of smallPlot({ values, textOf: (value) => value.toFixed(2), width: 80 }))
      expect(line.length).toBeLessThanOrEqual(80);
  });
});
