import { describe, expect, it } from 'vitest';
import { openHere } from '../../src/commands/open-ledger.ts';
import { openRungs, openSeriesNamed } from '../../src/commands/series-open.ts';
import type { Io } from '../../src/io.ts';
import { exampleLedger } from './neckring.ts';

const io = (folder: string): Io => ({
  out: () => {},
  err: () => {},
  outIsTerminal: false,
  errIsTerminal: false,
  canAsk: false,
  ask: async () => undefined,
  columns: 80,
  environment: {},
  workingFolder: folder,
  now: () => Date.parse('2026-03-12T12:00:00Z'),
  random: () => 0.5,
});

export async function rungsOf(folder: string, name: string) {
  const here = await openHere(io(folder));
  return openRungs(here, (await openSeriesNamed(here, io(folder), name)).card);
}

describe('the rungs of a series', () => {
  it('the example: value from what was weighed, outcome of the beaker', async () => {
    const series = await rungsOf(await exampleLedger(), 'Orange Ladder');
    // 0.75/6.01, 1.50/6.00, 2.01/6.02, 2.40/6.00, 3.02/6.01, 3.99/6.00 g, divided by hand.
    expect(series.rungs.map(({ values }) => values[0]?.toFixed(4))).toEqual([
      '0.1248',
      '0.2500',
      '0.3339',
      '0.4000',
      '0.5025',
      '0.6650',
    ]);
    expect(series.rungs.map(({ judged }) => judged?.outcome.outcome)).toEqual([
      'held',
      'held',
      'held',
      'failed',
      'failed',
      'failed',
    ]);
    expect(series).toMatchObject({
      shape: 'edge',
      making: 'stirred',
      differences: [],
      problems: [],
      scales: [{ text: 'oil per emulsifier', unit: '', isOilRatio: true }],
    });
    expect(new Set(series.beakers.map(({ day }) => day))).toEqual(new Set(['2026-03-02']));
  });
});
