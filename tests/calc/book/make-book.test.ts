import { describe, expect, it } from 'vitest';
import { makeBook, type OwnEntry } from '../../../src/calc/book.ts';
import { amount, ownEntries, shelf } from '../mixture/bench.ts';

const open = (own: readonly OwnEntry[]) => makeBook({ builtIn: shelf, own });

const contains = (contents: Readonly<Record<string, string>>): OwnEntry['contains'] =>
  Object.entries(contents).map(([name, text]) => ({ name, amount: text === 'rest' ? text : amount(text) }));

function sharesOf(own: readonly OwnEntry[], name: string): Readonly<Record<string, number>> {
  const { book, faults } = open(own);
  expect(faults).toEqual([]);
  const { composition = [] } = book.find(name) ?? {};
  return Object.fromEntries(composition.map(({ substance, massFraction }) => [substance.name, massFraction]));
}

describe('makeBook', () => {
  it('finds names and aliases whatever their case and spaces', () => {
    const { book } = open([]);
    expect(book.find('  Cassis   THIOL ')?.name).toBe('4-methoxy-2-methyl-2-butanethiol');
    expect(book.find('cassis tiol')).toBe(undefined);
    expect(book.nearest('cassis tiol')).toEqual(['cassis thiol']);
    expect(book.nearest('zzbrnd', 1)).toEqual(['polysorbate 80']);
  });

  it('lays own figures over the record that it is like', () => {
    const { book } = open([
      {
        name: 'orange oil lot 2231',
        like: 'Sweet orange oil',
        lot: '2231',
        fold: 1,
        figures: { density: { value: 0.846, source: 'supplier sheet' } },
      },
    ]);
    const entry = book.find('orange oil lot 2231');
    expect(entry).toMatchObject({ own: true, lot: '2231', like: ['sweet orange oil'] });
    expect(entry?.record).toMatchObject({ role: 'oil', fold: 1 });
    expect(entry?.record.figures.density).toEqual({ value: 0.846, source: 'supplier sheet' });
    expect(entry?.composition).toEqual([{ substance: entry, massFraction: 1 }]);
  });

  it('lets an own entry stand in the place of a built-in one, under its aliases too', () => {
    const { book } = open([
      { name: 'Sucrose', figures: { 'molar mass': { value: 342.3, source: 'label' } } },
    ]);
    expect(book.find('table sugar')).toBe(book.find('sucrose'));
    expect(book.find('table sugar')?.record).toMatchObject({ role: 'sugar' });
    expect(book.entries.filter((entry) => entry.name.toLowerCase() === 'sucrose')).toHaveLength(1);
    expect(book.entries).toHaveLength(shelf.length);
  });

  it('resolves solutions of solutions down to pure substances, a substance reached twice added up', () => {
    const own: readonly OwnEntry[] = [
      { name: 'strong', contains: contains({ 'cassis thiol': '1 %', ethanol: 'rest' }) },
      { name: 'weak', contains: contains({ strong: '1 g', ethanol: '49 g', water: '50 g' }) },
    ];
    const shares = sharesOf(own, 'weak');
    expect(shares['4-methoxy-2-methyl-2-butanethiol']).toBeCloseTo(1e-4, 16);
    expect(shares['ethanol']).toBeCloseTo(0.4999, 14);
    expect(shares['water']).toBeCloseTo(0.5, 14);
  });

  // 1 g in 99 g is 1 % w/w; five further steps of 1 g in 99 g give one part in 10^12: arithmetic.
  it('law: five steps of one in a hundred from 1 % come to 1 ppt', () => {
    const own = Array.from(
      { length: 6 },
      (_, step): OwnEntry => ({
        name: `step ${step}`,
        contains: contains({ [step === 0 ? 'cassis thiol' : `step ${step - 1}`]: '1 g', ethanol: '99 g' }),
      }),
    );
    const { '4-methoxy-2-methyl-2-butanethiol': thiol = 0, ethanol = 0 } = sharesOf(own, 'step 5');
    expect(Math.abs(thiol / 1e-12 - 1)).toBeLessThan(1e-12);
    expect(thiol + ethanol).toBeCloseTo(1, 15);
  });

  it.each([
    [{ sucrose: '2 parts', water: '3 parts' }, 0.4],
    [{ sucrose: '40 %', water: '60 %' }, 0.4],
    [{ sucrose: '40 %', water: '59.95 %' }, 0.4 / 0.9995],
    [{ sucrose: '40 %', water: '2 g', ethanol: '1 g' }, 0.4],
    [{ sucrose: '500 g/L', water: 'rest' }, 0.4],
    [{ sucrose: '50 % w/v', water: 'rest' }, 0.4],
    [{ ethanol: '10 mL', water: '7.89 g' }, 0.5],
    [{ ethanol: '200 mL/L', water: 'rest' }, (0.2 * 0.789) / 1.25],
    [{ 'citric acid': '1 mol/L', water: 'rest' }, 0.192124 / 1.25],
  ])('takes %j', (contents, first) => {
    const figures = { density: { value: 1.25, source: 'weighed' } };
    const shares = Object.values(
      sharesOf([{ name: 'stock', figures, contains: contains(contents) }], 'stock'),
    );
    expect(shares[0]).toBeCloseTo(first, 14);
    expect(shares.reduce((total, one) => total + one, 0)).toBeCloseTo(1, 15);
  });

  it.each([
    ['unknown-ingredient', { 'cassis tiol': '1 %', water: 'rest' }, 0, 'did you mean cassis thiol?'],
    ['not-whole', { sucrose: '40 %', water: '50 %' }, 1, 'add the balance'],
    ['shares-over', { sucrose: '60 %', water: '50 %' }, 1, 'take them down'],
    ['shares-over', { sucrose: '110 %', water: 'rest' }, 1, 'take them down'],
    ['two-rests', { sucrose: 'rest', water: 'rest' }, 1, 'give one of them an amount'],
    ['rest-beside-masses', { sucrose: '2 g', water: 'rest' }, 1, 'as a mass too'],
    ['parts-mixed', { sucrose: '2 parts', water: 'rest' }, 0, 'all of them in parts'],
    ['no-density', { sucrose: '100 g/L', water: 'rest' }, 0, 'add density: 1.02 g/mL to stock'],
    ['no-drop-mass', { sucrose: '3 drops', water: '1 g' }, 0, 'add drop: 0.030 g to sucrose'],
    ['wrong-kind', { sucrose: '1 g', water: 'to 50 g' }, 1, 'write water: rest'],
    ['wrong-kind', { sucrose: '1 mol/kg', water: 'rest' }, 0, 'give a share'],
    ['ingredient-loop', { stock: '10 %', water: 'rest' }, 0, 'take one of these lines out'],
  ])('reports %s in %j', (code, contents, content, hint) => {
    const { book, faults } = open([{ name: 'stock', contains: contains(contents) }]);
    expect(faults).toHaveLength(1);
    expect(faults[0]).toMatchObject({ code, entry: 0, content, field: 'contains' });
    expect(faults[0]?.hint).toContain(hint);
    expect(book.find('stock')?.composition).toEqual([{ substance: book.find('stock'), massFraction: 1 }]);
  });

  it('names the chain of a circle, through like and contains', () => {
    const { faults } = open([
      { name: 'first', contains: contains({ second: '10 %', water: 'rest' }) },
      { name: 'second', like: 'third' },
      { name: 'third', contains: contains({ first: '10 %', water: 'rest' }) },
    ]);
    expect(faults.map(({ code, message }) => `${code}: ${message}`)).toEqual([
      'ingredient-loop: first -> second -> third -> first goes round in a circle',
    ]);
  });

  it('reports a like that is not known, and a name that stands twice', () => {
    const { faults } = open([
      { name: 'my oil', like: 'sweet orang oil' },
      { name: 'My  Oil', role: 'oil' },
    ]);
    expect(faults.map(({ code, entry, hint }) => `${entry} ${code}: ${hint}`)).toEqual([
      '0 unknown-ingredient: did you mean sweet orange oil?',
      '1 name-twice: give one of them another name',
    ]);
  });

  it('takes what an own solution holds over to an entry made like it', () => {
    const { book, faults } = open([
      ...ownEntries,
      { name: 'second bottle', like: 'cassis stock', made: '2026-03-01' },
    ]);
    expect(faults).toEqual([]);
    expect(book.find('second bottle')).toMatchObject({
      dropGrams: 0.021,
      made: '2026-03-01',
      like: ['cassis stock'],
    });
    expect(book.find('second bottle')?.composition).toBe(book.find('cassis stock')?.composition);
  });
});
