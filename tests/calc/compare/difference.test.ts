import { describe, expect, it } from 'vitest';
import { areStagesSame, documentDifference } from '../../../src/calc/compare/difference.ts';
import type {
  ComparedDocument,
  ComparedItem,
  ComparedStage,
  ComparedStep,
} from '../../../src/calc/compare/document.ts';
import { movedPairs, pairUp } from '../../../src/calc/compare/sequence.ts';

const item = (name: string, grams: number, more: Partial<ComparedItem> = {}): ComparedItem => ({
  name,
  key: name,
  identity: name,
  amount: { key: 'amount', kind: 'mass', written: `${grams} g`, same: `mass ${grams}` },
  plannedGrams: grams,
  facts: [],
  ...more,
});

const step = (written: string): ComparedStep => ({ written, key: written, facts: [] });

const stage = (
  name: string,
  items: readonly ComparedItem[],
  steps: readonly string[] = [],
): ComparedStage => ({
  name,
  facts: [],
  items,
  steps: steps.map(step),
});

const document = (
  stages: readonly ComparedStage[],
  more: Partial<ComparedDocument> = {},
): ComparedDocument => ({
  facts: [],
  aims: [],
  stages,
  samples: [],
  observations: [],
  results: [],
  ...more,
});

const four = [item('oil', 2), item('polysorbate', 6), item('glycol', 6), item('water', 36)];

const differ = (before: readonly ComparedStage[], after: readonly ComparedStage[]) =>
  documentDifference(document(before), document(after));

