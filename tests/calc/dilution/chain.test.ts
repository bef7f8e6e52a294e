import { describe, expect, it } from 'vitest';
import {
  type Chain,
  type ChainBench,
  type ChainWanted,
  planChain,
} from '../../../src/calc/dilution/chain.ts';

const neat = { name: 'cassis thiol', strength: 1, isNeat: true };

const bench = (changes: Partial<ChainBench> = {}): ChainBench => ({
  scales: [{ divisionGrams: 0.01, limitGrams: 600 }],
  weighing: 0.01,
  largestDilution: 100,
  vessels: [],
  ...changes,
});

const wanted = (changes: Partial<ChainWanted> = {}): ChainWanted => ({
  of: 'cassis thiol',
  sources: [neat],
  target: 5e-10,
  finalMassGrams: 20_000,
  bench: bench(),
  ...changes,
});

function planned(from: ChainWanted): Chain {
  const chain = planChain(from);
  if (!chain.ok) throw new Error(chain.fault.message);
  return chain.value;
}

interface Candidate {
  readonly stocks: number;
  readonly variance: number;
  readonly waste: number;
}

/**
 * Every chain of up to `most` stocks, tried one by one: takes of 1, 2 or 5 times a power of ten, dilutions of the same
 * kind, every vessel, the rules of the bench written out again. Rounding of two readings: d^2/6 a weighing (JCGM 100).
 */
function exhaustive(from: ChainWanted, most: number): readonly Candidate[] {
  const { bench: on, target, finalMassGrams } = from;
  const vessels = on.vessels.length > 0 ? on.vessels : [{ millilitres: 100 }];
  const found: Candidate[] = [];
  const takes = [-4, -3, -2, -1, 0, 1, 2, 3].flatMap((power) =>
    [1, 2, 5].map((digit) => Number(`${digit}e${power}`)),
  );
  const dilutions = [2, 5, 10, 20, 50, 100].filter((one) => one <= on.largestDilution);
  const scaleFor = (load: number) =>
    [...on.scales]
      .sort((one, other) => one.divisionGrams - other.divisionGrams)
      .find(({ limitGrams }) => load <= (limitGrams ?? Number.POSITIVE_INFINITY));
  const squared = (grams: number, division: number): number => division ** 2 / 6 / grams ** 2;
  const isFine = (grams: number, division: number): boolean =>
    division / 2 / grams <= on.weighing * (1 + 1e-9) &&
    Math.abs(grams / division - Math.round(grams / division)) < 1e-6;

  const goOn = (
    strength: number,
    there: number,
    stocks: number,
    variance: number,
    waste: number,
    isNeat: boolean,
  ): void => {
    const addition = (target * finalMassGrams) / strength;
    const scale = scaleFor(addition);
    const rest = scaleFor(finalMassGrams - addition) ?? scaleFor(0);
    if (
      scale &&
      rest &&
      addition < finalMassGrams &&
      scale.divisionGrams / 2 / addition <= on.weighing * (1 + 1e-9)
    ) {
      const real = Math.round(addition / scale.divisionGrams) * scale.divisionGrams;
      const solvent = finalMassGrams - real;
      const portions = Math.ceil(solvent / (rest.limitGrams ?? Number.POSITIVE_INFINITY) || 1);
      if (real <= there * (1 + 1e-9))
        found.push({
          stocks,
          variance:
            variance +
            (solvent / finalMassGrams) ** 2 *
              (squared(real, scale.divisionGrams) + squared(solvent, rest.divisionGrams) * portions),
          waste: waste + (stocks > 0 ? there - real : 0),
        });
    }
    if (stocks === most) return;
    const possible = takes.flatMap((take) =>
      dilutions.flatMap((dilution) =>
        vessels.flatMap((vessel) => {
          const tare = 'massGrams' in vessel ? (vessel.massGrams ?? 0) : 0;
          const total = take * dilution;
          const [first, second] = [scaleFor(tare + take), scaleFor(tare + total)];
          if (!first || !second || total > vessel.millilitres * (1 + 1e-9) || take > there * (1 + 1e-9))
            return [];
          if (strength / dilution <= target) return [];
          if (!isFine(take, first.divisionGrams) || !isFine(total - take, second.divisionGrams)) return [];
          const share = (total - take) / total;
          return [
            {
              take,
              dilution,
              total,
              added:
                share ** 2 *
                (squared(take, first.divisionGrams) + squared(total - take, second.divisionGrams)),
            },
          ];
        }),
      ),
    );
    const enough = possible.filter(({ take }) => take >= ((target * finalMassGrams) / strength) * (1 - 1e-9));
    const least = Math.min(...enough.map(({ take }) => take));
    for (const { take, dilution, total, added } of possible) {
      if (isNeat && take !== least) continue;
      const left = stocks > 0 ? there - take : 0;
      goOn(strength / dilution, total, stocks + 1, variance + added, waste + left, false);
    }
  };
  for (const source of from.sources)
    goOn(source.strength, source.leftGrams ?? Number.POSITIVE_INFINITY, 0, 0, 0, source.isNeat === true);
  return found;
}

/** Fewest stocks, then the uncertainty to two digits, then waste. */
function bestOf(candidates: readonly Candidate[]): Candidate | undefined {
  const stated = ({ variance }: Candidate): number => Number(Math.sqrt(variance).toPrecision(2));
  return candidates.toSorted(
    (one, other) => one.stocks - other.stocks || stated(one) - stated(other) || one.waste - other.waste,
  )[0];
}

const fine = { divisionGrams: 0.001, limitGrams: 120 };
const usual = { divisionGrams: 0.01, limitGrams: 600 };
const coarse = { divisionGrams: 0.1, limitGrams: 2000 };
const vial = { millilitres: 20, massGrams: 15 };
const bottle = { millilitres: 250, massGrams: 180 };

