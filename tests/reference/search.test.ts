import { describe, expect, it } from 'vitest';
import { ingredients } from '../../src/reference/ingredients/index.ts';
import { searchIngredients } from '../../src/reference/search.ts';

const names = (words: string): readonly string[] => searchIngredients(words).map((one) => one.name);

describe('searchIngredients', () => {
  it('puts the whole name first, then names that begin with the words', () => {
    expect(names('Polysorbate  80')).toEqual(['polysorbate 80']);
    expect(names('citric acid').slice(0, 2)).toEqual(['citric acid', 'citric acid monohydrate']);
    expect(names('citric acid')).toContain('citric acid esters of mono- and diglycerides');
    expect(names('sweet orange')[0]).toBe('sweet orange oil');
  });

  it('takes other names, brand words and scattered words', () => {
    expect(names('glycerine')[0]).toBe('glycerol');
    expect(names('cassis thiol')).toEqual(['4-methoxy-2-methyl-2-butanethiol']);
    expect(names('tween 80')).toEqual(['polysorbate 80']);
    expect(names('span')).toHaveLength(6);
    expect(names('orange tenfold')).toContain('sweet orange oil tenfold');
    expect(names('stearate sucrose 70')).toEqual(['sucrose stearate (70 % monoester)']);
  });

  // Commission Regulation (EU) No 1333/2008, Annex II; the CAS registry.
  it('published: takes E numbers and CAS numbers', () => {
    for (const typed of ['E 433', 'e433', 'E433', '9005-65-6'])
      expect(names(typed)).toEqual(['polysorbate 80']);
    expect(names('E 330')).toEqual(['citric acid', 'citric acid monohydrate']);
  });

  it('finds nothing in nothing and in words that fit none', () => {
    expect(names('   ')).toEqual([]);
    expect(names('zzzz')).toEqual([]);
  });

  it('law: every record is found first by its own name, and by each alias', () => {
    for (const record of ingredients) {
      expect(names(record.name)[0]).toBe(record.name);
      for (const alias of record.aliases ?? []) expect(names(alias)[0], alias).toBe(record.name);
    }
  });

  it('law: brand words are never part of a name that is printed', () => {
    const printed = ingredients
      .flatMap((one) => [one.name, ...(one.aliases ?? []), ...(one.notes ?? [])])
      .join('\n');
    for (const brand of [
      'tween',
      'span ',
      'cremophor',
      'kolliphor',
      'miglyol',
      'labrasol',
      'splenda',
      'velcorin',
      'ryoto',
    ])
      expect(printed.toLowerCase().includes(brand), brand).toBe(false);
  });
});
