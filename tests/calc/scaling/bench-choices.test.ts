import { describe, expect, it } from 'vitest';
import { pilotFor } from '../../../src/calc/scaling/pilot.ts';
import { vesselFor, vesselWords } from '../../../src/calc/scaling/sub-batches.ts';
import { parseTarget } from '../../../src/calc/scaling/target.ts';
import { type WeighingBench, weighingFor } from '../../../src/calc/scaling/weighing-choice.ts';

const bench: WeighingBench = {
  scales: [
    { divisionGrams: 1, limitGrams: 15_000 },
    { divisionGrams: 0.01, limitGrams: 600 },
  ],
  weighing: 0.01,
  vessels: [],
};

describe('weighingFor', () => {
  it.each([
    [20_000, 1, 2],
    [650, 1, 1],
    [599, 0.01, 1],
    [0.5, 0.01, 1],
  ])('weighs %d g on the balance that shows %d g, in %d portions', (grams, division, portions) => {
    const choice = weighingFor(grams, grams, bench);
    expect([choice.scale.divisionGrams, choice.portions, choice.isTooSmall]).toEqual([
      division,
      portions,
      false,
    ]);
  });

  it('counts the vessel that it stands in', () => {
    const vessels = [{ millilitres: 1000, massGrams: 300 }];
    expect(weighingFor(400, 400, { ...bench, vessels }).scale.divisionGrams).toBe(1);
  });

  it('takes portions on the finer balance where the coarser is not good enough', () => {
    const strict = { ...bench, weighing: 0.0001 };
    expect(weighingFor(700, 700, strict)).toMatchObject({ scale: { divisionGrams: 0.01 }, portions: 2 });
  });

  it('says what is too small for every balance: half a division over the mass, common practice', () => {
    expect(weighingFor(0.49, 1, bench)).toMatchObject({ isTooSmall: true });
    expect(weighingFor(0.5, 1, bench).relativeError).toBeCloseTo(0.01, 12);
  });

  it('reads to 0.01 g where the bench has no balance, and says so', () => {
    expect(weighingFor(5, 5, { ...bench, scales: [] })).toMatchObject({ isAssumed: true, portions: 1 });
  });
});

describe('vesselFor', () => {
  const vessels = [
    { name: 'tank', millilitres: 20_000 },
    { name: 'pot', millilitres: 5000 },
  ];
  const largestItem = { name: 'water', millilitres: 20_000 };
  const choice = (millilitres: number) => vesselFor({ stage: 'syrup', millilitres, largestItem, vessels });

  it.each([
    [4000, 'pot', 1],
    [5000, 'pot', 1],
    [20_000, 'tank', 1],
    [33_000, 'tank', 2],
    [61_000, 'tank', 4],
  ])('makes %d mL in the %s, %d times', (millilitres, name, count) => {
    expect(choice(millilitres)).toMatchObject({ ok: true, value: { vessel: { name }, count } });
  });

  it('splits nothing where the bench names no vessel', () => {
    const given = { stage: 'syrup', millilitres: 1e6, largestItem, vessels: [] };
    expect(vesselFor(given)).toEqual({ ok: true, value: { vessel: undefined, count: 1 } });
  });

  it('refuses a vessel smaller than a single item, with the mend', () => {
    const refused = vesselFor({
      stage: 'syrup',
      millilitres: 33_000,
      largestItem,
      vessels: [{ millilitres: 250 }],
    });
    expect(refused).toMatchObject({ ok: false, fault: { code: 'vessel-too-small' } });
    expect(refused.ok ? '' : refused.fault.message).toContain('the water of syrup alone (20 L)');
    expect(refused.ok ? '' : refused.fault.hint).toContain('--vessel "50 L"');
  });

  it('is said by name and size', () => {
    expect([vesselWords({ name: 'tank', millilitres: 25_000 }), vesselWords({ millilitres: 250 })]).toEqual([
      'tank (25 L)',
      'a vessel of 250 mL',
    ]);
  });
});

describe('parseTarget', () => {
  it.each([
    ['20 L syrup', { stage: 'syrup', each: { inner: 20_000 } }],
    ['20L syrup', { stage: 'syrup', each: { inner: 20_000 } }],
    ['1.2 kg emulsion', { stage: 'emulsion', each: { inner: 1200, dimension: 'mass' } }],
    ['12 L of drink', { stage: 'drink', each: { inner: 12_000 } }],
    ['500 x 330 mL', { count: 500, each: { inner: 330 } }],
    ['500x330mL', { count: 500, each: { inner: 330 } }],
    ['24 \u00d7 0.75 L', { count: 24, each: { inner: 750 } }],
    ['20 x 1 L syrup', { count: 20, stage: 'syrup', each: { inner: 1000 } }],
    ['3 US gal emulsion of 13', { stage: 'emulsion of 13', each: { unit: 'US gal' } }],
  ])('reads "%s"', (text, wanted) => {
    expect(parseTarget(text)).toMatchObject({ ok: true, value: wanted });
  });

  it.each([
    ['0 L syrup', 'not-positive'],
    ['0 x 330 mL', 'not-a-count'],
    ['1.5 x 330 mL', 'not-a-count'],
    ['syrup', 'no-amount'],
    ['20 syrup', 'unknown-unit'],
    ['20', 'no-unit'],
    ['20 C syrup', 'wrong-kind'],
    ['-2 L syrup', 'negative-amount'],
    ['1,000 L syrup', 'thousands-comma'],
  ])('refuses "%s"', (text, code) => {
    const read = parseTarget(text);
    expect(read.ok ? 'read' : read.fault.code).toBe(code);
    expect(read.ok ? '' : read.fault.hint).not.toBe('');
  });
});

describe('pilotFor', () => {
  it('asks for none up to ten times, common practice', () => {
    expect([pilotFor({ made: 50, batch: 500 }), pilotFor({ made: 0, batch: 500 })]).toEqual([
      undefined,
      undefined,
    ]);
  });

  it.each([
    [1000, 165_000, 165, 10_000],
    [50, 1200, 24, 240],
  ])('from %d to %d: %d times, a pilot of %d', (made, batch, times, amount) => {
    expect(pilotFor({ made, batch })).toEqual({ times, amount });
  });
});
