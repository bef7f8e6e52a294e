import { describe, expect, it } from 'vitest';
import { chanceOfAtLeast, hitInterval, hitsNeeded } from '../../../src/calc/statistics/binomial.ts';
import { logGamma } from '../../../src/calc/statistics/log-gamma.ts';
import { normalBelow, normalPoint } from '../../../src/calc/statistics/normal.ts';
import published from '../../fixtures/published/chance-tables.json' with { type: 'json' };
import { agreesWithPrint } from '../../support/printed.ts';

type Row = readonly [number | string, string];
const rows = (table: readonly (readonly (number | string)[])[]): readonly Row[] =>
  table.map(([given = '', printed = '']) => [given, String(printed)] as const);

describe('Normal curve: Abramowitz and Stegun, Tables 26.1 and 26.5', () => {
  it.each(rows(published.normal.below))('published: below %s lie %s', (z, printed) => {
    expect(Math.abs(normalBelow(Number(z)) - Number(printed))).toBeLessThan(1.1e-15);
    expect(Math.abs(normalBelow(-Number(z)) - (1 - Number(printed)))).toBeLessThan(1.1e-15);
  });

  it.each(rows(published.normal.points))('published: %s lie below %s', (chance, printed) => {
    expect(agreesWithPrint(normalPoint(Number(chance)), printed)).toBe(true);
  });
});

describe('Gamma function: Abramowitz and Stegun, Table 6.1', () => {
  it.each(rows(published.gamma.values))('published: gamma of %s is %s', (x, printed) => {
    expect(Math.abs(Math.exp(logGamma(Number(x))) / Number(printed) - 1)).toBeLessThan(1e-10);
  });
});

describe('Exact binomial intervals', () => {
  it.each(rows(published.noFailures.bounds))(
    'published: no failure in %s leaves up to %s %%',
    (n, printed) => {
      const { high } = hitInterval({ hits: 0, trials: Number(n) }, 0.9);
      expect(agreesWithPrint(100 * high, printed)).toBe(true);
    },
  );

  it.each(published.intervals.rows)('published: $hits of $trials, Newcombe 1998 Table I', (row) => {
    const { low, high } = hitInterval(row, 0.95);
    expect([agreesWithPrint(low, row.low), agreesWithPrint(high, row.high)]).toEqual([true, true]);
  });
});

/** The tail added up term by term, in whole numbers of orders. */
function tailByAdding(hits: number, trials: number, p: number): number {
  let [term, sum] = [(1 - p) ** trials, 0];
  for (let k = 0; k <= trials; k += 1) {
    if (k >= hits) sum += term;
    term *= ((trials - k) / (k + 1)) * (p / (1 - p));
  }
  return sum;
}

describe('Binomial tail', () => {
  it.each([1 / 3, 1 / 2, 0.05])('law: the sum of the terms, one by one, at %s', (p) => {
    for (const trials of [1, 7, 24, 60]) {
      for (let hits = 0; hits <= trials; hits += 1) {
        const added = tailByAdding(hits, trials, p);
        expect(Math.abs(chanceOfAtLeast({ hits, trials }, p) - added)).toBeLessThan(1e-12);
      }
    }
  });

  it('law: the hits needed are the least that guessing seldom reaches', () => {
    for (let trials = 1; trials <= 60; trials += 1) {
      for (const [p, alpha] of [
        [1 / 3, 0.05],
        [1 / 2, 0.05],
        [1 / 2, 0.001],
      ] as const) {
        const hits = hitsNeeded({ trials, p, alpha });
        const seldom = (k: number): boolean => tailByAdding(k, trials, p) <= alpha;
        if (hits === null) expect(seldom(trials)).toBe(false);
        else expect([seldom(hits), seldom(hits - 1)]).toEqual([true, false]);
      }
    }
  });

  it('law: the interval ends where the tail has half of what is left out', () => {
    for (const trials of [5, 15, 40]) {
      for (let hits = 0; hits <= trials; hits += 1) {
        const { low, high } = hitInterval({ hits, trials }, 0.9);
        if (hits > 0) expect(chanceOfAtLeast({ hits, trials }, low)).toBeCloseTo(0.05, 10);
        if (hits < trials) {
          expect(1 - chanceOfAtLeast({ hits: hits + 1, trials }, high)).toBeCloseTo(0.05, 10);
        }
      }
    }
  });
});
