import { describe, expect, it } from 'vitest';
import { shuffled } from '../../../src/calc/shuffled.ts';
import { glassCodes } from '../../../src/calc/tasting/codes.ts';
import { mostServings, type Serving, servingPlan } from '../../../src/calc/tasting/serving-plan.ts';
import { seeded } from '../../support/seeded.ts';

const orderOf = (row: Serving): string => row.map(({ drink }) => drink).join('');

function counts(words: readonly string[]): Readonly<Record<string, number>> {
  const all: Record<string, number> = {};
  for (const word of words) all[word] = (all[word] ?? 0) + 1;
  return all;
}

describe('a serving plan', () => {
  it('law: twelve triangles are each of the six orders twice', () => {
    for (let turn = 0; turn < 20; turn += 1) {
      const plan = servingPlan({ kind: 'triangle', servings: 12, random: seeded(turn) });
      expect(counts(plan.map(orderOf))).toEqual({ ABB: 2, BAB: 2, BBA: 2, BAA: 2, ABA: 2, AAB: 2 });
    }
  });

  it('law: pairs are AB as often as BA', () => {
    const plan = servingPlan({ kind: 'pair', servings: 14, random: seeded(1) });
    expect(counts(plan.map(orderOf))).toEqual({ AB: 7, BA: 7 });
  });

  it('law: what is no whole round is as even as can be', () => {
    for (let servings = 1; servings <= 40; servings += 1) {
      const rows = servingPlan({ kind: 'triangle', servings, random: seeded(servings) }).map(orderOf);
      const times = Object.values(counts(rows));
      expect(Math.max(...times) - (times.length < 6 ? 0 : Math.min(...times))).toBeLessThanOrEqual(1);
      const oddA = rows.filter((row) => row.replaceAll('B', '').length === 1).length;
      expect(Math.abs(2 * oddA - servings)).toBeLessThanOrEqual(1);
    }
  });

  it('law: no code twice, up to the most that there are codes for', () => {
    for (const kind of ['triangle', 'pair'] as const) {
      const plan = servingPlan({ kind, servings: mostServings(kind), random: seeded(3) });
      const codes = plan.flat().map(({ code }) => code);
      expect(codes).toHaveLength(mostServings(kind) * (kind === 'triangle' ? 3 : 2));
      expect(new Set(codes).size).toBe(codes.length);
      expect(codes.every((code) => glassCodes.includes(code))).toBe(true);
    }
  });

  it('law: the code of a glass says nothing of what is in it', () => {
    // Means of 400 plans of 36 glasses: the two drinks' codes lie 0.1 standard errors of their difference apart or so.
    let difference = 0;
    for (let turn = 0; turn < 400; turn += 1) {
      const glasses = servingPlan({ kind: 'triangle', servings: 12, random: seeded(turn) }).flat();
      const mean = (drink: string): number => {
        const codes = glasses.filter((one) => one.drink === drink).map(({ code }) => Number(code));
        return codes.reduce((sum, code) => sum + code, 0) / codes.length;
      };
      difference += mean('A') - mean('B');
    }
    const spread = 240 * Math.sqrt(2 / 18 / 400);
    expect(Math.abs(difference / 400)).toBeLessThan(3 * spread);
  });

  it('law: the order of the rows is not always the same', () => {
    const firsts = Array.from({ length: 60 }, (_, turn) =>
      servingPlan({ kind: 'triangle', servings: 6, random: seeded(turn) }).map(orderOf),
    );
    expect(new Set(firsts.map((rows) => rows[0])).size).toBe(6);
  });

  it('works with a source of numbers that stands still', () => {
    expect(servingPlan({ kind: 'pair', servings: 2, random: () => 0.5 })).toHaveLength(2);
  });
});

describe('codes', () => {
  it('are three digits, none twice in one, no run, none that is another one upside down', () => {
    expect(glassCodes.every((code) => /^[1-9]\d\d$/.test(code))).toBe(true);
    for (const poor of ['100', '111', '122', '123', '321', '789', '168', '906', '619', '012'])
      expect(glassCodes).not.toContain(poor);
    expect(glassCodes).toContain('274');
  });

  it('law: shuffling keeps everything and leaves the list as it was', () => {
    const list = [1, 2, 3, 4, 5];
    expect([...shuffled(list, seeded(2))].sort()).toEqual(list);
    expect(list).toEqual([1, 2, 3, 4, 5]);
  });
});
