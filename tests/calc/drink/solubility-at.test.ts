import { describe, expect, it } from 'vitest';
import { solubilityAt } from '../../../src/calc/drink/solubility-at.ts';
import { acidSolubility, plainSolubility } from '../../../src/reference/solubility.ts';

describe('solubilityAt', () => {
  it('law: between two rows the logarithm is linear in temperature', () => {
    const middle = solubilityAt(acidSolubility.benzoic, 35);
    expect(middle.gramsPerLitre).toBeCloseTo(Math.sqrt(2.9 * 9.5), 9);
    expect(middle).toMatchObject({ known: 'at', fromMemory: false });
  });

  it.each([
    [4, 1.8],
    [18, 2.7],
    [20, 2.9],
    [50, 9.5],
  ])(
    'published: benzoic acid at %d C, %d g/L (Food Additives Data Book 2003, in % by mass)',
    (celsius, grams) => {
      expect(solubilityAt(acidSolubility.benzoic, celsius).gramsPerLitre).toBe(grams);
    },
  );

  it('beyond the rows the nearest is the most, or the least, that dissolves', () => {
    expect(solubilityAt(acidSolubility.benzoic, 0).known).toBe('at most');
    expect(solubilityAt(acidSolubility.benzoic, 70).known).toBe('at least');
  });

  it('one row stands for its own temperature alone', () => {
    const [vanillin] = [plainSolubility['vanillin']];
    const known = [5, 25, 40].map((celsius) => vanillin && solubilityAt(vanillin, celsius).known);
    expect(known).toEqual(['at most', 'at', 'at least']);
  });
});
