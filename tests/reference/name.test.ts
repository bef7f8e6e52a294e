import { describe, expect, it } from 'vitest';
import { editDistance, nearestNames, normaliseName } from '../../src/reference/name.ts';

describe('normaliseName', () => {
  it('collapses spaces and folds case', () => {
    expect(normaliseName('  Sweet\tORANGE  oil ')).toBe('sweet orange oil');
    expect(normaliseName('caf\u0065\u0301')).toBe('café');
    expect(normaliseName('Straße')).toBe(normaliseName('STRASSE'));
  });

  it('law: a compared name compared again is the same', () => {
    for (const text of ['ß Ü  x', 'İ', 'ﬁne', 'Ça  Va', '\u00a0a\u2003b']) {
      const once = normaliseName(text);
      expect(normaliseName(once)).toBe(once);
    }
  });
});

describe('editDistance', () => {
  // Wagner and Fischer 1974, J. ACM 21:168, and Damerau 1964, Commun. ACM 7:171: the usual textbook pairs.
  it('published: kitten and sitting are 3 apart, a swap is 1', () => {
    expect(editDistance('kitten', 'sitting', 9)).toBe(3);
    expect(editDistance('ca', 'ac', 9)).toBe(1);
    expect(editDistance('', 'abc', 9)).toBe(3);
    expect(editDistance('orgnae', 'orange', 3)).toBe(2);
  });

  it('gives up past the bound', () => {
    expect(editDistance('kitten', 'sitting', 2)).toBe(Number.POSITIVE_INFINITY);
    expect(editDistance('water', 'polysorbate', 3)).toBe(Number.POSITIVE_INFINITY);
  });

  it('law: symmetric, and 0 only for equal words', () => {
    const words = ['lime', 'limonene', 'linalool', 'limes', 'mile', ''];
    for (const one of words) {
      for (const other of words) {
        expect(editDistance(one, other, 99)).toBe(editDistance(other, one, 99));
        expect(editDistance(one, other, 99) === 0).toBe(one === other);
      }
    }
  });
});

describe('nearestNames', () => {
  const names = ['polysorbate 20', 'polysorbate 80', 'water', 'sweet orange oil', 'cardamom oil'];

  it('offers what was probably meant, best first', () => {
    expect(nearestNames('polysorbat 80', names, 1)).toEqual(['polysorbate 80']);
    expect(nearestNames('polysorbat 80', names, 3)).toEqual(['polysorbate 80', 'polysorbate 20']);
    expect(nearestNames('Cardamon Oil', names, 2)).toEqual(['cardamom oil']);
    expect(nearestNames('orange', names, 2)).toEqual(['sweet orange oil']);
  });

  it('offers nothing for a word that is like none', () => {
    expect(nearestNames('zzzzzz', names, 3)).toEqual([]);
    expect(nearestNames('', names, 3)).toEqual([]);
    expect(nearestNames('x'.repeat(10_000), names, 3)).toEqual([]);
  });
});
