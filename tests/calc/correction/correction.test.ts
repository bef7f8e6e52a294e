import { describe, expect, it } from 'vitest';
import { makeBook } from '../../../src/calc/book.ts';
import { measuredTank } from '../../../src/calc/correction/measured-tank.ts';
import { drift, fullMend, shortMend } from '../../../src/calc/correction/mend.ts';
import { type TankItem, tankItems, tankReadings, tankStage } from '../../../src/calc/correction/tank.ts';
import type { ItemInput, Mixture, StageInput } from '../../../src/calc/mixture/picture.ts';
import { resolveMixture } from '../../../src/calc/mixture/resolve-mixture.ts';
import { parseAmount } from '../../../src/calc/parse-amount.ts';
import { ingredients } from '../../../src/reference/ingredients/index.ts';
import { seeded } from '../../support/seeded.ts';

const { book } = makeBook({ builtIn: ingredients, own: [] });
const conditions = { temperatureKelvin: 293.15, water: { alkalinityMilligramsPerLitre: 60 } };

function item(name: string, typed: string): ItemInput {
  const amount = parseAmount(typed);
  const entry = book.find(name);
  if (!amount.ok) throw new Error(typed);
  return {
    name,
    amount: amount.value,
    source: entry ? { kind: 'ingredient', entry } : { kind: 'stage', stage: name },
  };
}

function mixtureOf(stages: readonly StageInput[]): Mixture {
  const { mixture, faults } = resolveMixture({ stages, temperatureKelvin: 293.15 });
  if (!mixture) throw new Error(faults[0]?.message);
  return mixture;
}

const emulsion: StageInput = {
  name: 'emulsion',
  items: [
    item('sweet orange oil', '80 g'),
    item('polysorbate 80', '240 g'),
    item('propylene glycol', '240 g'),
    item('water', 'to 2 kg'),
  ],
};

/** A syrup of about 20 kg. */
function syrupOf(sucrose: number, acid: number, salt: number, oil: number): { planned: readonly TankItem[] } {
  const mixture = mixtureOf([
    emulsion,
    {
      name: 'syrup',
      items: [
        item('sucrose', `${sucrose} g`),
        item('citric acid', `${acid} g`),
        item('trisodium citrate dihydrate', `${salt} g`),
        item('emulsion', `${oil} g`),
        item('water', 'to 20 kg'),
      ],
    },
  ]);
  const stage = mixture.stages.find(({ name }) => name === 'syrup');
  if (!stage) throw new Error('no syrup');
  return { planned: tankItems(stage, mixture) };
}

const shown = (items: readonly TankItem[]) => {
  const readings = tankReadings(tankStage('syrup', items, 293.15), conditions);
  if (!readings) throw new Error('no readings');
  return readings;
};

const totalOf = (items: readonly TankItem[]): number =>
  items.reduce((sum, { massGrams }) => sum + massGrams, 0);

/** The items of a real tank after what was to be added has been poured in. */
function pourIn(tank: readonly TankItem[], additions: readonly { name: string; addGrams: number }[]) {
  return tank.map((one) => ({
    ...one,
    massGrams: one.massGrams + (additions.find(({ name }) => name === one.name)?.addGrams ?? 0),
  }));
}

