/** Random designs and benches for tests of batches. */

import fc from 'fast-check';
import type { Mixture } from '../../../src/calc/mixture/picture.ts';
import { type BatchStage, batchStages } from '../../../src/calc/scaling/batch-stages.ts';
import { mixtureOfStages } from '../../../src/calc/scaling/re-resolve.ts';
import { type BatchTarget, parseTarget } from '../../../src/calc/scaling/target.ts';
import type { WeighingBench } from '../../../src/calc/scaling/weighing-choice.ts';
import { resolve, type TypedStages } from '../mixture/bench.ts';
import { randomTrial, typedTrial } from '../mixture/random-stages.ts';

export const benchKelvin = 293.15;

export interface Design {
  readonly written: Mixture;
  readonly stages: readonly BatchStage[];
  readonly mixture: Mixture;
}

/** Stages as typed, as the stages of a batch. */
export function designOf(typed: TypedStages): Design {
  const { mixture, faults } = resolve(typed, { dropGrams: 0.03 });
  if (!mixture) throw new Error(faults.map(({ message }) => message).join('\n'));
  const amounts = Object.entries(typed).map(([name, stage]) => ({
    name,
    items: 'items' in stage ? stage.items : stage,
  }));
  const stages = batchStages(mixture, {
    noteOf: (stage, item) => {
      const written = amounts.find(({ name }) => name === stage)?.items[item]?.[1] ?? '';
      return { makesUp: written.startsWith('to '), typed: written, isDrops: written.endsWith('drops') };
    },
    trialIn: () => undefined,
    stageOf: () => undefined,
  });
  return { written: mixture, stages, mixture: mixtureOfStages(stages, benchKelvin) };
}

export const randomDesign: fc.Arbitrary<Design> = randomTrial.map((trial) => designOf(typedTrial(trial)));

export function target(text: string): BatchTarget {
  const read = parseTarget(text);
  if (!read.ok) throw new Error(read.fault.message);
  return read.value;
}

const division = fc.constantFrom(0.001, 0.002, 0.005, 0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10);

/** One to three balances, fine ones with small limits. */
export const randomBench: fc.Arbitrary<WeighingBench> = fc
  .uniqueArray(division, { minLength: 1, maxLength: 3 })
  .chain((divisions) =>
    fc.record({
      scales: fc.tuple(
        ...divisions.map((divisionGrams) =>
          fc
            .integer({ min: 2000, max: 60_000 })
            .map((steps) => ({ divisionGrams, limitGrams: steps * divisionGrams })),
        ),
      ),
      weighing: fc.constantFrom(0.001, 0.01, 0.05),
      vessels: fc.constantFrom(
        [],
        [
          { millilitres: 250, massGrams: 110 },
          { millilitres: 5000, massGrams: 900 },
          { millilitres: 30_000 },
        ],
      ),
    }),
  );