describe('documentDifference', () => {
  it('law: a record beside itself is the same', () => {
    const whole = [stage('emulsion', four, ['warm oil', 'add water'])];
    const found = differ(whole, whole);
    expect(areStagesSame(found)).toBe(true);
    expect(found.stages.map(({ change }) => change)).toEqual(['same']);
  });

  it('law: the other way round what was added is taken out, and every changed side is swapped', () => {
    const before = [stage('emulsion', [item('oil', 2), item('polysorbate', 6)])];
    const after = [stage('emulsion', [item('oil', 3), item('oleate', 1)])];
    const [there] = differ(before, after).stages;
    const [back] = differ(after, before).stages;
    expect(there?.items.map(({ change, name }) => [change, name])).toEqual([
      ['removed', 'polysorbate'],
      ['changed', 'oil'],
      ['added', 'oleate'],
    ]);
    expect(back?.items.map(({ change, name }) => [change, name])).toEqual([
      ['removed', 'oleate'],
      ['changed', 'oil'],
      ['added', 'polysorbate'],
    ]);
    expect(there?.items[1]?.facts).toEqual([{ key: 'amount', before: '2 g', after: '3 g' }]);
    expect(back?.items[1]?.facts).toEqual([{ key: 'amount', before: '3 g', after: '2 g' }]);
  });

  it('says of one line alone that it moved in the order of addition', () => {
    const [oil, polysorbate, glycol, water] = four;
    if (!oil || !polysorbate || !glycol || !water) throw new Error('four lines');
    const [found] = differ([stage('e', four)], [stage('e', [water, oil, polysorbate, glycol])]).stages;
    expect(found?.items).toEqual([
      { change: 'moved', name: 'water', facts: [], before: 3, after: 0, isMoved: true },
    ]);
  });

  it('takes another name of the same for no change, and lists it', () => {
    const lot = item('oil lot 2', 2, { key: 'oil', identity: 'oil' });
    const [found] = differ([stage('e', [item('oil', 2)])], [stage('e', [lot])]).stages;
    expect(found?.change).toBe('same');
    expect(found?.renamed).toEqual([{ name: 'oil lot 2', was: 'oil', before: 0, after: 0 }]);
  });

  it('takes the same weight typed in another kind of unit for no change, and another weight for one', () => {
    const share = (grams: number): ComparedItem =>
      item('oil', grams, { amount: { key: 'amount', kind: 'share', written: '4 %', same: 'share 0.04' } });
    expect(differ([stage('e', [item('oil', 2)])], [stage('e', [share(2)])]).stages[0]?.change).toBe('same');
    expect(differ([stage('e', [item('oil', 2)])], [stage('e', [share(2.1)])]).stages[0]?.change).toBe(
      'changed',
    );
  });

  it('finds a line that went into another stage', () => {
    const acid = item('citric acid', 4.5);
    const found = differ(
      [stage('syrup', [item('sucrose', 95), acid]), stage('drink', [item('water', 800)])],
      [stage('syrup', [item('sucrose', 95)]), stage('drink', [item('water', 800), acid])],
    ).stages;
    expect(
      found.map(({ items }) => items.map(({ change, name, fromStage }) => [change, name, fromStage])),
    ).toEqual([[], [['moved', 'citric acid', 'syrup']]]);
  });

  it('does not take the lines of a new stage for those of one that is gone', () => {
    const found = differ(
      [stage('emulsion', [item('water', 36)])],
      [stage('drink', [item('water', 900)])],
    ).stages;
    expect(found.map(({ items }) => items.map(({ change }) => change))).toEqual([['removed'], ['added']]);
  });

  it('finds a stage under another name, and the lines that use it', () => {
    const use = (name: string): ComparedItem => item(name, 1.5, { identity: `stage ${name}` });
    const found = differ(
      [stage('emulsion', four), stage('drink', [use('emulsion'), item('water', 900)])],
      [stage('base', four), stage('drink', [use('base'), item('water', 900)])],
    ).stages;
    expect(found.map(({ change, name, was }) => [change, name, was])).toEqual([
      ['changed', 'base', 'emulsion'],
      ['same', 'drink', undefined],
    ]);
  });

  it('calls a stage of which everything grew alike another size', () => {
    const double = four.map(({ name, plannedGrams = 0 }) => item(name, plannedGrams * 2));
    expect(differ([stage('e', four)], [stage('e', double)]).stages[0]?.factor).toBe(2);
    const other = [...double.slice(0, 3), item('water', 71)];
    expect(differ([stage('e', four)], [stage('e', other)]).stages[0]?.factor).toBeUndefined();
  });

  it('pairs steps by what they do, and says which moved', () => {
    const [found] = differ(
      [stage('e', [], ['warm oil', 'add water', 'cool'])],
      [stage('e', [], ['cool', 'warm oil', 'add water', 'filter'])],
    ).stages;
    expect(found?.steps.map(({ change, written }) => [change, written])).toEqual([
      ['moved', 'cool'],
      ['added', 'filter'],
    ]);
  });

  it('tells a changed observation from one that is new', () => {
    const seen = (key: string, look: string) => ({
      key,
      heading: key,
      facts: [{ key: 'look', written: look, same: look }],
    });
    const found = documentDifference(
      document([], { observations: [seen('day 1', 'clear'), seen('day 2', 'clear')] }),
      document([], { observations: [seen('day 1', 'clear'), seen('day 2', 'hazy'), seen('day 3', 'hazy')] }),
    );
    expect(found.observations).toEqual([
      { change: 'changed', heading: 'day 2', facts: [{ key: 'look', before: 'clear', after: 'hazy' }] },
      { change: 'added', heading: 'day 3', facts: [{ key: 'look', after: 'hazy' }] },
    ]);
  });
});

describe('pairUp and movedPairs', () => {
  it('law: every place stands in at most one pair, and what is not moved keeps its order', () => {
    let seed = 7;
    const next = (below: number): number => {
      seed = (seed * 48271) % 2147483647;
      return seed % below;
    };
    for (let run = 0; run < 200; run += 1) {
      const before = Array.from({ length: next(9) }, () => next(6));
      const after = Array.from({ length: next(9) }, () => next(6));
      const pairs = pairUp(before, after, [(one, other) => one === other]);
      expect(new Set(pairs.map((pair) => pair.before)).size).toBe(pairs.length);
      expect(new Set(pairs.map((pair) => pair.after)).size).toBe(pairs.length);
      const moved = movedPairs(pairs);
      const kept = pairs.filter((pair) => !moved.has(pair)).map((pair) => pair.before);
      expect(kept).toEqual([...kept].sort((left, right) => left - right));
    }
  });
});
