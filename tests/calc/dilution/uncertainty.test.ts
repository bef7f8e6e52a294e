import { describe, expect, it } from 'vitest';
import { type Chain, type ChainBench, planChain } from '../../../src/calc/dilution/chain.ts';
import { dropsOf } from '../../../src/calc/dilution/drop-count.ts';
import { minimumWeight } from '../../../src/calc/dilution/minimum-weight.ts';
import { weighingOf } from '../../../src/calc/dilution/weighing.ts';
import { seeded } from '../../support/seeded.ts';

const bench = (division: number, weighing = 0.01): ChainBench => ({
  scales: [
    { divisionGrams: division, limitGrams: 600 },
    { divisionGrams: 1, limitGrams: 15_000 },
  ],
  weighing,
  largestDilution: 100,
  vessels: [],
});

function chainOn(on: ChainBench): Chain {
  const chain = planChain({
    of: 'cassis thiol',
    sources: [{ name: 'cassis thiol', strength: 1, isNeat: true }],
    target: 5e-10,
    finalMassGrams: 20_000,
    bench: on,
  });
  if (!chain.ok) throw new Error(chain.fault.message);
  return chain.value;
}

/** The strength as it comes out at a bench whose balance shows only whole divisions before and after each pour. */
function made(chain: Chain, random: () => number): number {
  const off = (division: number): number => (random() - random()) * division;
  return chain.steps.reduce((strength, step) => {
    const take = step.takeMassGrams + off(step.takeDivisionGrams);
    let solvent = step.solventMassGrams;
    for (let portion = 0; portion < step.solventPortions; portion++)
      solvent += off(step.solventDivisionGrams);
    return (strength * take) / (take + solvent);
  }, chain.source.strength);
}

describe('combined uncertainty', () => {
  it.each([
    [0.01, 0.01],
    [0.001, 0.01],
    [0.01, 0.02],
    [0.0001, 0.005],
  ])(
    'law: on a division of %d g weighed within %d it agrees with a Monte Carlo within 5 %% of itself',
    (division, weighing) => {
      const chain = chainOn(bench(division, weighing));
      const random = seeded(20260302);
      const runs = 40_000;
      let sum = 0;
      let squares = 0;
      for (let run = 0; run < runs; run++) {
        const off = made(chain, random) / chain.finalStrength - 1;
        sum += off;
        squares += off * off;
      }
      const spread = Math.sqrt(squares / runs - (sum / runs) ** 2);
      expect(Math.abs(spread / chain.relativeUncertainty - 1)).toBeLessThan(0.05);
    },
  );

  it('published: two readings of a division d are worth 0.41 d, the floor of USP <41>', () => {
    const weighing = weighingOf([{ divisionGrams: 1, limitGrams: undefined }], { massGrams: 100 });
    expect(weighing?.standardUncertaintyGrams.toFixed(2)).toBe('0.41');
  });

  it('law: a mass beyond every limit is weighed in equal portions', () => {
    const weighing = weighingOf([{ divisionGrams: 1, limitGrams: 15_000 }], { massGrams: 20_000 });
    expect(weighing).toMatchObject({ portions: 2, divisionGrams: 1 });
    expect(weighing?.standardUncertaintyGrams).toBeCloseTo(Math.sqrt(2 / 6), 12);
  });
});

describe('the least mass of the pharmacopoeia', () => {
  it('published: s 0.00015 g gives 0.300 g, USP <41> 2019', () => {
    expect(minimumWeight({ deviationGrams: 0.00015 })).toBeCloseTo(0.3, 12);
  });

  it('published: 820 d at best, USP <41> as summarised by a maker', () => {
    expect(minimumWeight({ divisionGrams: 0.01 })).toBeCloseTo(8.2, 12);
  });
});

describe('drops', () => {
  it('law: the spread of n drops agrees with a Monte Carlo of the same dropper within 5 % of itself', () => {
    const dropper = { dropGrams: 0.021, spreadGrams: 0.001, weighedDrops: 20 };
    const count = dropsOf(0.21, dropper);
    const random = seeded(7);
    const drop = (): number => dropper.dropGrams + dropper.spreadGrams * (random() - 0.5) * Math.sqrt(12);
    const many = (number: number): number => {
      let mass = 0;
      for (let at = 0; at < number; at++) mass += drop();
      return mass;
    };
    const runs = 20_000;
    let squares = 0;
    for (let run = 0; run < runs; run++) {
      const thought = many(dropper.weighedDrops) / dropper.weighedDrops;
      squares += (many(count.wholeDrops) / (count.wholeDrops * thought) - 1) ** 2;
    }
    expect(Math.abs(Math.sqrt(squares / runs) / count.relativeUncertainty - 1)).toBeLessThan(0.05);
  });

  it('published: a dropper that was not weighed is good to 15 per cent, USP 32 <1101>', () => {
    expect(dropsOf(0.21, { dropGrams: 0.021 })).toMatchObject({
      wholeDrops: 10,
      relativeUncertainty: 0.15,
      isMeasured: false,
    });
  });
});
