import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import {
  choicePower,
  choicePValue,
  distinguishers,
  rightNeeded,
  tastingsNeeded,
} from '../../../src/calc/tasting/forced-choice.ts';

interface Table {
  readonly source: string;
  readonly rows: readonly (readonly (number | null)[])[];
}
const tables: Readonly<Record<string, Table>> = JSON.parse(
  readFileSync(new URL('../../fixtures/published/tasting-tables.json', import.meta.url), 'utf8'),
);

const triangle = { guess: 1 / 3, sides: 1 } as const;
const pair = { guess: 1 / 2, sides: 1 } as const;
const either = { guess: 1 / 2, sides: 2 } as const;

describe('right answers needed', () => {
  it.each([
    [
      'published: triangles, FAO Fisheries Technical Paper 348, Appendix A',
      'triangle',
      triangle,
      [0.1, 0.05, 0.01, 0.001],
    ],
    [
      'published: pairs, ISO 5495:2005, Table A.1, one-sided',
      'pairOneSided',
      pair,
      [0.2, 0.1, 0.05, 0.01, 0.001],
    ],
    ['published: pairs, Roessler 1978, two-sided (from memory)', 'pairTwoSided', either, [0.05, 0.01]],
  ] as const)('%s', (_, name, choice, risks) => {
    const { rows } = tables[name] ?? { rows: [] };
    expect(rows.length).toBeGreaterThan(10);
    for (const [tastings = 0, ...printed] of rows) {
      const found = risks.map((risk) => rightNeeded({ ...choice, tastings: tastings ?? 0, risk }));
      expect([tastings, ...found]).toEqual([tastings, ...printed]);
    }
  });
});

describe('published: the worked examples of ISO 5495:2005/Amd 1:2016, B.5.2', () => {
  it('21 of 30, one-sided: 0.4 can tell, and it counts at 5 %', () => {
    const asked = { ...pair, right: 21, tastings: 30, risk: 0.05 };
    expect(distinguishers(asked).share).toBeCloseTo(0.4, 12);
    // There by the normal approximation, 0.125; the exact side is a little lower.
    expect(distinguishers(asked).low).toBeGreaterThan(0.05);
    expect(distinguishers(asked).low).toBeLessThan(0.125);
    expect(choicePValue(asked)).toBeLessThan(0.05);
  });

  it('32 of 44, two-sided: 0.45 can tell, 0.19 to 0.71 by the approximation there', () => {
    const told = distinguishers({ ...either, right: 32, tastings: 44, risk: 0.05 });
    expect(told.share).toBeCloseTo(0.45, 2);
    expect(Math.abs(told.low - 0.19)).toBeLessThan(0.05);
    expect(Math.abs(told.high - 0.71)).toBeLessThan(0.02);
  });
});

// Exact binomial sums printed in the reference pack, bench practice, section on tasting.
describe('published: 15 triangles, and how many it takes', () => {
  it('9 needed of 15 find a difference that 30 % can tell 40 % of the time', () => {
    expect(choicePower({ ...triangle, tastings: 15, risk: 0.05, share: 0.3 })).toBeCloseTo(0.4, 2);
  });
  it('90 % takes 53', () => {
    expect(tastingsNeeded({ ...triangle, risk: 0.05, share: 0.3, power: 0.9 })).toBe(53);
  });
});

/** Every sequence of right and wrong counted one by one. */
function enumerated(tastings: number, atLeast: number, chance: number): number {
  let total = 0;
  for (let pattern = 0; pattern < 2 ** tastings; pattern += 1) {
    const right = [...pattern.toString(2)].filter((sign) => sign === '1').length;
    if (right >= atLeast) total += chance ** right * (1 - chance) ** (tastings - right);
  }
  return total;
}

