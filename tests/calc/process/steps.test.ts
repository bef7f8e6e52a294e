import { describe, expect, it } from 'vitest';
import { lossCaution } from '../../../src/calc/process/loss.ts';
import { orderCautions } from '../../../src/calc/process/order-cautions.ts';
import {
  isShear,
  type ProcessItem,
  type ProcessStep,
  stepOf,
  type Trait,
  warmths,
} from '../../../src/calc/process/steps.ts';

const bench = 293.15;
const step = (does: string | undefined, words: string, celsius?: number): ProcessStep => ({
  does,
  words,
  ...(celsius === undefined ? {} : { temperatureKelvin: celsius + 273.15 }),
});
const item = (name: string, traits: readonly Trait[] = [], isStage = false): ProcessItem => ({
  name,
  alsoCalled: [],
  traits: new Set(traits),
  isStage,
});

describe('how warm a stage is', () => {
  it('pinned: fields and words of the steps, one after the other', () => {
    const steps = [
      step('warm', 'oil and emulsifier', 60),
      step('add', 'water at 60 C'),
      step('rest', ''),
      step('cool', ''),
      step(undefined, 'bring it to the boil'),
      step(undefined, 'let it cool down'),
      step('warm', 'gently', 25),
    ];
    expect(warmths(steps).map(({ isWarm }) => isWarm)).toEqual([
      false,
      true,
      true,
      true,
      false,
      true,
      false,
      false,
    ]);
  });

  it('pinned: high shear by its step or its words', () => {
    expect(
      [step('shear', ''), step(undefined, 'rotor-stator for 2 min'), step('mix', 'slowly')].map(isShear),
    ).toEqual([true, true, false]);
  });
});

describe('which step names an item', () => {
  const oil = item('orange oil lot 2231', ['oil']);
  const acid = item('citric acid', ['acid']);
  const salt = item('trisodium citrate dihydrate');
  const stage = (words: string) => ({ name: 'syrup', items: [oil, acid, salt], steps: [step('add', words)] });

  it.each([
    ['the orange oil', oil, 0],
    ['Citric acid, dissolved', acid, 0],
    ['the acid', acid, 0],
    ['everything', salt, 0],
    ['placid water', acid, undefined],
    ['water', oil, undefined],
  ])('pinned: %s', (words, wanted, place) => {
    expect(stepOf(stage(words), wanted)).toBe(place);
  });
});

describe('cautions', () => {
  it('common practice: an aroma that no step names, in a stage that is warmed, is said to be unnamed', () => {
    const items = [item('cassis stock', ['potent']), item('water')];
    const [caution] = orderCautions({ name: 'syrup', items, steps: [step('warm', 'it', 60)] }, bench);
    expect(caution?.code).toBe('aroma-heated');
    expect(caution?.text).toContain('no step says that cassis stock goes in after the stage is warmed');
  });

  // published: Kell 1975 has water at 0.99820 (20 C), 0.98320 (60 C) and 0.97180 g/mL (80 C)
  it.each([
    [60, '1.5 %'],
    [80, '2.6 %'],
  ])('published: made up at %d C', (celsius, percent) => {
    const water = { ...item('water'), makesUpTo: 'to 1 L' };
    const [caution] = orderCautions(
      { name: 'drink', items: [water], steps: [step('warm', 'it', celsius)] },
      bench,
    );
    expect(caution?.text).toContain(`about ${percent} short when cold`);
  });

  it('law: what is lost is what went in less what is there', () => {
    const [loss] = lossCaution({ name: 'syrup', sumGrams: 50, weighsGrams: 48 });
    expect(loss?.code).toBe('loss-on-heating');
    expect(loss?.text).toContain('4 % lost');
    expect(lossCaution({ name: 'syrup', sumGrams: 50, weighsGrams: 49 })).toEqual([]);
  });
});
