import { describe, expect, it } from 'vitest';
import { type Book, makeBook, type OwnEntry } from '../../src/calc/book.ts';
import { type Cost, costOf } from '../../src/calc/cost.ts';
import { amount, quantity, shelf } from './mixture/bench.ts';

const own: readonly OwnEntry[] = [
  { name: 'orange oil lot 1', like: 'sweet orange oil', price: quantity('42 EUR/kg') },
  { name: 'sucrose', price: quantity('1.1 EUR/kg') },
  { name: 'propylene glycol', like: 'propylene glycol', price: quantity('9.5 EUR/L') },
  { name: 'ethanol', like: 'ethanol', price: quantity('30 GBP/L') },
  { name: 'mystery', price: quantity('5 EUR/L') },
  {
    name: 'half and half',
    contains: [
      { name: 'orange oil lot 1', amount: amount('50 %') },
      { name: 'sucrose', amount: 'rest' },
    ],
  },
];
const book: Book = makeBook({ builtIn: shelf, own }).book;

function cost(items: Readonly<Record<string, number>>): Cost {
  return costOf(
    Object.entries(items).map(([name, grams]) => {
      const entry = book.find(name);
      if (!entry) throw new Error(`no ${name}`);
      return { entry, grams };
    }),
  );
}

describe('costOf', () => {
  it('law: arithmetic: 36 g at 42 EUR/kg is 1.512 EUR', () => {
    expect(cost({ 'orange oil lot 1': 36 }).totals).toEqual([
      { currency: 'EUR', amount: expect.closeTo(1.512, 12) },
    ]);
  });

  it('law: a price per litre goes through the density: 1036 g of glycol is 1 L', () => {
    expect(cost({ 'propylene glycol': 1036 }).totals[0]?.amount).toBeCloseTo(9.5, 12);
  });

  it('law: a solution without a price costs what is in it', () => {
    expect(cost({ 'half and half': 1000 }).totals[0]?.amount).toBeCloseTo(0.5 * 42 + 0.5 * 1.1, 10);
  });

  it('keeps currencies apart, dearest first', () => {
    const made = cost({ sucrose: 1000, 'orange oil lot 1': 1000, ethanol: 789 });
    expect(made.totals).toEqual([
      { currency: 'EUR', amount: expect.closeTo(43.1, 10) },
      { currency: 'GBP', amount: expect.closeTo(30, 10) },
    ]);
    expect(made.lines[0]?.ingredient).toBe('orange oil lot 1');
  });

  it('adds what is used in several stages, and names what has no price and why', () => {
    const entry = book.find('sucrose');
    if (!entry) throw new Error('no sucrose');
    const twice = costOf([
      { entry, grams: 400 },
      { entry, grams: 600 },
    ]);
    expect(twice.totals[0]?.amount).toBeCloseTo(1.1, 12);
    expect(cost({ water: 1000, mystery: 1 }).unpriced).toEqual([
      { ingredient: 'water', grams: 1000, why: 'it has no price' },
      { ingredient: 'mystery', grams: 1, why: 'its price is per volume, and no density of it is known' },
    ]);
  });
});