describe('laws', () => {
  it('law: the chance is that of counting every sequence', () => {
    for (const guess of [1 / 3, 1 / 2])
      for (const tastings of [1, 2, 7, 12])
        for (let right = 0; right <= tastings; right += 1) {
          const counted = enumerated(tastings, right, guess);
          expect(choicePValue({ guess, sides: 1, right, tastings })).toBeCloseTo(counted, 12);
        }
  });

  it('law: chances of exactly k, as differences, sum to 1', () => {
    for (const tastings of [5, 15, 60]) {
      const tails = Array.from({ length: tastings + 2 }, (_, right) =>
        right > tastings ? 0 : choicePValue({ ...triangle, right, tastings }),
      );
      const parts = tails.slice(0, -1).map((tail, at) => tail - (tails[at + 1] ?? 0));
      expect(parts.every((part) => part >= -1e-15)).toBe(true);
      expect(parts.reduce((sum, part) => sum + part, 0)).toBeCloseTo(1, 12);
    }
  });

  it('law: two-sided is the same whichever of the two is counted', () => {
    for (let right = 0; right <= 14; right += 1)
      expect(choicePValue({ ...either, right, tastings: 14 })).toBe(
        choicePValue({ ...either, right: 14 - right, tastings: 14 }),
      );
  });

  it('law: the number needed is reached exactly where the low side is above nobody', () => {
    for (const choice of [triangle, pair, either])
      for (const tastings of [6, 15, 31])
        for (let right = 0; right <= tastings; right += 1) {
          const asked = { ...choice, right, tastings, risk: 0.05 };
          const needed = rightNeeded(asked) ?? Number.POSITIVE_INFINITY;
          const shown = choice.sides === 2 ? Math.max(right, tastings - right) : right;
          expect([tastings, right, distinguishers(asked).low > 1e-9]).toEqual([
            tastings,
            right,
            shown >= needed,
          ]);
        }
  });

  it('law: the interval holds the truth as often as said, whatever the truth', () => {
    for (const share of [0, 0.1, 0.3, 0.8]) {
      const chance = 1 / 3 + (share * 2) / 3;
      const tastings = 20;
      let held = 0;
      for (let right = 0; right <= tastings; right += 1) {
        const { low, high } = distinguishers({ ...triangle, right, tastings, risk: 0.05 });
        const exactly = exactlyRight(tastings, right, chance);
        if (low <= share + 1e-12 && share <= high + 1e-12) held += exactly;
      }
      expect(held).toBeGreaterThan(share === 0 ? 0.94 : 0.9);
    }
  });

  it('law: nobody can tell: found as often as the risk allows, never more', () => {
    for (let tastings = 1; tastings <= 40; tastings += 1)
      expect(choicePower({ ...triangle, tastings, risk: 0.05, share: 0 })).toBeLessThanOrEqual(0.05);
  });

  it('law: everybody can tell: always found, in as few as can show anything', () => {
    expect(choicePower({ ...triangle, tastings: 15, risk: 0.05, share: 1 })).toBe(1);
    expect(tastingsNeeded({ ...triangle, risk: 0.05, share: 1, power: 0.9 })).toBe(3);
    expect(tastingsNeeded({ ...pair, risk: 0.05, share: 1, power: 0.9 })).toBe(5);
  });

  it('law: one tasting fewer does not do', () => {
    for (const share of [0.2, 0.5]) {
      const asked = { ...either, risk: 0.05, share, power: 0.8 };
      const tastings = tastingsNeeded(asked) ?? 0;
      expect(choicePower({ ...asked, tastings })).toBeGreaterThanOrEqual(0.8);
      for (let fewer = 1; fewer < tastings; fewer += 1)
        expect(choicePower({ ...asked, tastings: fewer })).toBeLessThan(0.8);
    }
  });

  it('a difference so small that no one could taste so often', () => {
    expect(tastingsNeeded({ ...triangle, risk: 0.05, share: 0.001, power: 0.9 })).toBe(null);
  });
});

function exactlyRight(tastings: number, right: number, chance: number): number {
  let ways = 1;
  for (let at = 0; at < right; at += 1) ways = (ways * (tastings - at)) / (at + 1);
  return ways * chance ** right * (1 - chance) ** (tastings - right);
}
