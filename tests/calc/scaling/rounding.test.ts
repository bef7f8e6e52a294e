import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { batchPlan } from '../../../src/calc/scaling/batch-plan.ts';
import { exactDecimals, roundedStage, type WeighedStage } from '../../../src/calc/scaling/rounded-stage.ts';
import { scaleStages } from '../../../src/calc/scaling/scale-stages.ts';
import type { WeighingBench } from '../../../src/calc/scaling/weighing-choice.ts';
import { designOf, randomBench, randomDesign, target } from './batch-bench.ts';

const twoBalances: WeighingBench = {
  scales: [
    { divisionGrams: 0.01, limitGrams: 600 },
    { divisionGrams: 1, limitGrams: 15_000 },
  ],
  weighing: 0.01,
  vessels: [],
};

/** A printed mass as a whole number of its last printed digit, without any floating point. */
function inUnits(printed: string, decimals: number): bigint {
  const [whole = '0', part = ''] = printed.split('.');
  return BigInt(whole + part.padEnd(decimals, '0'));
}

/** Every mass as it is printed, added by hand, is the printed total. */
function addsUp({ stages }: { readonly stages: readonly WeighedStage[] }): void {
  for (const { items, totalGrams, decimals, subBatches } of stages) {
    const sum = items.reduce((total, { portionGrams, portions, divisionGrams }) => {
      const printed = portionGrams.toFixed(exactDecimals(divisionGrams));
      return total + inUnits(printed, decimals) * BigInt(portions);
    }, 0n);
    expect(sum * BigInt(subBatches)).toBe(inUnits(totalGrams.toFixed(decimals), decimals));
    expect(sum).toBe(inUnits((totalGrams / subBatches).toFixed(decimals), decimals));
  }
}

describe('roundedStage', () => {
  it('law: 1.006, 2.009 and water 46.985 g on 0.01 g are 1.01, 2.01 and 46.98 g', () => {
    const design = designOf({
      drink: [
        ['sucrose', '1.006 g'],
        ['citric acid', '2.009 g'],
        ['water', 'to 50 g'],
      ],
    });
    const scaled = scaleStages({ ...design, target: target('50 g drink'), loss: 0 });
    if (!scaled.ok) throw new Error(scaled.fault.message);
    const made = roundedStage({
      scaled: scaled.value.target,
      subBatches: 1,
      bench: { ...twoBalances, weighing: 0.01 },
      available: new Map(),
    });
    expect(made.items.map(({ weighGrams }) => weighGrams)).toEqual([1.01, 2.01, 46.98]);
    expect(made.totalGrams).toBe(50);
  });

  it('law: printed masses add up to the printed totals, on any bench, in any number of sub-batches', () => {
    fc.assert(
      fc.property(
        randomDesign,
        randomBench,
        fc.double({ min: 1e-3, max: 1000, noNaN: true }),
        fc.integer({ min: 1, max: 700 }),
        (design, bench, kilograms, subBatches) => {
          const scaled = scaleStages({ ...design, target: target(`${kilograms} kg drink`), loss: 0.02 });
          if (!scaled.ok) throw new Error(scaled.fault.message);
          const stages = scaled.value.stages.map((one) =>
            roundedStage({
              scaled: one,
              subBatches,
              bench,
              available: new Map([['stage 1', one.exactGrams]]),
            }),
          );
          addsUp({ stages });
        },
      ),
      { numRuns: 500 },
    );
  });

  it.each([
    [0.01, 2],
    [0.05, 2],
    [0.25, 2],
    [0.5, 1],
    [1, 0],
    [5, 0],
    [0.0001, 4],
  ])('a division of %d g is printed with %d decimals', (division, decimals) => {
    expect(exactDecimals(division)).toBe(decimals);
  });
});

