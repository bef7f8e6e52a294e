import { describe, expect, it } from 'vitest';
import type { BookEntry } from '../../src/calc/book.ts';
import { makeBook } from '../../src/calc/book.ts';
import { type Equal, swapFactor, usualEqual } from '../../src/calc/swap.ts';
import { ingredients } from '../../src/reference/library.ts';

const { book } = makeBook({
  builtIn: ingredients,
  own: [{ name: 'orange oil lot 9', like: 'sweet orange oil', fold: 1 }],
});

function named(name: string): BookEntry {
  const entry = book.find(name);
  if (!entry) throw new Error(`no ${name}`);
  return entry;
}

function factor(out: string, into: string, equal: Equal): number {
  const made = swapFactor(named(out), named(into), equal);
  if (!made.ok) throw new Error(made.fault.message);
  return made.value.factor;
}

/** IUPAC CIAAW standard atomic weights, abridged to five figures (2021): H 1.008, C 12.011, O 15.999. */
const molar = (carbon: number, hydrogen: number, oxygen: number): number =>
  12.011 * carbon + 1.008 * hydrogen + 15.999 * oxygen;

describe('swapFactor', () => {
  it('published: atomic weights (IUPAC CIAAW): 1 g of citric acid is 1.0938 g of its monohydrate', () => {
    const wanted = molar(6, 10, 8) / molar(6, 8, 7);
    expect(factor('citric acid', 'citric acid monohydrate', 'moles')).toBeCloseTo(wanted, 4);
    expect(factor('citric acid', 'citric acid monohydrate', 'acidity')).toBeCloseTo(wanted, 4);
  });

  it('published: atomic weights (IUPAC CIAAW): malic acid has two protons for the three of citric acid', () => {
    const wanted = molar(4, 6, 5) / 2 / (molar(6, 8, 7) / 3);
    expect(factor('citric acid', 'malic acid', 'acidity')).toBeCloseTo(wanted, 4);
  });

  it('law: there and back again is the same amount', () => {
    for (const equal of ['moles', 'acidity', 'mass'] as const)
      expect(
        factor('citric acid', 'malic acid', equal) * factor('malic acid', 'citric acid', equal),
      ).toBeCloseTo(1, 12);
  });

  it('law: a fivefold oil gives the flavour of five parts', () => {
    expect(factor('orange oil lot 9', 'sweet orange oil fivefold', 'flavour')).toBeCloseTo(0.2, 12);
    expect(factor('polysorbate 80', 'polysorbate 20', 'mass')).toBe(1);
  });

  it.each([
    ['sweet orange oil', 'cardamom oil', 'moles', 'molar mass'],
    ['sucrose', 'citric acid', 'acidity', 'acid equivalents'],
    ['polysorbate 80', 'sweet orange oil', 'flavour', 'fold'],
  ] as const)('refuses %s to %s at equal %s without its figure', (out, into, equal, what) => {
    const refused = swapFactor(named(out), named(into), equal);
    expect(refused.ok ? '' : refused.fault.message).toContain(what);
    expect(refused.ok ? '' : refused.fault.hint).toContain('ingredients.yaml');
  });
});

describe('usualEqual', () => {
  it.each([
    ['citric acid', 'citric acid monohydrate', 'moles'],
    ['trisodium citrate dihydrate', 'trisodium citrate anhydrous', 'moles'],
    ['citric acid', 'malic acid', 'acidity'],
    ['orange oil lot 9', 'sweet orange oil fivefold', 'flavour'],
    ['sweet orange oil', 'orange oil lot 9', 'mass'],
    ['polysorbate 80', 'polysorbate 20', 'mass'],
  ])('%s for %s is kept at equal %s', (out, into, equal) => {
    expect(usualEqual(named(out), named(into))).toBe(equal);
  });
});
