import { describe, expect, it } from 'vitest';
import { inDrink } from '../../../src/calc/mixture/in-drink.ts';
import { gramsOf, resolve, solved, stageNamed } from './bench.ts';

describe('resolveMixture against published figures', () => {
  // Worked percentage examples printed in pharmacy teaching pages.
  it('published: 12 g in 80 mL is 15 % w/v (pharmaceutics lecture)', () => {
    const [stage] = solved({
      flask: [
        ['sodium chloride', '12 g'],
        ['water', 'to 80 mL'],
      ],
    });
    expect((stage?.substances[0]?.gramsPerLitre ?? 0) / 10).toBeCloseTo(15, 10);
    const [back] = solved({
      flask: [
        ['sodium chloride', '15 % w/v'],
        ['water', 'to 80 mL'],
      ],
    });
    expect(back?.items[0]?.massGrams).toBeCloseTo(12, 10);
  });

  it('published: 3000 g of 5 % sodium chloride is 150 g and 2850 g of water (pharmacy guideline page)', () => {
    const [batch] = solved({
      batch: [
        ['sodium chloride', '5 %'],
        ['water', 'to 3000 g'],
      ],
    });
    expect(batch?.items.map((item) => item.massGrams)).toEqual([150, 2850]);
  });

  it('published: 5 g of active as 10 % takes 45 g of base (pharmacy study cards)', () => {
    const [ointment] = solved({
      ointment: {
        items: [
          ['citric acid', '10 %'],
          ['water', '45 g'],
        ],
      },
    });
    expect(ointment?.items[0]?.massGrams).toBeCloseTo(5, 12);
    const [parts] = solved({
      ointment: {
        items: [
          ['citric acid', '1 part'],
          ['water', '9 parts'],
        ],
        makes: '50 g',
      },
    });
    expect(parts?.items.map((item) => item.massGrams)).toEqual([5, 45]);
  });

  it('published: 27 g as 3 % w/v makes 900 mL (pharmaceutics lecture)', () => {
    const [flask] = solved({
      flask: [
        ['sodium chloride', '27 g'],
        ['water', 'to 900 mL'],
      ],
    });
    expect((flask?.substances[0]?.gramsPerLitre ?? 0) / 10).toBeCloseTo(3, 12);
  });

  it('common practice, no source: 40 g of citric acid in a syrup that becomes 8 L of drink is 5 g/L', () => {
    const { mixture } = resolve({
      syrup: [
        ['sucrose', '800 g'],
        ['citric acid', '40 g'],
        ['water', 'to 1.6 L'],
      ],
      drink: [
        ['syrup', '1.6 L'],
        ['water', 'to 8 L'],
      ],
    });
    expect(mixture && inDrink(mixture, { substance: 'citric acid' })?.gramsPerLitre).toBeCloseTo(5, 9);
    const asked = solved({
      syrup: [
        ['sucrose', '800 g'],
        ['citric acid', '5 g/L in drink'],
        ['water', 'to 1.6 L'],
      ],
      drink: [
        ['syrup', '1.6 L'],
        ['water', 'to 8 L'],
      ],
    });
    expect(gramsOf(stageNamed(asked, 'syrup'), 'citric acid')).toBeCloseTo(40, 8);
  });

  it('published: ICUMSA SPS-4, a syrup of 65 % sucrose at 20 C is 1316.56 kg/m3', () => {
    const [syrup] = solved({
      syrup: {
        items: [
          ['sucrose', '65 %'],
          ['water', '35 %'],
        ],
        makes: '1 L',
      },
    });
    expect(syrup?.massGrams).toBeCloseTo(1316.56, 2);
    expect(syrup?.volumeMillilitres).toBeCloseTo(1000, 9);
    expect(syrup?.densityFrom).toEqual({ measured: false, words: 'estimate: sugar-water by ICUMSA' });
  });
});