describe('batchPlan', () => {
  it('law: with stocks and vessels too, printed masses add up to the printed totals', () => {
    fc.assert(
      fc.property(
        randomDesign,
        randomBench,
        fc.double({ min: 5, max: 500, noNaN: true }),
        fc.constantFrom(undefined, 1, 6, 50),
        (design, bench, kilograms, bottlesFilled) => {
          const plan = batchPlan({
            ...design,
            target: target(`${kilograms} kg drink`),
            loss: 0.02,
            bench,
            largestDilution: 100,
            bottlesFilled,
          });
          if (plan.ok) addsUp(plan.value);
          else expect(['no-chain', 'vessel-too-small']).toContain(plan.fault.code);
        },
      ),
      { numRuns: 25 },
    );
  });

  it('law: no stage is taken for more than was weighed of it, without a loss', () => {
    fc.assert(
      fc.property(randomDesign, randomBench, (design, bench) => {
        const plan = batchPlan({
          ...design,
          target: target('20 kg drink'),
          loss: 0,
          bench,
          largestDilution: 100,
        });
        if (!plan.ok) return;
        const { stages } = plan.value;
        for (const { scaled, totalGrams } of stages) {
          const taken = stages
            .flatMap(({ items }) => items)
            .filter(({ source }) => source.kind === 'stage' && source.stage === scaled.stage.name)
            .reduce((sum, { weighGrams }) => sum + weighGrams, 0);
          expect(taken).toBeLessThanOrEqual(totalGrams * (1 + 1e-12));
        }
      }),
      { numRuns: 40 },
    );
  });

  it('law: an item is off by at most half a division a portion, but for the one that makes up', () => {
    fc.assert(
      fc.property(randomDesign, (design) => {
        const plan = batchPlan({
          ...design,
          target: target('40 kg drink'),
          loss: 0.03,
          bench: twoBalances,
          largestDilution: 100,
        });
        if (!plan.ok) throw new Error(plan.fault.message);
        for (const { items, subBatches } of plan.value.stages)
          for (const item of items.filter(({ takesRounding }) => !takesRounding))
            expect(Math.abs(item.weighGrams - item.exactGrams)).toBeLessThanOrEqual(
              (item.divisionGrams / 2) * item.portions * subBatches * (1 + 1e-9),
            );
      }),
      { numRuns: 100 },
    );
  });

  it('law: what a stock brings of an item is what was wanted, and the stage stays as large', () => {
    const design = designOf({
      drink: [
        ['sucrose', '100 g'],
        ['citric acid', '0.02 g'],
        ['water', 'to 1 kg'],
      ],
    });
    const plan = batchPlan({
      ...design,
      target: target('1 kg drink'),
      loss: 0,
      bench: twoBalances,
      largestDilution: 100,
    });
    if (!plan.ok) throw new Error(plan.fault.message);
    const [stock] = plan.value.stocks;
    const [drink] = plan.value.stages;
    const strength = stock?.steps.at(-1)?.strength ?? 0;
    const item = drink?.items.find(({ name }) => name === stock?.name);
    expect(stock).toMatchObject({ of: 'citric acid', solvent: 'water' });
    expect(Math.abs(((item?.weighGrams ?? 0) * strength) / 0.02 - 1)).toBeLessThan(0.01);
    expect(item?.choice.relativeError).toBeLessThanOrEqual(0.01);
    expect(Math.abs((drink?.totalGrams ?? 0) - 1000)).toBeLessThanOrEqual(0.5);
    expect(Math.abs(plan.value.deviation?.relative ?? 1)).toBeLessThan(0.01);
    for (const step of stock?.steps ?? [])
      expect(step.takeDivisionGrams / 2 / step.takeGrams).toBeLessThanOrEqual(0.01);
  });

  it('law: the deviation of the drink is that of its one rounded item', () => {
    const design = designOf({
      drink: [
        ['citric acid', '2.005 g'],
        ['water', 'to 100 g'],
      ],
    });
    const plan = batchPlan({
      ...design,
      target: target('100 g drink'),
      loss: 0,
      bench: { ...twoBalances, scales: [{ divisionGrams: 0.01, limitGrams: 600 }] },
      largestDilution: 100,
    });
    const deviation = plan.ok ? plan.value.deviation : undefined;
    expect(deviation?.substance).toBe('citric acid');
    expect(deviation?.relative).toBeCloseTo(2.01 / 2.005 - 1, 10);
  });
});