describe('mending a tank', () => {
  it('law: in 200 random tanks of which sugar, acid and water were mis-weighed, the additions meet the aim', () => {
    const random = seeded(20260312);
    const between = (low: number, high: number): number => low + (high - low) * random();
    for (let round = 0; round < 200; round++) {
      const { planned } = syrupOf(
        between(6000, 11_000),
        between(150, 500),
        between(0, 60),
        between(100, 400),
      );
      const slips: Readonly<Record<string, number>> = {
        sucrose: between(0.8, 1.2),
        'citric acid': between(0.7, 1.3),
        water: between(0.85, 1.15),
      };
      const tank = planned.map((one) => ({ ...one, massGrams: one.massGrams * (slips[one.name] ?? 1) }));
      const aim = shown(planned);
      const read = shown(tank);
      const present = measuredTank({
        stage: 'syrup',
        items: planned,
        massGrams: totalOf(tank),
        measured: { brix: read.brix, acid: read.acid },
        conditions,
      });
      if (!present.ok) throw new Error(`${present.fault.message} in round ${round}`);
      const mend = fullMend(planned, present.value);
      expect(mend.additions.every(({ addGrams }) => addGrams > 0)).toBe(true);
      const mended = pourIn(tank, mend.additions);
      const after = shown(mended);
      expect(after.brix).toBeCloseTo(aim.brix, 5);
      expect(after.acid).toBeCloseTo(aim.acid, 4);
      expect(after.ph ?? 0).toBeCloseTo(aim.ph ?? 0, 5);
      for (const { change } of drift(planned, mended)) expect(Math.abs(change)).toBeLessThan(1e-6);
    }
  }, 60_000);

  it('law: with its pH the tank gives back a salt that was mis-weighed too', () => {
    const random = seeded(20260313);
    const between = (low: number, high: number): number => low + (high - low) * random();
    for (let round = 0; round < 30; round++) {
      const { planned } = syrupOf(between(6000, 11_000), between(150, 500), between(40, 90), 150);
      const slips = new Map([
        ['sucrose', between(0.9, 1.1)],
        ['citric acid', between(0.9, 1.1)],
        ['trisodium citrate dihydrate', between(0.3, 1.7)],
      ]);
      const real = planned.map((one) => ({ ...one, massGrams: one.massGrams * (slips.get(one.name) ?? 1) }));
      const { brix, acid, ph } = shown(real);
      const told = { stage: 'syrup', items: planned, massGrams: totalOf(real), conditions };
      const found = measuredTank({ ...told, measured: { brix, acid, ph } });
      expect(found.ok).toBe(true);
      if (!found.ok) return;
      for (const [at, { massGrams }] of found.value.entries())
        expect(massGrams / (real[at]?.massGrams ?? 0)).toBeCloseTo(1, 5);
    }
  });

  it('law: what is not there in excess is never asked to be taken out, and one item stays as it is', () => {
    const { planned } = syrupOf(9500, 450, 60, 150);
    const tank = planned.map((one) =>
      one.name === 'sucrose' ? { ...one, massGrams: one.massGrams * 1.1 } : one,
    );
    const { additions, growth } = fullMend(planned, tank);
    expect(additions.map(({ name }) => name)).not.toContain('sucrose');
    // 10 % too much sugar: everything else needs a tenth more.
    for (const { name, addGrams } of additions)
      expect(addGrams).toBeCloseTo(0.1 * (planned.find((one) => one.name === name)?.massGrams ?? 0), 6);
    expect(growth).toBeCloseTo((totalOf(planned) * 1.1) / totalOf(tank), 9);
  });

  it('law: water, sugar and acid alone bring the sugar and the acid back to their shares, and thin the rest', () => {
    const { planned } = syrupOf(9500, 450, 60, 150);
    const tank = planned.map((one) =>
      one.name === 'citric acid' ? { ...one, massGrams: one.massGrams * 1.2 } : one,
    );
    const { items, additions } = shortMend(planned, tank);
    expect(additions.map(({ name }) => name).sort()).toEqual(['sucrose', 'water']);
    const changes = new Map(drift(planned, items).map(({ name, change }) => [name, change]));
    expect(changes.get('sucrose')).toBeCloseTo(0, 9);
    expect(changes.get('citric acid')).toBeCloseTo(0, 9);
    expect(changes.get('emulsion')).toBeCloseTo(1 / 1.2 - 1, 9);
  });

  it('law: dry sugar into 12 Brix to make 24 goes in by the Pearson square, 12 parts to 76', () => {
    const syrup = mixtureOf([{ name: 'syrup', items: [item('sucrose', '24 g'), item('water', '76 g')] }]);
    const [stage] = syrup.stages;
    const planned = stage ? tankItems(stage, syrup) : [];
    const weak = planned.map((one) => ({ ...one, massGrams: one.name === 'sucrose' ? 12 : 88 }));
    const { additions } = fullMend(planned, weak);
    // Sugar alone, 100 Brix: 100 g of 12 Brix take (24 - 12)/(100 - 24) x 100 g.
    expect(additions).toEqual([{ name: 'sucrose', addGrams: expect.closeTo((12 / 76) * 100, 9) }]);
  });
});

describe('readings that no such tank can show', () => {
  const { planned } = syrupOf(9500, 450, 60, 150);
  const measure = (measured: { brix?: number; acid?: number }, items = planned) =>
    measuredTank({ stage: 'syrup', items, massGrams: 20_000, measured, conditions });

  it('refuses them', () => {
    expect(measure({ brix: 99 })).toMatchObject({ ok: false, fault: { code: 'no-such-tank' } });
  });

  it('refuses an acid that the stage has nothing of', () => {
    const sweet = planned.filter(({ name }) => name !== 'citric acid');
    expect(measure({ acid: 4 }, sweet)).toMatchObject({ ok: false, fault: { code: 'nothing-of-it' } });
  });
});
