import { describe, expect, it } from 'vitest';
import { thereWords } from '../../src/commands/there-words.ts';
import { neckring } from './neckring.ts';
import { ledgerOf, lisbonBench } from './small-ledger.ts';

const large = 'a: b\n'.repeat(60_000);
const drink = 'formula: one drink\nstages:\n  drink:\n    - water: 1 L\n';

describe('a name that is not there', () => {
  it.each([
    [{ names: [], unread: [] }, 'none yet'],
    [{ names: ['a', 'b'], unread: [] }, 'the series here are a, b'],
    [{ names: [], unread: ['series/x.yaml'] }, "series/x.yaml can't be read: neckring check says why"],
    [
      { names: ['a'], unread: ['x', 'y', 'z', 'w'] },
      "the series here are a; x and y and 2 more can't be read: neckring check says why",
    ],
  ])('%j', (given, words) => {
    expect(thereWords({ kind: 'series', none: 'none yet', ...given })).toBe(words);
  });

  it('beside files that can not be read: they are named, and no list ends in nothing', async () => {
    const folder = await ledgerOf({
      'bench.yaml': lisbonBench,
      'formulas/large.yaml': large,
      'series/large.yaml': large,
      'batches/large.yaml': large,
    });
    const unread = (kind: string): string => `${kind}/large.yaml can't be read: neckring check says why`;
    for (const [kind, ...words] of [
      ['formulas', 'drink', 'x'],
      ['formulas', 'give', 'x'],
      ['formulas', 'compare', 'x', 'y'],
      ['series', 'series', 'x'],
      ['series', 'decide', 'x', 'y'],
      ['batches', 'show', 'x'],
    ]) {
      const ran = await neckring(words, { folder });
      expect([words, ran.code, ran.err]).toEqual([words, 2, expect.stringContaining(unread(kind ?? ''))]);
    }
  });

  it('lists say that there is something which can not be read', async () => {
    const folder = await ledgerOf({
      'bench.yaml': lisbonBench,
      'series/large.yaml': large,
      'batches/large.yaml': large,
    });
    for (const [word, says] of [
      ['series', 'No series that can be read.\n'],
      ['batch', 'No batch that can be read.\n'],
    ] as const) {
      const ran = await neckring([word], { folder });
      expect([ran.code, ran.out, ran.err]).toEqual([1, says, expect.stringContaining('too large')]);
    }
  });

  it('with one that can be read it says both', async () => {
    const folder = await ledgerOf({
      'bench.yaml': lisbonBench,
      'formulas/one.yaml': drink,
      'formulas/large.yaml': large,
    });
    const { err } = await neckring(['drink', 'x'], { folder });
    expect(err).toContain("the formulas here are one drink; formulas/large.yaml can't be read");
  });
});
