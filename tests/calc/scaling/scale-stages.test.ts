import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { withMass } from '../../../src/calc/scaling/batch-stages.ts';
import { mixtureOfStages } from '../../../src/calc/scaling/re-resolve.ts';
import { type Scaled, type ScaleInput, scaleStages } from '../../../src/calc/scaling/scale-stages.ts';
import { benchKelvin, type Design, designOf, randomDesign, target } from './batch-bench.ts';

const close = 1e-12;
const relative = (value: number, wanted: number): number => Math.abs(value / wanted - 1);

function scaled(design: Design, to: string, loss = 0, more: Partial<ScaleInput> = {}): Scaled {
  const made = scaleStages({ ...design, target: target(to), loss, ...more });
  if (!made.ok) throw new Error(made.fault.message);
  return made.value;
}

const syrupAndDrink = designOf({
  syrup: [
    ['sucrose', '100 g'],
    ['citric acid', '2 g/L in drink'],
    ['water', 'to 200 g'],
  ],
  drink: [
    ['syrup', '100 g'],
    ['water', 'to 1000 g'],
  ],
});

describe('scaleStages', () => {
  it('law: conservation of mass: 1 kg of drink with 100 g of syrup, to 20 kg, takes 2 kg of syrup', () => {
    const { stages } = scaled(syrupAndDrink, '20 kg drink');
    const [syrup, drink] = stages;
    expect(relative(syrup?.exactGrams ?? 0, 2000)).toBeLessThan(close);
    expect(relative(drink?.exactGrams ?? 0, 20_000)).toBeLessThan(close);
    expect(relative(syrup?.items[0]?.exactGrams ?? 0, 1000)).toBeLessThan(close);
  });

  it('law: a loss of l makes every stage 1 / (1 - l) larger than what is taken of it', () => {
    const { stages } = scaled(syrupAndDrink, '20 kg drink', 0.2);
    expect(relative(stages[1]?.exactGrams ?? 0, 20_000 / 0.8)).toBeLessThan(close);
    expect(relative(stages[0]?.exactGrams ?? 0, 2000 / 0.8 / 0.8)).toBeLessThan(close);
  });

  it('law: nothing stays behind of the stage that is put together in the bottle', () => {
    const { stages } = scaled(syrupAndDrink, '20 kg drink', 0.2, { lossless: 'drink' });
    expect(relative(stages[1]?.exactGrams ?? 0, 20_000)).toBeLessThan(close);
    expect(relative(stages[0]?.exactGrams ?? 0, 2000 / 0.8)).toBeLessThan(close);
  });

  it('law: a bottle count times a volume is that volume of the drink', () => {
    const { target: drink } = scaled(syrupAndDrink, '500 x 330 mL');
    const millilitres = drink.exactGrams / drink.resolved.densityGramsPerMillilitre;
    expect(relative(millilitres, 165_000)).toBeLessThan(close);
  });

  it('law: stages that the target does not need are left out', () => {
    expect(scaled(syrupAndDrink, '3 kg syrup').stages.map(({ stage }) => stage.name)).toEqual(['syrup']);
  });

  it('law: any design at any size holds the same shares of everything, within 1e-12, amounts in the drink too', () => {
    fc.assert(
      fc.property(
        randomDesign,
        fc.double({ min: 1e-3, max: 1e5, noNaN: true }),
        fc.double({ min: 0, max: 0.3, noNaN: true }),
        (design, kilograms, loss) => {
          const { stages } = scaled(design, `${kilograms} kg drink`, loss);
          const again = mixtureOfStages(
            stages.map(({ stage, items }) => ({
              ...stage,
              items: items.map(({ item, exactGrams }) => withMass(item, exactGrams)),
            })),
            benchKelvin,
          );
          for (const wanted of design.written.drink?.substances ?? []) {
            const found = again.drink?.substances.find(
              ({ name, role }) => name === wanted.name && role === wanted.role,
            );
            if (wanted.massFraction > 0)
              expect(relative(found?.massFraction ?? 0, wanted.massFraction)).toBeLessThan(5e-12);
          }
          for (const { items, exactGrams } of stages)
            expect(
              relative(
                items.reduce((sum, item) => sum + item.exactGrams, 0),
                exactGrams,
              ),
            ).toBeLessThan(close);
        },
      ),
      { numRuns: 150 },
    );
  });

  it.each([
    ['20 L cordial', 0, 'unknown-stage', 'its stages are syrup, drink'],
    ['20 L drink', 1, 'loss-of-all', 'such as 3 %'],
  ])('refuses %s with a loss of %d: %s', (to, loss, code, hint) => {
    const made = scaleStages({ ...syrupAndDrink, target: target(to), loss });
    expect(made.ok ? '' : made.fault.code).toBe(code);
    expect(made.ok ? '' : made.fault.hint).toContain(hint);
  });

  it('refuses a volume of what has no density, and takes a mass of it', () => {
    const design = designOf({
      base: [
        ['potassium citrate', '10 g'],
        ['water', '10 g'],
      ],
    });
    const volume = scaleStages({ ...design, target: target('1 L base'), loss: 0 });
    expect(volume).toMatchObject({ ok: false, fault: { code: 'no-density' } });
    expect(volume.ok ? '' : volume.fault.message).toContain('potassium citrate');
    expect(volume.ok ? '' : volume.fault.hint).toContain('give a mass');
    expect(scaleStages({ ...design, target: target('1 kg base'), loss: 0 }).ok).toBe(true);
  });
});
