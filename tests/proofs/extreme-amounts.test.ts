import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { found, leafValue, neckring, rows } from '../commands/neckring.ts';
import { ledgerOf, lisbonBench } from '../commands/small-ledger.ts';

const bench = `${lisbonBench}  balances:\n    - division: 0.01 g\n      limit: 600 g\n  drop: 0.03 g\n`;
const shelf = `ingredients:
  cassis stock:
    contains:
      cassis thiol: 1 ppt
      propylene glycol: rest
    drop: 0.021 g
    price: 1000000 EUR/kg
  heavy salt:
    contains:
      trisodium citrate dihydrate: 99.999999 %
      water: rest
`;

/** From 1 ng to 10 t, evenly over the powers of ten, typed in any unit of mass. */
const amount = fc
  .tuple(
    fc.double({ min: -9, max: 7, noNaN: true }).map((power) => 10 ** power),
    fc.constantFrom(['ng', 1e-9], ['ug', 1e-6], ['mg', 1e-3], ['g', 1], ['kg', 1e3], ['t', 1e6]),
    fc.integer({ min: 1, max: 12 }),
  )
  .map(
    ([grams, [unit, factor], digits]) =>
      `${(grams / Number(factor)).toPrecision(digits).replace('+', '')} ${unit}`,
  );

const water = fc.constantFrom('to 1 t', 'to 10 t', 'to 1 L', 'to 1 ng', '1 ng', '1 g', '10 t');

const stages = (amounts: readonly string[], rest: string): string =>
  `stages:
  emulsion:
    - sweet orange oil: ${amounts[0]}
    - polysorbate 80: ${amounts[1]}
    - propylene glycol: ${amounts[2]}
    - water: ${amounts[3]}
  drink:
    - emulsion: ${amounts[4]}
    - sucrose: ${amounts[5]}
    - citric acid: ${amounts[6]}
    - cassis stock: ${amounts[7]}
    - caffeine: ${amounts[8]}
    - heavy salt: ${amounts[9]}
    - water: ${rest}
`;

/** Every command that reckons with a whole design. */
const commands: readonly (readonly string[])[] = [
  ['check'],
  ['show', '1'],
  ['show', '1', '--json'],
  ['drink', '1', '--all', '--label', '--explain'],
  ['drink', '1', '--all', '--label', '--json'],
  ['reckon', '1', '--explain', '--yes'],
  ['reckon', '1', '--json', '--yes'],
  ['scale', 'f', '--to', '1 mL drink', '--yes'],
  ['scale', '1', '--to', '20 L drink', '--json', '--yes'],
  ['cost', 'f'],
  ['export', 'compositions', '1'],
  ['compare', '1', 'f', '--json'],
  ['give', 'f', '--yes'],
];

/** What no figure may be printed as; `[object` is a text that was never made one. */
const nonsense = /.{0,60}(?:\bNaN\b|\bInfinity\b|\bundefined\b|\[object).{0,20}/;

const rounds = Number(process.env['NECKRING_ROUNDS'] ?? 12) >= 50 ? 150 : 6;

describe('amounts from 1 ng to 10 t in one drink', () => {
  it(
    'law: every figure that is shown is one, mass is conserved, and what can not be is told at its line',
    async () => {
      const drinks = fc.tuple(fc.array(amount, { minLength: 10, maxLength: 10 }), water);
      await fc.assert(
        fc.asyncProperty(drinks, async ([amounts, rest]) => {
          const folder = await ledgerOf({
            'bench.yaml': bench,
            'ingredients.yaml': shelf,
            'trials/1.yaml': `trial: 1\nmade: 2026-03-02T10:15+00:00\n${stages(amounts, rest)}`,
            'formulas/f.yaml': `formula: f\n${stages(amounts, rest)}`,
          });
          for (const words of commands) {
            const ran = await neckring(words, { folder });
            const odd = nonsense.exec(`${ran.out}${ran.err}`)?.[0];
            expect([words, ran.code <= 2, odd]).toEqual([words, true, undefined]);
          }
          await expectConserved(folder);
        }),
        { numRuns: rounds, seed: 5 },
      );
    },
    40_000 + rounds * 10_000,
  );

  it.each([
    ['0 g', /stages\.yaml|trials\/1\.yaml:\d+:\d+: /],
    ['1e308 g', /trials\/1\.yaml:\d+:\d+: /],
    ['1e400 g', /trials\/1\.yaml:\d+:\d+: /],
    ['1e-400 g', /trials\/1\.yaml:\d+:\d+: /],
    ['NaN g', /trials\/1\.yaml:\d+:\d+: /],
    ['(1/0) g', /trials\/1\.yaml:\d+:\d+: /],
  ])(
    'an amount of %s is no drink: told at its line where it can not be reckoned, never as NaN',
    async (typed, place) => {
      const amounts = Array.from({ length: 10 }, () => typed);
      const text = `trial: 1\nmade: 2026-03-02T10:15+00:00\n${stages(amounts, typed)}`;
      const folder = await ledgerOf({
        'bench.yaml': bench,
        'ingredients.yaml': shelf,
        'trials/1.yaml': text,
      });
      for (const words of [
        ['check'],
        ['show', '1'],
        ['drink', '1'],
        ['reckon', '1'],
        ['scale', '1', '--to', '1 L drink'],
      ]) {
        const ran = await neckring(words, { folder });
        expect([
          words,
          ran.code <= 2,
          nonsense.exec(`${ran.out}${ran.err}`.replaceAll(typed, ''))?.[0],
        ]).toEqual([words, true, undefined]);
      }
      const checked = await neckring(['check'], { folder });
      expect([checked.code, checked.out]).toEqual([1, expect.stringMatching(place)]);
    },
  );
});

/** The substances of a stage come to the mass of the stage, to ten digits of it. */
async function expectConserved(folder: string): Promise<void> {
  const { compositions = [] } = await found(['export', 'compositions', '1'], { folder });
  const sums = new Map<unknown, { grams: number; share: number }>();
  for (const { stage, mass, massFraction } of rows(compositions)) {
    const sum = sums.get(stage) ?? { grams: 0, share: 0 };
    sum.grams += leafValue(mass);
    sum.share += leafValue(massFraction);
    sums.set(stage, sum);
  }
  for (const [stage, { grams, share }] of sums) {
    expect([stage, Number.isFinite(grams)]).toEqual([stage, true]);
    expect(share).toBeCloseTo(1, 9);
  }
}
