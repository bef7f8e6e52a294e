import { describe, expect, it } from 'vitest';
import { type AlikeFact, differences, isAlike, meantFacts } from '../../src/calc/rungs-alike.ts';

const fact = (kind: AlikeFact['kind'], value: number | undefined, text = `${value}`): AlikeFact => ({
  what: kind,
  kind,
  value,
  text,
});

// 5 C, a quarter of a time or of a speed: the bench's own bands (common practice, no source).
describe('made alike', () => {
  it.each<[AlikeFact['kind'], number, number, boolean]>([
    ['temperature', 60, 65, true],
    ['temperature', 60, 65.1, false],
    ['time', 300, 225, true],
    ['time', 300, 224, false],
    ['stirring', 400, 500, true],
    ['stirring', 400, 540, false],
    ['share', 0.12, 0.114, true],
    ['share', 0.12, 0.113, false],
  ])('%s %d beside %d: %s', (kind, one, other, expected) => {
    expect(isAlike(fact(kind, one), fact(kind, other))).toBe(expected);
    expect(isAlike(fact(kind, other), fact(kind, one))).toBe(expected);
  });

  it('a figure that nobody wrote is like another that nobody wrote, and like no figure', () => {
    const unwritten = fact('temperature', undefined, '');
    expect(isAlike(unwritten, unwritten)).toBe(true);
    expect(isAlike(unwritten, fact('temperature', 60))).toBe(false);
  });

  const made = (trial: number, celsius: number, lot: string) => ({
    trial,
    facts: [fact('temperature', celsius, `${celsius} C`), { what: 'oil', kind: 'word' as const, text: lot }],
  });

  it('the beaker that agrees with most others is how it was meant; the rest are told with what and against what', () => {
    const all = [made(1, 75, 'lot 2'), made(2, 60, 'lot 1'), made(3, 62, 'lot 1'), made(4, 60, 'lot 1')];
    expect(meantFacts(all).map(({ text }) => text)).toEqual(['60 C', 'lot 1']);
    expect(differences(all)).toEqual([
      { trial: 1, what: 'temperature', text: '75 C', others: '60 C' },
      { trial: 1, what: 'oil', text: 'lot 2', others: 'lot 1' },
    ]);
  });

  it('law: beakers in another order differ in the same', () => {
    const all = [made(1, 75, 'a'), made(2, 60, 'a'), made(3, 60, 'b'), made(4, 61, 'a')];
    expect(differences([...all].reverse())).toEqual(differences(all));
  });

  it('one alone, or none, differs in nothing', () => {
    expect(differences([made(1, 60, 'a')])).toEqual([]);
    expect(differences([])).toEqual([]);
  });
});
