/** Where an ingredient or a lot went. Amounts follow from the files by arithmetic. */

import { describe, expect, it } from 'vitest';
import { exampleLedger, found, leafValue, neckring, record, rows } from './neckring.ts';
import { drinkStages, slipLedger } from './slip-ledger.ts';

interface Use {
  readonly at: string;
  readonly grams: number | null;
  readonly gramsPerLitre: number | null;
}

const numberOrNull = (leaf: unknown): number | null => {
  const value = record(leaf)['value'];
  return typeof value === 'number' ? value : null;
};

async function usesOf(words: readonly string[], folder: string): Promise<readonly Use[]> {
  return rows((await found(['uses', ...words], { folder }))['uses']).map((one) => ({
    at: `${one['kind']} ${one['name']}`,
    grams: numberOrNull(one['mass']),
    gramsPerLitre: numberOrNull(one['gramsPerLitre']),
  }));
}

const drink = `trial: 2\nmade: 2026-03-10T10:00+00:00\n${drinkStages({ 'weak cassis': '1 g' })}`;

describe('uses', () => {
  it('law: 1.5 g of an emulsion with 2 g of oil in 50 g hold 0.06 g of it, in the drink 60 mg/L', async () => {
    const folder = await slipLedger({ 'trials/0002.yaml': drink });
    const uses = await usesOf(['orange oil lot 2231'], folder);
    expect(uses.map(({ at }) => at)).toEqual(['trial 1', 'trial 2']);
    expect(uses[0]).toMatchObject({ grams: 2, gramsPerLitre: null });
    expect(uses[1]?.grams).toBeCloseTo(0.06, 12);
    expect(uses[1]?.gramsPerLitre).toBeCloseTo(0.06, 6);
  });

  it('law: through solutions of solutions, a tenth of 2 ppm', async () => {
    const folder = await slipLedger({ 'trials/0002.yaml': drink });
    const thiol = await usesOf(['cassis thiol'], folder);
    expect(thiol.map(({ at }) => at)).toEqual(['trial 2', 'stock cassis stock', 'stock weak cassis']);
    expect(thiol[0]?.grams).toBeCloseTo(2e-7, 15);
    const stock = await usesOf(['cassis', 'stock'], folder);
    expect(stock.map(({ at }) => at)).toEqual(['trial 2', 'stock weak cassis']);
    expect(stock[0]?.grams).toBeCloseTo(0.1, 12);
    const [share] = rows((await found(['uses', 'cassis stock'], { folder }))['uses']).slice(-1);
    expect(leafValue(share?.['share'])).toBeCloseTo(0.1, 12);
  });

  it('pinned: a lot by itself, by its ingredient, and one that stands under an item', async () => {
    const lotted = drink.replace('sucrose: 90 g\n', 'sucrose: 90 g\n      lot: S-5\n');
    const folder = await slipLedger({ 'trials/0002.yaml': lotted });
    for (const words of [['2231'], ['lot', '2231'], ['sweet orange oil lot 2231']]) {
      expect((await usesOf(words, folder)).map(({ at }) => at)).toEqual(['trial 1', 'trial 2']);
    }
    expect(await usesOf(['lot', 's-5'], folder)).toMatchObject([{ at: 'trial 2', grams: 90 }]);
    expect(await usesOf(['sucrose lot S-5'], folder)).toMatchObject([{ at: 'trial 2', grams: 90 }]);
    expect((await neckring(['uses', 'water lot S-5'], { folder })).code).toBe(1);
  });

  it('pinned: what is like it counts as it, formulas too', async () => {
    const folder = await exampleLedger();
    const uses = await usesOf(['sweet orange oil'], folder);
    expect(uses.map(({ at }) => at)).toContain('formula orange cardamom');
    expect(uses).toHaveLength(8);
    const { out } = await neckring(['uses', 'sweet orange oil'], { folder });
    expect(out).toContain('Counted as it: orange oil lot 2231.');
  });

  it('pinned: an unknown name offers the nearest; nothing found is said; both exit 1', async () => {
    const folder = await slipLedger({});
    const unknown = await neckring(['uses', 'polysorbat 80'], { folder });
    expect(unknown.code).toBe(1);
    expect(unknown.err).toContain('did you mean polysorbate 80');
    const nothing = await neckring(['uses', 'malic acid'], { folder });
    expect(nothing.code).toBe(1);
    expect(nothing.out).toBe('Nothing here holds malic acid.\n');
  });

  it('pinned: a trial that can not be worked out is still named', async () => {
    const folder = await slipLedger({
      'trials/0002.yaml':
        'trial: 2\nstages:\n  syrup:\n    - sucrose: 5 g\n    - citric acid: 60 %\n    - water: to 10 g\n',
    });
    expect(await usesOf(['citric acid'], folder)).toEqual([
      { at: 'trial 2', grams: null, gramsPerLitre: null },
    ]);
  });
});
