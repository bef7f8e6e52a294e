import { describe, expect, it } from 'vitest';
import { dropMassOf, parseDropWeighing } from '../../../src/calc/dilution/drop-mass.ts';
import { studentWithin } from '../../../src/calc/statistics/student.ts';
import { agreesWithPrint } from '../../support/printed.ts';
import { seeded } from '../../support/seeded.ts';

describe("Student's t", () => {
  // JCGM 100:2008, Table G.2, the column of 95 per cent; and of 99 per cent.
  it.each([
    [0.95, 1, '12.71'],
    [0.95, 2, '4.30'],
    [0.95, 3, '3.18'],
    [0.95, 4, '2.78'],
    [0.95, 9, '2.26'],
    [0.95, 20, '2.09'],
    [0.95, 100, '1.984'],
    [0.99, 1, '63.66'],
    [0.99, 5, '4.03'],
    [0.99, 10, '3.17'],
  ])(
    'published: %d with %d degrees of freedom is %s, JCGM 100:2008, Table G.2 (from memory)',
    (chance, freedom, printed) => {
      expect(agreesWithPrint(studentWithin(chance, freedom), printed)).toBe(true);
    },
  );
});

describe('the mass of a drop', () => {
  const weighings = [0.612, 0.604, 0.608].map((grams) => ({ grams, drops: 20 }));

  it('law: with equal counts it is the mean of the single means with its t interval', () => {
    const mass = dropMassOf(weighings);
    const means = weighings.map(({ grams, drops }) => grams / drops);
    const mean = means.reduce((sum, one) => sum + one, 0) / 3;
    const spread = Math.sqrt(means.reduce((sum, one) => sum + (one - mean) ** 2, 0) / 2);
    expect(mass.dropGrams).toBeCloseTo(mean, 12);
    expect(mass.interval?.[1]).toBeCloseTo(mean + (4.302653 * spread) / Math.sqrt(3), 9);
    expect(mass.spreadGrams).toBeCloseTo(spread * Math.sqrt(20), 12);
  });

  it('law: 95 of 100 intervals hold the drop that was dropped', () => {
    const random = seeded(11);
    const normal = (): number => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
    const runs = 4000;
    let held = 0;
    for (let run = 0; run < runs; run++) {
      const made = [20, 15, 25, 20].map((drops) => ({
        drops,
        grams: 0.03 * drops + 0.001 * Math.sqrt(drops) * normal(),
      }));
      const [low, high] = dropMassOf(made).interval ?? [0, 0];
      if (low <= 0.03 && 0.03 <= high) held++;
    }
    // Four standard deviations of a binomial of 4000 at 0.95.
    expect(Math.abs(held / runs - 0.95)).toBeLessThan(0.014);
  });

  it('says nothing of the spread after one weighing', () => {
    expect(dropMassOf(weighings.slice(0, 1))).toMatchObject({
      spreadGrams: undefined,
      interval: undefined,
      drops: 20,
    });
  });

  it.each([
    ['0.612 g / 20', 0.612, 20],
    ['612 mg/20', 0.612, 20],
    ['0.612 g of 20 drops', 0.612, 20],
  ])('reads "%s"', (typed, grams, drops) => {
    expect(parseDropWeighing(typed)).toMatchObject({ ok: true, value: { grams, drops } });
  });

  it.each([
    ['0.612 g', 'no-count'],
    ['0.612 / 20', 'no-unit'],
    ['0.612 g / 2.5', 'not-whole'],
    ['0 g / 20', 'not-positive'],
    ['0.612 mL / 20', 'wrong-kind'],
  ])('refuses "%s"', (typed, code) => {
    expect(parseDropWeighing(typed)).toMatchObject({ ok: false, fault: { code } });
  });
});