const cases: readonly (readonly [string, ChainWanted])[] = [
  ['neat to 50 ppm in 500 g', wanted({ target: 5e-5, finalMassGrams: 500 })],
  ['neat to 5 ppm in 500 g', wanted({ target: 5e-6, finalMassGrams: 500 })],
  ['neat to 0.5 ppm in 1 kg', wanted({ target: 5e-7, finalMassGrams: 1000 })],
  ['neat to 20 ppb in 20 kg', wanted({ target: 2e-8 })],
  ['a stock of 2 ppm to 0.5 ppb in 20 kg', wanted({ sources: [neat, { name: 'stock', strength: 2e-6 }] })],
  [
    'a stock of which 3 g are left',
    wanted({ sources: [{ name: 'stock', strength: 1e-4, leftGrams: 3 }], finalMassGrams: 1000 }),
  ],
  [
    'on two balances, in vials and bottles',
    wanted({
      target: 3e-8,
      finalMassGrams: 5000,
      bench: bench({ scales: [usual, fine], vessels: [vial, bottle] }),
    }),
  ],
  [
    'on a balance of 0.1 g',
    wanted({ target: 1e-4, finalMassGrams: 3000, bench: bench({ scales: [coarse], vessels: [bottle] }) }),
  ],
  [
    'at most 1:20 a step',
    wanted({ target: 1e-5, finalMassGrams: 800, bench: bench({ largestDilution: 20 }) }),
  ],
  [
    'weighed within a tenth of a per cent',
    wanted({ target: 1e-5, finalMassGrams: 800, bench: bench({ weighing: 0.001, scales: [fine, usual] }) }),
  ],
  [
    'a dye that is not potent',
    wanted({ sources: [{ name: 'dye', strength: 1 }], target: 6e-6, finalMassGrams: 500 }),
  ],
];

describe('the best chain', () => {
  it.each(cases)('law: %s is the best of every chain there is, tried one by one', (_, from) => {
    const chain = planned(from);
    const stocks = chain.steps.length - 1;
    expect(stocks).toBeLessThanOrEqual(2);
    const best = bestOf(exhaustive(from, 2));
    expect(best?.stocks).toBe(stocks);
    expect(Number(chain.relativeUncertainty.toPrecision(2))).toBe(
      Number(Math.sqrt(best?.variance ?? 0).toPrecision(2)),
    );
    expect(chain.wasteGrams).toBeCloseTo(best?.waste ?? Number.NaN, 6);
  });

  it('law: the strengths of a chain are those of its masses, and the last is the target to the division', () => {
    for (const [, from] of cases) {
      const chain = planned(from);
      let strength = chain.source.strength;
      for (const step of chain.steps) {
        strength *= step.takeMassGrams / (step.takeMassGrams + step.solventMassGrams);
        expect(step.strength / strength).toBeCloseTo(1, 10);
      }
      expect(Math.abs(chain.finalStrength / from.target - 1)).toBeLessThanOrEqual(
        from.bench.weighing * 1.0001,
      );
    }
  });

  it('law: no step but the last is larger than the bench allows, and nothing is taken that is not there', () => {
    for (const [, from] of cases) {
      const { steps } = planned(from);
      for (const [at, step] of steps.slice(0, -1).entries()) {
        const total = step.takeMassGrams + step.solventMassGrams;
        expect(total / step.takeMassGrams).toBeLessThanOrEqual(from.bench.largestDilution * (1 + 1e-9));
        expect(steps[at + 1]?.takeMassGrams).toBeLessThanOrEqual(total);
      }
    }
  });

  it('law: the neat compound is handled once and small', () => {
    const { steps } = planned(wanted());
    expect(steps.filter(({ take }) => take === 'cassis thiol')).toHaveLength(1);
    // Half a division of 0.01 g is 1 % of 0.5 g.
    expect(steps[0]?.takeMassGrams).toBe(0.5);
  });

  it('pinned: 0.5 ppb in 20 kg on 0.01 g from neat takes three stocks: 0.5 g is the least, 20 kg needs 10 ug', () => {
    const { steps, finalStrength } = planned(wanted());
    expect(steps).toHaveLength(4);
    expect(finalStrength).toBeCloseTo(5e-10, 18);
  });

  it('an expired or weak stock is of no use: what is stronger than the target counts', () => {
    expect(planChain(wanted({ sources: [{ name: 'weak', strength: 1e-10 }] }))).toMatchObject({
      ok: false,
      fault: { code: 'target-too-strong' },
    });
  });
});

describe('what no bench can make', () => {
  const fault = (from: ChainWanted) => {
    const chain = planChain(from);
    return chain.ok ? undefined : chain.fault;
  };

  it('says which balance, vessel or intermediate would do', () => {
    const found = fault(wanted({ bench: bench({ scales: [{ divisionGrams: 1, limitGrams: 15_000 }] }) }));
    expect(found?.code).toBe('no-chain');
    expect(found?.message).toContain('50 g and up within 1 %');
    expect(found?.hint).toContain('a balance that shows 0.1 g');
    expect(found?.hint).toContain('a stock of 0.2 ppm');
  });

  it('refuses a bench without balances, a target of nothing, a batch of nothing', () => {
    expect(fault(wanted({ bench: bench({ scales: [] }) }))?.code).toBe('no-balance');
    expect(fault(wanted({ target: 0 }))?.code).toBe('not-positive');
    expect(fault(wanted({ finalMassGrams: 0 }))?.code).toBe('not-positive');
    expect(fault(wanted({ sources: [] }))?.code).toBe('no-source');
  });
});
